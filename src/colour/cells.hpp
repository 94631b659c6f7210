// A box of a photo in so many cells, each with the middle of its light.
#pragma once

#include "colour/photo.hpp"

#include <vector>

namespace colour {

struct Cell {
  double x = 0, y = 0; // its middle, in stored pixels
  double pixels = 0;
  Three light{}; // mean of linear RGB
};

struct Cells {
  std::vector<Cell> cells;
  double pixels = 0;
  Three levels{};      // mean of what the file has, 0 to 255
  double brimming = 0; // share of pixels of which a colour is at its uppermost, 254 and 255
  double empty = 0;    // ... at its lowest, 0 and 1
  double glints = 0; // share of pixels far brighter than the rest, up to the white of `glint_from`
};

// About as many cells as wanted, as square as may be, none under 6 pixels wide. A pixel with each
// of its levels above `glint_from` is a glint, and in no cell.
Cells cells_of(const Photo& photo, const Box& stored, int wanted, const Three& glint_from);

// How the middles of blocks of 8 x 8 (light) and 16 x 16 (colours) scatter, in levels of 255:
// light, blue to yellow, red to green, as JPEG has them (ITU-T T.871).
Three block_scatter(const Photo& photo, const std::vector<Box>& stored);

}
