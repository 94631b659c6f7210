// Digits by uncertainty against the guide that says so.
#include "paint/digits.hpp"

#include "published/row.hpp"

#include <doctest/doctest.h>

#include <string>

namespace digits_test {

using namespace paint;
using namespace published;

namespace {

const Source gum = printed("JCGM 100:2008 (GUM) 7.2.6");
const std::string text_only = "text turned back into a number: rounding of a double";

}

TEST_CASE("GUM 7.2.6: y = 10.057 62 ohm with u = 27 mohm is given as 10.058 ohm") {
  const Shown y = *shown({10.05762, 0.027 * 0.027, {}});
  CHECK(y.value == "10.058");
  check({"digits/shown", "value to the digits of u, ohm", gum, 10.058, std::stod(y.value), 1e-12,
         text_only});
}

TEST_CASE("GUM 7.2.6: 28.05 kHz is rounded to 28 kHz, two digits") {
  const Shown u = *shown({0, 28.05 * 28.05, {}});
  CHECK(u.uncertainty == "28");
  check({"digits/shown", "uncertainty to two digits, kHz", gum, 28, std::stod(u.uncertainty), 1e-12,
         text_only});
}

TEST_CASE("Eurachem A1: 1002.7 mg/L with u 0.9") {
  // 100.28 (0.05) mg of purity 0.9999 (0.000058) in 100.0 (0.07) mL; printed with one decimal.
  const Amount mass{100.28, 0.05 * 0.05, {}}, purity{0.9999, 0.000058 * 0.000058, {}};
  const Amount volume{0.1000, 0.00007 * 0.00007, {}};
  const Shown text = *shown(quotient(product(mass, purity), volume), 1);
  CHECK(text.value == "1002.7");
  CHECK(text.uncertainty == "0.9");
  check({"digits/shown", "concentration to one digit of u, mg/L",
         printed("Eurachem/CITAC guide CG 4, example A1"), 1002.7, std::stod(text.value), 1e-9,
         text_only});
}

}
