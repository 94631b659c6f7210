#include "bench/smooth.hpp"

#include <doctest/doctest.h>

namespace smooth_test {

TEST_CASE("flakes are not mulled") {
  bench::SmoothState flakes;
  flakes.mulled = false;
  flakes.dot = session::Specks::many;
  CHECK(bench::smoothness(flakes) == bench::Smoothness::smooth);
}

}
