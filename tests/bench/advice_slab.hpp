// A batch on a slab, and what is advised of it while nothing has been learnt.
#pragma once

#include "../session/make.hpp"
#include "bench/advice.hpp"

#include <cmath>

namespace advised {

using namespace session;
using bench::Advice;

inline constexpr const char* batch = "7f3a91c2";

struct Slab {
  make::Writer w;
  bench::Measures of{0.033, 0, 1.1};
  bench::Known known;
  int of_studio = 0;
  Slab() {
    w.card(make::pigment("p", 4.2, 30));
    w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
    w.card(make::liquid("water", CardKind::water, {.water = 1}));
    w.card(make::liquid("honey", CardKind::honey, {.water = 1, .honey = 1}));
    w.put(batch, Opened{"Blue"});
    w.put(batch, Added{"p", Unit::g, 12, ""});
  }
  void add(const char* what, double g) { w.put(batch, Added{what, Unit::g, g, ""}); }
  void feel(Feel f) { w.put(batch, Felt{f, By::muller}); }
  void wet_out(double seconds = 130) {
    w.put(batch, StageBegan{Stage::wetting_out});
    w.wait(seconds);
  }
  void mull(double seconds) {
    w.put(batch, StageBegan{Stage::mulling});
    w.wait(seconds);
    w.put(batch, StageBegan{Stage::resting});
  }
  void dot(Specks specks) { w.put(batch, Dot{specks}); }
  Batch folded() { return make::folded({w.log}, batch); }
  double flow() { return folded().standing.flow_now->value; }
  std::optional<Expectation> expected() {
    RangeQuestion question = range_question(untrained_ranges(), folded());
    question.of_studio = of_studio;
    auto expected = expectation(untrained_ranges(), question);
    if (expected) take_strength(*expected, folded());
    return expected;
  }
  double wanted() { return paint::mL_at_share(expected()->prediction, 0.5); }
  double middle() { return std::exp(expected()->band.middle); }
  Advice advice() { return bench::advise(folded(), expected(), of, known); }
};

}
