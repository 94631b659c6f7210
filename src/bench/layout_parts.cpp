#include "bench/layout_parts.hpp"

#include "bench/pads_shared.hpp"

namespace bench {

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

Halves halves(const Rect& area, bool upright, double share) {
  if (upright) {
    const double h = (area.h - gap_mm) * share;
    return {{area.x, area.y, area.w, h},
            {area.x, area.y + h + gap_mm, area.w, area.h - h - gap_mm}};
  }
  const double w = (area.w - gap_mm) * share;
  return {{area.x, area.y, w, area.h}, {area.x + w + gap_mm, area.y, area.w - w - gap_mm, area.h}};
}

void add_field(Layout& layout, const Rect& box, const PadId& field, const std::string& text) {
  const double clear = text.empty() ? 0 : row_mm + gap_mm;
  const bool searches = field.kind == SharedPad::search;
  add(layout, field.kind, {box.x, box.y, box.w - clear, box.h}, field.arg);
  if (clear > 0)
    add(layout, SharedPad::clear, {box.right() - row_mm, box.y, row_mm, box.h},
        searches ? "" : name_of(field));
}

void add_search(Layout& layout, const Rect& box, const std::string& text) {
  add_field(layout, box, {SharedPad::search, ""}, text);
}

void add_list(Layout& layout, const Scroll& scroll, const Grid& grid, int things) {
  const int rows = (things + grid.columns - 1) / grid.columns;
  const double pitch = (grid.area.h + gap_mm) / grid.rows;
  layout.list = {grid.area,
                 pitch,
                 grid.rows,
                 rows,
                 first_row(scroll, grid.rows, rows),
                 scroll.towards.has_value()};
}

void add_page_back(Layout& layout, const Rect& box) {
  if (layout.list->first > 0) add(layout, SharedPad::page_back, box);
}

void add_page_on(Layout& layout, const Rect& box) {
  const ListArea& list = *layout.list;
  if (list.first + list.shown < list.rows) add(layout, SharedPad::page_on, box);
}

void add_pages(Layout& layout, const Rect& row) {
  const Grid halves{2, 1, row};
  add_page_back(layout, halves.cell(0, 0));
  add_page_on(layout, halves.cell(1, 0));
}

void lay_out_number_over(const Rect& area, Layout& layout) {
  std::erase_if(layout.pads, [&](const Pad& p) { return area.contains(p.box.centre()); });
  if (layout.list && area.contains(layout.list->box.centre())) layout.list.reset();
  lay_out_number({4, 5, area}, layout);
}

}
