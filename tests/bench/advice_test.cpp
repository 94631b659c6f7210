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
    return bench::advise(b, band, 0.033);
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
