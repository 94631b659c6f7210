// How dense a monitor is, from what it says of itself.
#include "window/window.hpp"

#include <doctest/doctest.h>

TEST_CASE("a monitor that is turned while it is used is as dense as before") {
  const auto lying = window::px_per_mm_of({1280, 800}, {218, 136});
  REQUIRE(lying);
  CHECK(*lying == doctest::Approx(1280 / 218.0));
  for (const window::Extent mm : {window::Extent{218, 136}, window::Extent{136, 218}})
    CHECK(window::px_per_mm_of({800, 1280}, mm) == lying);
}

TEST_CASE("a size that no display has is none") {
  CHECK_FALSE(window::px_per_mm_of({1280, 800}, {0, 0}));
  CHECK_FALSE(window::px_per_mm_of({0, 0}, {218, 136}));
  CHECK_FALSE(window::px_per_mm_of({1280, 800}, {16, 9})); // some say their shape
  CHECK_FALSE(window::px_per_mm_of({1280, 800}, {1600, 900}));
}
