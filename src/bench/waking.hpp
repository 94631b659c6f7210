// When the program has something to do though nobody touches it.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// In ms of the clock that runs: the next second of a pass, a bell, the end of a notice, the minute.
std::optional<std::int64_t> wake_at(const Bench& bench, const Now& now);

}
