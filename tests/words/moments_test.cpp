#include "words/moments.hpp"

#include <doctest/doctest.h>

using namespace words;

// Moments by GNU date: `date -u -d @1795617120`, `date -u -d @-1`, `TZ=UTC-1 date -d @951782400`.
TEST_CASE("a moment as ISO 8601 has it, in the zone given") {
  CHECK(local_time(1795617120000, 60) == "2026-11-25T15:32:00+01:00");
  CHECK(local_time(1795617120999, -210) == "2026-11-25T11:02:00-03:30");
  CHECK(local_time(-1, 0) == "1969-12-31T23:59:59+00:00");
  CHECK(local_time(951782400000, 0) == "2000-02-29T00:00:00+00:00");
  CHECK(local_time(-62167219200000, 0) == "0000-01-01T00:00:00+00:00");
}

TEST_CASE("a time of day to the second it lies in") {
  CHECK(time_to_second(1795617120000, 60) == "15:32:00");
  CHECK(time_to_second(1795617127999, 60) == "15:32:07");
  CHECK(time_to_second(-1, 0) == "23:59:59");
}

TEST_CASE("a date has its year") { CHECK(date(1795617120000, 60) == "25 Nov 2026"); }
