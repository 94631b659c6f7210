// What is advised of paint that was found dry.
#include "advice_slab.hpp"

#include <doctest/doctest.h>

namespace found_dry_test {

using namespace advised;

TEST_CASE(
    "found dry: the water that left is given back, the rest of it after a part, then no more") {
  Slab s;
  s.add("gum", 8);
  s.mull(200);
  s.feel(Feel::right);
  const double before = s.flow(), pigment_mL = s.folded().standing.pigment_mL.value;
  s.w.wait(14 * 3600);
  s.w.put(batch, RoomSet{20, 0.5, false});
  s.w.put(batch, Found{State::dry});
  const Advice dry = s.advice();
  REQUIRE(dry.kind == Advice::give_back);
  CHECK(dry.mL == doctest::Approx((before - s.flow()) * pigment_mL));
  CHECK(dry.mL > 2);
  s.add("water", dry.mL / 2);
  CHECK(s.advice().kind == Advice::give_back);
  CHECK(s.advice().mL == doctest::Approx(dry.mL / 2).epsilon(0.01));
  s.add("water", dry.mL / 2);
  CHECK(s.advice().kind == Advice::soak);
  CHECK(s.advice().wait_min == 10);
  CHECK(s.flow() == doctest::Approx(before).epsilon(0.01));
}

TEST_CASE("found dry twice, or taken back: what is to be given back stays true") {
  Slab s;
  s.add("gum", 8);
  s.mull(200);
  s.feel(Feel::right);
  s.w.wait(14 * 3600);
  s.w.put(batch, Found{State::dry});
  const double mL = s.advice().mL;
  s.w.put(batch, Found{State::dry});
  CHECK(s.advice().mL == doctest::Approx(mL).epsilon(0.01));
  s.feel(Feel::wont_move);
  CHECK(s.advice().kind == Advice::give_back);
  s.feel(Feel::right); // whoever calls it right means that
  CHECK(s.advice().kind != Advice::give_back);
  Slab taken_back;
  taken_back.add("gum", 8);
  const Ref dry = taken_back.w.put(batch, Found{State::dry});
  taken_back.w.put(batch, Withdrawn{dry});
  CHECK(taken_back.advice().kind != Advice::give_back);
}

TEST_CASE("stiff as a dry cake is no reason to give back less of the water that left") {
  for (const Feel felt : {Feel::wont_move, Feel::too_sticky}) {
    Slab s;
    s.add("gum", 8);
    s.mull(1200);
    const double before = s.flow();
    s.w.wait(14 * 3600);
    s.w.put(batch, Found{State::dry});
    const Advice dry = s.advice();
    REQUIRE(dry.kind == Advice::give_back);
    const paint::Band band = s.expected()->band;
    s.feel(felt);
    CHECK(s.advice().kind == Advice::give_back);
    CHECK(s.advice().mL == doctest::Approx(dry.mL).epsilon(1e-6));
    CHECK(s.expected()->band.middle == band.middle);
    s.add("water", dry.mL);
    CHECK(s.flow() == doctest::Approx(before).epsilon(0.01));
    s.w.wait(300);
    s.feel(felt);
    CHECK(s.advice().kind == Advice::soak);
    CHECK(s.advice().wait_min == 5);
    CHECK(s.expected()->band.to - s.expected()->band.from ==
          doctest::Approx(band.to - band.from).epsilon(0.02));
  }
}

TEST_CASE("paint that was dry soaks once: what is added after it was judged is mulled in") {
  Slab s;
  s.add("gum", 8);
  s.mull(1200);
  s.w.wait(14 * 3600);
  s.w.put(batch, Found{State::dry});
  s.add("water", s.advice().mL);
  CHECK(s.advice().kind == Advice::soak);
  s.w.wait(600);
  s.mull(200);
  CHECK(s.advice().kind == Advice::mull_and_judge);
  s.feel(Feel::too_sticky);
  REQUIRE(s.advice().kind == Advice::add_drops);
  s.add("water", bench::advised_mL(s.advice(), s.of, s.known));
  CHECK(s.advice().kind == Advice::mull_and_judge);
}

TEST_CASE("alcohol that left is no water to give back, and soaks into nothing") {
  Slab s;
  s.w.card(make::liquid("spirit", CardKind::wetting_aid, {.water = 0.376, .alcohol = 0.624}));
  s.add("gum", 0.6);
  s.w.put(batch, StageBegan{Stage::wetting_out});
  s.add("spirit", 4);
  for (int i = 0; i < 4; ++i) {
    s.w.wait(600);
    s.feel(Feel::wont_move);
    CHECK(s.advice().kind != Advice::give_back);
  }
  Slab dry;
  dry.w.card(make::liquid("spirit", CardKind::wetting_aid, {.water = 0.376, .alcohol = 0.624}));
  dry.add("gum", 8);
  dry.mull(1200);
  dry.w.wait(14 * 3600);
  dry.w.put(batch, Found{State::dry});
  dry.add("water", dry.advice().mL);
  CHECK(dry.advice().kind == Advice::soak);
  dry.w.wait(605);
  dry.add("spirit", 0.03);
  CHECK(dry.advice().kind != Advice::soak);
}

}
