#include "paint/bench_rate.hpp"

#include "paint/air_random.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace paint;
using words::Say;

TEST_CASE("the prior is as wide as rate and area together") {
  const auto u = [](const Interval& i) { return std::log(i.high / i.low) / 2 / std::sqrt(3.0); };
  for (Spread spread : {Spread::gathered, Spread::knife, Spread::mulling}) {
    const double both = std::hypot(u(*evaporation_rate({22, 0.45})), u(spread_area_m2(spread)));
    // Two figures are written of 0.43; the areas differ by 0.01.
    CHECK(std::abs(relative_u({}) - both) < 0.015);
  }
}

TEST_CASE("a taught rate lies between what was known and what was seen, and is better known") {
  CHECK(rc::check("between", [] {
    const BenchRate before = any::bench();
    const double lost = any::between(0.01, 5);
    const double elasticity = any::between(0.05, 1);
    const double seen = any::between(0.01, 5);
    const double u = any::between(0.001, 0.5);
    const auto after = taught(before, {lost, elasticity * lost}, seen, u);
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
  const BenchRate after = *taught({}, {2, 0}, 1.9, 0.05);
  CHECK(after.ln_factor == 0);
  CHECK(after.ln_u == BenchRate{}.ln_u);
}

TEST_CASE("a bench is learnt from many weighings") {
  CHECK(rc::check("learnt", [] {
    const double truth = any::between(-0.8, 0.8);
    BenchRate bench;
    for (int i = 0; i < 40; ++i) {
      const double foretold = std::exp(bench.ln_factor);
      bench = *taught(bench, {foretold, foretold}, std::exp(truth), 0.01);
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
      const double foretold = std::exp(bench.ln_factor);
      return *taught(bench, {foretold, foretold}, seen, u * seen);
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
  const Foretold good{1, 1};
  for (double bad : {none, endless}) {
    CHECK(taught({}, good, bad, 0.1).error().what == Say::not_a_number);
    CHECK(taught({}, good, 1, bad).error().what == Say::not_a_number);
    CHECK(taught({}, {bad, 1}, 1, 0.1).error().what == Say::not_a_number);
    CHECK(taught({bad, 0.3, 0}, good, 1, 0.1).error().what == Say::bench_rate_unusable);
  }
  CHECK(taught({}, {0, 0}, 1, 0.1).error().what == Say::nothing_lost);
  CHECK(taught({}, good, 0, 0.1).error().what == Say::nothing_lost);
  CHECK(taught({}, good, -1, 0.1).error().what == Say::nothing_lost);
  CHECK(taught({}, good, 1, 0).error().what == Say::uncertainty_not_positive);
  CHECK(taught({0, 0, 0}, good, 1, 0.1).error().what == Say::bench_rate_unusable);
  CHECK(taught({0, 2, 0}, good, 1000, 1).error().what == Say::bench_rate_unusable);
  CHECK(words::message(taught({}, good, 0, 0.1).error()) ==
        "A weighing teaches only where water has left.");
}
