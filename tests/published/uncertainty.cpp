// Published worked examples of combined uncertainty, and a Monte Carlo of a whole batch.
#include "paint/amount.hpp"
#include "paint/bottle.hpp"
#include "paint/measure.hpp"
#include "published/draws.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace uncertainty_test {

using namespace paint;
using namespace published;

TEST_CASE("JCGM 100:2008 H.1: end gauge, six components make 32 nm") {
  Amount length = exact(0);
  for (double u : {25.0, 16.599, 6.7, 5.8, 3.9, 2.887}) length = length + Amount{0, u * u, {}};
  check({"amount/uncertainty", "u of a sum of six independent components, nm",
         printed("JCGM 100:2008, H.1"), 32, uncertainty(length), 0.5, "half of the last figure"});
}

TEST_CASE("Eurachem A1: cadmium standard, 1002.7 mg/L with u 0.9") {
  const Amount mass{100.28, 0.05 * 0.05, {}};
  const Amount purity{0.9999, 0.000058 * 0.000058, {}};
  const Amount volume{100.0, 0.07 * 0.07, {}};
  const Amount c = scaled(quotient(product(mass, purity), volume), 1000);
  const Source source = printed("Eurachem/CITAC guide CG 4, example A1");
  const std::string why = "half of the last figure";
  check({"amount/quotient", "mass times purity over volume, mg/L", source, 1002.7, c.value, 0.05,
         why});
  check({"amount/uncertainty", "u of mass times purity over volume, mg/L", source, 0.9,
         uncertainty(c), 0.05, why});
  check({"amount/relative_uncertainty", "relative u of mass times purity over volume", source,
         0.9 / 1002.7, relative_uncertainty(c), 0.00005, why});
}

TEST_CASE("JCGM 100:2008 5.2.2, example: ten resistors, one standard of 100 mohm make 1 ohm") {
  Amount series = exact(0);
  for (int i = 0; i < 10; ++i) series = series + Amount{1000, 0, {{"standard", 0.1}}};
  const Source example = remembered("JCGM 100:2008, 5.2.2, example of ten resistors");
  check({"amount/uncertainty", "u of ten repeats with one tool, ohm", example, 1.0,
         uncertainty(series), 1e-9, "shares of one tool add by value: rounding"});
  const Amount one{1000, 0, {{"standard", 0.1}}};
  check({"amount/covariance", "covariance of two of ten repeats with one tool, ohm^2", example,
         0.01, covariance(one, one), 1e-12, "fully correlated: rounding"});
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

  Random random(20081);
  const double tension = drops.shares.at("tension:binder") / drops.value;
  const double one = drops.value / 12;
  const double mL = mL_per_g(binder.parts), gum = binder.parts.gum;
  const Drawn drawn = of_draws([&] {
    const double calibration = 1 + 0.19 * random.normal();
    const double law = 1 + tension * random.normal();
    double g = 0;
    for (int i = 0; i < 12; ++i) g += one * (1 + own_of_drop * random.normal());
    g *= calibration * law;
    const double volume = 1 + 0.05 * random.even(); // one draw a statement: their order is ours
    g += helping.value * volume * (1 + spoon.own * random.normal());
    const double held = gum / 0.88 * 0.0153 * random.normal(); // water, in place of gum
    g *= mL / (mL + held * (1 / 0.99821 - 0.6) + gum * 0.02 * random.normal());
    return 10 * g / (10 + 0.05 * random.even());
  });
  check({"measure/grams_of_drops", "ratio of drops, a spoon and a weighing, g to 10 g", drawn_apart,
         drawn.mean, ratio.value, 4 * drawn.sd / std::sqrt(draws) + 1e-4,
         "four standard errors of the mean, and 1e-5 of second order in the quotient"});
  check({"measure/grams_of_drops", "u of the ratio of drops, a spoon and a weighing, g to 10 g",
         drawn_apart, drawn.sd, uncertainty(ratio), 0.005 * drawn.sd,
         "the draws give it to 0.07 %; the products of two doubts, left out by first order, to "
         "0.2 %"});
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

  Random random(20082);
  const double u = uncertainty(weighed);
  std::vector<double> sum(4, 0), squares(4, 0);
  double weights = 0;
  for (int i = 0; i < draws; ++i) {
    const double dropper = random.normal();
    const std::vector<double> x{
        10 + 0.03 * random.normal(), 6 + 0.1 * random.normal() + 0.8 * dropper,
        1.5 + 0.05 * random.normal() + 0.2 * dropper, -1 + 0.4 * random.normal()};
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
    const std::string at = "part " + std::to_string(k + 1);
    const Source bayes = apart("10^6 draws weighted by Bayes' rule, mt19937_64");
    const std::string why = "some 40,000 of the draws fit the weighing: five standard errors";
    check({"bottle/given_sum", "a part once the jar was weighed, g", bayes, mean, (*after)[k].value,
           0.03 * sd, why, at});
    check({"bottle/given_sum", "u of a part once the jar was weighed, g", bayes, sd,
           uncertainty((*after)[k]), 0.02 * sd, why, at});
  }
}

}
