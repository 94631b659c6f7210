#include "paint/air.hpp"

#include "paint/air_random.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace paint;
using words::Say;

namespace {
const double none = std::nan("");
const double endless = std::numeric_limits<double>::infinity();
}

TEST_CASE("a room is 5 to 45 °C and 0 to 100 %") {
  CHECK(room(21, 50)->humidity == doctest::Approx(0.5));
  CHECK(room(5, 0).has_value());
  CHECK(room(45, 100).has_value());
  CHECK(room(4.9, 50).error().what == Say::temperature_out_of_range);
  CHECK(room(45.1, 50).error().what == Say::temperature_out_of_range);
  CHECK(room(21, -0.1).error().what == Say::humidity_out_of_range);
  CHECK(room(21, 100.1).error().what == Say::humidity_out_of_range);
  for (double bad : {none, endless, -endless}) {
    CHECK(room(bad, 50).error().what == Say::not_a_number);
    CHECK(room(21, bad).error().what == Say::not_a_number);
  }
  CHECK(words::message(room(60, 50).error()) == "Between 5 and 45 °C, please: 60.0 is outside.");
}

TEST_CASE("saturation outside 0 to 100 °C is an error") {
  for (double t : {-0.1, 100.1})
    CHECK(saturation_kPa(t).error().what == Say::temperature_out_of_range);
  for (double t : {none, endless}) CHECK(saturation_kPa(t).error().what == Say::not_a_number);
}

TEST_CASE("humidity ratio and dew point refuse what is no room, no pressure, and frost") {
  CHECK(humidity_ratio({none, 0.5}).error().what == Say::not_a_number);
  CHECK(humidity_ratio({20, 1.2}).error().what == Say::humidity_out_of_range);
  for (double p : {59.0, 111.0, none, endless})
    CHECK(humidity_ratio({20, 0.5}, p).error().what == Say::pressure_out_of_range);
  CHECK(dew_point({50, 0.5}).error().what == Say::temperature_out_of_range);
  CHECK(dew_point({20, 0}).error().what == Say::frost_not_dew);
  CHECK(dew_point({5, 0.5}).error().what == Say::frost_not_dew);
  CHECK(words::message(dew_point({5, 0.5}).error()) ==
        "This air is so dry that a cold glass gets frost, not dew.");
}

TEST_CASE("warmer air can hold more, and dry air holds nothing") {
  CHECK(rc::check("saturation rises", [] {
    const double t = any::between(0, 99.9);
    RC_ASSERT(*saturation_kPa(t + 0.1) > *saturation_kPa(t));
  }));
  CHECK(rc::check("humidity ratio rises with humidity and with height", [] {
    const Room air{any::between(5, 45), any::between(0, 0.99)};
    RC_ASSERT(*humidity_ratio({air.celsius, air.humidity + 0.01}) > *humidity_ratio(air));
    RC_ASSERT(*humidity_ratio(air, 80) >= *humidity_ratio(air, 100));
    RC_ASSERT(*humidity_ratio({air.celsius, 0}) == 0.0);
  }));
}

TEST_CASE("the dew point is where the vapour that is there saturates") {
  CHECK(rc::check("dew", [] {
    const Room air{any::between(5, 45), any::between(0.01, 1)};
    const auto dew = dew_point(air);
    if (!dew) RC_DISCARD("frost");
    RC_ASSERT(*dew <= air.celsius + 1e-9);
    const double there = air.humidity * *saturation_kPa(air.celsius);
    // 1e-9 °C is 1e-10 of the pressure.
    RC_ASSERT(std::abs(*saturation_kPa(std::max(0.0, *dew)) / there - 1) < 1e-9);
  }));
  CHECK(*dew_point({20, 1}) == doctest::Approx(20));
}
