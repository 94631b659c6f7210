#include "words/error.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <locale>

using namespace words;

TEST_CASE("arguments go where the pattern names them") {
  CHECK(say(Say::humidity_out_of_range, {"140"}) ==
        "Humidity lies between 0 and 100 %: 140 does not.");
  CHECK(say(Say::amount_too_large, {"9000 g", "5000 g"}).find("5000 g") != std::string::npos);
  CHECK(say(Say::humidity_out_of_range) == "Humidity lies between 0 and 100 %:  does not.");
  CHECK(say(Say::humidity_out_of_range, {"{0}"}).find("{0}") != std::string::npos);
}

TEST_CASE("an error says the same as its sentence") {
  CHECK(message({Say::not_a_number, {"1.2.3"}}) == say(Say::not_a_number, {"1.2.3"}));
  CHECK(message({Say::none, {}}).empty());
}

TEST_CASE("numbers have the digits asked for, and no minus before nothing") {
  CHECK(fixed(2.825, 2) == "2.83");
  CHECK(fixed(12, 1) == "12.0");
  CHECK(fixed(-0.04, 1) == "0.0");
  CHECK(fixed(-0.06, 1) == "-0.1");
  CHECK(fixed(1e300, 0).size() == 301);
  CHECK(fixed(std::nan(""), 1) == "nan");
}

TEST_CASE("numbers are written with a point whatever the language") {
  struct German : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
  };
  const std::locale before = std::locale::global(std::locale(std::locale(), new German));
  const std::string text = fixed(12345.5, 1);
  std::locale::global(before);
  CHECK(text == "12345.5");
}
