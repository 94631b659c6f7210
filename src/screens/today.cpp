// Today: what waits, one pad each, and the paints that may be made again.
#include "bench/pads_shared.hpp"
#include "bench/pads_today.hpp"
#include "screens/binder.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "screens/today_words.hpp"
#include "words/screens_says.hpp"
#include "words/today_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using bench::Due;
using bench::SharedPad;
using bench::TodayPad;
using bench::TodayView;
using Say = words::TodaySay;
using words::say;

namespace {

constexpr Lettering big_bold{cap::head, true, cap::body};
constexpr Lettering small{cap::small, false, cap::small};
constexpr double symbol_mm = 9, chevron_mm = 4, fine_mm = 0.25, small_trail_mm = 0.7;

// ---- the picture of what waits

// The trail where it stopped, against the range, without words.
void draw_small_trail(Sheet& sheet, const Rect& r, const bench::TrailView& trail) {
  const Theme& t = sheet.theme;
  sheet.shapes.push_back(Box{r, 1.4, t.slab, t.ink, fine_mm});
  if (trail.points.empty()) return;
  double low = 1e9, high = -1e9;
  const auto reach = [&](double x) { low = std::min(low, x), high = std::max(high, x); };
  for (const auto& point : trail.points)
    if (point.flow > 0) reach(std::log(point.flow));
  if (trail.band) reach(trail.band->from - 0.2), reach(trail.band->to + 0.2);
  if (!(high > low)) reach(low + 0.5), reach(low - 0.5);
  const Rect in = inset(r, 3);
  const auto x_of = [&](double ln) { return in.x + in.w * (ln - low) / (high - low); };
  if (trail.band) {
    const double x = x_of(trail.band->from);
    sheet.shapes.push_back(
        Box{{x, r.y + fine_mm, x_of(trail.band->to) - x, r.h - 2 * fine_mm}, 0, t.right, clear, 0});
  }
  const double from = trail.points.front().clock;
  const double took = std::max(1.0, trail.points.back().clock - from);
  std::vector<Point> line;
  for (const auto& point : trail.points)
    if (point.flow > 0)
      line.push_back({x_of(std::log(point.flow)), in.y + in.h * (point.clock - from) / took});
  if (line.empty()) return;
  sheet.shapes.push_back(Polyline{line, small_trail_mm, t.ink, 0});
  sheet.shapes.push_back(Disc{line.back(), 1.3, t.ink, clear, 0});
}

// From the side, as on Pans; where there are more than have room, how many more.
void draw_pans(Sheet& sheet, const Rect& r, const TodayView::Wait& wait, const Ground& g) {
  constexpr std::size_t most = 6;
  const double w = 6.6, step = r.w / most, h = std::min(r.h, 11.0), top = r.centre().y - h / 2;
  const std::size_t all = wait.pans.size();
  const double many_mm = beside_mm(all - std::min(all, most - 1));
  const auto taken = std::min(most, static_cast<std::size_t>(std::ceil(many_mm / step)));
  const std::size_t count = all > most ? most - taken : all;
  const double end = r.right() - (count < all ? static_cast<double>(taken) * step : 0);
  for (std::size_t i = 0; i < count; ++i)
    draw_pan(sheet, {end - static_cast<double>(count - i) * step + (step - w), top, w, h},
             wait.pans[i], rgb(wait.colour), g);
  if (count < all)
    pans_beside(sheet, {r.right(), r.centre().y + cap::small / 2}, g.ink, all - count);
}

void draw_jar(Sheet& sheet, const Rect& r, Colour fill, double share, const Ground& g) {
  const double h = std::min(r.h, 15.0), w = h * 0.82, neck = w * 0.66;
  const double x = r.right() - w, y = r.centre().y - h / 2, lip = h * 0.2, c = x + w / 2;
  const double inside = h - lip - 2.2, high = std::clamp(share, 0.0, 1.0) * inside;
  const Rect body{x, y + lip, w, h - lip};
  sheet.shapes.push_back(Box{body, 1.8, clear, g.ink, 0.5});
  if (high > 0.8)
    sheet.shapes.push_back(
        Box{{x + 1.2, body.bottom() - 1.2 - high, w - 2.4, high}, 1, fill, g.ink, fine_mm});
  sheet.shapes.push_back(
      Polyline{{{c - neck / 2, y + lip}, {c - neck / 2, y + 0.4}}, 0.5, g.ink, 0});
  sheet.shapes.push_back(
      Polyline{{{c + neck / 2, y + lip}, {c + neck / 2, y + 0.4}}, 0.5, g.ink, 0});
  sheet.shapes.push_back(
      Polyline{{{c - neck * 0.65, y + 0.3}, {c + neck * 0.65, y + 0.3}}, 0.7, g.ink, 0});
}

std::string left_words(const TodayView::Wait& wait) {
  return wait.left_g ? say(Say::left, {grams_words(std::max(0.0, *wait.left_g))}) : "";
}

void draw_use_up(Sheet& sheet, const Rect& r, const TodayView::Wait& wait, const Ground& g) {
  const double share = wait.left_g && wait.of_g > 0 ? *wait.left_g / wait.of_g : 0.5;
  draw_jar(sheet, r, material_colour(sheet.theme, wait.kind), share, g);
  constexpr double jar = 14;
  labels(sheet, {r.x, r.y, r.w - jar, r.h}, g, {{left_words(wait), slab_bold, false, 2}},
         Anchor::right);
}

// How much is left of the jar, and the mark under which it is less than a batch takes.
void draw_stock(Sheet& sheet, const Rect& r, const TodayView::Wait& wait, const Ground& g) {
  const Rect bar{r.x, r.centre().y - 1.1, r.w, 2.2};
  const bool pigment = wait.kind == session::CardKind::pigment;
  const Colour fill = pigment ? rgb(wait.colour) : material_colour(sheet.theme, wait.kind);
  const double share = std::clamp(wait.left_g.value_or(0) / std::max(wait.of_g, 1e-9), 0.0, 1.0);
  const double mark = std::clamp(wait.takes_g / std::max(wait.of_g, 1e-9), 0.0, 1.0);
  write(sheet, {r.right(), bar.y - 1.8}, Anchor::right, slab_bold, g.ink, left_words(wait), r.w);
  write(sheet, {r.right(), bar.bottom() + 2.2 + cap::small}, Anchor::right, small, g.quiet,
        say(Say::of_jar, {grams_words(wait.of_g)}), r.w);
  sheet.shapes.push_back(Box{bar, bar.h / 2, clear, g.ink, fine_mm});
  if (share * bar.w > 0.5)
    sheet.shapes.push_back(
        Box{{bar.x, bar.y, share * bar.w, bar.h}, bar.h / 2, fill, g.ink, fine_mm});
  const double x = bar.x + mark * bar.w;
  sheet.shapes.push_back(Polyline{{{x, bar.y - 1.2}, {x, bar.bottom() + 1.2}}, 0.45, g.ink, 0});
}

void draw_picture(Sheet& sheet, const Rect& r, const TodayView::Wait& wait, const Ground& g) {
  switch (wait.due.what) {
  case Due::What::on_slab: return draw_small_trail(sheet, r, wait.trail);
  case Due::What::in_jar: return draw_jar(sheet, r, rgb(wait.colour), 0.5, g);
  case Due::What::next_layer:
  case Due::What::weigh_pan:
  case Due::What::verdict: return draw_pans(sheet, r, wait, g);
  case Due::What::use_up: return draw_use_up(sheet, r, wait, g);
  case Due::What::runs_low: return draw_stock(sheet, r, wait, g);
  case Due::What::making: return draw_jar(sheet, r, sheet.theme.binder, 0.5, g);
  case Due::What::hand_on: return; // its words say it
  }
}

// ---- pads

constexpr double picture_share = 0.31;

// A symbol, two lines, and at the right where it leads.
struct Row {
  Rect words, picture;
};
Row row_of(const Rect& r, double picture) {
  const double x = r.x + symbol_mm + 7, end = r.right() - chevron_mm - 5;
  return {{x, r.y, end - picture - 2 - x, r.h}, {end - picture, r.y + 2.4, picture - 1, r.h - 4.8}};
}

// A jar is as wide as it is high; the rest of its place goes to the words.
double picture_mm(const Rect& r, Due::What what) {
  if (what == Due::What::hand_on) return 0;
  const bool jar = what == Due::What::in_jar || what == Due::What::making;
  return jar ? 15 : r.w * picture_share;
}

Point symbol_at(const Rect& r) { return {r.x + 4 + symbol_mm / 2, r.centre().y}; }

// On one line, or on two smaller ones.
Label name_label(const std::string& name, double width) {
  const bool one = !fitted(name, width - 2 * padding_mm, big_bold, 1).cut;
  return {name, one ? big_bold : slab_bold, false, one ? 1 : 2};
}

// A box with a lid.
void draw_pack(Sheet& sheet, Point c, const Ground& g) {
  const Rect box{c.x - 4, c.y - 2, 8, 5.6}, lid{c.x - 4.6, c.y - 4, 9.2, 2};
  for (const Rect& part : {box, lid}) sheet.shapes.push_back(Box{part, 0.5, clear, g.ink, 0.5});
  sheet.shapes.push_back(Polyline{{{c.x, lid.y}, {c.x, box.bottom()}}, 0.5, g.ink, 0});
}

// Its photo, where it has one.
void draw_what(Sheet& sheet, const Rect& box, const TodayView::Wait& wait, const Ground& g) {
  const Point at = symbol_at(box);
  if (wait.due.what == Due::What::hand_on) return draw_pack(sheet, at, g);
  const bool heap = wait.kind == session::CardKind::pigment;
  if (wait.image.empty())
    return material_symbol(sheet, at, symbol_mm, wait.kind,
                           heap ? rgb(wait.colour) : material_colour(sheet.theme, wait.kind),
                           g.ink);
  const double side = std::min(symbol_mm + 4, box.h - 4);
  framed(sheet, {at.x - side / 2, at.y - side / 2, side, side}, wait.image, g.ink);
}

void wait_pad(Sheet& sheet, const bench::Pad& at, const TodayView& today,
              const TodayView::Wait& wait, bool first) {
  const Theme& t = sheet.theme;
  const Ground g = pad_box(sheet, at, first ? dark(t) : plain(t));
  const Row row = row_of(at.box, picture_mm(at.box, wait.due.what));
  draw_what(sheet, at.box, wait, g);
  const std::string name = wait.due.what == Due::What::hand_on ? say(Say::here_alone) : wait.name;
  labels(sheet, row.words, g,
         {name_label(name, row.words.w),
          {wait_words(today, wait, sheet.view.utc_offset_min), slab_letters, true, 2}},
         Anchor::left);
  draw_picture(sheet, row.picture, wait, g);
  chevron(sheet, {at.box.right() - chevron_mm, at.box.centre().y}, chevron_mm, g.ink, true);
}

// Its colour with the photo of its swatch, and which one it was.
void again_pad(Sheet& sheet, const bench::Pad& at, const TodayView::Again& again) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const Rect in = inset(at.box, outline_mm);
  const double h = at.box.h * 0.4;
  const Colour colour = rgb(again.colour);
  sheet.shapes.push_back(Box{{in.x, in.y, in.w, h}, radius_mm - outline_mm, colour, clear, 0});
  sheet.shapes.push_back(Box{{in.x, in.y + h / 2, in.w, h / 2}, 0, colour, clear, 0});
  sheet.shapes.push_back(
      Polyline{{{in.x, in.y + h}, {in.right(), in.y + h}}, outline_mm, g.ink, 0});
  if (const double high = h - 2.4; !again.image.empty() && high > 5) // within its colour
    framed(sheet, {in.right() - 1.2 - 1.6 * high, in.y + 1.2, 1.6 * high, high}, again.image,
           g.ink);
  const std::string made =
      say(Say::again_made,
          {words::date(again.made_at, again.offset_min.value_or(sheet.view.utc_offset_min))});
  labels(sheet, {in.x, in.y + h, in.w, in.h - h}, g,
         {{again.name, clean_bold, false, 2}, {made, small, true, 1}}, Anchor::left);
}

void draw_plus(Sheet& sheet, Point c, Colour ink) {
  constexpr double r = 3.4;
  sheet.shapes.push_back(Polyline{{{c.x - r, c.y}, {c.x + r, c.y}}, 0.8, ink, 0});
  sheet.shapes.push_back(Polyline{{{c.x, c.y - r}, {c.x, c.y + r}}, 0.8, ink, 0});
}

void draw_bank_card(Sheet& sheet, Point c, const Ground& g) {
  const Rect card{c.x - 4.8, c.y - 3.1, 9.6, 6.2};
  sheet.shapes.push_back(Box{card, 0.9, clear, g.ink, 0.5});
  sheet.shapes.push_back(Box{{card.x, card.y + 1.5, card.w, 1}, 0, g.ink, clear, 0});
}

struct Way { // on from the board of the first day, or to new paint
  Say what, below;
  std::optional<Say> takes;
};
Way way_of(TodayPad pad, bool first_day) {
  switch (pad) {
  case TodayPad::have: return {Say::i_have, Say::i_have_what, Say::any_time};
  case TodayPad::binder: return {Say::binder, Say::binder_what, Say::a_day};
  case TodayPad::bank_card: return {Say::bank_card, Say::bank_card_what, Say::bank_card_takes};
  case TodayPad::new_paint:
  case TodayPad::due:
  case TodayPad::again:
  case TodayPad::hand: break;
  }
  return first_day ? Way{Say::first_paint, Say::first_paint_what, {}}
                   : Way{Say::new_paint, Say::new_paint_what, {}};
}

void draw_way_symbol(Sheet& sheet, Point c, TodayPad pad, const Ground& g) {
  const Theme& t = sheet.theme;
  constexpr std::uint32_t any_blue = 0x2450B8;
  if (pad == TodayPad::new_paint) draw_plus(sheet, c, g.ink);
  if (pad == TodayPad::bank_card) draw_bank_card(sheet, c, g);
  if (pad == TodayPad::have)
    material_symbol(sheet, c, symbol_mm, session::CardKind::pigment, rgb(any_blue), g.ink);
  if (pad == TodayPad::binder)
    material_symbol(sheet, c, symbol_mm, session::CardKind::binder, t.binder, g.ink);
}

void way_pad(Sheet& sheet, const bench::Pad& at, TodayPad pad, const TodayView& today) {
  const Theme& t = sheet.theme;
  const Way way = way_of(pad, today.first_day);
  const Ground g =
      pad_box(sheet, at, pad == TodayPad::new_paint && today.waits.empty() ? dark(t) : plain(t));
  draw_way_symbol(sheet, symbol_at(at.box), pad, g);
  Row row = row_of(at.box, at.box.w * picture_share);
  if (!way.takes) row.words.w = at.box.right() - chevron_mm - 4 - row.words.x;
  labels(sheet, row.words, g,
         {name_label(say(way.what), row.words.w), {say(way.below), slab_letters, true, 2}},
         Anchor::left);
  if (way.takes)
    labels(sheet, row.picture, g, {{say(*way.takes), slab_letters, true, 2}}, Anchor::right);
  chevron(sheet, {at.box.right() - chevron_mm, at.box.centre().y}, chevron_mm, g.ink, true);
}

void hand_pad(Sheet& sheet, const bench::Pad& at, const TodayView& today) {
  const bool right = at.id.arg == "right";
  const bool chosen = (today.hand == bench::Hand::right) == right;
  pad(sheet, at, choosable(sheet.theme, chosen),
      {{say(right ? Say::hand_right : Say::hand_left), chosen ? slab_bold : slab_letters, false, 2},
       {say(right ? Say::hand_right_what : Say::hand_left_what), small, true, 2}});
}

void simple_pad(Sheet& sheet, const bench::Pad& at, const TodayView& today) {
  const Ground g = plain(sheet.theme);
  if (at.id.kind == SharedPad::page_back)
    pad(sheet, at, g, {{say(words::ScreensSay::page_back), slab_letters}});
  if (at.id.kind == SharedPad::page_on)
    pad(sheet, at, g, {{say(words::ScreensSay::page_on), slab_letters}});
  const auto own = at.id.kind.as<TodayPad>();
  if (!own) return;
  switch (*own) {
  case TodayPad::new_paint:
  case TodayPad::have:
  case TodayPad::binder:
  case TodayPad::bank_card: return way_pad(sheet, at, *own, today);
  case TodayPad::hand: return hand_pad(sheet, at, today);
  case TodayPad::due:
  case TodayPad::again: return; // one each
  }
}

// ---- what is no pad

// Where the words about what is not there yet have room.
void draw_again(Sheet& sheet, const TodayView& today) {
  const Theme& t = sheet.theme;
  const Rect& r = sheet.view.layout.more;
  panel(sheet, r);
  const double y = r.y + 3.2 + cap::body, head = r.w * 0.48 - 4;
  write(sheet, {r.x + 4, y}, Anchor::left, slab_bold, t.ink, say(Say::again), head);
  if (today.again.empty())
    return labels(sheet, inset(r, 6), plain(t), {{say(Say::again_none), slab_letters, false, 5}});
  write(sheet, {r.right() - 4, y}, Anchor::right, clean_letters, t.quiet, say(Say::again_which),
        r.w - head - 10);
}

void draw_nothing(Sheet& sheet, const TodayView& today) {
  const Rect& r = sheet.view.layout.main;
  panel(sheet, r);
  if (today.reading)
    return labels(sheet, r, plain(sheet.theme), {{say(Say::reading), slab_letters, false, 3}});
  labels(sheet, inset(r, 6), plain(sheet.theme),
         {{say(Say::nothing_waits), big_bold, false, 1},
          {say(Say::nothing_waits_what), slab_letters, true, 5}});
}

}

void draw_today(Sheet& sheet, const TodayView& today) {
  draw_again(sheet, today);
  if (today.waits.empty() && !today.first_day) draw_nothing(sheet, today);
  for (const bench::Pad& at : sheet.view.layout.pads) {
    for (const auto& wait : today.waits)
      if (wait.pad == at.id)
        wait_pad(sheet, at, today, wait, today.page == 0 && &wait == &today.waits.front());
    for (const auto& again : today.again)
      if (again.pad == at.id) again_pad(sheet, at, again);
    simple_pad(sheet, at, today);
  }
}

}
