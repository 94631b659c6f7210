#include "screens/draw.hpp"

#include "screens/parts.hpp"

namespace screens {

namespace {

struct Screens {
  Sheet& sheet;
  void operator()(const bench::PlanView& plan) const { draw_plan(sheet, plan); }
  void operator()(const bench::SlabView& slab) const { draw_slab(sheet, slab); }
  void operator()(const bench::BookView& book) const { draw_book(sheet, book); }
};

}

std::vector<Shape> draw(const bench::View& view) {
  Sheet sheet{view, theme(view.strip.night)};
  draw_strip(sheet);
  std::visit(Screens{sheet}, view.screen);
  return std::move(sheet.shapes);
}

}
