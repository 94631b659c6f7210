// The decline of specks against textbooks and practice.
#include "paint/mulling.hpp"

#include "published/row.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

namespace mulling_test {

using namespace paint;
using namespace published;

TEST_CASE("first order: how long until so much is left") {
  const Source exercise = printed("general chemistry exercise, first order: k 0.0150/min, 2 h");
  const Decline d{{0.0150, 0.0150, 0.0150}, 0};
  check({"mulling/passes_needed", "passes until 0.165 is left", exercise, 120,
         passes_needed({1, 1, 1}, 0.165, d)->middle, 0.2, "0.165 is rounded to three digits"});
}

TEST_CASE("from many specks to none in the time makers mull") {
  // Cobalt, ultramarine and earths 5 to 20 minutes, organics 20 to 60; passes of 2 to 5 minutes.
  const auto minutes = [](PigmentClass family) {
    const Fineness many{60, 60, 60};
    return passes_needed(many, 1, *decline_guess(family))->middle * std::sqrt(2.0 * 5.0);
  };
  check({"mulling/decline_guess", "minutes of mulling, minerals", consistent_with(practice()), 12.5,
         minutes(PigmentClass::mineral), 7.5, "5 to 20 min"});
  check({"mulling/decline_guess", "minutes of mulling, organics", consistent_with(practice()), 40,
         minutes(PigmentClass::organic), 20, "20 to 60 min"});
}

}
