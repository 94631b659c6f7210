#include "bench/here_alone.hpp"

#include "bench/record.hpp"

#include <algorithm>

namespace bench {

namespace {

// Lines mostly follow each other in time, so that of a session that was handed on only its end is
// looked at.
std::optional<std::int64_t> first_after(const session::Log& log, std::int64_t handed_on) {
  std::optional<std::int64_t> first;
  for (auto line = log.lines.rbegin(); line != log.lines.rend(); ++line) {
    if (tells_the_clock(line->event)) continue;
    if (line->at <= handed_on) break;
    first = line->at;
  }
  return first;
}

}

std::optional<std::int64_t> here_alone_since(const Bench& bench) {
  if (!bench.hands_on || !bench.loaded) return std::nullopt;
  std::optional<std::int64_t> since;
  for (const session::Log& log : bench.logs) {
    if (log.device != bench.sitting.device) continue;
    const auto first = first_after(log, bench.tablet.handed_on);
    if (first) since = std::min(since.value_or(*first), *first);
  }
  return since;
}

}
