// A view as shapes. Sees nothing but the view, decides nothing about paint.
#pragma once

#include "bench/view.hpp"
#include "screens/shapes.hpp"

#include <vector>

namespace screens {

std::vector<Shape> draw(const bench::View& view);

}
