#include "advice_slab.hpp"
#include "paint/range/helping.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <utility>

namespace advice_test {

using namespace advised;

TEST_CASE("advice follows the last note until something is added") {
  Slab s;
  CHECK(s.advice().kind == Advice::first_helping);
  s.add("gum", 2.5);
  s.feel(Feel::too_sticky);
  CHECK(s.advice().kind == Advice::add_drops);
  const int far = s.advice().amount.drops;
  REQUIRE(far >= 5);
  s.add("gum", 0.2);
  CHECK(s.advice().amount.drops < far);
  s.add("gum", 4);
  s.mull(60);
  s.dot(Specks::none);
  s.feel(Feel::right);
  CHECK(s.advice().kind == Advice::there);
  s.add("gum", 0.9);
  CHECK(s.advice().kind != Advice::there);
  s.feel(Feel::too_loose);
  CHECK(s.advice().kind == Advice::too_loose);
  s.feel(Feel::too_sticky);
  CHECK(s.advice().kind != Advice::too_loose);
}

TEST_CASE("a first helping is never too loose by more than a chance of 4 %, and fits the spoon") {
  Slab s;
  const Advice plain = s.advice();
  CHECK(plain.kind == Advice::first_helping);
  CHECK(plain.amount.spoons == 0);
  CHECK(plain.low_g / plain.high_g == doctest::Approx(0.5 / 0.7));
  const double flow = plain.high_g / 1.1 / s.folded().standing.pigment_mL.value;
  CHECK(flow <= 0.7 * s.middle() * 1.001);
  CHECK(paint::chance_too_loose(s.expected()->prediction, {flow, 0}) <= 0.0401);
  s.of.spoon_mL = 5;
  const Advice spoons = s.advice();
  CHECK(spoons.amount.spoons * 5 * 1.1 >= spoons.low_g);
  CHECK(spoons.amount.spoons * 5 * 1.1 <= spoons.high_g);
}

TEST_CASE("what a spoon fills of the first helping is no part of it") {
  Slab s;
  s.add("gum", 0.99 * s.advice().low_g);
  CHECK(s.advice().kind != Advice::first_helping);
}

TEST_CASE(
    "made again, what that batch took first is asked for, until its first note was too loose") {
  Slab made;
  made.add("gum", 4.2);
  made.add("water", 0.1);
  made.feel(Feel::too_sticky);
  const double took = bench::took_first(made.folded());
  CHECK(took == doctest::Approx(made.flow()));
  Slab s;
  s.known.took_first = took;
  const double limit =
      paint::mL_at_chance_too_loose(s.expected()->prediction, paint::allowed_too_loose);
  REQUIRE(took > s.wanted() / 2);
  const double again = std::min(took, limit);
  CHECK(s.advice().low_g == doctest::Approx(again * s.folded().standing.pigment_mL.value * 1.1));
  CHECK(s.advice().low_g == s.advice().high_g);
  s.known.took_first = 0.45 * s.wanted(); // which did not move
  CHECK(s.advice().low_g < s.advice().high_g);
  s.known.took_first = 4;
  CHECK(s.advice().high_g == doctest::Approx(limit * s.folded().standing.pigment_mL.value * 1.1));
  Slab flooded;
  flooded.add("gum", 14);
  flooded.feel(Feel::too_loose);
  CHECK(bench::took_first(flooded.folded()) == 0);
  CHECK(bench::took_first(Slab().folded()) == 0);
}

TEST_CASE("before the first pass it is the knife's work") {
  Slab s;
  s.add("gum", 4);
  CHECK(s.advice().by_knife);
  s.w.put(batch, StageBegan{Stage::mulling});
  CHECK_FALSE(s.advice().by_knife);
}

TEST_CASE("stiff before the powder is wetted out: work it in, and no stop") {
  Slab s;
  s.add("gum", 4);
  s.w.put(batch, StageBegan{Stage::wetting_out});
  s.w.wait(37);
  const Advice before = s.advice();
  CHECK(before.wait_min == 2);
  CHECK_FALSE(before.too_early);
  s.w.put(batch, Felt{Feel::wont_move, By::knife});
  CHECK(s.advice().kind == Advice::work_in);
  CHECK(s.advice().too_early); // one thing is said then: how long still
  for (const int left : {1, 0}) {
    s.w.wait(50);
    s.w.put(batch, Noted{"still at it"});
    CHECK(s.advice().wait_min == left);
  }
  s.add("gum", 0.1);
  CHECK(s.advice().kind == before.kind);
  s.w.wait(120);
  s.w.put(batch, Felt{Feel::too_sticky, By::knife});
  CHECK(s.advice().kind != Advice::work_in);
}

TEST_CASE("the same word again at the same place moves nothing; at a wetter one it does") {
  Slab s;
  s.add("gum", 5);
  s.mull(120);
  s.feel(Feel::too_sticky);
  const double once = s.wanted();
  for (int i = 0; i < 3; ++i) {
    s.mull(20);
    s.feel(Feel::too_sticky);
    CHECK(s.wanted() == doctest::Approx(once).epsilon(1e-4));
  }
  s.add("gum", 0.05); // nobody feels that
  s.feel(Feel::too_sticky);
  CHECK(s.wanted() == doctest::Approx(once).epsilon(1e-4));
  s.add("gum", 1);
  s.feel(Feel::too_sticky);
  CHECK(s.wanted() > 1.03 * once);
  Slab loose;
  loose.add("gum", 8);
  loose.feel(Feel::too_loose);
  const double before = loose.wanted();
  loose.add("gum", 0.5);
  loose.feel(Feel::too_loose);
  CHECK(loose.wanted() == doctest::Approx(before).epsilon(1e-4));
  loose.mull(400);
  loose.feel(Feel::too_loose);
  CHECK(loose.wanted() < before);
}

TEST_CASE("right and too loose paint is not asked for more") {
  Slab s;
  s.add("gum", 6);
  s.feel(Feel::right);
  CHECK_FALSE(s.advice().gum);
  s.feel(Feel::too_loose);
  CHECK_FALSE(s.advice().gum);
  Slab lean;
  lean.add("gum", 2);
  lean.add("water", 3);
  lean.feel(Feel::right);
  CHECK(lean.advice().gum == paint::GumState::too_little);
}

TEST_CASE("right is not there while there are specks, in the first pass, or before a dot") {
  Slab s;
  s.add("gum", 6);
  s.feel(Feel::right);
  CHECK(s.advice().kind == Advice::keep_mulling); // by the knife
  s.mull(60);
  s.feel(Feel::right);
  CHECK(s.advice().kind == Advice::test_dot);
  for (const auto& [specks, kind] : {std::pair{Specks::many, Advice::keep_mulling},
                                     {Specks::few, Advice::keep_mulling},
                                     {Specks::none, Advice::there}}) {
    s.dot(specks);
    CHECK(s.advice().kind == kind);
  }
  s.add("p", 0.5); // new powder was in no dot
  s.feel(Feel::right);
  CHECK(s.advice().kind == Advice::test_dot);
}

TEST_CASE("what this paint has always taken is said while it is not smooth") {
  Slab s;
  s.add("gum", 6);
  s.known.mulling_left = bench::MullingNeeded{{4, 7, 12}, {1, 2, 4}, 3};
  s.feel(Feel::right);
  REQUIRE(s.advice().mulling);
  CHECK(s.advice().mulling->passes.middle == 2);
  s.mull(60);
  s.feel(Feel::right);
  CHECK(s.advice().kind == Advice::keep_mulling); // no dot, and it has taken longer before
  s.known.mulling_left->passes = {0, 0.3, 1};
  CHECK(s.advice().kind == Advice::test_dot);
  s.dot(Specks::none);
  CHECK(s.advice().kind == Advice::there);
  CHECK_FALSE(s.advice().mulling);
}

TEST_CASE(
    "right left of what is known to be right is to be judged again, and then believed after work") {
  Slab s;
  s.add("gum", 5.2);
  for (int i = 0; i < 6; ++i) {
    s.feel(Feel::too_sticky);
    s.add("gum", 0.1);
  }
  for (int i = 0; i < 3; ++i) {
    s.add("gum", i == 0 ? 1.2 : 0.3);
    s.feel(Feel::right);
  }
  s.mull(1800);
  s.feel(Feel::right);
  CAPTURE(s.flow());
  REQUIRE(std::log(s.flow()) < s.expected()->band.from);
  CHECK(s.advice().kind == Advice::judge_again);
  s.feel(Feel::right); // in the same breath
  CHECK(s.advice().kind == Advice::judge_again);
  s.mull(120);
  s.feel(Feel::right);
  CHECK(s.advice().kind != Advice::judge_again);
}

TEST_CASE(
    "far past the range with a sticky note, it is mulled and judged, and no risk is spoken of") {
  Slab s;
  s.add("gum", 20);
  s.feel(Feel::too_sticky);
  s.of_studio = 3;
  CHECK(s.advice().kind == Advice::mull_and_judge);
  CHECK(s.advice().sticky_now);
  s.add("gum", 0.1);
  CHECK(s.advice().kind == Advice::mull_and_judge);
  CHECK_FALSE(s.advice().sticky_now);
}

TEST_CASE("too loose: at most a fifth of the pigment at once; what takes an hour is not mulled") {
  Slab s;
  s.add("gum", 14);
  s.feel(Feel::too_runny);
  const Advice advice = s.advice();
  CHECK(advice.kind == Advice::too_loose);
  REQUIRE(s.flow() / s.middle() > 1.2);
  REQUIRE(advice.pigments.size() == 1);
  CHECK(advice.pigments[0].g == doctest::Approx(12 * 0.2));
  CHECK(advice.dry_min == 30); // over an hour: judged before
}

TEST_CASE("too loose: less pigment where less brings it to the middle") {
  Slab s;
  s.add("gum", 5.2);
  s.feel(Feel::too_sticky);
  s.add("gum", 0.8);
  s.feel(Feel::too_loose);
  const double more = s.flow() / s.middle() - 1;
  REQUIRE(more > 0);
  REQUIRE(more < 0.2);
  if (s.advice().kind == Advice::too_loose) {
    REQUIRE(s.advice().pigments.size() == 1);
    CHECK(s.advice().pigments[0].g == doctest::Approx(12 * more));
  }
}

TEST_CASE("too loose and short of gum: no more pigment") {
  Slab s;
  s.add("gum", 3.6);
  s.add("water", 5);
  s.feel(Feel::too_loose);
  const Advice advice = s.advice();
  CHECK(advice.kind == Advice::too_loose);
  CHECK(advice.pigments.empty());
  CHECK(advice.gum == paint::GumState::too_little);
}

TEST_CASE("so much as it is said to dry, mulled out, it dries") {
  Slab s;
  s.add("gum", 8);
  s.w.put(batch, StageBegan{Stage::mulling});
  s.feel(Feel::too_loose);
  const Advice advice = s.advice();
  REQUIRE(advice.kind == Advice::too_loose);
  REQUIRE(advice.dry_min > 0);
  Places places = s.folded().places;
  dry(places, 60.0 * 1.6 * advice.dry_min); // said in round numbers
  const auto expected = *s.expected();
  const double stronger =
      paint::dry_gum(sums(places), live(places)) - paint::dry_gum(s.folded().standing);
  CHECK(stronger > 0);
  CHECK(*live(places).flow <=
        std::exp(expected.band.middle + expected.prediction.drying * stronger));
}

TEST_CASE(
    "too loose where little liquid is: judge again; and dried since: it may be right by now") {
  Slab s;
  s.add("gum", 5.2);
  for (int i = 0; i < 8; ++i) {
    s.feel(Feel::too_sticky);
    s.add("gum", 0.05);
  }
  s.feel(Feel::too_loose);
  CAPTURE(s.flow());
  CAPTURE(s.middle());
  CHECK(s.advice().kind == Advice::judge_again);
  Slab dried;
  dried.add("gum", 5.2);
  dried.feel(Feel::too_sticky);
  dried.add("gum", 1.2);
  dried.feel(Feel::too_loose);
  REQUIRE(dried.advice().kind == Advice::too_loose);
  dried.mull(420);
  CHECK(dried.advice().kind == Advice::right_by_now);
}

TEST_CASE("paint that was right and has dried since is told to have more") {
  Slab s;
  s.add("gum", 8);
  s.mull(60);
  s.dot(Specks::none);
  s.feel(Feel::right);
  CHECK(s.advice().kind == Advice::there);
  s.w.put(batch, StageBegan{Stage::mulling});
  s.w.wait(1500);
  s.dot(Specks::none);
  CHECK(s.advice().kind == Advice::add_drops);
}

TEST_CASE("it is a hint until three batches have taught something") {
  Slab s;
  s.add("gum", 4);
  CHECK(s.advice().hint);
  s.of_studio = 2;
  CHECK(s.advice().hint);
  s.of_studio = 3;
  CHECK_FALSE(s.advice().hint);
}

TEST_CASE("binder or water, by the gum there is") {
  Slab s;
  s.add("gum", 3); // 0.88 g gum on 2.86 mL: 0.31 g/mL
  CHECK(s.advice().gum == paint::GumState::too_little);
  s.add("gum", 3); // 0.62
  CHECK(s.advice().gum == paint::GumState::enough);
  s.add("gum", 9); // 1.54
  CHECK(s.advice().gum == paint::GumState::too_much);
}

TEST_CASE("what is made again is led to all that it took then, and further once that was judged") {
  Slab free, again;
  for (Slab* s : {&free, &again}) {
    s->add("gum", 3);
    s->mull(200);
    s->feel(Feel::wont_move);
  }
  const double by_range_mL = mL_of(free.advice().amount, free.of);
  REQUIRE(free.advice().kind == Advice::add_drops);
  const auto pigment_mL = again.folded().standing.pigment_mL.value;
  const double rest_mL = 0.8 * by_range_mL;
  again.known.takes_in_all = (3 / again.of.g_per_mL + rest_mL) / pigment_mL;
  const Advice led = again.advice();
  REQUIRE(led.kind == Advice::add_drops);
  CHECK_FALSE(led.water);
  CHECK(mL_of(led.amount, again.of) <= rest_mL + 1e-9);
  again.add("gum", rest_mL * again.of.g_per_mL);
  again.mull(200);
  again.feel(Feel::too_sticky);
  CHECK(again.advice().kind == Advice::add_drops);
}

}
