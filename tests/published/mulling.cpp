// Fineness and its decline against gauges, tables of counts and practice.
#include "paint/mulling.hpp"

#include "published/row.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <string>

using namespace paint;
using namespace published;

TEST_CASE("the Hegman scale as an encyclopaedia prints it") {
  const Source page = printed("encyclopaedia, Grind gage: 0 is 101.6 um, 12.7 um a unit, 8 is 0");
  constexpr std::array um{101.6, 88.9, 76.2, 63.5, 50.8, 38.1, 25.4, 12.7, 0.0};
  for (std::size_t n = 0; n < um.size(); ++n) {
    const auto hegman = static_cast<double>(n);
    const std::string at = "Hegman " + std::to_string(n);
    check({"mulling/um_of_hegman", "um of a Hegman reading", page, um[n], *um_of_hegman(hegman),
           1e-9, "exact", at});
    check({"mulling/hegman_of_um", "Hegman reading of um", page, hegman, *hegman_of_um(um[n]), 1e-9,
           "exact", at});
  }
}

TEST_CASE("limits of a count: Garwood 1936") {
  const Source scipy = library("scipy 1.10.1, stats.chi2.ppf: Garwood's exact limits");
  const auto row = [&](int specks, double expected, double ours, const std::string& which) {
    check({"mulling/specks_counted", "95 % limit of a count of specks", scipy, expected, ours, 0.03,
           "Byar's approximation", which + " of " + std::to_string(specks)});
  };
  row(0, 3.6889, specks_counted(0)->high, "upper");
  row(3, 8.7673, specks_counted(3)->high, "upper");
  row(10, 4.7954, specks_counted(10)->low, "lower");
  row(10, 18.3904, specks_counted(10)->high, "upper");
  row(100, 81.3640, specks_counted(100)->low, "lower");
  row(100, 121.6268, specks_counted(100)->high, "upper");
}

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

TEST_CASE("how finely a gauge is read") {
  const auto row = [](double gauge, double expected) {
    check({"mulling/gauge_read", "half width of a reading on a gauge, um", remembered("ISO 1524"),
           expected, gauge_read(20, gauge)->high - 20, 1e-12, "exact",
           "gauge of " + words::fixed(gauge, 0) + " um"});
  };
  row(100, 5);
  row(50, 2);
  row(25, 1);
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
