#include "session/date.hpp"

#include <doctest/doctest.h>

using namespace session;

// Checked against GNU date: date -ud 2026-11-25 +%s / 86400.
TEST_CASE("days since 1970") {
  CHECK(days_of("1970-01-01") == 0);
  CHECK(days_of("2000-02-29") == 11016);
  CHECK(days_of("2026-11-25") == 20782);
  CHECK(days_of("2100-03-01") == 47541);
  CHECK(date_of(20782) == "2026-11-25");
}

TEST_CASE("every day reads back as it was written, one after the other") {
  for (std::int64_t day = 0; day < 150000; ++day) REQUIRE(days_of(date_of(day)) == day);
}

TEST_CASE("what is no date") {
  for (const char* text : {"", "2026", "2026-2-3", "2026-13-01", "2026-00-10", "2026-02-30",
                           "2025-02-29", "1969-12-31", "2026-11-2x", "2026/11/25", "26-11-2025"})
    CHECK_FALSE(days_of(text));
}

TEST_CASE("the day by the clock on the wall") {
  CHECK(day_of(0, 0) == 0);
  CHECK(day_of(-1, 0) == -1);
  CHECK(day_of(86'400'000 - 1, 60) == 1);
  CHECK(day_of(0, -60) == -1);
}
