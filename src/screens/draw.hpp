// A view as shapes. Sees nothing but the view, decides nothing about paint.
#pragma once

#include "bench/view.hpp"
#include "screens/shapes.hpp"

#include <vector>

namespace screens {

// The parts of a frame by who draws them, one upon the other. All that a screen draws is in its own
// part, wherever it lies, but for what is the same in many of its states.
struct Layers {
  std::vector<Shape> ground; // what glows behind the pads
  std::vector<Shape> top_bar;
  std::vector<Shape> screen;
  std::vector<Shape> slab_pads; // round Slab's panel
  std::vector<Shape> undo;
  std::vector<Shape> above; // fields that are written in, the ring of the keys
};
Layers layers_of(const bench::View& view);

std::vector<Shape> draw(const bench::View& view); // all of them

}
