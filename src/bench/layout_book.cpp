#include "bench/choices.hpp"
#include "bench/layout_parts.hpp"
#include "bench/record.hpp"

namespace bench {

int book_rows_a_page(const Display& display) { return display.upright() ? 12 : 7; }

void lay_out_book(const Bench& bench, Layout& layout) {
  Rect area = below_strip(bench.display);
  if (bench.book.batch.empty()) {
    layout.main = area;
    const Rect pages = take_bottom(area, row_mm);
    const int a_page = book_rows_a_page(bench.display);
    const Grid grid{1, a_page, area};
    const int count = static_cast<int>(bench.batches.size());
    const int first = bench.book.page * a_page;
    for (int i = 0; i < a_page && first + i < count; ++i)
      add(layout, PadKind::batch, grid.cell(0, i), bench.batches[count - 1 - first - i]);
    return add_pages(layout, pages, bench.book.page, pages_for(bench.batches.size(), a_page));
  }
  const bool upright = bench.display.upright();
  const double w = upright ? area.w : (area.w - gap_mm) * 0.57;
  layout.main = {area.x, area.y, w, upright ? area.h * 0.5 : area.h};
  Rect rest = area;
  if (upright)
    take_top(rest, layout.main.h);
  else
    rest = {area.x + w + gap_mm, area.y, area.w - w - gap_mm, area.h};
  const Grid halves{2, 1, take_bottom(rest, row_mm + 3)};
  add(layout, PadKind::to_list, halves.cell(0, 0));
  if (!is_newer(bench, bench.book.batch)) add(layout, PadKind::take_up, halves.cell(1, 0));
  layout.lower = take_bottom(rest, 30);
  layout.side = rest;
}

}
