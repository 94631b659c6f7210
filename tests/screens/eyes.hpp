// A frame as it reaches the glass: drawn by the real painter into a real framebuffer, and read
// back.
#pragma once

#include "bench/view.hpp"
#include "screens/colour.hpp"
#include "window/offscreen.hpp"

namespace eyes {

struct Frame {
  window::Picture picture;
  double px_per_mm = 0;

  Colour pixel(int x, int y) const; // at the edge, the last one there is
};

// The texts of a screen do without being read where the veil of the wiped glass lies over them.
std::vector<screens::Shape> unveiled(const std::vector<screens::Shape>& shapes);
std::vector<screens::Shape> without_texts(const std::vector<screens::Shape>& shapes);

class Eyes { // one at a time
public:
  Eyes(bench::Size mm, double px_per_mm);

  void rescale(double px_per_mm); // as a window does that comes to another monitor
  Frame look(const std::vector<screens::Shape>& shapes, Colour ground);
  Frame look(const bench::View& view); // with its text fields

private:
  window::Offscreen offscreen_;
  double px_per_mm_;
};

}
