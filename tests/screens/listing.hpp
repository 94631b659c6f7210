// Shapes as text, for tests: one line a shape, in tenths of a millimetre.
#pragma once

#include "screens/shapes.hpp"

namespace views {

std::string line_of(const screens::Shape& shape);
std::string listing(const std::vector<screens::Shape>& shapes);

screens::Shape colourless(screens::Shape shape); // every fill, outline and letter in one colour
screens::Shape moved(screens::Shape shape, double x, double y);
screens::Rect bounds_of(const screens::Shape& shape); // a text's by its width

}
