#include "commands/range.hpp"

#include <doctest/doctest.h>

namespace range_test {

namespace {

std::string shown(const std::string& pigment) {
  const auto text = commands::ranges_shown({}, pigment, false);
  REQUIRE(text);
  return *text;
}

bool says(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}

TEST_CASE("a pigment is found by a part of its name and by its other names, whatever the case") {
  const std::string ochres = shown("ochre");
  CHECK(says(ochres, "Yellow ochre"));
  CHECK(says(ochres, "Gold ochre"));
  CHECK_FALSE(says(ochres, "Cobalt blue"));
  CHECK(says(shown("LIMONITE"), "Yellow ochre"));
}

TEST_CASE("where one is called just so, it alone is meant") {
  const std::string one = shown("Yellow ochre");
  CHECK(says(one, "Yellow ochre"));
  CHECK_FALSE(says(one, "Gold ochre"));
}

TEST_CASE("a pigment that nobody knows is said to be none") {
  CHECK_FALSE(commands::ranges_shown({}, std::string("no such powder"), false));
}

}
