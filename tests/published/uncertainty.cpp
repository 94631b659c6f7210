// Published worked examples of combined uncertainty, and a Monte Carlo of a whole batch.
#include "paint/amount.hpp"
#include "paint/bottle.hpp"
#include "paint/measure.hpp"
#include "published/row.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

using namespace paint;
using published::check;
using published::Source;

namespace {

constexpr int draws = 1000000;

struct Spread {
  double mean = 0;
  double sd = 0;
};

template <class Draw>
Spread of_draws(Draw draw) {
  double mean = 0, squares = 0;
  for (int i = 1; i <= draws; ++i) { // Welford's way
    const double x = draw();
    const double off = x - mean;
    mean += off / i;
    squares += off * (x - mean);
  }
  return {mean, std::sqrt(squares / (draws - 1))};
}

}

TEST_CASE("JCGM 100:2008 H.1: end gauge, six components make 32 nm") {
  Amount length = exact(0);
  for (double u : {25.0, 16.599, 6.7, 5.8, 3.9, 2.887}) length = length + Amount{0, u * u, {}};
  check({.formula = "sum of independent components, u in nm",
         .source = "JCGM 100:2008, H.1",
         .expected = 32,
         .ours = uncertainty(length),
         .tolerance = 0.5,
         .why = "the result is printed to a nm"});
}

TEST_CASE("Eurachem A1: cadmium standard, 1002.7 mg/L with u 0.9") {
  const Amount mass{100.28, 0.05 * 0.05, {}};
  const Amount purity{0.9999, 0.000058 * 0.000058, {}};
  const Amount volume{100.0, 0.07 * 0.07, {}};
  const Amount c = scaled(quotient(product(mass, purity), volume), 1000);
  const std::string source = "EURACHEM/CITAC guide Quantifying Uncertainty, example A1";
  const std::string why = "half of the last printed figure";
  check({"mass times purity over volume, mg/L", source, Source::published, 1002.7, c.value, 0.05,
         why});
  check({"its standard uncertainty, mg/L", source, Source::published, 0.9, uncertainty(c), 0.05,
         why});
  check({"its relative standard uncertainty", source, Source::published, 0.9 / 1002.7,
         relative_uncertainty(c), 0.00005, why});
}

TEST_CASE("JCGM 100:2008 5.2.2, example: ten resistors, one standard of 100 mohm make 1 ohm") {
  Amount series = exact(0);
  for (int i = 0; i < 10; ++i) series = series + Amount{1000, 0, {{"standard", 0.1}}};
  check({.formula = "ten repeats with one tool, u in ohm",
         .source = "JCGM 100:2008, 5.2.2, example",
         .kind = Source::from_memory,
         .expected = 1.0,
         .ours = uncertainty(series),
         .tolerance = 1e-9,
         .why = "shares of one tool add by value: rounding only"});
  const Amount one{1000, 0, {{"standard", 0.1}}};
  check({.formula = "covariance of two of them, ohm^2",
         .source = "JCGM 100:2008, 5.2.2, example",
         .kind = Source::from_memory,
         .expected = 0.01,
         .ours = covariance(one, one),
         .tolerance = 1e-12,
         .why = "fully correlated: rounding only"});
}

// 12 drops of a 1:2 binder and a spoon of it on 10 g of pigment: two droppers' worth of doubt, a
// spoon's, a scale's, each drop's and the filling's own.
TEST_CASE("JCGM 101:2008: a million draws of a batch against first order") {
  const Material binder{Kind::binder, *parts_of({.gum = 1, .water = 2}), {}};
  const Dropper dropper{.tool = "dropper"};
  const Spoon spoon = spoon_of({"teaspoon_metric", 5});
  const Amount drops = *grams_of_drops(12, dropper, binder);
  const Amount helping = *grams_of_spoons(1, spoon, binder);
  const Amount pigment = *grams_weighed(10);
  const Amount ratio = scaled(quotient(drops + helping, pigment), 10);

  std::mt19937_64 random(20081);
  std::normal_distribution<double> normal;
  std::uniform_real_distribution<double> even(-1, 1);
  const double tension = drops.shares.at("tension:binder") / drops.value;
  const double one = drops.value / 12;
  const Spread drawn = of_draws([&] {
    const double calibration = 1 + 0.19 * normal(random);
    const double law = 1 + tension * normal(random);
    double g = 0;
    for (int i = 0; i < 12; ++i) g += one * (1 + own_of_drop * normal(random));
    g *= calibration * law;
    g += helping.value * (1 + 0.05 * even(random)) * (1 + spoon.own * normal(random));
    return 10 * g / (10 + 0.05 * even(random));
  });
  const std::string source = "Monte Carlo of 10^6 draws (JCGM 101:2008), std::mt19937_64";
  check({.formula = "binder ratio of drops, a spoon and a weighing, g to 10 g",
         .source = source,
         .kind = Source::reference_library,
         .expected = drawn.mean,
         .ours = ratio.value,
         .tolerance = 4 * drawn.sd / std::sqrt(draws) + 1e-4,
         .why = "four standard errors of the mean, and 1e-5 of second order in the quotient"});
  check({.formula = "its standard uncertainty, g to 10 g",
         .source = source,
         .kind = Source::reference_library,
         .expected = drawn.sd,
         .ours = uncertainty(ratio),
         .tolerance = 0.005 * drawn.sd,
         .why = "the draws give it to 0.07 %; the products of two doubts, left out by first order, "
                "to 0.2 %"});
}

// The jar weighs less than the sum by a little: what the parts are then, by drawing and weighting.
TEST_CASE("The jar weighed corrects backwards as Bayes' rule does") {
  const std::vector<Amount> parts{
      {10, 0.03 * 0.03, {}},                  // pigment
      {6, 0.1 * 0.1, {{"dropper", 0.8}}},     // binder by drops
      {1.5, 0.05 * 0.05, {{"dropper", 0.2}}}, // water by the same dropper
      {-1, 0, {{"evaporation", 0.4}}},        // water that has left
  };
  const Amount weighed = *weighed_difference(95.8, 80, "jar");
  const auto after = given_sum(parts, weighed, "jar");
  REQUIRE(after);

  std::mt19937_64 random(20082);
  std::normal_distribution<double> normal;
  const double u = uncertainty(weighed);
  std::vector<double> sum(4, 0), squares(4, 0);
  double weights = 0;
  for (int i = 0; i < draws; ++i) {
    const double dropper = normal(random);
    const std::vector<double> x{
        10 + 0.03 * normal(random), 6 + 0.1 * normal(random) + 0.8 * dropper,
        1.5 + 0.05 * normal(random) + 0.2 * dropper, -1 + 0.4 * normal(random)};
    const double off = (x[0] + x[1] + x[2] + x[3] - weighed.value) / u;
    const double weight = std::exp(-off * off / 2);
    weights += weight;
    for (std::size_t k = 0; k < 4; ++k) {
      sum[k] += weight * x[k];
      squares[k] += weight * x[k] * x[k];
    }
  }
  for (std::size_t k = 0; k < 4; ++k) {
    const double mean = sum[k] / weights;
    const double sd = std::sqrt(squares[k] / weights - mean * mean);
    const std::string part = "part " + std::to_string(k + 1) + " of a jar weighed, ";
    const std::string source = "10^6 draws weighted by Bayes' rule, std::mt19937_64";
    check({.formula = part + "g",
           .source = source,
           .kind = Source::reference_library,
           .expected = mean,
           .ours = (*after)[k].value,
           .tolerance = 0.03 * sd,
           .why = "some 40,000 of the draws fit the weighing: five standard errors"});
    check({.formula = part + "u in g",
           .source = source,
           .kind = Source::reference_library,
           .expected = sd,
           .ours = uncertainty((*after)[k]),
           .tolerance = 0.02 * sd,
           .why = "some 40,000 of the draws fit the weighing: five standard errors"});
  }
}
