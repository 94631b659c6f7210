// Right, and short of gum: binder in rounds, each after so much has dried off.
#include "advice_slab.hpp"

#include <doctest/doctest.h>

namespace gum_rounds_test {
using namespace advised;

namespace {

Slab right_by_water() {
  Slab s;
  s.add("gum", 1.6);
  s.add("water", 4);
  s.wet_out();
  s.mull(200);
  s.feel(Feel::right);
  return s;
}

}

TEST_CASE("right and short of gum: how much binder, and how long it is mulled before that") {
  Slab s = right_by_water();
  const Advice advice = s.advice();
  REQUIRE(advice.gum == paint::GumState::too_little);
  CHECK(bench::mL_of(advice.amount, s.of) > 0);
  CHECK(advice.dry_min > 0);
  CHECK(bench::mL_of(advice.amount, s.of) < 0.25 * s.folded().standing.liquid_mL_now.value);
  s.mull(240); // as it says: then there is less of it to come, and in the end none
  CHECK(s.advice().dry_min < advice.dry_min);
  for (int pass = 0; pass < 8 && s.advice().dry_min > 0; ++pass) s.mull(240);
  CHECK(s.advice().dry_min == 0); // and then it is asked for
  CHECK(bench::mL_of(s.advice().amount, s.of) > 0);
}

TEST_CASE(
    "right and short of gum: what went in of a round is taken off, and rounds come to an end") {
  Slab s = right_by_water();
  CHECK(s.advice().several);
  int rounds = 0;
  for (; rounds < 10 && s.advice().gum == paint::GumState::too_little; ++rounds) {
    CAPTURE(rounds);
    for (int pass = 0; pass < 5 && s.advice().dry_min > 0; ++pass)
      s.mull(60.0 * s.advice().dry_min);
    REQUIRE(s.advice().dry_min == 0);
    const double asked_mL = bench::mL_of(s.advice().amount, s.of);
    s.add("gum", asked_mL / 2 * s.of.g_per_mL);
    const Advice rest = s.advice();
    REQUIRE(rest.kind == Advice::add_drops);
    CHECK_FALSE(rest.water);
    const double rest_mL = bench::mL_of(rest.amount, s.of);
    CHECK(rest_mL <= 0.6 * asked_mL + s.of.drop_mL);
    s.add("gum", rest_mL * s.of.g_per_mL);
    CHECK(s.advice().kind != Advice::add_drops);
    s.mull(200);
    s.feel(Feel::right);
  }
  CHECK(rounds > 1);
  CHECK(rounds < 10);
}

}
