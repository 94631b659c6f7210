#include "bench/choices.hpp"
#include "bench/layout_parts.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"

namespace bench {

namespace {

void lay_out_pigments(const Bench& bench, Rect area, Layout& layout) {
  layout.main = area;
  add_search(layout, take_top(area, row_mm), bench.plan.search);
  const Rect pages = take_bottom(area, row_mm);
  const auto found = pigments_found(bench);
  const int a_page = plan_rows_a_page(bench.display);
  const Grid grid{2, a_page / 2, area};
  const int first = bench.plan.page * a_page;
  for (int i = 0; i < a_page && first + i < static_cast<int>(found.size()); ++i)
    add(layout, PlanPad::pigment, grid.cell(i % 2, i / 2), found[first + i]->id);
  add_pages(layout, pages, bench.plan.page, pages_for(found.size(), a_page));
}

void lay_out_cautions(Rect area, Layout& layout) {
  add(layout, PlanPad::cautions_read, take_bottom(area, row_mm + 3));
  layout.main = area;
}

// A row for each pigment of the blend; of one alone there is nothing to say.
void lay_out_blend(const Bench& bench, Rect& area, Layout& layout) {
  const auto& blend = bench.plan.blend;
  if (blend.size() < 2) return;
  constexpr int columns = 3;
  const int pads = static_cast<int>(blend.size()) + 1, rows = (pads + columns - 1) / columns;
  const Grid grid{columns, rows, take_top(area, rows * (row_mm + gap_mm) - gap_mm)};
  for (int i = 0; i + 1 < pads; ++i)
    add(layout, PlanPad::parts, grid.cell(i % columns, i / columns), blend[i].card);
  add(layout, PlanPad::by_volume, grid.cell((pads - 1) % columns, (pads - 1) / columns));
}

// While nothing is chosen for another batch yet.
std::string left_open(const Bench& bench) {
  return bench.batch.empty() && bench.plan.blend.empty() ? bench.plan.go_on : "";
}

void lay_out_choices(const Bench& bench, Rect area, Layout& layout) {
  layout.side = area;
  const auto binders = shelf_of(bench, session::CardKind::binder);
  const Grid grid{2, 2, take_top(area, 2 * row_mm + gap_mm)};
  for (int i = 0; i < static_cast<int>(binders.size()) && i < 4; ++i)
    add(layout, PlanPad::binder, grid.cell(i % 2, i / 2), binders[i]->id);
  add(layout, PlanPad::name, take_top(area, row_mm));
  lay_out_blend(bench, area, layout);
  const Grid thirds{3, 1, take_top(area, row_mm)};
  const bool pans = bench.plan.want == Want::pans;
  add(layout, PlanPad::want, thirds.cell(0, 0));
  add(layout, PlanPad::weigh, thirds.cell(1, 0, pans ? 1 : 2));
  if (pans) add(layout, PlanPad::pan_size, thirds.cell(2, 0));
  const Grid half{2, 1, take_bottom(area, row_mm + 1.5)};
  if (!missing_for_begin(bench)) add(layout, PlanPad::begin, half.cell(0, 0, 2));
  const Grid room{4, 1, take_bottom(area, row_mm)};
  const bool chosen = !bench.plan.blend.empty();
  if (chosen) add(layout, PlanPad::cautions, room.cell(0, 0, 2));
  add(layout, PlanPad::celsius, chosen ? room.cell(2, 0) : room.cell(0, 0, 2));
  add(layout, PlanPad::humidity, chosen ? room.cell(3, 0) : room.cell(2, 0, 2));
  if (const std::string batch = left_open(bench); !batch.empty())
    add(layout, PlanPad::go_on, take_bottom(area, row_mm + 3), batch);
  layout.lower = area;
  if (missing_for_begin(bench)) layout.note = half.cell(0, 0, 2);
}

}

int plan_rows_a_page(const Display& display) { return display.upright() ? 8 : 12; }

void lay_out_plan(const Bench& bench, Layout& layout) {
  Rect area = below_top_bar(bench.display);
  Rect list, choices;
  if (bench.display.upright()) {
    list = take_top(area, 2 * row_mm + 4 * (row_mm + gap_mm) + gap_mm);
    choices = area;
  } else {
    const double w = (area.w - gap_mm) * 0.58;
    list = {area.x, area.y, w, area.h};
    choices = {area.x + w + gap_mm, area.y, area.w - w - gap_mm, area.h};
  }
  if (bench.plan.reading)
    lay_out_cautions(list, layout);
  else
    lay_out_pigments(bench, list, layout);
  lay_out_choices(bench, choices, layout);
  if (bench.number) lay_out_number_over(list, layout);
}

}
