// What is heard of a step: eyes are on the slab.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// After a step: a click for a tap that counted (each kind of material its own), a thud for what did
// not, a bell when a pass has lasted its time. Remembers in `bench` that it has rung.
std::vector<Heard> heard_of(Bench& bench, const Effects& effects,
                            const std::optional<PadId>& tapped, bool not_counted);

}
