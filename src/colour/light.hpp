// How light falls on the paper around a swatch, and so on the swatch: a plane, and the bow that
// lenses make, in each colour.
#pragma once

#include "colour/cells.hpp"

#include <optional>
#include <vector>

namespace colour {

struct Light {
  double x = 0, y = 0;                        // around which it is written, in stored pixels
  double unit = 1;                            // pixels to 1 of the coordinates
  std::array<std::array<double, 4>, 3> fit{}; // of each colour: there, across, down, bow
  // Of each colour, the covariance of its fit for a scatter of 1, and the scatter of one cell; both
  // relative to the light.
  std::array<std::array<std::array<double, 4>, 4>, 3> spread{};
  Three scatter{};
  double unevenness = 0; // the most by which the paper's light differs, relative
};

// A weighted fit over cells of bare paper; what lies far off (a pencil mark, a hair) is left out.
// Before anything is seen, light may fall off by 30 % over the photo and the corners be 10 % darker
// (1 sd; own estimate), which holds the fit where paper lies on one side only. Absent with fewer
// than 6 cells, or where the fit is not above 0 in a colour.
std::optional<Light> light_on(const std::vector<Cell>& paper, const Photo& photo, double at_x,
                              double at_y);

Three light_at(const Light& light, double x, double y);

// Variance of the light there, relative to it.
Three light_variance(const Light& light, double x, double y);

}
