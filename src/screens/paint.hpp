// Shapes into pixels through Dear ImGui's draw list: with atlas.hpp the one place that knows a
// pixel, and the one that knows ImGui.
#pragma once

#include "bench/view.hpp"
#include "screens/atlas.hpp"
#include "screens/shapes.hpp"

#include <vector>

namespace screens {

// Draws into the background of the current ImGui frame, after the bench's own colour.
void paint(const std::vector<Shape>& shapes, double px_per_mm);
Colour backdrop(const bench::View& view);

// Lays a text field over each pad of kind name and search, and returns those whose text has
// changed. Within the current ImGui frame, after paint().
std::vector<bench::Text> fields(const bench::View& view, double px_per_mm);

}
