// Views made by hand, on the layouts that bench makes: what the screens are looked at with.
#pragma once

#include "bench/view.hpp"

#include <string>
#include <vector>

namespace views {

struct Case {
  std::string name; // "slab, bottles, 218 x 136"
  bench::Size mm;
  bench::View view;
};

// Every display by every state of every screen, by day.
std::vector<Case> all(bench::Hand hand = bench::Hand::left);

paint::Band band(double middle, double sd); // of flow; sd of its ln

bench::TrailView trail(); // with feel notes, a dot, a trouble, a gap, a ghost, and a band

}
