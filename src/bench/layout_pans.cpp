#include "bench/layout_parts.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pans.hpp"
#include "words/lists.hpp"

namespace bench {

namespace {

static_assert(words::count_of<session::Became> == 8, "two rows of four, or five and three");

struct Span {
  int column, row, wide = 1, high = 1;
};

// Places by name, so that lying and upright differ in these tables alone.
struct PansCells {
  Span pans, pour, curve, batches[2], more_batches, undo, weigh, judge, pour_pan, pour_g, new_pan,
      pan_card, room;
  // Judging.
  Span verdicts, said, all_pans, batch, judge_back, weigh_judged;
  Span number, beside_number;
  int pans_a_row, rows_of_pans;
  double title_mm; // above them, for the batch's name on two lines
};

constexpr PansCells lying{.pans = {0, 0, 6, 2},
                          .pour = {6, 0, 1, 2},
                          .curve = {3, 2, 4, 2},
                          .batches = {{0, 2, 2}, {0, 3, 2}},
                          .more_batches = {2, 2},
                          .undo = {0, 4, 2},
                          .weigh = {2, 4},
                          .judge = {3, 4},
                          .pour_pan = {4, 4},
                          .pour_g = {5, 4},
                          .new_pan = {6, 4},
                          .pan_card = {2, 3},
                          .room = {5, 4},
                          .verdicts = {0, 2, 4, 2},
                          .said = {4, 2, 3, 2},
                          .all_pans = {4, 4},
                          .batch = {5, 4, 2},
                          .judge_back = {3, 4},
                          .weigh_judged = {2, 4},
                          .number = {0, 0, 4, 5},
                          .beside_number = {4, 0, 3, 5},
                          .pans_a_row = 6,
                          .rows_of_pans = 1,
                          .title_mm = 13};
constexpr PansCells upright{.pans = {0, 0, 5, 4},
                            .pour = {4, 4, 1, 2},
                            .curve = {0, 4, 4, 2},
                            .batches = {{0, 6, 2}, {2, 6, 2}},
                            .more_batches = {4, 6},
                            .undo = {2, 8, 2},
                            .weigh = {0, 7},
                            .judge = {4, 8},
                            .pour_pan = {1, 7},
                            .pour_g = {2, 7},
                            .new_pan = {3, 7},
                            .pan_card = {4, 7},
                            .room = {0, 8},
                            .verdicts = {0, 6, 5, 2},
                            .said = {0, 4, 4, 2},
                            .all_pans = {3, 7},
                            .batch = {0, 8, 2},
                            .judge_back = {4, 8},
                            .weigh_judged = {4, 7},
                            .number = {0, 3, 5, 6},
                            .beside_number = {0, 0, 5, 3},
                            .pans_a_row = 5,
                            .rows_of_pans = 2,
                            .title_mm = 18};

// For the other hand everything changes sides, but pans and verdicts stay in their order.
struct PansGrid {
  Grid grid;
  PansCells at;
  bool mirrored = false;

  Rect cell(const Span& p) const {
    const int column = mirrored ? grid.columns - p.column - p.wide : p.column;
    return grid.cell(column, p.row, p.wide, p.high);
  }
  Rect part(const Rect& all, int columns, int rows, int i) const {
    return Grid{columns, rows, all}.cell(i % columns, i / columns);
  }
  Rect pan(int i) const {
    constexpr double edge_mm = 1;
    Rect row = cell(at.pans);
    row = {row.x + edge_mm, row.y + at.title_mm, row.w - 2 * edge_mm,
           row.h - at.title_mm - edge_mm};
    return part(row, at.pans_a_row, at.rows_of_pans, i);
  }
  Rect verdict(int i) const { return part(cell(at.verdicts), at.verdicts.wide, 2, i); }
  // What the verdicts leave of their second row, else a place of its own.
  Rect behind_verdicts(int i, const Span& own) const {
    constexpr int verdicts = words::count_of<session::Became>;
    return verdicts + i < 2 * at.verdicts.wide ? verdict(verdicts + i) : cell(own);
  }
};

PansGrid pans_grid_of(const Display& display) {
  return {slab_grid(display), display.upright() ? upright : lying, display.hand == Hand::right};
}

bool more_batches(const Bench& bench) { return bench.pans.others.size() > others_a_page; }

void lay_out_pans_row(const Bench& bench, const PansGrid& c, Layout& layout) {
  layout.main = layout.note = c.cell(c.at.pans);
  layout.note.h = c.at.title_mm;
  const std::vector<int> numbers = pans_of_page(bench);
  for (std::size_t i = 0; i < numbers.size(); ++i)
    add(layout, PansPad::pan, c.pan(static_cast<int>(i)), std::to_string(numbers[i]));
  if (pan_pages(bench) > 1)
    add(layout, PansPad::more_pans, c.pan(c.at.pans_a_row * c.at.rows_of_pans - 1));
}

// Other batches, and what lies there instead of them.
void lay_out_others(const Bench& bench, const PansGrid& c, Layout& layout) {
  const std::vector<std::string> others = others_that_show(bench);
  for (std::size_t i = 0; i < others.size(); ++i)
    add(layout, PansPad::batch, c.cell(c.at.batches[i]), others[i]);
  if (others.empty()) {
    Rect both = c.cell(c.at.batches[0]);
    const Rect last = c.cell(c.at.batches[1]);
    both.w = std::max(both.right(), last.right()) - std::min(both.x, last.x);
    both.x = std::min(both.x, last.x);
    both.h = last.bottom() - both.y;
    layout.lower = both;
  }
  if (more_batches(bench)) add(layout, PansPad::more_batches, c.cell(c.at.more_batches));
}

void lay_out_pour(const Bench& bench, const PansGrid& c, Layout& layout) {
  const session::Batch& batch = *bench.pans.folded;
  const bool card = pan_card(bench).has_value(), some = to_pour_mL(batch) > 0 && card;
  const session::Pan* chosen = pan_numbered(batch, bench.pans.pan);
  const bool stands_up = bench.display.upright();
  if (some)
    add(layout, PansPad::pour_all, c.cell(c.at.pour));
  else
    layout.side = c.cell(c.at.pour);
  layout.more = c.cell(c.at.curve);
  if (chosen) add(layout, PansPad::weigh_pan, c.cell(c.at.weigh));
  if (chosen && some && !is_full(*chosen)) add(layout, PansPad::pour_pan, c.cell(c.at.pour_pan));
  const bool in_grams = chosen && (some || own_pour(bench, bench.pans.pan));
  if (in_grams) add(layout, PansPad::pour_g, c.cell(c.at.pour_g));
  if (some && may_add_pan(bench)) add(layout, PansPad::new_pan, c.cell(c.at.new_pan));
  if (card) add(layout, PansPad::pan_card, c.cell(c.at.pan_card));
  if (stands_up || !in_grams)
    add(layout, PansPad::room, c.cell(c.at.room));
  else if (!more_batches(bench))
    add(layout, PansPad::room, c.cell(c.at.more_batches));
  if (!batch.pans.empty()) add(layout, PansPad::judge, c.cell(c.at.judge));
  lay_out_others(bench, c, layout);
}

void lay_out_verdicts(const Bench& bench, const PansGrid& c, Layout& layout) {
  layout.side = c.cell(c.at.pour);
  layout.more = c.cell(c.at.said);
  for (const session::Became became : words::all_of<session::Became>)
    add(layout, PansPad::became, c.verdict(static_cast<int>(became)),
        std::string(session::name_of(became)));
  add(layout, PansPad::all_pans, c.behind_verdicts(0, c.at.all_pans));
  if (pan_numbered(*bench.pans.folded, bench.pans.pan))
    add(layout, PansPad::weigh_pan, c.behind_verdicts(1, c.at.weigh_judged));
  add(layout, PansPad::judge, c.cell(c.at.judge_back));
  if (!bench.pans.others.empty())
    add(layout, PansPad::batch, c.cell(c.at.batch), bench.pans.others.front());
  else
    add(layout, PansPad::room, c.cell(c.at.batch));
}

}

int pans_a_page(const Display& display) {
  const PansCells& at = display.upright() ? upright : lying;
  return at.pans_a_row * at.rows_of_pans;
}

void lay_out_pans(const Bench& bench, Layout& layout) {
  if (!bench.pans.folded) {
    layout.main = below_top_bar(bench.display);
    return;
  }
  const PansGrid c = pans_grid_of(bench.display);
  if (bench.number) {
    layout.more = c.cell(c.at.beside_number);
    return lay_out_number_over(c.cell(c.at.number), layout);
  }
  lay_out_pans_row(bench, c, layout);
  if (bench.pans.judging)
    lay_out_verdicts(bench, c, layout);
  else
    lay_out_pour(bench, c, layout);
  add(layout, SharedPad::undo, c.cell(c.at.undo));
}

}
