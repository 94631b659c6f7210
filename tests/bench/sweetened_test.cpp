// Honey that goes into paint that was right.
#include "advice_slab.hpp"

#include <doctest/doctest.h>

namespace sweetened_test {

using namespace advised;

TEST_CASE("honey in paint that was right is no word of too much: a hand tells") {
  Slab s;
  s.add("gum", 7.5);
  s.w.put(batch, StageBegan{Stage::wetting_out});
  s.w.wait(130);
  s.mull(200);
  s.feel(Feel::right);
  REQUIRE(s.advice().kind != Advice::past_right);
  s.add("honey", 2.5);
  CHECK(s.advice().kind == Advice::mull_and_judge);
  s.add("gum", 3);
  CHECK(s.advice().kind != Advice::mull_and_judge);
}

}
