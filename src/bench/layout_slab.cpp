#include "bench/advice_parts.hpp"
#include "bench/layout_parts.hpp"
#include "bench/materials.hpp"
#include "bench/pads_number.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_slab.hpp"
#include "bench/pads_top_bar.hpp"
#include "bench/view_parts.hpp"
#include "words/lists.hpp"

#include <algorithm>

namespace bench {

namespace {

// SlabCells by name, so that lying and upright differ in this table alone.
struct SlabCells {
  Rect materials[most_materials];
  Rect another, more, undo, pass, pass_upper, pass_lower, dot, trouble, feels[5];
  Rect panel;   // the trail and the numbers, or what opens over them
  Rect numbers; // its lower part
};

constexpr double clock_mm = 13.4;
constexpr double numbers_mm = 25.9; // the numbers need a little more than one row of cells

SlabCells cells_lying(const Grid& g) {
  SlabCells c;
  for (int i = 0; i < most_materials; ++i) c.materials[i] = g.cell(i % 2, i / 2);
  c.another = g.cell(0, 3);
  c.more = g.cell(1, 3);
  c.undo = g.cell(0, 4, 2);
  c.pass = g.cell(6, 0, 1, 2);
  c.pass_upper = g.cell(6, 0);
  c.pass_lower = g.cell(6, 1);
  c.dot = g.cell(6, 2);
  c.trouble = g.cell(6, 3);
  for (int i = 0; i < 5; ++i) c.feels[i] = g.cell(2 + i, 4);
  c.panel = g.cell(2, 0, 4, 4);
  return c;
}

SlabCells cells_upright(const Grid& g) {
  SlabCells c;
  for (int i = 0; i < most_materials; ++i) c.materials[i] = g.cell(i % 3, 6 + i / 3);
  c.another = g.cell(0, 8);
  c.more = g.cell(1, 8);
  c.undo = g.cell(2, 8, 2);
  c.pass = g.cell(4, 6, 1, 3);
  c.pass_upper = g.cell(4, 6);
  c.pass_lower = g.cell(4, 7, 1, 2);
  c.dot = g.cell(3, 6);
  c.trouble = g.cell(3, 7);
  for (int i = 0; i < 5; ++i) c.feels[i] = g.cell(i, 5);
  c.panel = g.cell(0, 0, 5, 5);
  return c;
}

void mirror(Rect& r, const Rect& area) { r.x = 2 * area.x + area.w - r.right(); }

// For the other hand everything changes sides, but sticky stays left of runny.
void mirror(SlabCells& c, const Rect& area) {
  for (Rect& r : c.materials) mirror(r, area);
  for (Rect* r : {&c.another, &c.more, &c.undo, &c.pass, &c.pass_upper, &c.pass_lower, &c.dot,
                  &c.trouble, &c.panel, &c.numbers})
    mirror(*r, area);
  for (Rect& r : c.feels) mirror(r, area);
  std::swap(c.feels[0], c.feels[4]);
  std::swap(c.feels[1], c.feels[3]);
}

SlabCells slab_cells_of(const Display& display) {
  const Grid grid = slab_grid(display);
  SlabCells c = display.upright() ? cells_upright(grid) : cells_lying(grid);
  const double h = std::max(numbers_mm, grid.cell(0, 0).h);
  c.numbers = {c.panel.x, c.panel.bottom() - h, c.panel.w, h};
  if (display.hand == Hand::right) mirror(c, grid.area);
  return c;
}

bool was_mulled_last(const session::Batch& batch) {
  return !batch.passes.empty() && batch.passes.back().stage == session::Stage::mulling;
}

// By the hand: it may have mulled without timing a pass.
bool is_right(const session::Batch& batch) {
  const LastNote note = last_note(batch);
  return note.feel == session::Feel::right && !note.added_since;
}

void lay_out_pass(const Bench& bench, const SlabCells& c, Layout& layout) {
  if (!bench.folded) return;
  const session::Batch& batch = *bench.folded;
  if (batch.progress != session::Progress::open) {
    add(layout, SlabPad::back_on_slab, c.pass_upper);
    add(layout, SlabPad::close, c.pass_lower);
    return;
  }
  const bool may_gather = !running(batch) && (was_mulled_last(batch) || is_right(batch));
  add(layout, SlabPad::pass, may_gather ? c.pass_upper : c.pass);
  if (may_gather) add(layout, SlabPad::gather, c.pass_lower);
}

// Once the paint is off the slab no hand feels it: in their place lies the way on.
void lay_out_feels(const Bench& bench, const SlabCells& c, Layout& layout) {
  if (bench.folded && bench.folded->progress != session::Progress::open) {
    const auto [first, last] = std::minmax(c.feels[0].x, c.feels[4].x);
    return add(layout, SharedPad::to_pans,
               {first, c.feels[0].y, last + c.feels[0].w - first, c.feels[0].h});
  }
  static_assert(words::count_of<session::Feel> == std::extent_v<decltype(SlabCells::feels)>);
  for (const session::Feel feel : words::all_of<session::Feel>)
    add(layout, SlabPad::felt, c.feels[static_cast<int>(feel)],
        std::string(session::name_of(feel)));
}

void lay_out_hands(const Bench& bench, const SlabCells& c, Layout& layout) {
  const auto materials = material_pads(bench);
  for (std::size_t i = 0; i < materials.size(); ++i)
    layout.pads.push_back({materials[i], c.materials[i]});
  add(layout, SlabPad::another, c.another);
  add(layout, SlabPad::more, c.more);
  add(layout, SharedPad::undo, c.undo);
  lay_out_pass(bench, c, layout);
  add(layout, SlabPad::dot, c.dot);
  add(layout, SlabPad::trouble, c.trouble);
  lay_out_feels(bench, c, layout);
}

// How to begin, and the way there.
void lay_out_empty(const Grid& g, Layout& layout) {
  layout.main = g.cell(0, 0, g.columns, g.rows - 1);
  layout.side = {};
  add(layout, SharedPad::to_plan, g.cell(0, g.rows - 1, g.columns));
}

// Upright the top bar has no room for the name and, while the glass can be wiped, none for the
// clock.
void lay_out_title(Layout& layout) {
  layout.title = take_top(layout.main, title_mm);
  if (layout.clock.w >= clock_mm) return;
  layout.clock = {layout.title.right() - clock_mm, layout.title.y, clock_mm, title_mm};
  layout.title.w -= clock_mm + gap_mm;
}

void lay_out_dot_photos(const Bench& bench, Layout& layout) {
  if (!bench.folded) return;
  TrailView trail;
  trail.photos = session::dot_photos(*bench.folded);
  trail.to = bench.folded->clock;
  trail.from = std::max(0.0, trail.to - slab_window_s);
  add_dot_photos(bench, trail, bench.display.upright() ? Size{24, 20} : Size{26, 22}, layout);
}

}

void lay_out_number(const Grid& g, Layout& layout) {
  layout.main = g.cell(0, 0, 4);
  for (int i = 0; i < 9; ++i)
    add(layout, NumberPad::digit, g.cell(i % 3, 1 + i / 3), std::to_string(i + 1));
  add(layout, NumberPad::erase, g.cell(3, 1));
  add(layout, NumberPad::point, g.cell(3, 2));
  add(layout, NumberPad::digit, g.cell(3, 3), "0");
  add(layout, SharedPad::leave, g.cell(0, 4, 2));
  add(layout, NumberPad::enter, g.cell(2, 4, 2));
}

void lay_out_slab(const Bench& bench, Layout& layout) {
  const SlabCells c = slab_cells_of(bench.display);
  layout.main = {c.panel.x, c.panel.y, c.panel.w, c.numbers.y - gap_mm - c.panel.y};
  layout.side = c.numbers;
  if (bench.locked) {
    const Rect& p = c.panel;
    add(layout, TopBarPad::unlock, {p.x + p.w / 4, p.y + p.h / 3, p.w / 2, p.h / 3});
    return;
  }
  if (bench.batch.empty()) return lay_out_empty(slab_grid(bench.display), layout);
  lay_out_hands(bench, c, layout);
  if (is_open<TrailPanel>(bench.panel)) {
    if (bench.display.upright()) lay_out_title(layout);
    return lay_out_dot_photos(bench, layout);
  }
  layout.side = {};
  if (!is_open<NumberPanel>(bench.panel))
    return lay_out_panel(bench, {4, bench.display.upright() ? 5 : 4, c.panel}, layout);
  // The number pad is five rows high, and upright the name and the clock stand over it: it takes
  // the place of the feel pads.
  std::erase_if(layout.pads, [](const Pad& p) {
    return p.id.kind == SlabPad::felt || p.id.kind == SharedPad::to_pans;
  });
  layout.main = c.panel;
  layout.main.h = c.feels[0].bottom() - c.panel.y;
  if (bench.display.upright()) lay_out_title(layout);
  const Rect area = layout.main;
  lay_out_number({4, 5, area}, layout);
}

}
