// What is kept on this device and nowhere else, where no folder carries it on: a browser's store.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// It is asked for after so long (common practice, no source).
inline constexpr std::int64_t hand_on_ms = 7 * session::a_day_ms;

// When the first line was written here that is in no pack and no copy; absent: all of them are, or
// they lie in a folder. Wall clock.
std::optional<std::int64_t> here_alone_since(const Bench& bench);

}
