// Published worked examples of combined uncertainty.
#include "paint/amount.hpp"
#include "published/about.hpp"

#include <doctest/doctest.h>

using namespace paint;

TEST_CASE("JCGM 100:2008 H.1: end gauge, six components make 32 nm") {
  // As printed, the components are rounded to 2 to 5 figures and the result to 2: half a nm.
  Amount length = exact(0);
  for (double u : {25.0, 16.599, 6.7, 5.8, 3.9, 2.887}) length = length + Amount{0, u * u, {}};
  CHECK(uncertainty(length) == within(32, 0.5));
}

TEST_CASE("Eurachem A1: cadmium standard, 1002.7 mg/L with u 0.9") {
  const Amount mass{100.28, 0.05 * 0.05, {}};
  const Amount purity{0.9999, 0.000058 * 0.000058, {}};
  const Amount volume{100.0, 0.07 * 0.07, {}};
  const Amount c = scaled(quotient(product(mass, purity), volume), 1000);
  // Half of the last printed figure.
  CHECK(c.value == within(1002.7, 0.05));
  CHECK(uncertainty(c) == within(0.9, 0.05));
}

TEST_CASE("JCGM 100:2008 5.2.2, example: ten resistors, one standard of 100 mohm make 1 ohm") {
  // From memory of the example. Exact: shares of one tool add by value.
  Amount series = exact(0);
  for (int i = 0; i < 10; ++i) series = series + Amount{1000, 0, {{"standard", 0.1}}};
  CHECK(series.value == 10000);
  CHECK(uncertainty(series) == doctest::Approx(1.0));
}
