#include "screens/draw.hpp"

#include "screens/fields.hpp"
#include "screens/parts.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace screens {

namespace {

constexpr double ring_mm = 1.1;

struct Screens {
  Sheet& sheet;
  void operator()(const bench::TodayView& today) const { draw_today(sheet, today); }
  void operator()(const bench::PlanView& plan) const { draw_plan(sheet, plan); }
  void operator()(const bench::SlabView& slab) const { draw_slab(sheet, slab); }
  void operator()(const bench::BookView& book) const { draw_book(sheet, book); }
  void operator()(const bench::ShelfView& shelf) const { draw_shelf(sheet, shelf); }
  void operator()(const bench::CompareView& both) const { draw_compare(sheet, both); }
  void operator()(const bench::RangesView& ranges) const { draw_ranges(sheet, ranges); }
  void operator()(const bench::StoryView& story) const { draw_story(sheet, story); }
  void operator()(const bench::PansView& pans) const { draw_pans(sheet, pans); }
  void operator()(const bench::TabletView& tablet) const { draw_tablet(sheet, tablet); }
  void operator()(const bench::PhotosView& photos) const { draw_photos(sheet, photos); }
  void operator()(const bench::BinderView& binder) const { draw_binder(sheet, binder); }
};

// A pass that has lasted its time is seen from across the room: all that is no pad glows.
bool glows(const Sheet& sheet) {
  const auto* slab = std::get_if<bench::SlabView>(&sheet.view.screen);
  return slab && bench::is_over(slab->pass);
}

// Around the pad on which the keys stand.
void draw_ring(Sheet& sheet) {
  const bench::Pad* pad =
      sheet.view.focus ? bench::pad_of(sheet.view.layout, *sheet.view.focus) : nullptr;
  if (!pad) return;
  const Colour ring = glows(sheet) ? sheet.theme.slab : sheet.theme.glow;
  sheet.shapes.push_back(Box{inset(pad->box, -bench::gap_mm / 2), radius_mm, clear, ring, ring_mm});
}

void draw_glow(Sheet& sheet) {
  if (!glows(sheet)) return;
  const Rect& top_bar = sheet.view.layout.top_bar;
  Rect all = top_bar;
  for (const bench::Pad& pad : sheet.view.layout.pads) all.h = std::max(all.h, pad.box.bottom());
  all.h += bench::margin_mm + 1;
  sheet.shapes.push_back(Box{all, 0, sheet.theme.glow, clear, 0});
}

std::vector<Shape> taken_from(Sheet& sheet) { return std::exchange(sheet.shapes, {}); }

}

Layers layers_of(const bench::View& view) {
  Sheet sheet{view, theme(view.top_bar.night)};
  Layers layers;
  draw_glow(sheet);
  layers.ground = taken_from(sheet);
  draw_top_bar(sheet);
  layers.top_bar = taken_from(sheet);
  std::visit(Screens{sheet}, view.screen);
  layers.screen = taken_from(sheet);
  draw_slab_pads(sheet);
  layers.slab_pads = taken_from(sheet);
  draw_undo(sheet);
  layers.undo = taken_from(sheet);
  draw_fields(sheet);
  draw_ring(sheet);
  layers.above = taken_from(sheet);
  return layers;
}

std::vector<Shape> draw(const bench::View& view) {
  Layers layers = layers_of(view);
  std::vector<Shape> all;
  for (auto* layer : {&layers.ground, &layers.top_bar, &layers.screen, &layers.slab_pads,
                      &layers.undo, &layers.above})
    std::move(layer->begin(), layer->end(), std::back_inserter(all));
  return all;
}

}
