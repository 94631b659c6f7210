#include "bench/layout_parts.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_today.hpp"
#include "bench/today.hpp"

#include <algorithm>

namespace bench {

namespace {

constexpr double head_mm = 9, inner_mm = 2; // of the paints to make again

struct Board {
  Rect waits, again, lower;
  int rows = 5; // of what waits
};

Board board_of(const Display& display) {
  Rect area = below_top_bar(display);
  Board b;
  b.rows = waits_a_page();
  if (display.upright()) {
    const double row = (area.h + gap_mm) / 8.8 - gap_mm;
    b.waits = take_top(area, b.rows * (row + gap_mm) - gap_mm);
    b.lower = take_bottom(area, row);
    b.again = area;
    return b;
  }
  const Halves parts = halves(area, false, 0.645);
  b.waits = parts.first;
  b.again = parts.second;
  b.lower = take_bottom(b.again, (area.h + gap_mm) / b.rows - gap_mm);
  return b;
}

void lay_out_waits(const Bench& bench, const Board& board, Layout& layout) {
  const Grid rows{1, board.rows, board.waits};
  layout.main = board.waits;
  int row = 0;
  for (const Due& one : waits_of_page(bench))
    add(layout, TodayPad::due, rows.cell(0, row++), name_of(one));
  const int shown = waits_shown(bench), all = static_cast<int>(bench.today.waits.size());
  Rect lines = rows.cell(0, 0);
  lines.h = rows.cell(0, shown - 1).bottom() - lines.y;
  add_list(layout, bench.today.list, {1, shown, lines}, all);
  if (waits_pages(bench) > 1) add_pages(layout, rows.cell(0, board.rows - 1));
}

void lay_out_again(const Bench& bench, const Board& board, Layout& layout) {
  layout.more = board.again;
  const int columns = bench.display.upright() ? 3 : 2, most = static_cast<int>(most_again);
  Rect area = inset(board.again, inner_mm);
  area.y += head_mm - inner_mm;
  area.h -= head_mm - inner_mm;
  const Grid grid{columns, most / columns, area};
  int i = 0;
  for (const std::string& batch : bench.today.again) {
    add(layout, TodayPad::again, grid.cell(i % columns, i / columns), batch);
    ++i;
  }
}

// Nothing must be filled in: the first paint, and what may be done at any time.
void lay_out_first_day(const Board& board, Layout& layout) {
  layout.main = board.waits;
  const Grid rows{1, 4, board.waits};
  add(layout, TodayPad::new_paint, rows.cell(0, 0));
  add(layout, TodayPad::have, rows.cell(0, 1));
  add(layout, TodayPad::binder, rows.cell(0, 2));
  add(layout, TodayPad::bank_card, rows.cell(0, 3));
  const Grid hands{2, 1, board.lower};
  add(layout, TodayPad::hand, hands.cell(0, 0), "left");
  add(layout, TodayPad::hand, hands.cell(1, 0), "right");
}

}

void lay_out_today(const Bench& bench, Layout& layout) {
  const Board board = board_of(bench.display);
  lay_out_again(bench, board, layout);
  if (is_first_day(bench)) return lay_out_first_day(board, layout);
  lay_out_waits(bench, board, layout);
  add(layout, TodayPad::new_paint, board.lower);
}

}
