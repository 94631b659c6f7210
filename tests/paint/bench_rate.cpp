#include "paint/bench_rate.hpp"

#include "paint/air_random.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace bench_rate_test {

using namespace paint;
using Say = words::PaintSay;

TEST_CASE("the prior is as wide as rate and area together") {
  const auto u = [](const Interval& i) { return std::log(i.high / i.low) / 2 / std::sqrt(3.0); };
  for (Spread spread : {Spread::gathered, Spread::knife, Spread::mulling}) {
    const double both = std::hypot(u(*evaporation_rate({22, 0.45})), u(spread_area_m2(spread)));
    // Two figures are written of 0.43; the areas differ by 0.01.
    CHECK(std::abs(relative_u({}) - both) < 0.015);
  }
}

TEST_CASE(
    "a sitting's water is known no better than the bench, nor than one sitting from the next") {
  CHECK(rc::check("u", [] {
    const BenchRate bench = any::bench();
    RC_ASSERT(relative_u(bench) > bench.ln_u);
    RC_ASSERT(relative_u(bench) > 0.20);
    BenchRate worse = bench;
    worse.ln_u += 0.01;
    RC_ASSERT(relative_u(worse) > relative_u(bench));
    RC_ASSERT(!fault_of(bench));
  }));
  for (double bad : {3.01, -3.01, std::nan(""), std::numeric_limits<double>::infinity()})
    CHECK(fault_of(BenchRate{bad, 0.3, 0})->what == Say::bench_rate_unusable);
  for (double bad : {0.0, -0.1, std::nan(""), std::numeric_limits<double>::infinity()})
    CHECK(fault_of(BenchRate{0, bad, 0})->what == Say::bench_rate_unusable);
}

TEST_CASE("stretches foretold one after another make the whole, and are found in it again") {
  const auto any_stretch = [] {
    return DryingPrediction{any::between(0, 5), any::between(0, 5), any::between(0.01, 1)};
  };
  const auto same = [](const DryingPrediction& a, const DryingPrediction& b) {
    return std::abs(a.lost_g - b.lost_g) < 1e-9 &&
           std::abs(a.per_ln_factor - b.per_ln_factor) < 1e-9 &&
           std::abs(a.carried - b.carried) < 1e-9;
  };
  CHECK(rc::check("then and since", [&] {
    const DryingPrediction a = any_stretch(), b = any_stretch(), c = any_stretch();
    RC_ASSERT(same(then(then(a, b), c), then(a, then(b, c))));
    RC_ASSERT(same(since(a, then(a, b)), b));
    RC_ASSERT(then(a, DryingPrediction{}) == a);
    RC_ASSERT(then(DryingPrediction{}, a) == a);
    RC_ASSERT(same(since(a, a), DryingPrediction{}));
    RC_ASSERT(then(a, b).lost_g >= a.lost_g);
  }));
  // Of nothing that was carried nothing more is carried on.
  CHECK(since({1, 1, 0}, {2, 1, 0}).carried == 0);
}

TEST_CASE("two stretches of drying foretold are the whole of it") {
  CHECK(rc::check("drying", [] {
    const Wet wet = any::wet();
    const Room air = any::room();
    const double first = any::between(1, 10000), second = any::between(1, 10000);
    if (*held_water_g(wet, 0.5, 20) <= 0) RC_DISCARD("pure water");
    const DryingPrediction soon = *predict_drying(wet, Spread::knife, air, first);
    const Wet later = any::with_water(wet, wet.water_g - soon.lost_g);
    const DryingPrediction both = then(soon, *predict_drying(later, Spread::knife, air, second));
    const DryingPrediction whole = *predict_drying(wet, Spread::knife, air, first + second);
    RC_ASSERT(std::abs(both.lost_g - whole.lost_g) < 1e-8 * (1 + wet.water_g));
    RC_ASSERT(std::abs(both.per_ln_factor - whole.per_ln_factor) < 1e-6 * (1 + wet.water_g));
  }));
}

TEST_CASE("a taught rate lies between what was known and what was seen, and is better known") {
  CHECK(rc::check("between", [] {
    const BenchRate before = any::bench();
    const double lost = any::between(0.01, 5);
    const double elasticity = any::between(0.05, 1);
    const double seen = any::between(0.01, 5);
    const double u = any::between(0.001, 0.5);
    const auto after = updated(before, {lost, elasticity * lost}, seen, u);
    if (!after) RC_DISCARD("twenty times");
    const double by_itself = before.ln_factor + std::log(seen / lost) / elasticity;
    RC_ASSERT(after->ln_factor >= std::min(before.ln_factor, by_itself) - 1e-12);
    RC_ASSERT(after->ln_factor <= std::max(before.ln_factor, by_itself) + 1e-12);
    RC_ASSERT(after->ln_u < before.ln_u);
    // Weights add: that of an observation falls with the square of the elasticity.
    const double noise = std::hypot(u / seen, 0.20) / elasticity;
    const double weights = 1 / (before.ln_u * before.ln_u) + 1 / (noise * noise);
    RC_ASSERT(std::abs(after->ln_u * after->ln_u * weights - 1) < 1e-9);
    RC_ASSERT(after->observations == before.observations + 1);
  }));
}

TEST_CASE("paint that had dried as far as it could teaches nothing of the rate") {
  const BenchRate after = *updated({}, {2, 0}, 1.9, 0.05);
  CHECK(after.ln_factor == 0);
  CHECK(after.ln_u == BenchRate{}.ln_u);
}

TEST_CASE("a bench is learnt from many weighings") {
  CHECK(rc::check("learnt", [] {
    const double truth = any::between(-0.8, 0.8);
    BenchRate bench;
    for (int i = 0; i < 40; ++i) {
      const double predicted = std::exp(bench.ln_factor);
      bench = *updated(bench, {predicted, predicted}, std::exp(truth), 0.01);
    }
    // 0.2 between sittings over the root of 40, and what the prior still pulls.
    RC_ASSERT(std::abs(bench.ln_factor - truth) < 0.02);
    RC_ASSERT(std::abs(bench.ln_u - 0.2 / std::sqrt(40.0)) < 0.003);
  }));
}

TEST_CASE("the order of two weighings does not matter") {
  CHECK(rc::check("order", [] {
    const double a = any::between(0.3, 3);
    const double b = any::between(0.3, 3);
    // Each foretold by the bench as it then was: both speak of the same factor.
    const auto teach = [](const BenchRate& bench, double seen, double u) {
      const double predicted = std::exp(bench.ln_factor);
      return *updated(bench, {predicted, predicted}, seen, u * seen);
    };
    const BenchRate ab = teach(teach({}, a, 0.1), b, 0.3);
    const BenchRate ba = teach(teach({}, b, 0.3), a, 0.1);
    RC_ASSERT(std::abs(ab.ln_factor - ba.ln_factor) < 1e-12);
    RC_ASSERT(std::abs(ab.ln_u - ba.ln_u) < 1e-12);
  }));
}

TEST_CASE("nothing is taught by what cannot be") {
  const double none = std::nan("");
  const double endless = std::numeric_limits<double>::infinity();
  const DryingPrediction good{1, 1};
  for (double bad : {none, endless}) {
    CHECK(updated({}, good, bad, 0.1).error().what == Say::not_a_number);
    CHECK(updated({}, good, 1, bad).error().what == Say::not_a_number);
    CHECK(updated({}, {bad, 1}, 1, 0.1).error().what == Say::not_a_number);
    CHECK(updated({bad, 0.3, 0}, good, 1, 0.1).error().what == Say::bench_rate_unusable);
  }
  CHECK(updated({}, {0, 0}, 1, 0.1).error().what == Say::nothing_lost);
  CHECK(updated({}, good, 0, 0.1).error().what == Say::nothing_lost);
  CHECK(updated({}, good, -1, 0.1).error().what == Say::nothing_lost);
  CHECK(updated({}, good, 1, 0).error().what == Say::uncertainty_not_positive);
  CHECK(updated({0, 0, 0}, good, 1, 0.1).error().what == Say::bench_rate_unusable);
  CHECK(updated({0, 2, 0}, good, 1000, 1).error().what == Say::bench_rate_unusable);
  CHECK(words::message(updated({}, good, 0, 0.1).error()) ==
        "A weighing teaches only where water has left.");
}

}
