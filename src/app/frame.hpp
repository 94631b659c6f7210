// One frame of the bench, drawn with ImGui; the same in the window and in a picture.
#pragma once

#include "bench/view.hpp"
#include "window/window.hpp"

#include <vector>

namespace app {

// As dense as the display is; on one too small for the screens less, so that all of it is there.
double fitting_px_per_mm(window::Extent size, double px_per_mm);

// Between begin_frame and end_frame. What was typed into the text fields comes back.
std::vector<bench::Text> draw(const bench::View& view, double px_per_mm);

// A whole frame in the window, with every letter that it wants. What was typed comes back.
std::vector<bench::Text> show(window::Window& window, const bench::View& view, double px_per_mm);

// After end_frame: true where the frame has to be drawn again, since it brought letters that were
// not there before and are now.
bool more_letters();

window::Colour ground(const bench::View& view); // what shows where nothing is drawn

// The display that so many pixels are.
bench::Display display_of(window::Extent size, double px_per_mm, bench::Hand hand);

}
