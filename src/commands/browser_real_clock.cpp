#include "commands/clock.hpp"

#include <chrono>
#include <ctime>
#include <optional>

extern "C" int slabside_was_hidden(); // browser_clock.js

namespace commands {

namespace {

// The browser's running clock stands still in some while the tablet sleeps, and water does not. A
// page that is asleep is hidden: where the wall clock is then further ahead than the running one
// says, it slept. Where it was in sight all the time, somebody has set the clock.
class RunningClock {
public:
  std::int64_t ms(std::int64_t wall_ms) {
    const std::int64_t running = performance_ms();
    const std::int64_t ahead = wall_ms - running;
    const bool hidden = slabside_was_hidden() != 0;
    if (ahead_ && hidden && ahead - *ahead_ >= least_sleep_ms) slept_ms_ += ahead - *ahead_;
    ahead_ = ahead;
    return running + slept_ms_;
  }

private:
  static constexpr std::int64_t least_sleep_ms = 2000; // less is the two clocks' own drift

  static std::int64_t performance_ms() {
    using namespace std::chrono;
    return duration_cast<milliseconds>(steady_clock::now().time_since_epoch()).count();
  }

  std::optional<std::int64_t> ahead_; // of the running clock, as the browser has it
  std::int64_t slept_ms_ = 0;
};

int utc_offset_min(std::int64_t wall_ms) {
  const std::time_t seconds = static_cast<std::time_t>(wall_ms / 1000);
  std::tm local{};
  if (!localtime_r(&seconds, &local)) return 0;
  return static_cast<int>(local.tm_gmtoff / 60);
}

}

bench::Now real_now() {
  using namespace std::chrono;
  static RunningClock running;
  const auto wall = duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
  return {wall, running.ms(wall), utc_offset_min(wall),
          [] { return static_cast<std::uint32_t>(std::random_device{}()); }};
}

}
