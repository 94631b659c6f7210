// What is left out of the sums says why, each in its own words.
#include "make.hpp"
#include "words/session_says.hpp"

#include <doctest/doctest.h>

namespace left_out_test {

using namespace session;
using doctest::Approx;
using Say = words::SessionSay;

namespace {

constexpr const char* batch = "7f3a91c2";

make::Writer bottled() {
  make::Writer w;
  w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
  w.card(make::dropper("bulb", 0.048, 0.004, CardKind::binder));
  w.put(batch, Opened{"Blue"});
  return w;
}

words::Error only_warning(const make::Writer& w) {
  const auto warnings = make::folded({w.log}, batch).warnings;
  REQUIRE(warnings.size() == 1);
  REQUIRE(warnings[0].why);
  return *warnings[0].why;
}

}

TEST_CASE("a bottle that lost less than was weighed out of it says both") {
  make::Writer w = bottled();
  w.put(batch, BottleWeighed{"gum", 80});
  w.put(batch, Added{"gum", Unit::g, 2, ""});
  w.put(batch, BottleWeighed{"gum", 79});
  CHECK(only_warning(w) ==
        words::Error{Say::bottle_lost_less, {words::Number(1, 1), words::Number(2, 1)}});
}

TEST_CASE(
    "a bottle weighed twice with nothing counted between says that the second tells nothing") {
  make::Writer w = bottled();
  w.put(batch, BottleWeighed{"gum", 80});
  CHECK(make::folded({w.log}, batch).warnings.empty());
  const Ref second = w.put(batch, BottleWeighed{"gum", 80});
  CHECK(only_warning(w) == words::Error{Say::bottle_unchanged, {}});
  CHECK(make::folded({w.log}, batch).warnings[0].ref == second);
  w.put(batch, BottleWeighed{"gum", 78.5});
  CHECK(make::folded({w.log}, batch).warnings.size() == 2);
  CHECK(make::folded({w.log}, batch).warnings[1].why ==
        words::Error{Say::bottle_uncounted, {words::Number(1.5, 1)}});
  // From the last of them on it is told what the drops weighed: that one was of use.
  w.put(batch, Added{"gum", Unit::drops, 10, "bulb"});
  w.put(batch, BottleWeighed{"gum", 78});
  CHECK(make::folded({w.log}, batch).totals.at(0).grams.value == Approx(0.5));
  CHECK(only_warning(w) == words::Error{Say::bottle_unchanged, {}});
}

TEST_CASE("a tool is nothing that goes in, by weight or by drops") {
  make::Writer w = bottled();
  w.put(batch, Added{"bulb", Unit::g, 3, ""});
  CHECK(only_warning(w) == words::Error{Say::card_is_a_tool, {"green bulb"}});
  CHECK(make::folded({w.log}, batch).totals.empty());
  w.put(batch, Added{"bulb", Unit::drops, 3, "bulb"});
  CHECK(make::folded({w.log}, batch).warnings.at(1).why ==
        words::Error{Say::card_is_a_tool, {"green bulb"}});
}

TEST_CASE("a batch opened without a name is said, and summed") {
  make::Writer w;
  w.put(batch, Opened{"  "});
  const Batch b = make::folded({w.log}, batch);
  CHECK(b.warnings.at(0).kind == WarningKind::nameless);
  CHECK_FALSE(leaves_out(b.warnings[0].kind));
}

}
