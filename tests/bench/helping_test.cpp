// The first helping in parts, and what a hand says while it goes in.
#include "advice_slab.hpp"

#include <doctest/doctest.h>

namespace helping_test {

using namespace advised;

TEST_CASE("after a part of the first helping the rest of it is asked for, and no drops") {
  Slab s;
  const Advice all = s.advice();
  s.add("gum", all.low_g / 2);
  const Advice rest = s.advice();
  CHECK(rest.kind == Advice::first_helping);
  CHECK(rest.rest);
  CHECK(rest.high_g < all.high_g);
  CHECK(rest.high_g > all.high_g - all.low_g / 2 * 1.3);
  s.add("gum", all.low_g / 2 + 0.3);
  CHECK(s.advice().kind != Advice::first_helping);
}

TEST_CASE("of the spoons and drops that were said at first so many less are asked for as went in") {
  Slab s;
  s.of.spoon_mL = 5;
  const double all_mL = bench::mL_of(s.advice().amount, s.of);
  for (double in_mL = 0; in_mL < 0.9 * all_mL; in_mL += all_mL / 5) {
    if (in_mL > 0) s.add("gum", all_mL / 5 * s.of.g_per_mL);
    const Advice rest = s.advice();
    CAPTURE(in_mL);
    REQUIRE(rest.kind == Advice::first_helping);
    CHECK(bench::mL_of(rest.amount, s.of) + in_mL == doctest::Approx(all_mL).epsilon(0.1));
  }
}

TEST_CASE("paint felt to be stiff while hardly any binder is in wants the rest of its helping") {
  Slab s;
  s.add("gum", 0.1);
  s.feel(Feel::wont_move);
  CHECK(s.advice().kind == Advice::first_helping);
  CHECK(s.advice().rest);
  s.add("gum", 0.9 * s.advice().high_g);
  s.feel(Feel::wont_move);
  CHECK(s.advice().kind != Advice::first_helping);
}

TEST_CASE("while a pass runs the rest of what was asked for is asked for, until work goes on") {
  Slab s;
  s.add("gum", 5);
  s.mull(120);
  s.w.put(batch, StageBegan{Stage::mulling});
  s.w.wait(60);
  s.feel(Feel::too_sticky);
  const Advice said = s.advice();
  REQUIRE(said.kind == Advice::add_drops);
  REQUIRE(bench::mL_of(said.amount, s.of) > 6 * s.of.drop_mL);
  s.add("gum", 5 * s.of.drop_mL * s.of.g_per_mL);
  const Advice rest = s.advice();
  CHECK(rest.kind == Advice::add_drops);
  CHECK(bench::mL_of(rest.amount, s.of) < bench::mL_of(said.amount, s.of));
  s.w.wait(30);
  s.w.put(batch, Noted{"mulled on"});
  CHECK(s.advice().kind == Advice::mull_and_judge);
}

}
