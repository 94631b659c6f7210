// What waits to be done about poured paint.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// A verdict is asked for after so many days since the last pour (common practice, no source).
inline constexpr std::array asked_days{1, 3, 10};

struct Due {
  std::string batch;
  enum What { next_layer, verdict } what = next_layer;
  int day = 0;            // of the verdict
  std::int64_t since = 0; // ms since 1970
  bool operator==(const Due&) const = default;
};

// The longest due first. Of several days whose verdict nobody gave the last one counts; a verdict
// given after a day's ask settles it and those before. Nothing is due of pans poured longer ago
// than asks_lapse_ms.
std::vector<Due> due(const Bench& bench, const Now& now);

int verdict_day_due(const Bench& bench, const std::string& batch, const Now& now); // 0: none
bool layer_due(const Bench& bench, const std::string& batch, const Now& now);

}
