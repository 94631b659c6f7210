// The proleptic Gregorian calendar, and the clock on a wall so many minutes east of UTC. Moments
// are ms since 1970, days are counted from 1970-01-01.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace words {

struct Day {
  std::int64_t year = 1970;
  int month = 1, day = 1;
  bool operator==(const Day&) const = default;
};

struct WallTime {
  Day day;
  int hour = 0, minute = 0, second = 0; // the one it lies in
};

WallTime wall_time(std::int64_t ms, int utc_offset_min);
Day day_of(std::int64_t ms, int utc_offset_min);
std::int64_t day_number(std::int64_t ms, int utc_offset_min);

// Of "2026-11-25". Absent for what is no such date; years 1970 to 9999.
std::optional<std::int64_t> days_of(std::string_view date);

// "2026-11-25". Years 0 to 9999 have four digits, others are written as they are.
std::string date_of(std::int64_t days);
std::string date_of(const Day& day);

}
