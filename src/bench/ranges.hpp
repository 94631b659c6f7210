// What each pigment of the shelf wants, as far as this studio knows it.
#pragma once

#include "bench/bench.hpp"
#include "paint/range.hpp"

#include <utility>
#include <vector>

namespace bench {

struct PigmentRange {
  const session::Card* card = nullptr; // of the shelf
  paint::Band band;
};

// The thirstiest first. Pigments of which nothing can be said are not there.
std::vector<PigmentRange> ranges_of(const Bench& bench);

// Where nine in ten of what a pigment may want lies, as flows.
std::pair<double, double> nine_in_ten(const paint::Band& band);

}
