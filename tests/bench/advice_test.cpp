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
  int of_studio = 0;
  std::optional<Expectation> expected() {
    RangeQuestion question = range_question(untrained_ranges(), make::folded({w.log}, batch));
    question.of_studio = of_studio;
    return expectation(untrained_ranges(), question);
  }
  Advice advice() {
    const auto b = make::folded({w.log}, batch);
    return bench::advise(b, expected(), {0.033, spoon_mL});
  }
};

}

TEST_CASE("advice follows the last note until something is added") {
  Slab s;
  CHECK(s.advice().kind == Advice::first_helping);
  s.add("gum", 1.5);
  CHECK(s.advice().kind == Advice::add_drops);
  const int far = s.advice().drops;
  s.add("gum", 0.5);
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
  s.add("p", 88);
  s.add("gum", 12);
  const int drops = s.advice().drops;
  REQUIRE(drops > 1.25 / 0.033);
  CHECK(s.advice().spoons == std::min(1.0, std::floor(drops * 0.033 / 1.25) / 4));
  CHECK(bench::advised_mL(s.advice(), {0.033, 5}) == s.advice().spoons * 5);
  s.add("gum", 14);
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

TEST_CASE("stiff before the powder is wetted out: work it in, and no stop") {
  Slab s;
  s.add("gum", 4);
  s.w.put(batch, StageBegan{Stage::wetting_out});
  s.w.wait(37);
  const Advice before = s.advice();
  s.w.put(batch, Felt{Feel::wont_move, By::knife});
  CHECK(s.advice().kind == Advice::work_in);
  s.add("gum", 0.1);
  CHECK(s.advice().kind == before.kind);
  s.w.wait(120);
  s.w.put(batch, Felt{Feel::too_sticky, By::knife});
  CHECK(s.advice().kind != Advice::work_in);
}

TEST_CASE("where gum is enough and water is named, as many drops as of water are safe") {
  Slab strong;
  strong.w.card(make::liquid("strong", CardKind::binder, {.gum = 2, .water = 1}));
  strong.w.card(make::pigment("thirsty", 4.2, 90));
  strong.add("thirsty", 88);
  strong.add("strong", 65);
  const Advice advice = strong.advice();
  REQUIRE(advice.gum == paint::GumState::too_much);
  const auto b = make::folded({strong.w.log}, batch);
  const auto expected = *strong.expected();
  CHECK(advice.drops == paint::safe_drops(expected.prediction, {b.standing.flow_now->value},
                                          0.033 / b.standing.pigment_mL.value,
                                          -paint::dry_gum_put_in(b.standing)));
  CHECK(advice.drops < paint::safe_drops(expected.prediction, {b.standing.flow_now->value},
                                         0.033 / b.standing.pigment_mL.value));
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
  s.of_studio = 3;
  CHECK(s.advice().kind == Advice::mull_and_judge);
}

TEST_CASE("a guess does not stop the hand") {
  Slab s;
  s.add("gum", 5);
  CHECK(s.advice().drops == 0);
  CHECK(s.advice().kind == Advice::keep_going);
}

TEST_CASE("too loose: how much pigment would bring it to the middle, and how long it would dry") {
  Slab s;
  s.add("gum", 14);
  s.feel(Feel::too_runny);
  const Advice advice = s.advice();
  CHECK(advice.kind == Advice::too_loose);
  REQUIRE(advice.pigments.size() == 1);
  const auto b = make::folded({s.w.log}, batch);
  const double middle = std::exp(s.expected()->band.middle);
  CHECK(advice.pigments[0].g == doctest::Approx(12 * (b.standing.flow_now->value / middle - 1)));
  CHECK(advice.pigments[0].g > 5);
  CHECK(advice.dry_min == 0); // gathered, so much takes hours
}

TEST_CASE("a little too loose dries in minutes under the muller") {
  Slab s;
  s.add("gum", 8);
  s.w.put(batch, StageBegan{Stage::mulling});
  s.feel(Feel::too_loose);
  const Advice advice = s.advice();
  CHECK(advice.kind == Advice::too_loose);
  CHECK(advice.dry_min > 0);
  const auto b = make::folded({s.w.log}, batch);
  Places places = b.places;
  dry(places, 60.0 * advice.dry_min);
  const auto expected = *s.expected();
  const double stronger =
      paint::dry_gum(sums(places), live(places)) - paint::dry_gum_put_in(b.standing);
  CHECK(stronger > 0);
  CHECK(*live(places).flow <=
        std::exp(expected.band.middle + expected.prediction.drying * stronger));
}

TEST_CASE("paint that was right and has dried since is told to have more") {
  Slab s;
  s.add("gum", 8);
  s.w.put(batch, StageBegan{Stage::mulling});
  s.feel(Feel::right);
  CHECK(s.advice().kind == Advice::there);
  s.w.wait(1500);
  s.w.put(batch, Dot{Specks::none});
  CHECK(s.advice().kind == Advice::keep_going);
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
