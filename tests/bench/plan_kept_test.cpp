// What of a plan goes into the batch that is begun.
#include "bench/pads_shared.hpp"
#include "hands.hpp"

namespace plan_kept_test {

using namespace bench;
using hands::Hands;

TEST_CASE("a blend of which nobody said how much is begun with its pigments in the plan") {
  Hands h;
  for (const char* pad : {"pigment pb28", "another_pigment"}) h.tap(pad);
  h.give(Text{{SharedPad::search, ""}, "ultramarine"});
  h.tap("pigment pb29");
  h.tap("begin");
  const auto to_come = h.slab().to_come;
  REQUIRE(to_come.size() == 2);
  for (const ToComeView& one : to_come) CHECK_FALSE(one.g);
}

TEST_CASE("more than the jar holds is no pigment that was weighed: it is to come") {
  Hands h;
  for (const char* pad : {"shelf", "card pb28", "jars", "left_g"}) h.tap(pad);
  h.type("4");
  for (const char* pad : {"to_card", "plan", "pigment pb28", "weigh"}) h.tap(pad);
  h.type("12");
  h.wait(120);
  h.tap("begin");
  CHECK(h.b.folded->standing.pigment_g.value == 0);
  const auto to_come = h.slab().to_come;
  REQUIRE(to_come.size() == 1);
  CHECK(to_come[0].g == doctest::Approx(12));
}

}
