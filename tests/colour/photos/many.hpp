// Many photos of two swatches whose difference is known, and how often the limits that were said of
// it hold it.
#pragma once

#include "colour/match.hpp"

#include <cstdint>

namespace scene {

struct Held {
  int photos = 0;           // pairs of swatches
  int told = 0;             // of which a difference was told
  int held = 0;             // ... whose limits hold it
  int below = 0, above = 0; // the truth lies below, above them
  double wide = 0;          // mean of high - low
  double share() const { return told > 0 ? static_cast<double>(held) / told : 0; }
};

// The i-th pair is the same however many there are.
Held many(colour::Taken taken, int pairs, std::uint64_t seed, bool proposed);

}
