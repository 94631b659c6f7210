// The two sources of Now: this computer, and a script.
#pragma once

#include "bench/bench.hpp"
#include "words/error.hpp"

#include <cstdint>
#include <random>
#include <string_view>

namespace commands {

// The computer's clocks (run_ms counts suspend where the system can) and random ids.
bench::Now real_now();

// A clock that moves only when told to, and ids that are the same for the same seed.
class ScriptedClock {
public:
  explicit ScriptedClock(std::uint32_t seed) : ids_(seed) {}
  ScriptedClock(const ScriptedClock&) = delete; // the Now it gives draws from it
  ScriptedClock& operator=(const ScriptedClock&) = delete;

  void set_wall(std::int64_t wall_ms, int utc_offset_min) {
    wall_ms_ = wall_ms;
    utc_offset_min_ = utc_offset_min;
  }
  void pass(std::int64_t ms) {
    wall_ms_ += ms;
    run_ms_ += ms;
  }
  std::int64_t run_ms() const { return run_ms_; }
  std::uint32_t fresh() { return static_cast<std::uint32_t>(ids_()); }
  bench::Now now() {
    return {wall_ms_, run_ms_, utc_offset_min_, [this] { return fresh(); }};
  }

private:
  std::mt19937 ids_;
  std::int64_t wall_ms_ = 0;
  std::int64_t run_ms_ = 0;
  int utc_offset_min_ = 0;
};

struct Moment {
  std::int64_t wall_ms = 0; // since 1970
  int utc_offset_min = 0;
  bool operator==(const Moment&) const = default;
};

// "2026-11-20T14:02:00+01:00" or with Z; years 1970 to 9999. Error: not_a_moment.
words::Result<Moment> moment(std::string_view text);

}
