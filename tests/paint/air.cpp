#include "paint/air.hpp"

#include "paint/air_random.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace air_test {

using namespace paint;
using Say = words::PaintSay;

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

TEST_CASE("warmer air can hold more") {
  CHECK(rc::check("saturation rises", [] {
    const double t = any::between(0, 99.9);
    RC_ASSERT(*saturation_kPa(t + 0.1) > *saturation_kPa(t));
  }));
}

}
