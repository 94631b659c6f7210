// Book: two batches beside each other, by their colours or by their trails.
#include "bench/layout_of.hpp"
#include "bench/layout_parts.hpp"
#include "bench/pads_book.hpp"

#include <algorithm>

namespace bench {

namespace {

// Row by row; what is alone in the last row is as wide as the row.
void lay_out_pads(const std::vector<PadId>& pads, int columns, const Rect& area, Layout& layout) {
  const int count = static_cast<int>(pads.size()), rows = (count + columns - 1) / columns;
  const Grid grid{columns, rows, area};
  for (int i = 0; i < count; ++i) {
    const bool alone = i == count - 1 && i % columns == 0;
    const PadId& pad = pads[static_cast<std::size_t>(i)];
    add(layout, pad.kind, grid.cell(i % columns, i / columns, alone ? columns : 1), pad.arg);
  }
}

std::vector<PadId> pads_of_colours(const Bench& bench) {
  std::vector<PadId> pads{{BookPad::make_again, bench.book.match->a.batch}, {BookPad::trails, ""}};
  if (bench.photos.there) pads.push_back({BookPad::photos, ""});
  pads.push_back({BookPad::to_list, ""});
  return pads;
}

// Above, both colours with their photos; below how far apart, which way, and why that may be.
void lay_out_colours(const Bench& bench, Rect area, Layout& layout) {
  const bool upright = bench.display.upright();
  const auto pads = pads_of_colours(bench);
  layout.main = take_top(area, area.h * (upright ? 0.34 : 0.47));
  if (upright) {
    const int columns = static_cast<int>(pads.size()) == 4 ? 4 : 3;
    lay_out_pads(pads, columns, take_bottom(area, row_mm), layout);
    layout.side = take_bottom(area, area.h * 0.36);
    const Grid both{2, 1, area};
    layout.lower = both.cell(0, 0);
    layout.more = both.cell(1, 0);
    return;
  }
  const Grid thirds{3, 1, area};
  layout.lower = thirds.cell(0, 0);
  layout.more = thirds.cell(1, 0);
  Rect last = thirds.cell(2, 0);
  lay_out_pads(pads, 2, take_bottom(last, 2 * row_mm + gap_mm), layout);
  layout.side = last;
}

void lay_out_trails(const Bench& bench, const Rect& area, bool matched, Layout& layout) {
  auto [trails, table] = halves(area, bench.display.upright(), 0.5);
  layout.more = take_top(trails, row_mm);
  layout.main = trails;
  std::vector<PadId> pads{{BookPad::to_list, ""}};
  if (matched) pads.push_back({BookPad::trails, ""});
  lay_out_pads(pads, static_cast<int>(pads.size()), take_bottom(table, row_mm), layout);
  layout.side = table;
}

}

void lay_out_compare(const Bench& bench, const ComparePage& page, const Rect& area,
                     Layout& layout) {
  const bool matched = bench.book.match.has_value();
  if (matched && !page.trails) return lay_out_colours(bench, area, layout);
  lay_out_trails(bench, area, matched, layout);
}

}
