#include "bench/layout_parts.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pans.hpp"
#include "words/lists.hpp"

namespace bench {

namespace {

static_assert(words::count_of<session::Became> == 8, "two rows of four, or five and three");

// PlaceContents: five columns for the pans and what is done with them, two for what is known of
// them. Upright: what is known lies above.
struct Cells {
  Grid grid;
  bool upright, judging;
  int left = 0; // first column of the pans
  int info = 5; // of what is known
  Rect pan(int i) const { return grid.cell(left + i % 5, (upright ? 2 : 0) + i / 5); }
  Rect action(int i, int wide = 1) const { return grid.cell(left + i, upright ? 7 : 3, wide); }
  Rect verdict(int i) const {
    return upright ? grid.cell(i % 5, 6 + i / 5) : grid.cell(left + i % 4, 2 + i / 4);
  }
  Rect beside_verdicts(int i) const {
    return upright ? grid.cell(3 + i, 7) : grid.cell(left + 4, 2 + i);
  }
  Rect last(int i, int wide = 1) const { return grid.cell(left + i, upright ? 8 : 4, wide); }
};

Cells cells_of(const Bench& bench) {
  Cells c{slab_grid(bench.display), bench.display.upright(), bench.pans.judging};
  if (!c.upright && bench.display.hand == Hand::right) c.left = 2, c.info = 0;
  return c;
}

int rows_of_pans(bool upright, bool judging) {
  return upright ? (judging ? 4 : 5) : judging ? 2 : 3;
}

void lay_out_known(const Cells& c, Layout& layout) {
  const Grid& g = c.grid;
  layout.side = c.upright ? g.cell(0, 0, 2, 2) : g.cell(c.info, 0, 2, 2);
  layout.lower = c.upright ? g.cell(2, 0, 3, 2) : g.cell(c.info, 2, 2, 2);
  const int rows = rows_of_pans(c.upright, c.judging);
  layout.main = c.upright ? g.cell(0, 2, 5, rows) : g.cell(c.left, 0, 5, rows);
}

// Into the pan that was chosen, where it has room.
bool pours_one(const Bench& bench) {
  const session::Batch& batch = *bench.pans.folded;
  const session::Pan* chosen = pan_numbered(batch, bench.pans.pan);
  return !bench.pans.judging && chosen && !is_full(*chosen) && to_pour_mL(batch) > 0;
}

void lay_out_pour(const Bench& bench, const Cells& c, Layout& layout) {
  const session::Batch& batch = *bench.pans.folded;
  const bool some = to_pour_mL(batch) > 0 && pan_card(bench);
  const session::Pan* chosen = pan_numbered(batch, bench.pans.pan);
  const bool one = pours_one(bench);
  const int wide = c.upright ? 1 : 2;
  if (some) add(layout, PansPad::pour_all, c.action(0, one ? 1 : wide));
  if (one) add(layout, PansPad::pour_pan, c.upright ? c.last(3) : c.action(1));
  if (bench.pans.pan > 0 && (some || own_pour(bench, bench.pans.pan)))
    add(layout, PansPad::pour_g, c.action(wide));
  if (c.upright && bench.pans.pan == 0) add(layout, PansPad::room, c.action(1));
  if (chosen) add(layout, PansPad::weigh_pan, c.action(wide + 1));
  if (pan_card(bench)) add(layout, PansPad::pan_card, c.action(wide + 2));
  if (c.upright && !batch.pans.empty()) add(layout, PansPad::judge, c.action(4));
}

void lay_out_verdicts(const Bench& bench, const Cells& c, Layout& layout) {
  for (const session::Became became : words::all_of<session::Became>)
    add(layout, PansPad::became, c.verdict(static_cast<int>(became)),
        std::string(session::name_of(became)));
  add(layout, PansPad::all_pans, c.beside_verdicts(0));
  if (pan_numbered(*bench.pans.folded, bench.pans.pan))
    add(layout, PansPad::weigh_pan, c.beside_verdicts(1));
}

// Other batches, other pans, the other face of this screen, and undo.
void lay_out_last(const Bench& bench, const Cells& c, Layout& layout) {
  const std::string batch = pans_batch(bench);
  if (other_batch(bench, batch, false)) add(layout, PansPad::batch_back, c.last(0));
  if (other_batch(bench, batch, true)) add(layout, PansPad::batch_on, c.last(1));
  if (pan_pages(bench) > 1) add(layout, PansPad::more_pans, c.last(2));
  const bool turns = c.judging || !bench.pans.folded->pans.empty();
  if (!c.upright) {
    if (turns) add(layout, PansPad::judge, c.last(3));
    add(layout, PansPad::room, c.last(4));
    return add(layout, SharedPad::undo, c.grid.cell(c.info, 4, 2));
  }
  const bool has_room = c.judging || bench.pans.pan > 0; // else it has a pad beside the pours
  if (has_room && pan_pages(bench) <= 1) add(layout, PansPad::room, c.last(2));
  if (c.judging) add(layout, PansPad::judge, c.last(3));
  const bool narrow = c.judging || pours_one(bench);
  add(layout, SharedPad::undo, c.last(narrow ? 4 : 3, narrow ? 1 : 2));
}

}

int pans_a_page(const Display& display, bool judging) {
  return 5 * rows_of_pans(display.upright(), judging);
}

void lay_out_pans(const Bench& bench, Layout& layout) {
  if (!bench.pans.folded) {
    layout.main = below_top_bar(bench.display);
    return;
  }
  const Cells c = cells_of(bench);
  lay_out_known(c, layout);
  const std::vector<int> numbers = pans_of_page(bench);
  for (std::size_t i = 0; i < numbers.size(); ++i) {
    const bool there = pan_numbered(*bench.pans.folded, numbers[i]);
    add(layout, there ? PansPad::pan : PansPad::new_pan, c.pan(static_cast<int>(i)),
        there ? std::to_string(numbers[i]) : "");
  }
  if (c.judging)
    lay_out_verdicts(bench, c, layout);
  else
    lay_out_pour(bench, c, layout);
  lay_out_last(bench, c, layout);
  if (!bench.number) return;
  const Rect below = c.upright ? c.grid.cell(0, 2, 5, 7) : c.grid.cell(c.left, 0, 5, 5);
  lay_out_number_over(below, layout);
}

}
