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

}
