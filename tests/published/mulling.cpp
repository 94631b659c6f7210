// Fineness and its decline against gauges, tables of counts and practice.
#include "paint/mulling.hpp"

#include "published/row.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <string>

using namespace paint;
using published::check;
using published::Source;

TEST_CASE("the Hegman scale as an encyclopaedia prints it") {
  constexpr std::array um{101.6, 88.9, 76.2, 63.5, 50.8, 38.1, 25.4, 12.7, 0.0};
  for (std::size_t n = 0; n < um.size(); ++n) {
    const auto hegman = static_cast<double>(n);
    check({"Hegman " + std::to_string(n) + " in um", "encyclopaedia, Hegman gauge (ASTM D1210)",
           Source::published, um[n], *um_of_hegman(hegman), 1e-9, "exact"});
  }
  check({"38.1 um in Hegman units", "encyclopaedia, Hegman gauge (ASTM D1210)", Source::published,
         5, *hegman_of_um(38.1), 1e-9, "exact"});
}

TEST_CASE("limits of a count: Garwood 1936") {
  const std::string table = "exact 95 % limits of a Poisson count (Garwood 1936), from memory";
  const std::string why = "Byar's approximation";
  check({"upper limit of 0 specks", table, Source::from_memory, 3.689, specks_counted(0)->high,
         0.03, why});
  check({"lower limit of 10 specks", table, Source::from_memory, 4.795, specks_counted(10)->low,
         0.02, why});
  check({"upper limit of 10 specks", table, Source::from_memory, 18.39, specks_counted(10)->high,
         0.02, why});
}

TEST_CASE("first order: what is left, and how long until then") {
  const std::string exercise = "general chemistry exercise: k 0.0150/min, 2 h";
  check({"share left after 120 steps", exercise, Source::published, 0.165,
         *after_passes(1, 0.0150, 0, 120), 0.0005, "three digits printed"});
  const Decline d{{0.0150, 0.0150, 0.0150}, 0};
  check({"steps until 0.165 is left", exercise, Source::published, 120,
         passes_needed({1, 1, 1}, 0.165, d)->middle, 0.2, "0.165 is rounded to three digits"});
}

TEST_CASE("a rate from two readings, as another exercise has it") {
  // 0.0300 M at 200 min and 0.0200 M at 400 min: k = 0.0020273 per minute.
  const auto reading = [](double at, double value) {
    return Reading{at, {value * 0.99, value, value * 1.01}};
  };
  check({"k from two readings, per step", "general chemistry exercise: 0.0300 to 0.0200 in 200 min",
         Source::published, 0.0020273,
         decline_from({reading(200, 0.0300), reading(400, 0.0200)})->per_pass.middle, 1e-7,
         "five digits printed"});
}

TEST_CASE("how finely a gauge is read") {
  const std::string iso = "ISO 1524: to 5, 2 and 1 um, from memory";
  check({"half-width of a reading on a gauge of 100 um", iso, Source::from_memory, 5,
         gauge_read(40, 100)->high - 40, 1e-12, "exact"});
  check({"half-width of a reading on a gauge of 50 um", iso, Source::from_memory, 2,
         gauge_read(40, 50)->high - 40, 1e-12, "exact"});
  check({"half-width of a reading on a gauge of 25 um", iso, Source::from_memory, 1,
         gauge_read(20, 25)->high - 20, 1e-12, "exact"});
}

TEST_CASE("from many specks to none in the time makers mull") {
  // Cobalt, ultramarine and earths 5 to 20 minutes, organics 20 to 60; passes of 2 to 5 minutes.
  const std::string practice = "common practice, no source";
  const auto minutes = [](PigmentClass family) {
    const Fineness many{60, 60, 60};
    const Interval n = *passes_needed(many, 1, *decline_guess(family));
    return n.middle * std::sqrt(2.0 * 5.0);
  };
  check({"minutes of mulling, minerals", practice, Source::common_practice, 12.5,
         minutes(PigmentClass::mineral), 7.5, "5 to 20 min"});
  check({"minutes of mulling, organics", practice, Source::common_practice, 40,
         minutes(PigmentClass::organic), 20, "20 to 60 min"});
  check({"specks in a dot called clean, at most", practice, Source::common_practice, 1,
         specks_said(SpeckWord::none).high, 0, "chosen"});
}
