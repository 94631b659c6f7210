// What each pigment wants, and how one of them came to be known.
#include "bench/choices.hpp"
#include "bench/layout_parts.hpp"
#include "bench/pads_book.hpp"
#include "bench/pads_shared.hpp"
#include "bench/ranges.hpp"

namespace bench {

namespace {

constexpr double caption_mm = 11; // above the rows
constexpr double axis_mm = 9;     // below them
constexpr double least_step_mm = row_mm + gap_mm;

Rect without_ways(const Display& display) {
  Rect area = below_top_bar(display);
  take_bottom(area, row_mm);
  return area;
}

Rect rows_of(const Rect& panel) {
  return {panel.x, panel.y + caption_mm, panel.w, panel.h - caption_mm - axis_mm};
}

// The chart above the ways on.
Rect lay_out_chart(const Display& display, Layout& layout) {
  Rect area = below_top_bar(display);
  const Rect ways = take_bottom(area, row_mm);
  layout.main = area;
  layout.lower = rows_of(area);
  return ways;
}

}

int ranges_a_page(const Display& display) {
  return std::max(1, static_cast<int>(rows_of(without_ways(display)).h / least_step_mm));
}

void lay_out_ranges(const Bench& bench, const RangesPage& page, Layout& layout) {
  const Grid row{3, 1, lay_out_chart(bench.display, layout)};
  const int a_page = ranges_a_page(bench.display);
  const auto& all = page.of_pigments;
  add(layout, BookPad::to_list, row.cell(0, 0));
  if (page.page > 0) add(layout, SharedPad::page_back, row.cell(1, 0));
  if (page.page + 1 < pages_for(all.size(), a_page))
    add(layout, SharedPad::page_on, row.cell(2, 0));
  const Grid grid{1, a_page, layout.lower};
  const auto first = static_cast<std::size_t>(page.page * a_page);
  for (int i = 0; i < a_page && first + static_cast<std::size_t>(i) < all.size(); ++i)
    add(layout, BookPad::range_of, grid.cell(0, i), all[first + static_cast<std::size_t>(i)].card);
}

void lay_out_story(const Bench& bench, const PigmentStory& story, Layout& layout) {
  const Grid row{4, 1, lay_out_chart(bench.display, layout)};
  layout.more = take_bottom(layout.main, row_mm);
  layout.lower = rows_of(layout.main);
  add(layout, BookPad::to_list, row.cell(0, 0));
  if (!note_chosen(story)) return;
  add(layout, BookPad::note_before, row.cell(1, 0));
  add(layout, BookPad::note_after, row.cell(2, 0));
  add(layout, BookPad::set_aside, row.cell(3, 0));
}

}
