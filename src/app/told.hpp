// What the canvas shows, told to the page, which makes real buttons and real text of it: for who
// hears a screen, taps by voice or by switches, or looks for a pad by its name.
#pragma once

#include "bench/view.hpp"

#include <string>

namespace app {

// As JSON, of the same view and shapes that are drawn. `screen`: its name on a command line;
// `open`: whether a batch is; `night`: whether the colours are those of the dark bench; `counted`:
// what undo would take back, and so the last that counted; `words`: what stands beside the pads.
// `pads`, in the layout's order: id, name, box in pixels, here (the tab one is on), chosen, field.
// `free`, on this tablet's screen: where the page may put a button of its own.
std::string told(const bench::View& view, bool open, double px_per_mm);

}
