// What is said of paint with too much honey, beside that it gets no more.
#include "advice_slab.hpp"

#include <doctest/doctest.h>

namespace too_sweet_test {

using namespace advised;

TEST_CASE("too sweet to dry well: what is asked for makes it dry, and much is kept as a stock") {
  bool added = false, kept = false;
  for (double honey_g = 2; honey_g < 12; honey_g += 0.25) {
    Slab s;
    s.known.plain = bench::Known::Binder{"gum", s.of, 0.2933};
    s.w.card(make::liquid("honey", CardKind::honey, {.water = 1, .honey = 1}));
    s.add("gum", 6);
    s.w.put(batch, StageBegan{Stage::wetting_out});
    s.w.wait(130);
    s.mull(200);
    s.feel(Feel::right);
    s.add("honey", honey_g);
    s.mull(200);
    s.feel(Feel::right);
    s.dot(Specks::none);
    const Advice advice = s.advice();
    if (advice.kind != Advice::there || !advice.sticky) continue;
    CAPTURE(honey_g);
    CHECK(advice.times_without_honey > 0);
    kept |= advice.pigments.empty();
    if (advice.pigments.empty()) continue;
    added = true;
    CHECK(advice.pigments[0].g <= 0.2 * 12);
    const double flow = s.flow();
    s.add("p", advice.pigments[0].g);
    s.add("gum", 1.02 * bench::mL_of(advice.amount, s.of) * s.of.g_per_mL);
    CHECK(s.flow() == doctest::Approx(flow).epsilon(0.05));
    s.mull(200);
    s.feel(Feel::right);
    CHECK_FALSE(s.advice().sticky);
  }
  CHECK(added);
  CHECK(kept);
}

}
