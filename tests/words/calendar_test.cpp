#include "words/calendar.hpp"

#include <doctest/doctest.h>

#include <limits>

using namespace words;

namespace {

constexpr std::int64_t a_day_ms = 86'400'000;

bool is_leap(std::int64_t year) { return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0); }

// The day after, by the rule that every almanac has.
Day after(Day d) {
  constexpr int days[]{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  if (d.day < days[d.month - 1] + (d.month == 2 && is_leap(d.year) ? 1 : 0))
    return {d.year, d.month, d.day + 1};
  return d.month < 12 ? Day{d.year, d.month + 1, 1} : Day{d.year + 1, 1, 1};
}

}

// Checked against GNU date: date -ud 2026-11-25 +%s / 86400.
TEST_CASE("days since 1970") {
  CHECK(days_of("1970-01-01") == 0);
  CHECK(days_of("2000-02-29") == 11016);
  CHECK(days_of("2026-11-25") == 20782);
  CHECK(days_of("2100-03-01") == 47541);
  CHECK(days_of("9999-12-31") == 2932896);
  CHECK(date_of(20782) == "2026-11-25");
  CHECK(date_of(2932896) == "9999-12-31");
  CHECK(date_of(-719162) == "0001-01-01");
  CHECK(date_of(-719528) == "0000-01-01");
  CHECK(date_of(-719529) == "-001-12-31");
}

TEST_CASE("every day reads back as it was written, one after the other") {
  for (std::int64_t day = 0; day < 150000; ++day) REQUIRE(days_of(date_of(day)) == day);
}

// From a year before the first one, over every rule for leap years, to long after the last that has
// four digits.
TEST_CASE("one day follows the other") {
  std::int64_t n = -719528 - 366; // the first of the year 0, and a year and a day before it
  Day day = day_of(n * a_day_ms, 0);
  CHECK(day == Day{-2, 12, 31}); // 0 has 366 days, -1 has 365
  for (; n < 3'000'000; ++n) {
    const Day next = day_of((n + 1) * a_day_ms, 0);
    if (!(next == after(day))) FAIL("after day " << n);
    day = next;
  }
  CHECK(day == Day{10183, 9, 21});
}

TEST_CASE("what is no date") {
  for (const char* text :
       {"", "2026", "2026-2-3", "2026-13-01", "2026-00-10", "2026-01-00", "2026-02-30",
        "2026-04-31", "2025-02-29", "2100-02-29", "1969-12-31", "0001-01-01", "2026-11-2x",
        "2026-1x-20", "-026-11-20", "2026/11/25", "26-11-2025", "2026-11-250"})
    CHECK_FALSE_MESSAGE(days_of(text), text);
}

TEST_CASE("the day by the clock on the wall") {
  CHECK(day_number(0, 0) == 0);
  CHECK(day_number(-1, 0) == -1);
  CHECK(day_number(a_day_ms - 1, 60) == 1);
  CHECK(day_number(0, -60) == -1);
  CHECK(day_of(1795647600000, 0) == Day{2026, 11, 25}); // 23:00
  CHECK(day_of(1795647600000, 60) == Day{2026, 11, 26});
  CHECK(day_of(-1, 0) == Day{1969, 12, 31});
}

TEST_CASE("the clock on the wall") {
  const WallTime before = wall_time(-1, -90);
  CHECK(before.day == Day{1969, 12, 31});
  CHECK(before.hour == 22);
  CHECK(before.minute == 29);
  CHECK(before.second == 59);
  CHECK(wall_time(951782400000, 0).day == Day{2000, 2, 29});
  CHECK(wall_time(951782400000, -1).day == Day{2000, 2, 28});
}

// Any number may stand in a file.
TEST_CASE("there is a day for every number") {
  CHECK(day_of(std::numeric_limits<std::int64_t>::max(), 0) == Day{292278994, 8, 17});
  CHECK(day_of(std::numeric_limits<std::int64_t>::min(), 0) == Day{-292275055, 5, 16});
}
