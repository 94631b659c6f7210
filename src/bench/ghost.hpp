// The last good batch of the same paint, to lie under today's trail.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// Where the last batch of the same pigments went that was judged good when dry; else one that left
// the slab feeling right and nobody judged; nothing where there is none among the latest few.
std::vector<session::TrailPoint> ghost_of(Bench& bench, const session::Batch& batch);

// At the end of a step that leaves a batch on the slab.
void find_earlier(Bench& bench);

}
