// The one picture of the program: flow across, time down, the working range a soft band.
#pragma once

#include "screens/widgets.hpp"

namespace screens {

inline constexpr double trail_line_mm = 0.85;
inline constexpr double trail_dash_mm = 2.2; // of the other batch, where two are compared

void draw_trail(Sheet& sheet, const Rect& area, const bench::TrailView& trail, double cap_mm);

}
