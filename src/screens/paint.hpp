// Shapes into pixels through Dear ImGui's draw list: the one file that knows a pixel, and the one
// that knows ImGui.
#pragma once

#include "bench/view.hpp"
#include "screens/shapes.hpp"
#include "words/error.hpp"

#include <vector>

namespace screens {

// Puts both faces into ImGui's font atlas in every height used, in place of what is there. To be
// called before the first frame and whenever px_per_mm (1 to 40) changes; the back end's texture
// has to be made anew after it. Errors: font_missing, not_a_number (outside that range).
words::Result<void> load_faces(double px_per_mm);

// Draws into the background of the current ImGui frame, after the bench's own colour.
void paint(const std::vector<Shape>& shapes, double px_per_mm);
Colour backdrop(const bench::View& view);

// Lays a text field over each pad of kind name and search, and returns those whose text has
// changed. Within the current ImGui frame, after paint().
std::vector<bench::Text> fields(const bench::View& view, double px_per_mm);

}
