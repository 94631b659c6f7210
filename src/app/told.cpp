#include "app/told.hpp"

#include "bench/pads_binder.hpp"
#include "bench/pads_number.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_slab.hpp"
#include "bench/screens.hpp"
#include "screens/broken_words.hpp"
#include "screens/draw.hpp"
#include "screens/fields.hpp"
#include "screens/parts.hpp"
#include "words/app_says.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>

namespace app {

namespace {

using Json = nlohmann::ordered_json;
using Say = words::AppSay;
using screens::Anchor;
using screens::Box;
using screens::Text;
using Texts = std::vector<const Text*>;

// What belongs on one line: the next line of the same sentence looks the same.
bool goes_on(const Text& before, const Text& next) {
  return !next.begins && before.bold == next.bold && before.anchor == next.anchor &&
         before.colour == next.colour && before.cap_mm == next.cap_mm && next.at.y > before.at.y &&
         next.at.y - before.at.y < 2.6 * next.cap_mm;
}

std::vector<std::string> sentences(const Texts& texts) {
  std::vector<std::string> out;
  const Text* before = nullptr;
  for (const Text* text : texts) {
    const std::string& heard = text->heard.empty() ? text->words : text->heard;
    if (before && goes_on(*before, *text))
      out.back() = screens::gone_on(out.back(), heard);
    else
      out.push_back(heard);
    before = text;
  }
  return out;
}

// Whoever hears them hears where each ends.
std::vector<std::string> ended(std::vector<std::string> all) {
  constexpr std::string_view ends = ".:!?;,";
  for (std::string& each : all)
    if (!each.empty() && ends.find(each.back()) == std::string_view::npos && !each.ends_with("…"))
      each += '.';
  return all;
}

std::string joined(const std::vector<std::string>& all) {
  std::string out;
  for (const std::string& each : all) out += (out.empty() ? "" : ", ") + each;
  return out;
}

// Among those of its kind, from 1.
std::ptrdiff_t place_of(const bench::Layout& layout, const bench::PadId& pad) {
  const auto end = std::find_if(layout.pads.begin(), layout.pads.end(),
                                [&](const bench::Pad& p) { return p.id == pad; });
  return 1 + std::count_if(layout.pads.begin(), end,
                           [&](const bench::Pad& p) { return p.id.kind == pad.kind; });
}

// Of pads that bear a sign or a picture.
std::string sign_words(const bench::View& view, const bench::PadId& pad) {
  using bench::SharedPad;
  using bench::TopBarPad;
  if (pad.kind == TopBarPad::tablet) return say(Say::pad_this_tablet);
  if (pad.kind == TopBarPad::sound)
    return say(view.top_bar.sound ? Say::pad_sound_on : Say::pad_sound_off);
  if (pad.kind == TopBarPad::night)
    return say(view.top_bar.night ? Say::pad_by_day : Say::pad_by_night);
  if (pad.kind == SharedPad::page_back) return say(Say::pad_page_back);
  if (pad.kind == SharedPad::page_on) return say(Say::pad_page_on);
  if (pad.kind == SharedPad::clear) return say(Say::pad_clear);
  if (pad.kind == SharedPad::dot_photo)
    return say(Say::pad_dot_photo, {std::to_string(place_of(view.layout, pad))});
  if (pad.kind == bench::NumberPad::erase) return say(Say::pad_erase);
  if (pad.kind == bench::PansPad::pan) return say(Say::pad_pan, {pad.arg});
  if (pad.kind == bench::PlanPad::fewer || pad.kind == bench::BinderPad::less)
    return say(Say::pad_less);
  if (pad.kind == bench::PlanPad::more || pad.kind == bench::BinderPad::more)
    return say(Say::pad_more);
  if (pad.kind == bench::ShelfPad::hue) return say(Say::pad_hue, {pad.arg});
  if (pad.kind == bench::ShelfPad::shade) return say(Say::pad_shade, {pad.arg});
  return "";
}

// What is on the right of a pad is a number of what is called on its left: the name comes first.
// How much of a material was counted is no part of its name, which stays the same from tap to tap.
struct Called {
  std::string name, counted;
};

std::string name_of(const bench::View& view, const bench::Pad& pad, const Texts& texts) {
  const std::string words = joined(sentences(texts)), sign = sign_words(view, pad.id);
  if (words.empty()) return sign; // a pad that bears neither is none to anybody
  const bool number_only = words.find_first_not_of("0123456789") == std::string::npos;
  return number_only && !sign.empty() ? sign : words;
}

Called called(const bench::View& view, const bench::Pad& pad, Texts texts) {
  const auto right = std::stable_partition(
      texts.begin(), texts.end(), [](const Text* text) { return text->anchor != Anchor::right; });
  if (pad.id.kind != bench::SlabPad::add) return {name_of(view, pad, texts), ""};
  return {name_of(view, pad, {texts.begin(), right}), joined(sentences({right, texts.end()}))};
}

// The heavy outline, as eyes see it.
bool is_chosen(const bench::View& view, const bench::Pad& pad,
               const std::vector<screens::Shape>& shapes) {
  const double heavy = choosable(screens::theme(view.top_bar.night), true).outline;
  const screens::Rect edge = screens::inset(pad.box, heavy / 2);
  return std::any_of(shapes.begin(), shapes.end(), [&](const screens::Shape& shape) {
    const auto* box = std::get_if<Box>(&shape);
    return box && box->outline_mm == heavy && box->rect.x == edge.x && box->rect.y == edge.y;
  });
}

Json in_px(const bench::Rect& box, double px_per_mm) {
  return {box.x * px_per_mm, box.y * px_per_mm, box.w * px_per_mm, box.h * px_per_mm};
}

// Below the bank card, and as high as there is room for; where there is hardly any, to its right,
// and where there is none at all, over its lower edge.
bench::Rect free_place(const bench::Rect& main, double drawn_at) {
  constexpr double enough = 12, least_h = 9, least_w = 30, air = bench::gap_mm / 2;
  const bench::Rect card = screens::bank_card(main, drawn_at).at;
  const double last = main.bottom() - air, right = main.right() - bench::gap_mm;
  const double beside = right - card.right() - air, below = last - card.bottom() - air;
  if (below < least_h && beside >= least_w) return {right - beside, last - enough, beside, enough};
  const double h = std::clamp(below, least_h, enough), x = main.x + bench::gap_mm;
  return {x, last - h, right - x, h};
}

std::string counted(const bench::View& view) {
  if (const auto* slab = std::get_if<bench::SlabView>(&view.screen))
    return screens::undo_words(slab->undo);
  if (const auto* pans = std::get_if<bench::PansView>(&view.screen))
    return screens::undo_words(pans->undo);
  return "";
}

bool is_field(const std::vector<screens::Field>& fields, const bench::PadId& pad) {
  return std::any_of(fields.begin(), fields.end(), [&](const auto& f) { return f.pad == pad; });
}

}

std::string told(const bench::View& view, bool open, double px_per_mm) {
  const std::vector<screens::Shape> shapes = screens::draw(view);
  std::map<const bench::Pad*, Texts> on; // null: beside the pads
  for (const screens::Shape& shape : shapes)
    if (const auto* text = std::get_if<Text>(&shape))
      on[bench::pad_at(view.layout, text->at)].push_back(text);
  const auto& row = bench::screens[view.top_bar.screen];
  Json all{{"screen", row.name},
           {"language", words::tag_of(words::spoken())},
           {"open", open},
           {"night", view.top_bar.night},
           {"counted", counted(view)},
           {"words", ended(sentences(on[nullptr]))},
           {"pads", Json::array()}};
  if (const auto* tablet = std::get_if<bench::TabletView>(&view.screen))
    all["free"] = in_px(free_place(view.layout.main, tablet->drawn_at), px_per_mm);
  const auto fields = screens::fields_of(view);
  for (const bench::Pad& pad : view.layout.pads) {
    const Called words = called(view, pad, on[&pad]);
    all["pads"].push_back({{"id", bench::name_of(pad.id)},
                           {"name", words.name},
                           {"counted", words.counted},
                           {"box", in_px(pad.box, px_per_mm)},
                           {"here", pad.id.kind == row.pad},
                           {"chosen", is_chosen(view, pad, shapes)},
                           {"field", is_field(fields, pad.id)}});
  }
  return all.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}
