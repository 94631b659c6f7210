// Bottles weighed around drops, counts that were lost, and weights that contradict the count.
#include "make.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace bottles_test {

using namespace session;
using doctest::Approx;

namespace {
constexpr const char* batch = "7f3a91c2";
}

// Bottle 80.0 g before, 78.6 g after ten drops and 1.0 g weighed out of it: the drops weigh 0.4 g.
TEST_CASE("a bottle weighed before and after says what the drops between weighed") {
  make::Writer w;
  w.card(make::pigment("pb28", 4.2, 30));
  w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
  w.card(make::dropper("bulb", 0.048, 0.004, CardKind::binder));
  w.put(batch, Opened{"Blue"});
  w.put(batch, Added{"pb28", Unit::g, 10, ""});
  w.put(batch, BottleWeighed{"gum", 80.0});
  for (int i = 0; i < 10; ++i) w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  w.put(batch, CountLost{"gum"});
  w.put(batch, Added{"gum", Unit::g, 1, ""});
  const double unsure = paint::uncertainty(make::folded({w.log}, batch).totals[1].grams);
  w.put(batch, BottleWeighed{"gum", 78.6});
  const auto b = make::folded({w.log}, batch);
  CHECK(b.totals[1].grams.value == Approx(1.4));
  // 0.1 g scale: 0.028868 * sqrt(2) for the difference, 0.028868 for the gram weighed.
  CHECK(paint::uncertainty(b.totals[1].grams) == Approx(0.05).epsilon(1e-3));
  CHECK(unsure > 3 * 0.05);
  w.put(batch, BottleWeighed{"gum", 90});
  CHECK(make::folded({w.log}, batch).warnings[0].kind == WarningKind::bottle_heavier);
}

namespace {

// 15 g of pigment, three spoons of binder and some drops of it.
make::Writer spooned(int drops) {
  make::Writer w;
  w.card(make::pigment("pb28", 4.2, 30));
  w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
  w.card(make::dropper("bulb", 0.048, 0.0001, CardKind::binder));
  w.card({"spoon", "teaspoon", SpoonCard{{5, 0}}});
  w.put(batch, Opened{"Blue"});
  w.put(batch, Added{"pb28", Unit::g, 15, ""});
  w.put(batch, Added{"gum", Unit::spoons, 3, "spoon"});
  for (int i = 0; i < drops; ++i) w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  return w;
}

// What the lost count alone adds to the uncertainty of the binder, g.
double charged(const make::Writer& before, const make::Writer& after) {
  const auto u = [](const make::Writer& w) {
    return paint::uncertainty(make::folded({w.log}, batch).totals[1].grams);
  };
  return std::sqrt(u(after) * u(after) - u(before) * u(before));
}

double charged(const make::Writer& w) {
  make::Writer lost = w;
  lost.put(batch, CountLost{"gum"});
  return charged(w, lost);
}

}

// Three drops of 0.05 g, or 15 % of the drops where that is more.
TEST_CASE("a lost count may be wrong by drops, not by spoons") {
  CHECK(charged(spooned(5)) == Approx(0.15));
  const double drop = 0.048 / 0.8839;
  CHECK(charged(spooned(40)) == Approx(0.15 * 40 * drop).epsilon(1e-3));
}

TEST_CASE("a count lost twice is lost once; with drops between it may be wrong by those too") {
  auto once = spooned(40);
  once.put(batch, CountLost{"gum"});
  auto twice = once;
  twice.put(batch, CountLost{"gum"});
  CHECK(charged(once, twice) == Approx(0));
  for (int i = 0; i < 5; ++i) once.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  CHECK(charged(once) == Approx(0.15));
}

TEST_CASE("drops between two weighings of their bottle are not miscounted any more") {
  auto w = spooned(0);
  w.put(batch, BottleWeighed{"gum", 250});
  for (int i = 0; i < 80; ++i) w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  CHECK(charged(w) > 0.5);
  w.put(batch, BottleWeighed{"gum", 245.7});
  w.put(batch, Added{"gum", Unit::drops, 2, "bulb"});
  CHECK(charged(w) == Approx(0.15));
}

namespace {

// A bottle of 92.4 g, ten drops of 0.054 g out of it, and then what the scale is said to show.
make::Writer weighed_after_drops(double g) {
  make::Writer w = spooned(0);
  w.put(batch, BottleWeighed{"gum", 92.4});
  for (int i = 0; i < 10; ++i) w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  w.put(batch, BottleWeighed{"gum", g});
  return w;
}

double drops_g(const Batch& b) {
  static const double spoons = make::folded({spooned(0).log}, batch).totals[1].grams.value;
  return b.totals[1].grams.value - spoons;
}

}

TEST_CASE("a bottle that lost ninety grams in ten drops moves nothing, and says why") {
  const double by_count = 10 * 0.048 / 0.8839;
  const auto b = make::folded({weighed_after_drops(2.4).log}, batch);
  CHECK(drops_g(b) == Approx(by_count).epsilon(1e-3));
  REQUIRE(b.warnings.size() == 1);
  CHECK(b.warnings[0].kind == WarningKind::not_weighed);
  CHECK(b.warnings[0].why->what == words::PaintSay::bottle_contradicts);
  REQUIRE(b.bottles.size() == 1);
  CHECK_FALSE(b.bottles[0].stands);
  CHECK(b.bottles[0].weighed.value == Approx(90));
  CHECK(drops_g(make::folded({weighed_after_drops(91.9).log}, batch)) == Approx(0.5));
}

TEST_CASE(
    "confirmed, a bottle's weight counts: its own figure alone, by any device, until undone") {
  make::Writer w = weighed_after_drops(88.4), other("bbbbbbbb");
  const Ref line{w.log.session, w.log.lines.back().n};
  other.wait(5000);
  const Ref said = other.put(batch, Confirmed{line, 88.4});
  const auto drops = [&] { return drops_g(make::folded({w.log, other.log}, batch)); };
  CHECK(drops() == Approx(4));
  other.put(batch, Withdrawn{said});
  CHECK(drops() < 1);
  other.put(batch, Confirmed{line, 88.5}); // another figure
  CHECK(drops() < 1);
  other.put(batch, Confirmed{{"nobody", 4}, 88.4});
  CHECK(drops() < 1);
  other.put(batch, Confirmed{line, 88.4});
  CHECK(drops() == Approx(4));
}

TEST_CASE("after a weighing that is doubted the next agrees with the one before it, or with that") {
  auto slip = weighed_after_drops(9.2);
  slip.put(batch, BottleWeighed{"gum", 91.8});
  const auto b = make::folded({slip.log}, batch);
  CHECK(drops_g(b) == Approx(0.6));
  CHECK(b.warnings.size() == 1);         // of the slip
  auto poured = weighed_after_drops(50); // 42 g went elsewhere
  for (int i = 0; i < 10; ++i) poured.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  poured.put(batch, BottleWeighed{"gum", 49.4});
  CHECK(drops_g(make::folded({poured.log}, batch)) ==
        Approx(0.6 + 10 * 0.048 / 0.8839).epsilon(1e-3));
}

TEST_CASE("where a count was lost, the bottle may have lost forty drops that nobody counted") {
  const auto after = [](double g) {
    make::Writer w = spooned(0);
    w.put(batch, BottleWeighed{"gum", 92.4});
    for (int i = 0; i < 10; ++i) w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
    w.put(batch, CountLost{"gum"});
    w.put(batch, BottleWeighed{"gum", g});
    return make::folded({w.log}, batch);
  };
  CHECK(drops_g(after(90.4)) == Approx(2));
  CHECK(after(90.4).warnings.empty());
  CHECK(after(9.2).warnings.size() == 1);
  CHECK(drops_g(after(9.2)) < 1);
}

}
