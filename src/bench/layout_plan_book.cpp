#include "bench/choices.hpp"
#include "bench/layout_of.hpp"
#include "bench/record.hpp"

namespace bench {

namespace {

constexpr double row_mm = 12; // the least a clean thumb needs

Rect below_strip(const Display& display) { return slab_grid(display).area; }

void add(Layout& layout, PadKind kind, const Rect& box, std::string arg = "") {
  layout.pads.push_back({{kind, std::move(arg)}, box});
}

// Takes a slice off the top or the bottom of an area, with a gap behind it.
Rect take_top(Rect& area, double h) {
  const Rect slice{area.x, area.y, area.w, h};
  area.y += h + gap_mm;
  area.h -= h + gap_mm;
  return slice;
}

Rect take_bottom(Rect& area, double h) {
  area.h -= h + gap_mm;
  return {area.x, area.bottom() + gap_mm, area.w, h};
}

void add_pages(Layout& layout, const Rect& row, int page, int pages) {
  const Grid halves{2, 1, row};
  if (page > 0) add(layout, PadKind::page_back, halves.cell(0, 0));
  if (page + 1 < pages) add(layout, PadKind::page_on, halves.cell(1, 0));
}

void lay_out_pigments(const Bench& bench, Rect area, Layout& layout) {
  layout.main = area;
  add(layout, PadKind::search, take_top(area, row_mm));
  const Rect pages = take_bottom(area, row_mm);
  const auto found = pigments_found(bench);
  const int a_page = plan_rows_a_page(bench.display);
  const Grid grid{2, a_page / 2, area};
  const int first = bench.plan.page * a_page;
  for (int i = 0; i < a_page && first + i < static_cast<int>(found.size()); ++i)
    add(layout, PadKind::pigment, grid.cell(i % 2, i / 2), found[first + i]->id);
  add_pages(layout, pages, bench.plan.page, pages_for(found.size(), a_page));
}

void lay_out_choices(const Bench& bench, Rect area, Layout& layout) {
  layout.side = area;
  const auto binders = shelf_of(bench, session::CardKind::binder);
  const Grid grid{2, 2, take_top(area, 2 * row_mm + gap_mm)};
  for (int i = 0; i < static_cast<int>(binders.size()) && i < 4; ++i)
    add(layout, PadKind::binder, grid.cell(i % 2, i / 2), binders[i]->id);
  add(layout, PadKind::name, take_top(area, row_mm));
  const Grid quarter{4, 1, take_top(area, row_mm)};
  add(layout, PadKind::weigh, quarter.cell(0, 0, 2));
  add(layout, PadKind::celsius, quarter.cell(2, 0));
  add(layout, PadKind::humidity, quarter.cell(3, 0));
  const Rect begin = take_bottom(area, row_mm + 1.5);
  if (!missing_for_begin(bench)) add(layout, PadKind::begin, begin);
  layout.lower = area;
  if (missing_for_begin(bench)) layout.lower.h = begin.bottom() - area.y;
}

}

int plan_rows_a_page(const Display& display) { return display.upright() ? 8 : 12; }
int book_rows_a_page(const Display& display) { return display.upright() ? 12 : 7; }

void lay_out_plan(const Bench& bench, Layout& layout) {
  Rect area = below_strip(bench.display);
  Rect list, choices;
  if (bench.display.upright()) {
    list = take_top(area, 2 * row_mm + 4 * (row_mm + gap_mm) + gap_mm);
    choices = area;
  } else {
    const double w = (area.w - gap_mm) * 0.58;
    list = {area.x, area.y, w, area.h};
    choices = {area.x + w + gap_mm, area.y, area.w - w - gap_mm, area.h};
  }
  lay_out_pigments(bench, list, layout);
  lay_out_choices(bench, choices, layout);
  if (!bench.number) return;
  const auto in_list = [&](const Pad& p) { return list.contains(p.box.centre()); };
  std::erase_if(layout.pads, in_list);
  lay_out_number({4, 5, list}, layout);
}

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

void lay_out_strip(const Bench& bench, Layout& layout) {
  const bool upright = bench.display.upright();
  const Size mm = bench.display.mm;
  const double h = strip_mm - 2 * gap_mm;
  const double tab = upright ? 16 : 20;
  layout.strip = {0, 0, mm.w, strip_mm};
  double x = margin_mm;
  for (const PadKind kind : {PadKind::plan, PadKind::slab, PadKind::book}) {
    if (kind == PadKind::slab && bench.batch.empty()) continue;
    add(layout, kind, {x, gap_mm, tab, h});
    x += tab + gap_mm;
  }
  double right = mm.w - margin_mm;
  const auto take_right = [&](double w) {
    right -= w;
    const Rect box{right, gap_mm, w, h};
    right -= gap_mm;
    return box;
  };
  if (!upright) layout.clock = take_right(17);
  add(layout, PadKind::night, take_right(13));
  add(layout, PadKind::sound, take_right(13));
  if (bench.screen != Screen::slab) add(layout, PadKind::tablet, take_right(13));
  if (bench.screen == Screen::slab && !bench.batch.empty() && !bench.locked)
    add(layout, PadKind::wipe, take_right(upright ? 28 : 38));
  layout.title = {x, gap_mm, right - x, h};
}

Layout layout(const Bench& bench) {
  Layout out;
  lay_out_strip(bench, out);
  if (bench.locked) out.pads.clear();
  if (bench.screen == Screen::slab) lay_out_slab(bench, out);
  if (bench.screen == Screen::plan) lay_out_plan(bench, out);
  if (bench.screen == Screen::book) lay_out_book(bench, out);
  if (bench.screen == Screen::tablet) lay_out_tablet(bench, out);
  return out;
}

}
