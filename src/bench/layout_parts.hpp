// Pieces of the layouts for clean hands.
#pragma once

#include "bench/layout_of.hpp"
#include "session/trail.hpp"

namespace bench {

inline constexpr double row_mm = 12; // the least a clean thumb needs

inline Rect below_top_bar(const Display& display) { return slab_grid(display).area; }

inline void add(Layout& layout, PadKind kind, const Rect& box, std::string arg = "") {
  layout.pads.push_back({{kind, std::move(arg)}, box});
}

inline constexpr double title_mm = 7; // of a batch's name over its trail

// Take a slice off the top or the bottom of an area, with a gap behind it.
Rect take_top(Rect& area, double h);
Rect take_bottom(Rect& area, double h);

// Two parts side by side lying, one above the other upright.
struct Halves {
  Rect first, second;
};
Halves halves(const Rect& area, bool upright, double share);

// A text field; beside it, while anything stands in it, what empties it.
void add_field(Layout& layout, const Rect& box, const PadId& field, const std::string& text);
void add_search(Layout& layout, const Rect& box, const std::string& text);
// Beside a trail that lies in `main`: the photos of dots that it shows, on pads of that size, each
// as near its moment as it may lie, the latest before those before it.
void add_dot_photos(const Bench& bench, const session::TrailView& trail, const Size& pad,
                    Layout& layout);

// What a finger may drag: so many things in the rows of a grid.
void add_list(Layout& layout, const Scroll& scroll, const Grid& grid, int things);
// What turns its pages, each where there is one.
void add_page_back(Layout& layout, const Rect& box);
void add_page_on(Layout& layout, const Rect& box);
void add_pages(Layout& layout, const Rect& row);

// The number pad over an area, in place of the pads there.
void lay_out_number_over(const Rect& area, Layout& layout);

}
