#include "../session/make.hpp"
#include "bench/advice.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace session;
using bench::Advice;

namespace {

constexpr const char* batch = "7f3a91c2";

struct Slab {
  make::Writer w;
  double spoon_mL = 0;
  Slab() {
    w.card(make::pigment("p", 4.2, 30));
    w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
    w.card(make::liquid("water", CardKind::water, {.water = 1}));
    w.put(batch, Opened{"Blue"});
    w.put(batch, Added{"p", Unit::g, 12, ""});
  }
  void add(const char* what, double g) { w.put(batch, Added{what, Unit::g, g, ""}); }
  void feel(Feel f) { w.put(batch, Felt{f, By::muller}); }
  Advice advice() {
    const auto b = make::folded({w.log}, batch);
    const auto band = paint::class_guess({{make::pigment("p", 4.2, 30).pigment, 1}});
    return bench::advise(b, band, {0.033, spoon_mL});
  }
};

}

TEST_CASE("advice follows the last note until something is added") {
  Slab s;
  CHECK(s.advice().kind == Advice::first_helping);
  s.add("gum", 4);
  CHECK(s.advice().kind == Advice::add_drops);
  const int far = s.advice().drops;
  s.add("gum", 1);
  CHECK(s.advice().drops < far);
  s.feel(Feel::right);
  CHECK(s.advice().kind == Advice::there);
  s.add("gum", 0.1);
  CHECK(s.advice().kind != Advice::there);
  s.feel(Feel::too_loose);
  CHECK(s.advice().kind == Advice::too_loose);
  s.feel(Feel::too_sticky);
  CHECK(s.advice().kind != Advice::too_loose);
}

TEST_CASE("what nobody would count in drops is said in spoons") {
  Slab s;
  s.spoon_mL = 5;
  s.add("gum", 3);
  const int drops = s.advice().drops;
  REQUIRE(drops > 1.25 / 0.033);
  CHECK(s.advice().spoons == std::floor(drops * 0.033 / 1.25) / 4);
  CHECK(bench::advised_mL(s.advice(), {0.033, 5}) == s.advice().spoons * 5);
  s.add("gum", 4);
  CHECK(s.advice().spoons == 0);
  CHECK(bench::advised_mL(s.advice(), {0.033, 5}) == s.advice().drops * 0.033);
}

TEST_CASE("before the first pass it is the knife's work") {
  Slab s;
  s.add("gum", 4);
  CHECK(s.advice().by_knife);
  s.w.put(batch, StageBegan{Stage::mulling});
  CHECK_FALSE(s.advice().by_knife);
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

TEST_CASE("far past the range with a sticky note, one drop is already a risk") {
  Slab s;
  s.add("gum", 20);
  s.feel(Feel::too_sticky);
  CHECK(s.advice().kind == Advice::mull_and_judge);
}

// Flow 14 g / 1.1313 g/mL / 2.857 mL = 4.33; the guess's middle is exp(0.60) * 1.3476 = 2.455;
// 12 g * (4.33 / 2.455 - 1) = 9.2 g.
TEST_CASE("too loose: how much pigment would bring it back") {
  Slab s;
  s.add("gum", 14);
  s.feel(Feel::too_runny);
  CHECK(s.advice().kind == Advice::too_loose);
  CHECK(std::abs(s.advice().pigment_g - 9.2) < 0.1);
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
