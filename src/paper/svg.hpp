// Shapes as SVG.
#pragma once

#include "paper/markup.hpp"
#include "session/shapes.hpp"

#include <string>
#include <vector>

namespace paper {

// A drawing in true millimetres. `name`, of letters alone, begins the ids within it: one of its own
// for each drawing of a page.
Markup drawing(const std::string& name, session::Size size,
               const std::vector<session::shapes::Shape>& shapes);

// "#rrggbb", "none" for one that is clear.
std::string css(session::shapes::Colour colour);

// Height of a capital over the size of the letters, in the usual sans faces.
inline constexpr double capital_em = 0.73;

}
