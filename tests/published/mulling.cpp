// The decline of specks against textbooks and practice.
#include "paint/mulling.hpp"

#include "published/row.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

using namespace paint;
using namespace published;

TEST_CASE("first order: what is left, and how long until then") {
  const Source exercise = printed("general chemistry exercise, first order: k 0.0150/min, 2 h");
  check({"mulling/after_passes", "share left after 120 passes", exercise, 0.165,
         *after_passes(1, 0.0150, 0, 120), 0.0005, "half of the last figure"});
  const Decline d{{0.0150, 0.0150, 0.0150}, 0};
  check({"mulling/passes_needed", "passes until 0.165 is left", exercise, 120,
         passes_needed({1, 1, 1}, 0.165, d)->middle, 0.2, "0.165 is rounded to three digits"});
}

TEST_CASE("a rate from two readings, as another exercise has it") {
  // 0.0300 M at 200 min and 0.0200 M at 400 min.
  const auto reading = [](double at, double value) {
    return GaugeReading{at, {value * 0.99, value, value * 1.01}};
  };
  check({"mulling/decline_from", "k from two readings, per pass",
         printed("general chemistry exercise: 0.0300 to 0.0200 in 200 min"), 0.0020273,
         decline_from({reading(200, 0.0300), reading(400, 0.0200)})->per_pass.middle, 1e-7,
         "five digits printed"});
}

TEST_CASE("from many specks to none in the time makers mull") {
  // Cobalt, ultramarine and earths 5 to 20 minutes, organics 20 to 60; passes of 2 to 5 minutes.
  const auto minutes = [](PigmentClass family) {
    const Fineness many{60, 60, 60};
    return passes_needed(many, 1, *decline_guess(family))->middle * std::sqrt(2.0 * 5.0);
  };
  check({"mulling/decline_guess", "minutes of mulling, minerals", practice(), 12.5,
         minutes(PigmentClass::mineral), 7.5, "5 to 20 min"});
  check({"mulling/decline_guess", "minutes of mulling, organics", practice(), 40,
         minutes(PigmentClass::organic), 20, "20 to 60 min"});
}
