// Paint of earlier batches as a material of this one, wet from the jar or dry from the pans.
#pragma once

#include "bench/bench.hpp"

namespace bench {

inline constexpr std::size_t most_paints = 4;

// Puts into bench.paints those of the latest batches that have some, but this one; the latest
// first.
void find_paints(Bench& bench);

bool lies(const Bench& bench, session::Place place); // any of the batch on the slab

}
