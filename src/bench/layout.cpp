#include "bench/layout.hpp"

namespace bench {

Rect Grid::cell(int column, int row, int wide, int high) const {
  const double w = (area.w - (columns - 1) * gap_mm) / columns;
  const double h = (area.h - (rows - 1) * gap_mm) / rows;
  return {area.x + column * (w + gap_mm), area.y + row * (h + gap_mm),
          wide * w + (wide - 1) * gap_mm, high * h + (high - 1) * gap_mm};
}

Grid slab_grid(const Display& display) {
  const Size mm = display.mm;
  const Rect area{margin_mm, top_bar_mm + gap_mm, mm.w - 2 * margin_mm,
                  mm.h - top_bar_mm - 2 * gap_mm};
  return display.upright() ? Grid{5, 9, area} : Grid{7, 5, area};
}

const Pad* pad_at(const Layout& layout, Point at) {
  for (const Pad& pad : layout.pads)
    if (pad.box.contains(at)) return &pad;
  return nullptr;
}

const Pad* pad_of(const Layout& layout, const PadId& id) {
  for (const Pad& pad : layout.pads)
    if (pad.id == id) return &pad;
  return nullptr;
}

}
