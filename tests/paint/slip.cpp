#include "paint/slip.hpp"

#include <doctest/doctest.h>

namespace slip_test {

using paint::meant;

TEST_CASE("what was meant is one slip of the finger away, and near what is expected") {
  CHECK(meant(84, 8.41, 0.1) == 8.4);        // the point left out
  CHECK(meant(24.96, 249.6, 0.3) == 249.6);  // a place too far
  CHECK(meant(294.6, 249.6, 0.3) == 249.6);  // two swapped
  CHECK(meant(149.6, 249.6, 0.3) == 249.6);  // one wrong
  CHECK(meant(29.6, 249.6, 0.3) == 249.6);   // one left out
  CHECK(meant(2449.6, 249.6, 0.3) == 249.6); // one too many
  CHECK(meant(2496, 249.6, 0.3) == 249.6);   // no point
  CHECK(meant(249.06, 249.6, 0.3) == 249.6); // a nought too many
  CHECK(meant(0, 5, 0.2) == 5.0);
}

TEST_CASE("of several the nearest; what no slip explains was not meant") {
  CHECK(meant(245, 240.2, 6) == 240.0); // not 244 or 241
  CHECK_FALSE(meant(137.2, 249.6, 0.3));
  CHECK_FALSE(meant(-84, 8.4, 1));
  CHECK_FALSE(meant(0.0 / 0.0, 8.4, 1));
}

}
