#include "bench/choices.hpp"
#include "bench/kept_lists.hpp"
#include "bench/layout_parts.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/planning.hpp"
#include "bench/recipes.hpp"
#include "bench/stock.hpp"

#include <algorithm>

namespace bench {

namespace {

using session::SaidIn;

constexpr double edge_mm = 1.5, title_mm = 8;

// A share of the width, and the rest behind a gap.
Rect take_left(Rect& area, double share) {
  const double w = (area.w - gap_mm) * share;
  const Rect slice{area.x, area.y, w, area.h};
  area.x += w + gap_mm;
  area.w -= w + gap_mm;
  return slice;
}

bool has_recipes(const Bench& bench) {
  return std::any_of(bench.shelf.begin(), bench.shelf.end(), [](const session::Card& card) {
    return card.kind() == session::CardKind::recipe;
  });
}

void lay_out_finder(const Bench& bench, Rect area, Layout& layout) {
  layout.main = area;
  const bool recipes = finds(bench) == Finding::recipe;
  Rect head = take_top(area, row_mm);
  if (!bench.plan.blend.empty() || recipes)
    add_search(layout, take_left(head, 0.7), bench.plan.search),
        add(layout, SharedPad::leave, head);
  else
    add_search(layout, head, bench.plan.search);
  const Grid foot{4, 1, take_bottom(area, row_mm)};
  const auto found = list_of_finder(bench);
  const int a_page = plan_rows_a_page;
  const Grid grid{2, a_page / 2, area};
  const int all = static_cast<int>(found->cards.size());
  add_list(layout, bench.plan.list, grid, all);
  const int first = layout.list->first * grid.columns;
  for (int i = 0; i < a_page && first + i < all; ++i)
    add(layout, recipes ? PlanPad::recipe : PlanPad::pigment, grid.cell(i % 2, i / 2),
        bench.shelf[found->cards[static_cast<std::size_t>(first + i)]].id);
  add_page_back(layout, foot.cell(0, 0));
  if (found->others > 0) add(layout, PlanPad::all_others, foot.cell(1, 0));
  if (has_recipes(bench))
    add(layout, recipes ? PlanPad::another_pigment : PlanPad::recipes, foot.cell(2, 0));
  add_page_on(layout, foot.cell(3, 0));
}

void lay_out_cautions(Rect area, Layout& layout) {
  add(layout, PlanPad::cautions_read, take_bottom(area, row_mm + 3));
  layout.main = area;
}

// Of one alone in parts there is nothing to say.
void lay_out_part(const Bench& bench, const BlendPart& part, Rect row, Layout& layout) {
  const bool spoons = part.in == SaidIn::spoons || part.in == SaidIn::drops;
  if (part.in == SaidIn::parts && bench.plan.blend.size() == 1)
    return add(layout, PlanPad::pigment, row, part.card);
  add(layout, PlanPad::pigment, take_left(row, spoons ? 0.5 : 0.62), part.card);
  if (spoons) {
    add(layout, PlanPad::parts, take_left(row, 0.4), part.card);
    return add(layout, PlanPad::spoon, row, part.card);
  }
  add(layout, PlanPad::parts, row, part.card);
}

int rows_of_blend(const Bench& bench) {
  const auto count = bench.plan.blend.size();
  return static_cast<int>(count + (count < most_pigments ? 1 : 0));
}

double what_mm(const Bench& bench) {
  return 2 * edge_mm + (rows_of_blend(bench) + 1) * (row_mm + gap_mm) - gap_mm;
}

void lay_out_what(const Bench& bench, Rect area, Layout& layout) {
  layout.main = area;
  area = inset(area, edge_mm);
  const PlanState& plan = bench.plan;
  const Grid head{5, 1, take_top(area, row_mm)};
  layout.title_of_plan = head.cell(0, 0, 2);
  if (plan.said_in == SaidIn::parts && plan.blend.size() > 1)
    add(layout, PlanPad::by_volume, head.cell(0, 0, 2));
  int at = 2;
  for (const SaidIn in : {SaidIn::spoons, SaidIn::g, SaidIn::parts})
    add(layout, PlanPad::say_in, head.cell(at++, 0), std::string(name_of(in)));
  for (const BlendPart& part : plan.blend)
    lay_out_part(bench, part, take_top(area, row_mm), layout);
  if (plan.blend.size() < most_pigments)
    add(layout, PlanPad::another_pigment, take_top(area, row_mm));
}

// All of them where they are four, else three and a pad that turns to the others.
void lay_out_binders(const Bench& bench, const Rect& area, Layout& layout) {
  const auto binders = binders_offered(bench);
  const Grid grid{2, 2, area};
  const int all = static_cast<int>(binders.size()), a_page = all > 4 ? 3 : 4;
  const int first = bench.plan.binder_page % pages_for(binders.size(), a_page) * a_page;
  for (int i = 0; i < a_page && first + i < all; ++i)
    add(layout, PlanPad::binder, grid.cell(i % 2, i / 2), binders[first + i]->id);
  if (all > 4) add(layout, PlanPad::other_binders, grid.cell(1, 1));
}

void lay_out_how_much(const Bench& bench, Rect area, Layout& layout) {
  const PlanState& plan = bench.plan;
  Rect number = take_top(area, row_mm);
  if (!asks_how_much(plan.want)) {
    add(layout, PlanPad::want, number);
    return;
  }
  const bool steps = plan.wanted > 0;
  if (steps) {
    add(layout, PlanPad::fewer, {number.x, number.y, row_mm, number.h});
    add(layout, PlanPad::more, {number.right() - row_mm, number.y, row_mm, number.h});
    number = {number.x + row_mm + gap_mm, number.y, number.w - 2 * (row_mm + gap_mm), number.h};
  }
  add(layout, PlanPad::weigh, number);
  Rect row = take_top(area, row_mm);
  const bool pans = plan.want == Want::pans;
  add(layout, PlanPad::want, pans ? take_left(row, 0.54) : row);
  if (pans) add(layout, PlanPad::pan_size, row);
}

void lay_out_choices(const Bench& bench, Rect area, Layout& layout) {
  const bool titled = bench.plan.blend.size() < 3;
  layout.more = take_left(area, bench.display.upright() ? 0.5 : 0.56);
  layout.side = area;
  Rect binders = inset(layout.more, edge_mm), much = inset(area, edge_mm);
  const double high = 2 * row_mm + gap_mm;
  if (titled && binders.h - title_mm >= high)
    binders.y += title_mm, binders.h -= title_mm, much.y += title_mm, much.h -= title_mm;
  binders.h = much.h = std::min(binders.h, high);
  lay_out_binders(bench, binders, layout);
  lay_out_how_much(bench, much, layout);
}

// While nothing is chosen for another batch yet.
std::string left_open(const Bench& bench) {
  return bench.batch.empty() && bench.plan.blend.empty() ? bench.plan.go_on : "";
}

// Upright a blend's name would lose its end to what empties the field.
void lay_out_name(const Bench& bench, const Rect& box, Layout& layout) {
  if (bench.display.upright()) return add(layout, PlanPad::name, box);
  add_field(layout, box, {PlanPad::name, ""}, bench.plan.name);
}

void lay_out_result(const Bench& bench, Rect area, Layout& layout) {
  layout.result = area;
  area = inset(area, edge_mm);
  Rect head = take_top(area, row_mm);
  if (bench.plan.blend.empty())
    lay_out_name(bench, head, layout);
  else
    lay_out_name(bench, take_left(head, 0.7), layout), add(layout, PlanPad::keep_recipe, head);
  if (const std::string batch = left_open(bench); !batch.empty())
    add(layout, PlanPad::go_on, take_bottom(area, row_mm + 3), batch);
  layout.lower = area;
}

void lay_out_begin(const Bench& bench, const Rect& box, Layout& layout) {
  if (missing_for_begin(bench))
    layout.note = box;
  else
    add(layout, PlanPad::begin, box);
}

void lay_out_room(const Bench& bench, Rect area, Layout& layout) {
  const bool chosen = !bench.plan.blend.empty();
  if (chosen) add(layout, PlanPad::cautions, take_left(area, 0.5));
  const Grid room{2, 1, area};
  add(layout, PlanPad::celsius, room.cell(0, 0));
  add(layout, PlanPad::humidity, room.cell(1, 0));
}

// What the finder, the cautions or the number take the place of.
void lay_out_asked(const Bench& bench, Rect area, Layout& layout) {
  if (bench.plan.reading) return lay_out_cautions(area, layout);
  if (finds(bench) != Finding::nothing) return lay_out_finder(bench, area, layout);
  lay_out_what(bench, take_top(area, what_mm(bench)), layout);
  lay_out_choices(bench, area, layout);
}

constexpr double foot_mm = row_mm + 1;
constexpr double choices_mm = 2 * edge_mm + title_mm + 2 * row_mm + gap_mm;

void lay_out_lying(const Bench& bench, Rect area, Layout& layout) {
  Rect left = take_left(area, 0.46);
  const Rect whole = left;
  lay_out_begin(bench, take_bottom(area, foot_mm + 1), layout);
  lay_out_result(bench, area, layout);
  const Rect foot = take_bottom(left, foot_mm);
  if (bench.plan.reading) return lay_out_cautions(whole, layout);
  lay_out_room(bench, foot, layout);
  lay_out_asked(bench, left, layout);
  if (bench.number) lay_out_number_over(left, layout);
}

void lay_out_upright(const Bench& bench, Rect area, Layout& layout) {
  Rect foot = take_bottom(area, foot_mm + 1);
  lay_out_room(bench, take_left(foot, 0.64), layout);
  lay_out_begin(bench, foot, layout);
  const double least = what_mm(bench) + gap_mm + choices_mm;
  const bool finder = finds(bench) != Finding::nothing || bench.plan.reading;
  const double finder_mm = 7 * (row_mm + gap_mm) + gap_mm;
  const Rect asked = take_top(area, finder || bench.number ? finder_mm : least);
  lay_out_result(bench, area, layout);
  lay_out_asked(bench, asked, layout);
  if (bench.number) lay_out_number_over(asked, layout);
}

}

void lay_out_plan(const Bench& bench, Layout& layout) {
  const Rect area = below_top_bar(bench.display);
  if (bench.display.upright())
    lay_out_upright(bench, area, layout);
  else
    lay_out_lying(bench, area, layout);
}

}
