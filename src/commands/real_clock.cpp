#include "commands/clock.hpp"

#include <chrono>
#include <ctime>

namespace commands {

namespace {

// Runs on while the computer sleeps, where the system has such a clock: paint dries meanwhile.
std::int64_t running_ms() {
#ifdef CLOCK_BOOTTIME
  constexpr clockid_t running = CLOCK_BOOTTIME;
#else
  constexpr clockid_t running = CLOCK_MONOTONIC;
#endif
  timespec t{};
  clock_gettime(running, &t);
  return std::int64_t{t.tv_sec} * 1000 + t.tv_nsec / 1000000;
}

int utc_offset_min(std::int64_t wall_ms) {
  const std::time_t seconds = static_cast<std::time_t>(wall_ms / 1000);
  std::tm local{};
  if (!localtime_r(&seconds, &local)) return 0;
  return static_cast<int>(local.tm_gmtoff / 60);
}

}

bench::Now real_now() {
  using namespace std::chrono;
  const auto wall = duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
  return {wall, running_ms(), utc_offset_min(wall),
          [] { return static_cast<std::uint32_t>(std::random_device{}()); }};
}

}
