// Digits by uncertainty against the guide that says so.
#include "paint/digits.hpp"

#include "published/row.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace paint;
using published::check;
using published::Source;

namespace {

const std::string gum = "JCGM 100:2008 (GUM) 7.2.6";
const std::string text_only = "text turned back into a number: rounding of a double";

}

TEST_CASE("GUM 7.2.6: y = 10.057 62 ohm with u = 27 mohm is given as 10.058 ohm") {
  const Shown y = *shown({10.05762, 0.027 * 0.027, {}});
  CHECK(y.value == "10.058");
  check({"value to the digits of u, ohm", gum, Source::published, 10.058, std::stod(y.value), 1e-12,
         text_only});
}

TEST_CASE("GUM 7.2.6: 28.05 kHz is rounded to 28 kHz, two digits") {
  const Shown u = *shown({0, 28.05 * 28.05, {}});
  CHECK(u.uncertainty == "28");
  check({"uncertainty to two digits, kHz", gum, Source::published, 28, std::stod(u.uncertainty),
         1e-12, text_only});
}

TEST_CASE("Eurachem A1: 1002.7 mg/L with u 0.9") {
  // 100.28 (0.05) mg of purity 0.9999 (0.000058) in 100.0 (0.07) mL; printed with one decimal.
  const Amount mass{100.28, 0.05 * 0.05, {}}, purity{0.9999, 0.000058 * 0.000058, {}};
  const Amount volume{0.1000, 0.00007 * 0.00007, {}};
  const Amount c = quotient(product(mass, purity), volume);
  const Shown text = *shown(c, 1);
  CHECK(text.value == "1002.7");
  CHECK(text.uncertainty == "0.9");
  check({"concentration to one digit of u, mg/L", "Eurachem/CITAC CG 4, example A1",
         Source::published, 1002.7, std::stod(text.value), 1e-9, text_only});
}

TEST_CASE("digits of practice: a kitchen scale shows tenths, one drop moves the ratio") {
  // One drop of 0.035 g to 10 g of pigment is 0.035 in the ratio, which two decimals show.
  const std::string practice = "common practice, no source";
  check({"decimals of the live ratio, a drop of 0.035 g to 10 g", practice, Source::common_practice,
         2, static_cast<double>(*decimals_to_step(0.035)), 0, "a count"});
  check({"decimals of 12 g on a kitchen scale of 0.1 g", practice, Source::common_practice, 1,
         static_cast<double>(decimals_of_grams(12)), 0, "a count"});
  check({"19.5 degrees C as a thermometer shows it", practice, Source::common_practice, 19.5,
         std::stod(written(19.5, decimals_as_read(19.5))), 0, "as read"});
  check({"one drop of 0.035 g, u 0.007 g, in g", practice, Source::common_practice, 0.04,
         std::stod(*grams_written({0.035, 0.007 * 0.007, {}})), 0, "two decimals below 1 g"});
}
