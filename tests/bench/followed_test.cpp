// What becomes of the paint of somebody who obeys: enough gum and no more, smooth, poured out.
#include "advice_slab.hpp"
#include "bench/pours.hpp"
#include "bench/told_at_slab.hpp"
#include "obeying.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

namespace followed_test {

using namespace advised;

namespace {

double dry_gum(Slab& s) { return s.folded().standing.gum_g.value; }

Feel felt(Slab& s, double wants) {
  const Feel feel = obeying::felt_by_hand(std::log(s.flow() / wants));
  s.feel(feel);
  return feel;
}

void put_in(Slab& s, const Advice& advice) {
  const double mL = bench::advised_mL(advice, s.of, s.known);
  s.add(advice.water ? "water" : "gum", advice.water ? mL : 1.1 * mL);
}

}

TEST_CASE("what dried off while it was mulled comes back as water: an hour brings no more gum") {
  for (const double share : {0.9, 1.0, 1.2}) {
    CAPTURE(share);
    Slab s;
    const double wants = share * s.middle();
    s.add("gum", 1.1 * wants * s.folded().standing.pigment_mL.value);
    const double at_right = dry_gum(s);
    bool water = false;
    for (int pass = 0; pass < 18; ++pass) {
      s.mull(210);
      felt(s, wants);
      const Advice advice = s.advice();
      if (advice.kind != Advice::add_drops) continue;
      water |= advice.water;
      put_in(s, advice);
    }
    CHECK(water);
    CHECK(dry_gum(s) < 1.08 * at_right);
    CHECK(s.flow() > 0.75 * wants);
  }
}

TEST_CASE("where gum lacks, binder is said, and no more of it than lacks") {
  Slab s;
  s.add("gum", 2.5);
  s.mull(210);
  s.feel(Feel::too_sticky);
  const Advice advice = s.advice();
  REQUIRE(advice.kind == Advice::add_drops);
  CHECK_FALSE(advice.water);
}

TEST_CASE("too loose after a pass is answered with what helps, however little liquid there is") {
  Slab s;
  s.add("gum", 5.2);
  for (int i = 0; i < 8; ++i) {
    s.feel(Feel::too_sticky);
    s.add("gum", 0.05);
  }
  s.feel(Feel::too_loose);
  CHECK(s.advice().kind == Advice::judge_again); // before it was mulled
  s.mull(200);
  s.feel(Feel::too_loose);
  CAPTURE(s.flow());
  CAPTURE(s.middle());
  const Advice advice = s.advice();
  REQUIRE(advice.kind == Advice::too_loose);
  CHECK(advice.dry_min > 0);
  REQUIRE(advice.pigments.size() == 1);
  CHECK(advice.pigments[0].g > 0.1);
  CHECK(advice.pigments[0].g <= 0.2 * 12);
}

TEST_CASE("the range stays where it is while it is mulled and nothing is told") {
  Slab s;
  s.add("gum", 6);
  s.feel(Feel::too_sticky);
  s.w.put(batch, StageBegan{Stage::mulling});
  const paint::Band before = bench::band_as_told(s.folded(), *s.expected());
  s.w.wait(1200);
  s.w.put(batch, StageBegan{Stage::resting});
  const paint::Band after = bench::band_as_told(s.folded(), *s.expected());
  CHECK(s.expected()->band.middle > before.middle + 0.003); // what is there grew stronger
  CHECK(after.middle == doctest::Approx(before.middle).epsilon(1e-3));
  CHECK(after.from == doctest::Approx(before.from).epsilon(1e-3));
}

TEST_CASE("after the pass that was asked for a dot is asked for, and after that pass again") {
  Slab s;
  s.add("gum", 6);
  s.mull(200);
  s.feel(Feel::right);
  CHECK(s.advice().kind == Advice::test_dot);
  for (int i = 0; i < 2; ++i) {
    s.dot(Specks::few);
    CHECK(s.advice().kind == Advice::keep_mulling);
    s.mull(200);
    s.feel(Feel::right);
    CHECK(s.advice().kind == Advice::test_dot);
  }
}

TEST_CASE("one long pass is as good as several: its minutes count") {
  Slab s;
  s.add("gum", 6);
  s.feel(Feel::right);
  CHECK(s.advice().kind == Advice::keep_mulling);
  s.w.put(batch, StageBegan{Stage::mulling});
  s.w.wait(s.known.pass_s);
  s.feel(Feel::right); // it goes on
  CHECK(s.advice().kind == Advice::test_dot);
}

TEST_CASE("when the pass is over it is to be judged now, and not to be mulled again") {
  Slab s;
  s.add("gum", 4);
  s.mull(210);
  s.feel(Feel::too_sticky);
  while (s.advice().kind == Advice::add_drops) put_in(s, s.advice());
  REQUIRE(s.advice().kind == Advice::mull_and_judge);
  CHECK_FALSE(s.advice().judge_now);
  s.w.put(batch, StageBegan{Stage::mulling});
  s.w.wait(60);
  s.w.put(batch, Noted{"still at it"});
  CHECK_FALSE(s.advice().judge_now);
  s.w.wait(s.known.pass_s);
  s.w.put(batch, Noted{"the time is over"});
  CHECK(s.advice().judge_now);
  s.w.put(batch, StageBegan{Stage::resting});
  CHECK(s.advice().kind == Advice::mull_and_judge);
  CHECK(s.advice().judge_now);
}

TEST_CASE("far more than was asked for is said to be too much, by how much, and what to do") {
  Slab s;
  s.add("gum", 4);
  s.mull(210);
  s.feel(Feel::too_sticky);
  s.add("gum", 6);
  const Advice advice = s.advice();
  REQUIRE(advice.kind == Advice::past_right);
  const double past_mL = (s.flow() - s.middle()) * s.folded().standing.pigment_mL.value;
  CHECK(advice.mL == doctest::Approx(past_mL));
  CHECK((advice.amount.drops > 0 || advice.amount.spoons > 0 || advice.amount.g > 0));
  s.mull(210);
  CHECK(s.advice().judge_now);
  s.feel(Feel::too_loose);
  CHECK(s.advice().kind == Advice::too_loose);
}

TEST_CASE("what is left of pours is one number: none is to come of what cannot be spread") {
  hands::Hands h;
  h.gather();
  h.tap("pans");
  const auto shown = [&] { return std::get<bench::PansView>(view(h.b, h.now()).screen); };
  h.tap("pour_all");
  for (int days = 0; days < 40; ++days) {
    const bench::PansView v = shown();
    const auto to_come = bench::pours_to_come(*h.b.pans.folded);
    CHECK((v.layers_in_all > 0) == (to_come.layers > 0));
    CHECK((v.curve.layer > 0) <= (to_come.layers > 0));
    if (to_come.layers == 0) {
      CHECK(v.all == 0);
      CHECK_FALSE(bench::layer_due(h.b, v.batch, h.now()));
    }
    for (const bench::PansView::Pan& pan : v.pans)
      if (pan.pour_mL > 0) CHECK(pan.pour_mL >= 0.149); // half a millimetre of a half pan
    if (v.all > 0) h.tap("pour_all");
    h.wait(24 * 3600);
  }
}

TEST_CASE("no verdict is asked for while the curve says that it is wet") {
  hands::Hands h;
  h.gather();
  h.tap("pans");
  h.tap("pour_all");
  int asked = 0;
  for (int hours = 0; hours < 24 * 5; hours += 6) {
    h.wait(6 * 3600);
    const bench::PansView v = std::get<bench::PansView>(view(h.b, h.now()).screen);
    if (v.asked_day == 0) continue;
    ++asked;
    CHECK(h.now().wall_ms >= bench::dry_at(*h.b.pans.folded));
  }
  CHECK(asked > 0);
}

}
