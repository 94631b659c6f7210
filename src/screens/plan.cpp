// Plan: which pigment, which binder, how much, in which room, and what to be careful about.
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "paint/catalogue.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "screens/plan_recipe.hpp"
#include "words/plan_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <array>

namespace screens {

using bench::PlanPad;
using bench::SharedPad;
using Say = words::PlanSay;
using words::say;

namespace {

const bench::PlanView::Row* row_of(const std::vector<bench::PlanView::Row>& rows,
                                   const bench::PadId& id) {
  for (const auto& row : rows)
    if (row.pad == id) return &row;
  return nullptr;
}

constexpr Lettering small{cap::small, false, cap::small}, small_bold{cap::small, true, cap::small};

std::string told_by(const bench::PlanView::Row& row) {
  using Row = bench::PlanView::Row;
  if (row.whose == Row::told || !row.index_name.empty()) return row.index_name;
  return say(row.whose == Row::own ? Say::plan_binder_own : Say::plan_binder_ships);
}

std::string below_name(const bench::PlanView::Row& row) {
  const std::string told = told_by(row);
  if (!row.left_g) return told;
  const std::string left = say(Say::plan_left, {grams_number(std::max(0.0, *row.left_g))});
  return told.empty() ? left : say(Say::plan_name_and_left, {told, left});
}

// A long name takes both lines, with what stands below it as far as there is room: three lines
// would lie on the outline of a chosen row.
std::vector<Label> name_and_below(const std::string& name, const std::string& below, double width) {
  if (width_mm(name, cap::small, true) <= width)
    return {{name, clean_bold, false, 1}, {below, small, true, 1}};
  const std::string both = below.empty() ? name : name + ", " + below;
  const Lines lines = fitted(both, width, small_bold, 2);
  return {{lines.cut || lines.shortened ? name : both, small_bold, false, 2}};
}

// A row of the finder with its heap. The chosen one is ticked.
void row_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView::Row& row) {
  const Ground g = pad_box(sheet, at, choosable(sheet.theme, row.chosen));
  const Rect& r = at.box;
  const double size = 7;
  material_symbol(sheet, {r.x + 2.6 + size / 2, r.centre().y}, size, session::CardKind::pigment,
                  rgb(row.colour), g.ink);
  const double x = r.x + size + 4, mark = row.chosen ? 6 : 0;
  labels(sheet, {x, r.y, r.right() - x - mark, r.h}, g,
         name_and_below(row.name, below_name(row), r.right() - x - mark - 2 * padding_mm),
         Anchor::left);
  if (row.chosen) tick(sheet, {r.right() - 4.6, r.centre().y}, 3.4, g.ink);
}

// Of a few, one is meant: a heavy outline says which.
void binder_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView::Row& row) {
  const Lettering letters = row.chosen ? clean_bold : clean_letters;
  std::string below = below_name(row);
  if (width_mm(below, cap::small, false) > at.box.w - 2 * padding_mm) below = told_by(row);
  const bool one_line = width_mm(row.name, cap::small, row.chosen) <= at.box.w - 2 * padding_mm;
  if (!one_line && row.whose != bench::PlanView::Row::told) {
    const std::string both = say(Say::plan_name_and_left, {told_by(row), row.name});
    const bool is_long = fitted(both, at.box.w - 2 * padding_mm, letters, 2).cut;
    const Lettering lower{cap::small, row.chosen, cap::small};
    return pad(sheet, at, choosable(sheet.theme, row.chosen),
               {{both, is_long ? lower : letters, false, is_long ? 3 : 2}});
  }
  pad(sheet, at, choosable(sheet.theme, row.chosen),
      {{row.name, letters, false, below.empty() || !one_line ? 2 : 1},
       {one_line ? below : "", small, true, 1}});
}

// A pigment of the recipe; another tap takes it out.
void chosen_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView::Part& part) {
  constexpr double size = 6, cross = 2.4;
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const Rect& r = at.box;
  material_symbol(sheet, {r.x + 2.4 + size / 2, r.centre().y}, size, session::CardKind::pigment,
                  rgb(part.colour), g.ink);
  const Point c{r.right() - 4, r.centre().y};
  for (const double way : {-1.0, 1.0})
    sheet.shapes.push_back(Polyline{
        {{c.x - cross / 2, c.y - way * cross / 2}, {c.x + cross / 2, c.y + way * cross / 2}},
        0.5,
        g.ink,
        0});
  bench::PlanView::Row row;
  row.index_name = part.index_name;
  row.left_g = part.left_g;
  const double w = r.w - size - 9;
  labels(sheet, {r.x + size + 3, r.y, w, r.h}, g,
         name_and_below(part.name, below_name(row), w - 2 * padding_mm), Anchor::left);
}

// How much: what was asked for.
void wanted_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  if (plan.wanted > 0)
    return pad(sheet, at, plain(sheet.theme),
               {{words::number(plan.wanted, plan.want == bench::Want::pans ? 0 : 1),
                 {cap::head, true, cap::small},
                 false,
                 1}});
  pad(sheet, at, plain(sheet.theme), {{unsaid_words(plan.want), clean_bold, false, 2}});
}

// It turns over to the next unit at each tap.
void want_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  constexpr double sign_mm = 3.2;
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const Rect& r = at.box;
  labels(sheet, {r.x, r.y, r.w - sign_mm - 2.4, r.h}, g,
         {{want_words(plan.want), clean_letters, false, 2}});
  chevron(sheet, {r.right() - sign_mm, r.centre().y}, sign_mm, g.ink, true);
}

std::string part_words(const bench::PlanView::Part& part) {
  using session::SaidIn;
  switch (part.in) {
  case SaidIn::g: return grams_words(part.parts);
  case SaidIn::spoons:
  case SaidIn::drops: return paint::count_words(part.parts);
  case SaidIn::parts: break;
  }
  return part.parts == 1 ? say(Say::plan_part)
                         : say(Say::plan_parts, {paint::written(part.parts, part.parts < 10)});
}

void part_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  for (const auto& part : plan.blend) {
    if (part.pad.arg != at.id.arg) continue;
    if (at.id.kind == PlanPad::pigment) return chosen_pad(sheet, at, part);
    if (at.id.kind == PlanPad::spoon)
      return pad(sheet, at, plain(sheet.theme), {{part.spoon.name, clean_letters, false, 2}});
    const bool alike = part.in == session::SaidIn::g && plan.want == bench::Want::as_it_stands;
    const std::string grams = part.grams > 0 && !alike ? grams_within(part.grams, part.u) : "";
    pad(sheet, at, plain(sheet.theme),
        {{part_words(part), clean_bold, false, 1}, {grams, small, true, 1}});
  }
}

std::string celsius_words(double celsius) {
  return say(Say::plan_celsius, {reading_words(celsius)});
}

void cautions_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  const bool seen = plan.cautions_seen;
  const Ground g = pad_box(sheet, at, seen ? choosable(sheet.theme, true) : caution(sheet.theme));
  const Rect& r = at.box;
  if (seen)
    tick(sheet, {r.x + 5, r.centre().y}, 3.6, g.ink);
  else
    caution_sign(sheet, {r.x + 6, r.centre().y}, 6);
  labels(sheet, {r.x + 9, r.y, r.w - 9, r.h}, g,
         {{say(seen ? Say::plan_cautions_read : Say::plan_cautions_to_read), clean_bold, false, 2}},
         Anchor::left);
}

// How far it can be trusted: nothing where it was read just now.
std::string room_words(const bench::PlanView& plan) {
  if (plan.room_guessed) return say(words::SessionSay::plan_guess);
  constexpr std::int64_t an_hour_ms = 3'600'000, two_days_h = 48;
  const std::int64_t hours = plan.room_age_ms / an_hour_ms;
  if (hours < 1) return "";
  return hours < two_days_h ? say(Say::plan_room_hours, {std::to_string(hours)})
                            : say(Say::plan_room_days, {std::to_string(hours / 24)});
}

void say_in_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  const auto in = session::said_in_named(at.id.arg);
  if (!in) return;
  const bool chosen = *in == plan.said_in;
  const Say id = *in == session::SaidIn::spoons ? Say::plan_in_spoons
                 : *in == session::SaidIn::g    ? Say::plan_in_grams
                                                : Say::plan_in_parts;
  pad(sheet, at, choosable(sheet.theme, chosen), {{say(id), chosen ? clean_bold : clean_letters}});
}

// A minus or a plus.
void step_pad(Sheet& sheet, const bench::Pad& at) {
  constexpr double size = 4, thick = 0.7;
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const Point c = at.box.centre();
  const auto bar = [&](double w, double h) {
    sheet.shapes.push_back(Box{{c.x - w / 2, c.y - h / 2, w, h}, 0, g.ink, g.ink, 0});
  };
  bar(size, thick);
  if (at.id.kind == PlanPad::more) bar(thick, size);
}

void choice_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  const Ground g = plain(sheet.theme);
  const std::string guess = room_words(plan);
  if (at.id.kind == SharedPad::leave && !plan.number)
    pad(sheet, at, g, {{say(Say::plan_leave), clean_letters}});
  if (at.id.kind == SharedPad::page_back)
    pad(sheet, at, g, {{say(words::ScreensSay::page_back), clean_letters}});
  if (at.id.kind == SharedPad::page_on)
    pad(sheet, at, g, {{say(words::ScreensSay::page_on), clean_letters}});
  const auto own = at.id.kind.as<PlanPad>();
  if (!own) return;
  switch (*own) {
  case PlanPad::weigh: return wanted_pad(sheet, at, plan);
  case PlanPad::want: return want_pad(sheet, at, plan);
  case PlanPad::pan_size: return pad(sheet, at, g, {{plan.pan, clean_letters, false, 3}});
  case PlanPad::parts: return part_pad(sheet, at, plan);
  case PlanPad::by_volume:
    return toggle_pad(sheet, at, say(plan.by_volume ? Say::plan_by_volume : Say::plan_by_weight),
                      plan.by_volume);
  case PlanPad::cautions: return cautions_pad(sheet, at, plan);
  case PlanPad::cautions_read:
    return pad(sheet, at, dark(sheet.theme),
               {{say(Say::plan_cautions_read), clean_bold, false, 2}});
  case PlanPad::celsius:
    return pad(sheet, at, g, {{celsius_words(plan.celsius), clean_bold}, {guess, small, true}});
  case PlanPad::humidity:
    return pad(sheet, at, g,
               {{say(Say::plan_humidity, {reading_words(plan.humidity * 100)}), clean_bold},
                {guess, small, true}});
  case PlanPad::begin:
    return pad(sheet, at, dark(sheet.theme),
               {{say(Say::plan_begin), {cap::head, true, cap::body}}});
  case PlanPad::go_on:
    return pad(sheet, at, dark(sheet.theme),
               {{say(Say::plan_go_on, {plan.go_on}), {cap::clear, true, cap::small}, false, 2},
                {say(Say::plan_go_on_what), small, true, 1}});
  case PlanPad::another_pigment:
    return pad(sheet, at, g,
               {{say(plan.finding == bench::Finding::recipe ? Say::plan_pigments
                                                            : Say::plan_another_pigment),
                 clean_letters}});
  case PlanPad::recipes: return pad(sheet, at, g, {{say(Say::plan_recipes), clean_letters}});
  case PlanPad::all_others:
    return pad(sheet, at, g,
               {{say(plan.all_cards ? Say::plan_own_alone : Say::plan_all_others), clean_letters}});
  case PlanPad::say_in: return say_in_pad(sheet, at, plan);
  case PlanPad::other_binders:
    return pad(sheet, at, g, {{say(Say::plan_other_binders), clean_letters}});
  case PlanPad::fewer:
  case PlanPad::more: return step_pad(sheet, at);
  case PlanPad::keep_recipe:
    return pad(sheet, at, choosable(sheet.theme, plan.recipe_kept),
               {{say(plan.recipe_kept ? Say::plan_recipe_kept : Say::plan_keep_recipe),
                 plan.recipe_kept ? clean_bold : clean_letters}});
  case PlanPad::pigment:
  case PlanPad::recipe:
  case PlanPad::spoon:
  case PlanPad::binder:       // a row's each
  case PlanPad::name: return; // a text field
  }
}

// All of them, as large as has room. A bar of the caution's colour down the side says what the
// words are.
void cautions(Sheet& sheet, const bench::PlanView& plan) {
  const Theme& t = sheet.theme;
  panel(sheet, sheet.view.layout.main);
  const Rect area = inset(sheet.view.layout.main, 4);
  const Rect words{area.x + 4.5, area.y, area.w - 4.5, area.h};
  Lettering letters = clean_letters;
  double air = 0;
  for (const double size : {cap::clear, cap::small}) {
    letters = {size, false, size};
    double all = 0;
    for (const words::Sentence caution : plan.cautions)
      all += lines_high(say(caution), words.w, letters);
    air = (area.h - all) / static_cast<double>(plan.cautions.size());
    if (air > 0.6) break;
  }
  air = std::min(air, 2.5);
  double y = area.y;
  for (const words::Sentence caution : plan.cautions)
    y = note(sheet, words, y, say(caution), letters, t.ink) + air;
  sheet.shapes.push_back(
      Box{{area.x, area.y - 0.3, 1.8, y - air - area.y}, 0.9, t.caution, t.ink, 0.2});
}

void titles(Sheet& sheet, const bench::PlanView& plan) {
  const Theme& t = sheet.theme;
  const bench::Layout& l = sheet.view.layout;
  const Lettering title{cap::head, true, cap::body};
  const auto over = [&](const Rect& area, Say id) {
    write(sheet, {area.x + 3, area.y + 3 + cap::head}, Anchor::left, title, t.ink, say(id),
          area.w - 6);
  };
  panel(sheet, l.main);
  panel(sheet, l.more);
  panel(sheet, l.side);
  if (!bench::pad_of(l, {PlanPad::by_volume, ""})) over(l.title_of_plan, Say::plan_what);
  if (plan.blend.size() > 2) return;
  over(l.more, Say::plan_which_binder);
  over(l.side, Say::plan_how_much_title);
}

void finder(Sheet& sheet, const bench::PlanView& plan) {
  const bool recipes = plan.finding == bench::Finding::recipe;
  if (recipes ? !plan.recipes.empty() : !plan.pigments.empty()) return;
  labels(sheet, sheet.view.layout.main, plain(sheet.theme),
         {{say(recipes ? Say::plan_no_recipe : Say::plan_nothing_found), clean_letters, true}});
}

}

void draw_plan(Sheet& sheet, const bench::PlanView& plan) {
  draw_recipe(sheet, plan);
  if (plan.number)
    draw_number(sheet, *plan.number);
  else if (plan.reading)
    cautions(sheet, plan);
  else if (plan.finding != bench::Finding::nothing)
    finder(sheet, plan);
  else
    titles(sheet, plan);
  for (const bench::Pad& at : sheet.view.layout.pads) {
    const auto* row = row_of(plan.pigments, at.id);
    if (!row) row = row_of(plan.recipes, at.id);
    const bool of_part = at.id.kind == PlanPad::pigment || at.id.kind == PlanPad::spoon;
    if (row)
      row_pad(sheet, at, *row);
    else if (const auto* binder = row_of(plan.binders, at.id))
      binder_pad(sheet, at, *binder);
    else if (of_part)
      part_pad(sheet, at, plan);
    else
      choice_pad(sheet, at, plan);
  }
}

}
