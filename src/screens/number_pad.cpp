// The number pad: what the number is for, what has been typed, and the keys.
#include "bench/pads_binder.hpp"
#include "bench/pads_choice.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_number.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_slab.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/making_says.hpp"
#include "words/screens_says.hpp"
#include "words/slab_says.hpp"

#include <algorithm>

namespace screens {

using bench::BinderPad;
using bench::ChoicePad;
using bench::MorePad;
using bench::NumberPad;
using bench::PansPad;
using bench::PlanPad;
using bench::SharedPad;
using bench::ShelfPad;
using bench::SlabPad;
using words::MakingSay;
using Say = words::SlabSay;
using words::say;

namespace {

constexpr Lettering key_letters{cap::head, true, cap::head};

words::Sentence wanted_words(bench::Want want) {
  switch (want) {
  case bench::Want::pigment_g: return Say::ask_wanted_pigment;
  case bench::Want::pans: return Say::ask_wanted_pans;
  case bench::Want::wet_mL: return Say::ask_wanted_wet;
  case bench::Want::dried_g: return Say::ask_wanted_dried;
  case bench::Want::as_it_stands:
  case bench::Want::all_left: break; // ask for none
  }
  return {};
}

// Empty where no number is asked for.
std::string asked(PlanPad pad, const bench::NumberView& number) {
  switch (pad) {
  case PlanPad::weigh: return say(wanted_words(number.want));
  case PlanPad::parts:
    return say(number.in == session::SaidIn::parts ? Say::ask_parts
               : number.in == session::SaidIn::g   ? Say::ask_grams
                                                   : Say::ask_spoons,
               {number.of});
  case PlanPad::celsius: return say(Say::ask_celsius);
  case PlanPad::humidity: return say(Say::ask_humidity);
  case PlanPad::pigment:
  case PlanPad::binder:
  case PlanPad::by_volume:
  case PlanPad::want:
  case PlanPad::pan_size:
  case PlanPad::cautions:
  case PlanPad::cautions_read:
  case PlanPad::name:
  case PlanPad::begin:
  case PlanPad::go_on:
  case PlanPad::another_pigment:
  case PlanPad::recipes:
  case PlanPad::recipe:
  case PlanPad::all_others:
  case PlanPad::say_in:
  case PlanPad::spoon:
  case PlanPad::other_binders:
  case PlanPad::fewer:
  case PlanPad::more:
  case PlanPad::keep_recipe: return "";
  }
  return "";
}

std::string asked_of_room(const std::string& arg) {
  return say(arg == "humidity" ? Say::ask_humidity : Say::ask_celsius);
}

// What it was, and in what it is counted.
std::string asked_of_line(const bench::NumberView& number) {
  if (!number.corrects) return say(Say::ask_other_amount);
  const std::string was = event_words(*number.corrects, number.of);
  const auto* added = std::get_if<session::Added>(&*number.corrects);
  switch (added ? added->unit : session::Unit::g) {
  case session::Unit::g: return say(Say::ask_other_g, {was});
  case session::Unit::drops: return say(Say::ask_other_drops, {was});
  case session::Unit::spoons: return say(Say::ask_other_spoons, {was});
  }
  return "";
}

std::string asked(MorePad pad, const bench::NumberView& number) {
  switch (pad) {
  case MorePad::room: return asked_of_room(number.target.arg);
  case MorePad::weigh_paint: return say(Say::ask_weigh_paint);
  case MorePad::spilt: return say(Say::ask_spilt);
  case MorePad::other_amount: return asked_of_line(number);
  case MorePad::to_jar:
  case MorePad::from_jar:
  case MorePad::other_paint:
  case MorePad::paint_of:
  case MorePad::lines:
  case MorePad::earlier:
  case MorePad::later:
  case MorePad::run:
  case MorePad::line:
  case MorePad::other_material:
  case MorePad::it_was:
  case MorePad::materials:
  case MorePad::more_materials:
  case MorePad::choose_pads:
  case MorePad::on_pad:
  case MorePad::five_earlier:
  case MorePad::take_back:
  case MorePad::it_is:
  case MorePad::was_meant:
  case MorePad::found: return "";
  }
  return "";
}

std::string asked(BinderPad pad, const bench::NumberView& number) {
  switch (pad) {
  case BinderPad::gum:
    return number.of.empty() ? say(MakingSay::ask_gum)
                             : say(MakingSay::ask_gum_spoons, {number.of});
  case BinderPad::dose: return say(number.of.empty() ? MakingSay::ask_dose : MakingSay::ask_dose_g);
  case BinderPad::jar_holds: return say(MakingSay::ask_jar);
  case BinderPad::empty_bottle: return say(MakingSay::ask_empty);
  case BinderPad::bottle: return say(MakingSay::ask_bottle);
  case BinderPad::recipe:
  case BinderPad::less:
  case BinderPad::more:
  case BinderPad::measured_in:
  case BinderPad::step:
  case BinderPad::dose_in:
  case BinderPad::keep:
  case BinderPad::take_back:
  case BinderPad::give_up:
  case BinderPad::other:
  case BinderPad::onto_shelf:
  case BinderPad::dried:
  case BinderPad::used:
  case BinderPad::weaker:
  case BinderPad::stronger:
  case BinderPad::put_in: return "";
  }
  return "";
}

std::string asked(const bench::NumberView& number) {
  const bench::PadKind target = number.target.kind;
  if (const auto binder = target.as<BinderPad>()) return asked(*binder, number);
  if (const auto plan = target.as<PlanPad>()) return asked(*plan, number);
  if (const auto more = target.as<MorePad>()) return asked(*more, number);
  if (target == SlabPad::add)
    return number.planned_g > 0
               ? say(Say::ask_grams_planned, {number.of, grams_number(number.planned_g)})
               : say(Say::ask_grams_of, {number.of});
  if (target == ChoicePad::bottle_of) return say(Say::ask_bottle_of, {number.of});
  if (target == ShelfPad::fact) return fact_words(number.target.arg);
  if (target == ShelfPad::jar_g) return say(Say::ask_jar_g);
  if (target == ShelfPad::jar_price) return say(Say::ask_jar_price, {number.of});
  if (target == ShelfPad::left_g) return say(Say::ask_left, {number.of});
  if (target == PansPad::room) return asked_of_room(number.target.arg);
  if (target == PansPad::pour_g) return say(Say::ask_pour_g, {number.of});
  if (target == PansPad::weigh_pan) return say(Say::ask_pan_g, {number.of});
  return number.of;
}

// What has been typed, on the right, with the place of the next digit.
void typed(Sheet& sheet, const Rect& r, std::string text) {
  if (const auto point = text.find('.'); point != std::string::npos)
    text.replace(point, 1, words::decimal_sign());
  const Theme& t = sheet.theme;
  const double x = r.right() - 5, y = r.centre().y + cap::timer / 2;
  write(sheet, {x - 1.5, y}, Anchor::right, {cap::timer, true, cap::body}, t.ink, text, r.w - 8);
  sheet.shapes.push_back(Polyline{{{x, y - cap::timer - 0.8}, {x, y + 0.8}}, 0.6, t.right_ink, 0});
}

void key(Sheet& sheet, const bench::Pad& at) {
  const Ground g = plain(sheet.theme);
  if (at.id.kind == SharedPad::leave)
    pad(sheet, at, g, {{say(words::ScreensSay::pad_leave_number), slab_letters}});
  const auto own = at.id.kind.as<NumberPad>();
  if (!own) return;
  switch (*own) {
  case NumberPad::digit: pad(sheet, at, g, {{at.id.arg, key_letters}}); return;
  case NumberPad::point: pad(sheet, at, g, {{words::decimal_sign(), key_letters}}); return;
  case NumberPad::erase: pad(sheet, at, g, {{say(Say::pad_erase), slab_letters}}); return;
  case NumberPad::enter:
    pad(sheet, at, dark(sheet.theme), {{say(Say::pad_enter), {cap::head, true, cap::body}}});
    return;
  }
}

}

void draw_number(Sheet& sheet, const bench::NumberView& number) {
  const Theme& t = sheet.theme;
  const Rect& head = sheet.view.layout.main;
  panel(sheet, head);
  const double share = 0.56;
  const Rect left{head.x + 2, head.y, head.w * share - 2, head.h};
  // What is wrong with it takes the place of the question, which has been read by then.
  const std::string words = number.error ? words::message(*number.error) : asked(number);
  const Label asks{words, {cap::body, true, cap::body}, false, 4},
      fault{words, {cap::body, false, cap::small}, false, 4};
  labels(sheet, left, plain(t), {number.error ? fault : asks}, Anchor::left);
  typed(sheet, {head.x + head.w * share, head.y, head.w * (1 - share), head.h}, number.text);
  for (const bench::Pad& at : sheet.view.layout.pads) key(sheet, at);
}

}
