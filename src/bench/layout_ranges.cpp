// What each pigment wants, and how one of them came to be known.
#include "bench/choices.hpp"
#include "bench/layout_parts.hpp"
#include "bench/ranges.hpp"

namespace bench {

namespace {

constexpr double caption_mm = 11; // above the rows
constexpr double axis_mm = 9;     // below them
constexpr double least_step_mm = row_mm + gap_mm;

Rect without_ways(const Display& display) {
  Rect area = below_strip(display);
  take_bottom(area, row_mm);
  return area;
}

Rect rows_of(const Rect& panel) {
  return {panel.x, panel.y + caption_mm, panel.w, panel.h - caption_mm - axis_mm};
}

void lay_out_all(const Bench& bench, const Rect& ways, Layout& layout) {
  const Grid row{3, 1, ways};
  const int a_page = ranges_a_page(bench.display);
  const auto& all = bench.book.of_pigments;
  add(layout, PadKind::to_list, row.cell(0, 0));
  if (bench.book.page > 0) add(layout, PadKind::page_back, row.cell(1, 0));
  if (bench.book.page + 1 < pages_for(all.size(), a_page))
    add(layout, PadKind::page_on, row.cell(2, 0));
  const Grid grid{1, a_page, layout.lower};
  const auto first = static_cast<std::size_t>(bench.book.page * a_page);
  for (int i = 0; i < a_page && first + static_cast<std::size_t>(i) < all.size(); ++i)
    add(layout, PadKind::range_of, grid.cell(0, i), all[first + static_cast<std::size_t>(i)].card);
}

void lay_out_story(const PigmentStory& story, const Rect& ways, Layout& layout) {
  const Grid row{4, 1, ways};
  layout.more = take_bottom(layout.main, row_mm);
  layout.lower = rows_of(layout.main);
  add(layout, PadKind::to_list, row.cell(0, 0));
  if (!note_chosen(story)) return;
  add(layout, PadKind::note_before, row.cell(1, 0));
  add(layout, PadKind::note_after, row.cell(2, 0));
  add(layout, PadKind::set_aside, row.cell(3, 0));
}

}

int ranges_a_page(const Display& display) {
  return std::max(1, static_cast<int>(rows_of(without_ways(display)).h / least_step_mm));
}

void lay_out_ranges(const Bench& bench, Layout& layout) {
  Rect area = below_strip(bench.display);
  const Rect ways = take_bottom(area, row_mm);
  layout.main = area;
  layout.lower = rows_of(area);
  if (bench.book.story) return lay_out_story(*bench.book.story, ways, layout);
  lay_out_all(bench, ways, layout);
}

}
