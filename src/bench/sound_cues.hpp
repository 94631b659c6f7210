// What is heard of a step: eyes are on the slab.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// After a step: a click for a tap that counted (each kind of material its own), a thud for what did
// not or came to nothing, a bell when a pass has lasted its time. Remembers in `bench` that it has
// rung.
std::vector<SoundCue> cues_of(Bench& bench, const Effects& effects,
                              const std::optional<PadId>& tapped, bool not_counted);

// run_ms at which the bell is due, on whatever screen; absent while nothing is to ring.
std::optional<std::int64_t> bell_at(const Bench& bench);

}
