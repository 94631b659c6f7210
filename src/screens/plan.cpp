// Plan: which pigment, which binder, how much, in which room, and what to be careful about.
#include "paint/catalogue.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"

#include <algorithm>

namespace screens {

using bench::PadKind;
using words::Say;
using words::say;

namespace {

const bench::PlanView::Row* row_of(const std::vector<bench::PlanView::Row>& rows,
                                   const bench::PadId& id) {
  for (const auto& row : rows)
    if (row.pad == id) return &row;
  return nullptr;
}

// A row with its symbol. The chosen one is dark and ticked.
void row_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView::Row& row) {
  const Theme& t = sheet.theme;
  const bool pigment = at.id.kind == PadKind::pigment;
  const Ground g = pad_box(sheet, at, row.chosen ? dark(t) : plain(t));
  const Rect& r = at.box;
  const double size = pigment ? 7 : 5.6;
  material_symbol(sheet, {r.x + 2.6 + size / 2, r.centre().y}, size,
                  pigment ? session::CardKind::pigment : session::CardKind::binder,
                  pigment ? rgb(row.colour) : t.binder, g.ink);
  const double x = r.x + size + 4, mark = row.chosen ? 6 : 0;
  const Rect words{x, r.y, r.right() - x - mark, r.h};
  const Lettering small{cap::small, false, cap::small}, small_bold{cap::small, true, cap::small};
  const bool one_line = width_mm(row.name, cap::small, true) <= words.w - 2 * padding_mm;
  labels(sheet, words, g,
         {{row.name, one_line ? clean_bold : small_bold, false, one_line ? 1 : 2},
          {row.index_name, small, true, 1}},
         Anchor::left);
  if (row.chosen) tick(sheet, {r.right() - 4.6, r.centre().y}, 3.4, g.ink);
}

// A text field's frame; the field itself is laid over it. Its meaning stands in it while it is
// empty.
void field_pad(Sheet& sheet, const bench::Pad& at, const std::string& text, Say meaning) {
  const Theme& t = sheet.theme;
  sheet.shapes.push_back(Box{inset(at.box, outline_mm / 2), radius_mm, t.slab, t.rule, outline_mm});
  const bool empty = text.empty();
  write(sheet, {at.box.x + 3, at.box.centre().y + cap::clear / 2}, Anchor::left, clean_letters,
        empty ? t.quiet : t.ink, empty ? say(meaning) : text, at.box.w - 6);
}

std::string weigh_words(const bench::PlanView& plan) {
  if (!plan.first_helping || plan.grams <= 0) return say(Say::plan_weigh);
  return say(Say::plan_first_helping,
             {grams_number(plan.first_helping->low), grams_number(plan.first_helping->high)});
}

std::string celsius_words(double celsius) {
  return say(Say::plan_celsius, {reading_words(celsius)});
}

void choice_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  const Ground g = plain(sheet.theme);
  const std::string guess = plan.room_guessed ? say(Say::plan_guess) : "";
  const Lettering small{cap::small, false, cap::small};
  switch (at.id.kind) {
  case PadKind::weigh:
    return pad(sheet, at, g,
               {{plan.grams > 0 ? grams_words(plan.grams) : say(Say::plan_not_weighed), clean_bold},
                {weigh_words(plan), small, true}});
  case PadKind::celsius:
    return pad(sheet, at, g, {{celsius_words(plan.celsius), clean_bold}, {guess, small, true}});
  case PadKind::humidity:
    return pad(sheet, at, g,
               {{say(Say::plan_humidity, {reading_words(plan.humidity * 100)}), clean_bold},
                {guess, small, true}});
  case PadKind::begin:
    return pad(sheet, at, dark(sheet.theme),
               {{say(Say::plan_begin), {cap::head, true, cap::body}}});
  case PadKind::page_back: return pad(sheet, at, g, {{say(Say::page_back), clean_letters}});
  case PadKind::page_on: return pad(sheet, at, g, {{say(Say::page_on), clean_letters}});
  case PadKind::search: return field_pad(sheet, at, plan.search, Say::plan_search);
  case PadKind::name: return field_pad(sheet, at, plan.name, Say::plan_name);
  default: return;
  }
}

// One line of the notes under the choices; returns how far down it reached.
double note(Sheet& sheet, const Rect& area, double y, const std::string& words, const Lettering& l,
            Colour colour) {
  const double step = l.cap_mm * 1.66;
  for (const std::string& line : fitted(words, area.w, l, 3, false).lines) {
    write(sheet, {area.x, y + l.cap_mm}, Anchor::left, l, colour, line, area.w);
    y += step;
  }
  return y;
}

double lines_high(const std::string& words, double width, const Lettering& l) {
  return static_cast<double>(fitted(words, width, l, 3, false).lines.size()) * l.cap_mm * 1.66;
}

bool for_every_batch(words::Say caution) {
  const auto& general = paint::general_care();
  return caution != Say::care_mask &&
         std::find(general.begin(), general.end(), caution) != general.end();
}

// A bar of the caution's colour down the side says what the words are. Where not all have room,
// those that hold for every batch are drawn together into one.
void cautions(Sheet& sheet, const Rect& area, double y, const std::vector<words::Say>& list) {
  const Theme& t = sheet.theme;
  const Lettering small{cap::small, false, cap::small};
  const double air = 0.7;
  const Rect words{area.x + 3.4, area.y, area.w - 3.4, area.h};
  const std::string rest = say(Say::plan_care_in_short);
  double all = 0;
  for (const words::Say caution : list) all += lines_high(say(caution), words.w, small) + air;
  const bool fits = y + all - air <= area.bottom();
  const double end = area.bottom() - (fits ? 0 : lines_high(rest, words.w, small) + air);
  const double top = y;
  for (const words::Say caution : list) {
    if (!fits && for_every_batch(caution)) continue;
    if (y + lines_high(say(caution), words.w, small) > end) break;
    y = note(sheet, words, y, say(caution), small, t.ink) + air;
  }
  if (!fits) y = note(sheet, words, y, rest, small, t.ink) + air;
  if (y > top)
    sheet.shapes.push_back(
        Box{{area.x, top - 0.3, 1.5, y - air - top}, 0.75, t.caution, t.ink, 0.2});
}

void notes(Sheet& sheet, const bench::PlanView& plan) {
  const Theme& t = sheet.theme;
  panel(sheet, sheet.view.layout.lower);
  const Rect area = inset(sheet.view.layout.lower, 2.5);
  double y = area.y + 0.3;
  if (plan.error) y = note(sheet, area, y, words::message(*plan.error), clean_bold, t.ink) + 1;
  if (plan.missing) y = note(sheet, area, y, say(*plan.missing), clean_bold, t.right_ink) + 1;
  cautions(sheet, area, y, plan.cautions);
}

void pages(Sheet& sheet, const bench::PlanView& plan) {
  const Rect& list = sheet.view.layout.main;
  if (plan.pigments.empty())
    labels(sheet, list, plain(sheet.theme), {{say(Say::plan_nothing_found), clean_letters, true}});
}

}

void draw_plan(Sheet& sheet, const bench::PlanView& plan) {
  notes(sheet, plan);
  if (plan.number)
    draw_number(sheet, *plan.number);
  else
    pages(sheet, plan);
  for (const bench::Pad& at : sheet.view.layout.pads) {
    const auto* row = row_of(plan.pigments, at.id);
    if (!row) row = row_of(plan.binders, at.id);
    if (row)
      row_pad(sheet, at, *row);
    else
      choice_pad(sheet, at, plan);
  }
}

}
