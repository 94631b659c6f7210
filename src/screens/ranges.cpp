// Book: what each pigment wants, one under the other on one scale of flow.
#include "bench/ranges.hpp"

#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/trail_geometry.hpp"

#include <cmath>

namespace screens {

using bench::PadKind;
using bench::RangesView;
using words::Say;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small};

// The columns, and where the rows begin and end.
struct Chart {
  Rect names, bars, knowns; // of all rows
  FlowScale scale;
  double step = 0; // from row to row
  Rect row(const Rect& column, std::size_t i) const {
    return {column.x, column.y + static_cast<double>(i) * step, column.w, step};
  }
};

Chart chart_of(const Rect& panel, const RangesView& ranges, int a_page) {
  const Rect area = inset(panel, 4);
  const bool wide = area.w > 150;
  const double top = area.y + cap::clear * 2.6, bottom = area.bottom() - cap::clear * 2.2;
  const double name_w = wide ? 62 : 40, known_w = 24, gap = 2;
  Chart c;
  c.names = {area.x, top, name_w, bottom - top};
  c.bars = {area.x + name_w + gap, top, area.w - name_w - known_w - 2 * gap, bottom - top};
  c.knowns = {area.right() - known_w, top, known_w, bottom - top};
  c.scale = {ranges.low, ranges.high, c.bars.x, c.bars.right()};
  c.step = c.bars.h / a_page;
  return c;
}

std::string known_words(const paint::Band& band) {
  if (band.batches == 0) return say(Say::ranges_guess);
  return band.batches == 1 ? say(Say::ranges_one_batch)
                           : say(Say::ranges_batches, {std::to_string(band.batches)});
}

void axis(Sheet& sheet, const Chart& c) {
  const Theme& t = sheet.theme;
  for (const Tick& tick : ticks(c.scale, cap::clear)) {
    const double x = c.scale.x(tick.flow);
    sheet.shapes.push_back(Line{{{x, c.bars.y}, {x, c.bars.bottom()}}, outline_mm, t.rule, 0});
    write(sheet, {x, c.bars.bottom() + cap::clear * 1.7}, Anchor::centre, clean_letters, t.quiet,
          tick.label, 12);
  }
}

// How likely a hand is to call it right, as far as the interval goes; the line is the interval.
void bar(Sheet& sheet, const Chart& c, const Rect& row, const paint::Band& band) {
  const Theme& t = sheet.theme;
  const auto [low, high] = bench::nine_in_ten(band);
  const double y = row.centre().y, h = row.h * 0.62, left = c.scale.x(low), right = c.scale.x(high);
  FlowScale within{low, high, left, right};
  sheet.shapes.push_back(
      Gradient{{left, y - h / 2, right - left, h}, band_stops(band, within, 0, t.slab, t.right)});
  sheet.shapes.push_back(Line{{{left, y}, {right, y}}, 0.5, t.ink, 0});
  const bool known = band.batches > 0;
  sheet.shapes.push_back(
      Disc{{c.scale.x(std::exp(band.middle)), y}, 1.5, known ? t.ink : t.slab, t.ink, 0.5});
}

void name_of(Sheet& sheet, const Rect& r, const RangesView::Row& row) {
  const Theme& t = sheet.theme;
  const double heap = std::min(6.0, r.h * 0.7);
  material_symbol(sheet, {r.x + heap / 2, r.centre().y}, heap, session::CardKind::pigment,
                  rgb(row.colour), t.ink);
  const Rect words{r.x + heap, r.y, r.w - heap, r.h};
  const bool wide = r.w > 50;
  const double index_w = wide ? 17 : 0;
  labels(sheet, {words.x, words.y, words.w - index_w, words.h}, plain(t),
         {{row.name, {cap::clear, true, cap::small}, false, 2}}, Anchor::left);
  if (wide)
    write(sheet, {r.right(), r.centre().y + cap::small / 2}, Anchor::right, small, t.quiet,
          row.index_name, index_w - 1);
}

void way(Sheet& sheet, const bench::Pad& at) {
  const Ground g = plain(sheet.theme);
  if (at.id.kind == PadKind::to_list) pad(sheet, at, g, {{say(Say::book_to_list), clean_letters}});
  if (at.id.kind == PadKind::page_back) pad(sheet, at, g, {{say(Say::page_back), clean_letters}});
  if (at.id.kind == PadKind::page_on) pad(sheet, at, g, {{say(Say::page_on), clean_letters}});
}

}

void draw_ranges(Sheet& sheet, const RangesView& ranges) {
  const Theme& t = sheet.theme;
  const Rect& main = sheet.view.layout.main;
  panel(sheet, main);
  const Chart c = chart_of(main, ranges, ranges.a_page);
  const double y = main.y + 4 + cap::clear, half = (main.w - 10) / 2;
  write(sheet, {main.x + 4, y}, Anchor::left, clean_bold, t.ink, say(Say::book_ranges), half);
  write(sheet, {main.right() - 4, y}, Anchor::right, clean_letters, t.quiet,
        say(Say::trail_caption), half);
  axis(sheet, c);
  for (std::size_t i = 0; i < ranges.rows.size(); ++i) {
    const RangesView::Row& row = ranges.rows[i];
    bar(sheet, c, c.row(c.bars, i), row.band);
    name_of(sheet, c.row(c.names, i), row);
    labels(sheet, c.row(c.knowns, i), plain(t), {{known_words(row.band), clean_letters, true, 2}},
           Anchor::right);
  }
  for (const bench::Pad& at : sheet.view.layout.pads) way(sheet, at);
}

}
