// The frames on a photo that is shown large, each with its name.
#pragma once

#include "screens/parts.hpp"

namespace screens {

// Where the view says they lie. A name lies over no other, and over another frame only where there
// is no room beside.
void draw_regions(Sheet& sheet, const bench::PhotosView& photos);

}
