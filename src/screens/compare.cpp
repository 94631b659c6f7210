// Book: two batches beside each other.
#include "bench/pads_book.hpp"
#include "screens/match.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "screens/trail.hpp"
#include "words/book_says.hpp"
#include "words/colour_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using bench::BookPad;
using bench::CompareView;
using Say = words::BookSay;
using words::say;

namespace {

constexpr double sample_mm = 11;

// How a batch's trail is drawn, its heap or swatch, and its name.
void named(Sheet& sheet, const Rect& r, const std::string& name, std::uint32_t colour, bool swatch,
           bool drawn) {
  const double y = r.centre().y, heap = 5.6;
  const Polyline sample{{{r.x + 2.6, y}, {r.x + 2.6 + sample_mm, y}},
                        trail_line_mm,
                        sheet.theme.ink,
                        drawn ? 0 : trail_dash_mm};
  sheet.shapes.push_back(sample);
  const double x = r.x + sample_mm + 6;
  paint_symbol(sheet, {x + heap / 2, y}, heap, rgb(colour), swatch, sheet.theme.ink);
  labels(sheet, {x + heap, r.y, r.right() - x - heap, r.h}, plain(sheet.theme),
         {{name, clean_bold, false, 2}}, Anchor::left);
}

std::string label_of(const CompareView::Row& row) {
  switch (row.what) {
  case CompareView::pigment: return row.name;
  case CompareView::ratio: return say(Say::book_ratio);
  case CompareView::flow: return say(Say::compare_flow);
  case CompareView::gum: return say(Say::compare_gum);
  case CompareView::sweet: return say(Say::compare_sweet);
  case CompareView::mulled: return say(Say::compare_mulled);
  case CompareView::passes: return say(Say::compare_passes);
  case CompareView::celsius: return say(Say::compare_celsius);
  case CompareView::humidity: return say(Say::compare_humidity);
  case CompareView::became: return say(Say::compare_became);
  }
  return "";
}

std::string number_of(const CompareView::Row& row, const std::optional<paint::Amount>& a) {
  if (!a || !std::isfinite(a->value)) return "–";
  switch (row.what) {
  case CompareView::pigment: return grams_words(*a);
  case CompareView::ratio: return number_words(*a, 2);
  case CompareView::mulled:
  case CompareView::passes: return words::number(a->value, 0);
  case CompareView::celsius:
  case CompareView::humidity: return reading_words(a->value);
  case CompareView::flow:
  case CompareView::gum:
  case CompareView::sweet:
  case CompareView::became: return number_words(*a, 2);
  }
  return "";
}

std::string verdicts_of(const std::vector<session::Became>& became) {
  std::string out;
  for (const session::Became one : became) out += (out.empty() ? "" : ", ") + became_words(one);
  return out.empty() ? "–" : out;
}

// Not equal, drawn: no face needs to have it.
void unequal(Sheet& sheet, Point c, double size, Colour ink) {
  const double half = size / 2, off = size * 0.2;
  for (const double dy : {-off, off})
    sheet.shapes.push_back(Polyline{{{c.x - half, c.y + dy}, {c.x + half, c.y + dy}}, 0.5, ink, 0});
  sheet.shapes.push_back(
      Polyline{{{c.x - size * 0.3, c.y + half}, {c.x + size * 0.3, c.y - half}}, 0.5, ink, 0});
}

struct Columns {
  double label, a, b, mark; // left, right, right, centre
  double label_w, number_w;
};

Columns columns_of(const Rect& r) {
  const double mark = 6, number = std::min(25.0, r.w * 0.24);
  const double label = r.w - 2 * number - mark - 1;
  return {r.x, r.x + label + number, r.right() - mark, r.right() - mark / 2, label, number - 2};
}

void table_row(Sheet& sheet, const Rect& r, const CompareView::Row& row) {
  const Theme& t = sheet.theme;
  const Columns c = columns_of(r);
  const bool verdicts = row.what == CompareView::became;
  const Lettering letters = row.differs ? clean_bold : clean_letters;
  labels(sheet, {c.label - padding_mm, r.y, c.label_w + padding_mm, r.h},
         Ground{t.slab, t.quiet, t.quiet}, {{label_of(row), clean_letters, true, 1}}, Anchor::left);
  const std::string a = verdicts ? verdicts_of(row.became_a) : number_of(row, row.a);
  const std::string b = verdicts ? verdicts_of(row.became_b) : number_of(row, row.b);
  const double side = padding_mm; // labels keep it off their edge
  for (const auto& [words, right] : {std::pair{&a, c.a}, std::pair{&b, c.b}})
    labels(sheet, {right - c.number_w - side, r.y, c.number_w + 2 * side, r.h}, plain(t),
           {{*words, letters, false, verdicts ? 3 : 1}}, Anchor::right);
  if (row.differs) unequal(sheet, {c.mark + 0.9, r.centre().y}, 3, t.ink);
}

constexpr double head_mm = 5;

// Over each column the line that its batch is drawn with; returns how high they are.
double heads(Sheet& sheet, const Rect& area) {
  const Columns c = columns_of(area);
  const double y = area.y + 2;
  for (const auto& [right, dash] : {std::pair{c.a, 0.0}, std::pair{c.b, trail_dash_mm}})
    sheet.shapes.push_back(
        Polyline{{{right - sample_mm, y}, {right, y}}, trail_line_mm, sheet.theme.ink, dash});
  return head_mm;
}

void table(Sheet& sheet, const CompareView& both) {
  const Theme& t = sheet.theme;
  const Rect& box = sheet.view.layout.side;
  panel(sheet, box);
  const Rect area = inset(box, 3);
  const double foot = cap::clear * 2.4, last = 3 * cap::clear * line_step + 1; // verdicts: in lines
  const auto rows = static_cast<double>(both.rows.size());
  const double step = std::min(10.0, (area.h - head_mm - foot - last) / std::max(1.0, rows - 1));
  double y = area.y + heads(sheet, area);
  for (const CompareView::Row& row : both.rows) {
    const double h = row.what == CompareView::became ? last : step;
    table_row(sheet, {area.x, y, area.w, h}, row);
    y += h;
  }
  const bool any =
      std::any_of(both.rows.begin(), both.rows.end(), [](const auto& row) { return row.differs; });
  if (!any) return;
  const double baseline = area.bottom() - 0.4;
  unequal(sheet, {area.x + 1.6, baseline - cap::clear / 2}, 3, t.ink);
  write(sheet, {area.x + 5, baseline}, Anchor::left, clean_letters, t.quiet,
        say(Say::compare_differs), area.w - 5);
}

}

void draw_compare(Sheet& sheet, const CompareView& both) {
  if (both.match && !both.trails) return draw_colours(sheet, both);
  const bench::Layout& l = sheet.view.layout;
  panel(sheet, l.more);
  const bench::Grid halves{2, 1, l.more};
  named(sheet, halves.cell(0, 0), both.name_a, both.colour_a, both.swatch_a, true);
  named(sheet, halves.cell(1, 0), both.name_b, both.colour_b, both.swatch_b, false);
  draw_trail(sheet, l.main, both.trail, cap::clear);
  table(sheet, both);
  for (const bench::Pad& at : l.pads) {
    if (at.id.kind == BookPad::to_list)
      pad(sheet, at, plain(sheet.theme), {{say(Say::book_one_back), clean_letters}});
    if (at.id.kind == BookPad::trails)
      pad(sheet, at, plain(sheet.theme), {{say(words::ColourSay::match_colours), clean_letters}});
  }
}

}
