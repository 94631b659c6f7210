// A whole photo in a few fields, to look over it quickly.
#pragma once

#include "colour/photo.hpp"

#include <vector>

namespace colour {

struct Fields {
  int width = 0, height = 0;
  int side = 1;             // stored pixels to a field
  std::vector<Three> light; // mean of linear RGB, row by row

  const Three& at(int x, int y) const {
    return light[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
                 static_cast<std::size_t>(x)];
  }
};

// So many at most along the longer side; in each, up to 8 x 8 pixels spread over it are looked at.
Fields fields_of(const Photo& photo, int most);

}
