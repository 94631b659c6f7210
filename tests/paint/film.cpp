#include "paint/film.hpp"

#include "words/paint_says.hpp"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

namespace film_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");
const double endless = std::numeric_limits<double>::infinity();
const Room usual{22, 0.5};

// Of the range that pigments have.
Pigment any_pigment() {
  Pigment p;
  p.g_per_mL = *rc::gen::inRange(120, 900) / 100.0;
  p.oil_g_per_100g = *rc::gen::inRange(10, 200);
  return p;
}

double some(int most) { return *rc::gen::inRange(1, most * 100) / 100.0; }

bool near(double a, double b) { return std::abs(a - b) <= 1e-12 * std::max(std::abs(a), 1e-3); }

Wet any_wet() { return {.gum_g = some(5), .glycerin_g = some(3), .honey_g = some(3)}; }

// The normal distribution of the mark times the chance of the verdict, in many small steps.
struct Moments {
  double mean = 0, sd = 0;
};
Moments by_small_steps(const TackMark& m, double index, bool sticky) {
  double w = 0, wx = 0, wxx = 0;
  for (int i = -4000; i <= 4000; ++i) {
    const double x = m.ln_middle + m.ln_u * i / 500.0;
    const double at = (std::log(index) - x) / m.ln_noise;
    const double chance = std::erfc((sticky ? -at : at) / std::sqrt(2.0)) / 2;
    const double weight = std::exp(-(i / 500.0) * (i / 500.0) / 2) * chance;
    w += weight, wx += weight * x, wxx += weight * x * x;
  }
  return {wx / w, std::sqrt(wxx / w - wx / w * (wx / w))};
}

}

TEST_CASE("a blend of a pigment with itself is the pigment, and any lies between its pigments") {
  CHECK(rc::check("blends", [] {
    const Pigment p = any_pigment();
    RC_ASSERT(near(*cpvc({{p, some(9)}, {p, some(9)}}), *cpvc({{p, 1}})));
    std::vector<PigmentMass> blend;
    double least = 1, most = 0;
    const int count = *rc::gen::inRange(1, 5);
    for (int i = 0; i < count; ++i) {
      blend.push_back({any_pigment(), some(20)});
      least = std::min(least, *cpvc({{blend.back().pigment, 1}}));
      most = std::max(most, *cpvc({{blend.back().pigment, 1}}));
    }
    RC_ASSERT(*cpvc(blend) >= least * (1 - 1e-12));
    RC_ASSERT(*cpvc(blend) <= most * (1 + 1e-12));
    RC_ASSERT(least > 0);
    RC_ASSERT(most < 1);
  }));
}

TEST_CASE("pigments that are not known enough are errors") {
  Pigment p{4, 0, 20};
  p.oil_g_per_100g = 0;
  CHECK(cpvc({{p, 1}}).error().what == Say::oil_absorption_not_known);
  CHECK(cpvc({{Pigment{0, 0, 20}, 1}}).error().what == Say::density_not_known);
  CHECK(cpvc({{Pigment{none, 0, 20}, 1}}).error().what == Say::not_a_number);
  CHECK(cpvc({{Pigment{endless, 0, 20}, 1}}).error().what == Say::not_a_number);
  CHECK(cpvc({{Pigment{-4, 0, 20}, 1}}).error().what == Say::negative_amount);
  CHECK(cpvc({}).error().what == Say::no_pigment_there);
  const Pigment good{4, 0, 20};
  CHECK(cpvc({{good, 0}}).error().what == Say::no_pigment_there);
  CHECK(cpvc({{good, -1}}).error().what == Say::negative_amount);
  CHECK(cpvc({{good, none}}).error().what == Say::not_a_number);
}

TEST_CASE("a film's binder grows with the room's humidity, its PVC falls, and nothing else moves") {
  CHECK(rc::check("humidity", [] {
    const Wet wet = any_wet();
    const double pigment = some(5), damp = *rc::gen::inRange(1, 97) / 100.0;
    const Film dry = *film_of(pigment, wet, {22, damp});
    const Film damper = *film_of(pigment, wet, {22, damp + 0.01});
    RC_ASSERT(dry.pigment_mL == pigment);
    RC_ASSERT(damper.binder_mL > dry.binder_mL);
    RC_ASSERT(*pvc(damper) < *pvc(dry));
    RC_ASSERT(*pvc(dry) < 1);
    RC_ASSERT(*tack_index(wet, {22, damp + 0.01}) > *tack_index(wet, {22, damp}));
  }));
}

TEST_CASE("gum's own moisture is counted once: at 12 % held it is as dense as sold") {
  const Wet gum{.gum_g = 8.8};
  const Film film = *film_of(0, gum, {30, 0.53});
  const double as_sold = (8.8 + film.held_water_g) / film.binder_mL;
  CHECK(film.held_water_g == doctest::Approx(1.2).epsilon(0.05)); // near enough to 12 %
  CHECK(as_sold == doctest::Approx(1.40).epsilon(0.01));
}

TEST_CASE("the ends of PVC") {
  CHECK(pvc({1, 0, 0}) == 1);
  CHECK(pvc({0, 1, 0}) == 0);
  CHECK(pvc({0, 0, 0}).error().what == Say::nothing_to_dry);
  CHECK(pvc({-1, 2, 0}).error().what == Say::negative_amount);
  CHECK(pvc({none, 2, 0}).error().what == Say::not_a_number);
  CHECK(film_of(0, {}, usual).error().what == Say::nothing_to_dry);
  CHECK(film_of(endless, {}, usual).error().what == Say::not_a_number);
  CHECK(film_of(1, {.gum_g = -1}, usual).error().what == Say::negative_amount);
  CHECK(film_of(1, {.gum_g = 1}, {22, 0.99}).error().what == Say::humidity_above_held);
}

TEST_CASE("the tack index is a ratio, and glycerin and honey raise it") {
  CHECK(rc::check("index", [] {
    const Wet wet = any_wet();
    const double times = some(9), index = *tack_index(wet, usual);
    const Wet more{.gum_g = wet.gum_g * times,
                   .glycerin_g = wet.glycerin_g * times,
                   .honey_g = wet.honey_g * times};
    RC_ASSERT(std::abs(*tack_index(more, usual) - index) < 1e-9 * index);
    Wet sweeter = wet;
    sweeter.honey_g += 0.1;
    Wet softer = wet;
    softer.glycerin_g += 0.1;
    RC_ASSERT(*tack_index(sweeter, usual) > index);
    RC_ASSERT(*tack_index(softer, usual) > *tack_index(sweeter, usual));
  }));
  CHECK(tack_index({.glycerin_g = 1}, usual).error().what == Say::no_gum_there);
  CHECK(tack_index({.gum_g = none}, usual).error().what == Say::not_a_number);
}

TEST_CASE("our own marks, and what is said at them") {
  CHECK(caution_mark({}) == doctest::Approx(0.5).epsilon(1e-4));
  CHECK(warning_mark({}) == doctest::Approx(0.8).epsilon(1e-4));
  CHECK(tack(0.49) == Tack::dries);
  CHECK(tack(0.51) == Tack::may_stay_sticky);
  CHECK(tack(0.81) == Tack::stays_sticky);
  CHECK(words::say(say_of(Tack::may_stay_sticky)).find("our own estimate") != std::string::npos);
  CHECK(say_of(Tack::dries) != say_of(Tack::stays_sticky));
  CHECK(tack(none).error().what == Say::not_a_number);
  CHECK(tack(-1).error().what == Say::negative_amount);
  CHECK(tack(101).error().what == Say::amount_too_large);
  CHECK(tack(0.5, {.ln_u = 0}).error().what == Say::tack_mark_unusable);
  CHECK(tack(0.5, {.ln_middle = none}).error().what == Say::tack_mark_unusable);
}

TEST_CASE("a higher index is never less sticky, and each mark begins its own word") {
  CHECK(rc::check("tack", [] {
    const TackMark mark{-2 + some(3), some(1), some(1), 0};
    const double index = some(50);
    RC_ASSERT(*tack(index + some(50), mark) >= *tack(index, mark));
    RC_ASSERT(*tack(0, mark) == Tack::dries);
    const double caution = caution_mark(mark), warning = warning_mark(mark);
    if (caution <= 100) RC_ASSERT(*tack(caution, mark) == Tack::may_stay_sticky);
    if (warning <= 100) RC_ASSERT(*tack(warning, mark) == Tack::stays_sticky);
    RC_ASSERT(*tack(std::min(100.0, caution) * 0.999, mark) == Tack::dries);
  }));
}

TEST_CASE("a sticky paint lowers the marks, a good one raises them, and both narrow") {
  CHECK(rc::check("verdicts", [] {
    const TackMark before{-2 + some(3), some(1), some(1), 0};
    const double index = some(30);
    const TackMark sticky = *updated(before, index, true), good = *updated(before, index, false);
    RC_ASSERT(sticky.ln_middle <= before.ln_middle);
    RC_ASSERT(good.ln_middle >= before.ln_middle);
    RC_ASSERT(sticky.ln_u <= before.ln_u);
    RC_ASSERT(good.ln_u <= before.ln_u);
    RC_ASSERT(sticky.ln_u > 0);
    RC_ASSERT(caution_mark(sticky) < warning_mark(sticky));
  }));
  CHECK(updated({}, 0.9, true)->verdicts == 1);
  CHECK(updated({}, 0, true).error().what == Say::measure_not_positive);
  CHECK(updated({}, endless, true).error().what == Say::not_a_number);
}

TEST_CASE("the moments after a verdict are those of the product, summed in small steps") {
  for (const bool sticky : {true, false})
    for (const double index : {0.3, 0.5, 0.63, 0.8, 1.4}) {
      const TackMark after = *updated({}, index, sticky);
      const Moments sum = by_small_steps({}, index, sticky);
      CHECK(after.ln_middle == doctest::Approx(sum.mean).epsilon(1e-6));
      CHECK(after.ln_u == doctest::Approx(sum.sd).epsilon(1e-6));
    }
  // Beyond where the normal tail is a number at all.
  const TackMark sure{0, 0.01, 0, 0};
  CHECK(updated(sure, 0.5, true)->ln_middle == doctest::Approx(std::log(0.5)).epsilon(1e-3));
  const TackMark join = *updated(sure, std::exp(-0.3001), true);
  const TackMark beside = *updated(sure, std::exp(-0.2999), true);
  CHECK(join.ln_middle == doctest::Approx(beside.ln_middle - 0.0002).epsilon(1e-5));
}

// Gum's moisture of 12.5 % to 0.72 %, the fifths of honey's water: what they leave open of the
// index.
TEST_CASE("what is not known of gum and honey is not known of the tack either") {
  const Room room{21, 0.5};
  const Amount gum{10, 0, {{"gum moisture", 0.3}}}, honey{2, 0, {{"honey water", 0.04}}};
  const auto index = tack_index(gum, exact(0.5), honey, room);
  REQUIRE(index);
  const auto at = [&](double g, double h) { return *tack_index(Wet{g, 0.5, h, 0, 0}, room); };
  CHECK(index->value == at(10, 2));
  CHECK(index->shares.at("gum moisture") ==
        doctest::Approx((at(10.3, 2) - at(9.7, 2)) / 2).epsilon(0.01));
  CHECK(index->shares.at("honey water") ==
        doctest::Approx((at(10, 2.04) - at(10, 1.96)) / 2).epsilon(0.01));
  CHECK(tack_index(exact(0), exact(1), exact(1), room).error().what ==
        words::PaintSay::no_gum_there);
}

TEST_CASE("an index that is known less is between the marks over a wider stretch") {
  CHECK(*tack(exact(0.49)) == Tack::dries);
  CHECK(*tack(Amount{0.49, 0.1 * 0.1, {}}) == Tack::may_stay_sticky);
  CHECK(*tack(exact(0.81)) == Tack::stays_sticky);
  CHECK(*tack(Amount{0.81, 0.1 * 0.1, {}}) == Tack::may_stay_sticky);
  CHECK(*tack(exact(0)) == Tack::dries);
}

}
