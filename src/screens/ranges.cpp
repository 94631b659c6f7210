// Book: what each pigment wants, one under the other on one scale of flow.
#include "bench/pads_book.hpp"
#include "bench/pads_shared.hpp"
#include "screens/measure.hpp"
#include "screens/range_chart.hpp"
#include "session/in_words.hpp"
#include "words/ranges_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>

namespace screens {

using bench::BookPad;
using bench::RangesView;
using bench::SharedPad;
using Say = words::RangesSay;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small};

// How likely a hand is to call it right, as far as the interval goes.
void chances(Sheet& sheet, const RangeChart& c, const Rect& row, const bench::PigmentRange& range) {
  const Theme& t = sheet.theme;
  const double y = row.centre().y, h = row.h * 0.56;
  const double left = c.scale.x(range.low), right = c.scale.x(range.high);
  const FlowScale within{range.low, range.high, left, right};
  sheet.shapes.push_back(Gradient{{left, y - h / 2, right - left, h},
                                  band_stops(range.band, within, 0, t.slab, t.right)});
}

void name_of(Sheet& sheet, const Rect& r, const RangesView::Row& row, const Ground& g) {
  const double heap = std::min(6.0, r.h * 0.7);
  material_symbol(sheet, {r.x + heap / 2, r.centre().y}, heap, session::CardKind::pigment,
                  rgb(row.colour), g.ink);
  const Rect words{r.x + heap, r.y, r.w - heap, r.h};
  const bool wide = r.w > 50;
  const double index_w = wide ? 17 : 0;
  labels(sheet, {words.x, words.y, words.w - index_w, words.h}, g,
         {{row.name, {cap::clear, true, cap::small}, false, 2}}, Anchor::left);
  if (wide)
    write(sheet, {r.right(), r.centre().y + cap::small / 2}, Anchor::right, small, g.quiet,
          row.index_name, index_w - 1);
}

// Under a finger the row's names turn, as any pad's would; the picture stays.
void name_pad(Sheet& sheet, const Rect& column, const RangesView::Row& row, bench::Pad at) {
  at.box = {column.x - 2, at.box.y, column.w + 4, at.box.h};
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  name_of(sheet, {column.x, at.box.y, column.w, at.box.h}, row, g);
}

Rect beside(const Rect& column, const bench::Pad& at) {
  return {column.x, at.box.y, column.w, at.box.h};
}

void way(Sheet& sheet, const bench::Pad& at) {
  const Ground g = plain(sheet.theme);
  if (at.id.kind == BookPad::to_list)
    pad(sheet, at, g, {{say(words::ScreensSay::book_to_list), clean_letters}});
  if (at.id.kind == SharedPad::page_back)
    pad(sheet, at, g, {{say(words::ScreensSay::page_back), clean_letters}});
  if (at.id.kind == SharedPad::page_on)
    pad(sheet, at, g, {{say(words::ScreensSay::page_on), clean_letters}});
}

}

void draw_ranges(Sheet& sheet, const RangesView& ranges) {
  const Theme& t = sheet.theme;
  const bench::Layout& layout = sheet.view.layout;
  panel(sheet, layout.main);
  std::vector<const bench::Pad*> rows;
  for (const bench::Pad& at : layout.pads)
    if (at.id.kind == BookPad::range_of) rows.push_back(&at);
  const RangeChart c = range_chart(layout.lower, 1, ranges.low, ranges.high);
  const double y = layout.main.y + 4 + cap::clear, half = (layout.main.w - 10) / 2;
  const std::string title = ranges.failure
                                ? say(Say::range_not_learnt, {words::message(*ranges.failure)})
                                : say(words::ScreensSay::book_ranges);
  write(sheet, {layout.main.x + 4, y}, Anchor::left, clean_bold, t.ink, title, half);
  write(sheet, {layout.main.right() - 4, y}, Anchor::right, clean_letters, t.quiet,
        say(words::SessionSay::trail_caption), half);
  const std::size_t count = std::min(ranges.rows.size(), rows.size());
  for (std::size_t i = 0; i < count; ++i)
    chances(sheet, c, beside(c.bars, *rows[i]), ranges.rows[i].range);
  range_axis(sheet, c);
  for (std::size_t i = 0; i < count; ++i) {
    const bench::PigmentRange& range = ranges.rows[i].range;
    interval(sheet, c, rows[i]->box.centre().y, range.low, range.demand, range.high,
             range.band.batches > 0);
    name_pad(sheet, c.names, ranges.rows[i], *rows[i]);
    labels(sheet, beside(c.knowns, *rows[i]), plain(t),
           {{session::known_words(range.band), clean_letters, true, 2}}, Anchor::right);
  }
  for (const bench::Pad& at : layout.pads) way(sheet, at);
}

}
