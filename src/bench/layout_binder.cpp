#include "bench/layout_parts.hpp"
#include "bench/making.hpp"
#include "bench/pads_binder.hpp"
#include "bench/stock.hpp"

namespace bench {

namespace {

constexpr int most_steps = 6;

struct Areas {
  Rect left, middle, right;
};

// Lying three columns; upright the steps below the other two.
Areas areas_of(const Display& display) {
  Rect area = below_top_bar(display);
  Areas a;
  if (display.upright()) {
    constexpr double step_mm = 13;
    a.middle = take_bottom(area, most_steps * (step_mm + gap_mm) - gap_mm);
    const Halves two = halves(area, false, 0.5);
    a.left = two.first;
    a.right = two.second;
    return a;
  }
  const Halves first = halves(area, false, 0.3);
  const Halves rest = halves(first.second, false, 0.57);
  a.left = first.first;
  a.middle = rest.first;
  a.right = rest.second;
  return a;
}

// The recipe, and how much gum there is for it; once the gum is in the water, that is said below.
void lay_out_amounts(const Bench& bench, Rect area, Layout& layout) {
  if (!making_in_hand(bench)) {
    add(layout, BinderPad::recipe, take_top(area, row_mm));
    const Grid gum{18, 1, take_top(area, row_mm)};
    add(layout, BinderPad::less, gum.cell(0, 0, 4));
    add(layout, BinderPad::gum, gum.cell(4, 0, 4));
    add(layout, BinderPad::more, gum.cell(8, 0, 4));
    add(layout, BinderPad::measured_in, gum.cell(12, 0, 6));
  }
  layout.lower = area;
}

void lay_out_steps(const Bench& bench, const Rect& area, Layout& layout) {
  const auto parts = to_put_in(bench);
  if (!parts) return;
  const Grid grid{1, most_steps, area};
  int row = 0;
  for (const session::MakingStep step : session::steps_of(*parts))
    add(layout, BinderPad::step, grid.cell(0, row++), std::string(session::name_of(step)));
}

void lay_out_label(const Bench& bench, Rect area, Layout& layout) {
  const bool begun = making_in_hand(bench) != nullptr;
  const bool others = open_makings(bench).size() > (begun ? 1u : 0u);
  if (begun) {
    const Grid done{2, 1, take_bottom(area, row_mm)};
    add(layout, BinderPad::jar_holds, done.cell(0, 0));
    add(layout, BinderPad::onto_shelf, done.cell(1, 0));
  }
  if (begun || others) {
    const Grid back{(begun ? 2 : 0) + (others ? 1 : 0), 1, take_bottom(area, row_mm)};
    if (begun) add(layout, BinderPad::take_back, back.cell(0, 0));
    if (begun) add(layout, BinderPad::give_up, back.cell(1, 0));
    if (others) add(layout, BinderPad::other, back.cell(back.columns - 1, 0));
  }
  const Grid dose{2, 1, take_bottom(area, row_mm)};
  add(layout, BinderPad::dose, dose.cell(0, 0));
  add(layout, BinderPad::dose_in, dose.cell(1, 0));
  add(layout, BinderPad::keep, take_bottom(area, row_mm));
  layout.side = area;
}

void lay_out_bottle(const Bench& bench, Rect area, Layout& layout) {
  const Grid weigh{2, 1, take_bottom(area, row_mm)};
  add(layout, BinderPad::empty_bottle, weigh.cell(0, 0));
  add(layout, BinderPad::bottle, weigh.cell(1, 0));
  if (bench.binder.net_g) {
    const bool missing = jar_weighed(bench).missing_g() > 0;
    const Grid why{missing ? 2 : 1, 1, take_bottom(area, row_mm)};
    if (missing) add(layout, BinderPad::dried, why.cell(0, 0));
    add(layout, BinderPad::used, why.cell(why.columns - 1, 0));
  }
  layout.lower = area;
}

void lay_out_wanted(Rect area, Layout& layout) {
  const Grid change{2, 1, take_bottom(area, row_mm)};
  add(layout, BinderPad::weaker, change.cell(0, 0));
  add(layout, BinderPad::stronger, change.cell(1, 0));
  layout.more = area;
}

void lay_out_mixing(const Bench& bench, Rect area, Layout& layout) {
  add(layout, BinderPad::put_in, take_bottom(area, row_mm));
  const bool typed = bench.binder.net_g || bench.binder.percent > 0;
  if (typed || last_entry(bench, bench.binder.jar))
    add(layout, BinderPad::take_back, take_bottom(area, row_mm));
  layout.side = area;
}

}

void lay_out_binder(const Bench& bench, Layout& layout) {
  const Areas areas = areas_of(bench.display);
  if (bench.binder.jar.empty()) {
    lay_out_amounts(bench, areas.left, layout);
    lay_out_steps(bench, areas.middle, layout);
    lay_out_label(bench, areas.right, layout);
  } else if (jar_in_hand(bench)) {
    lay_out_bottle(bench, areas.left, layout);
    lay_out_wanted(areas.middle, layout);
    lay_out_mixing(bench, areas.right, layout);
  } else {
    layout.more = areas.middle; // says that it is gone
  }
  if (bench.number) lay_out_number_over(areas.right, layout);
}

}
