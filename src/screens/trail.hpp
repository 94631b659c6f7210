// The one picture of the program: flow across, time down, the working range a soft band.
#pragma once

#include "screens/widgets.hpp"

namespace screens {

void draw_trail(Sheet& sheet, const Rect& area, const bench::TrailView& trail, double cap_mm);

}
