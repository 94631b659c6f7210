#include "paint/invented_notes.hpp"
#include "paint/range/predict.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <numeric>

namespace predict_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

constexpr LearnPigment usual{0.1, 0.6, 0};

const RangeFit& nobody() {
  static const RangeFit fit = *learn({});
  return fit;
}

const RangeFit& somebody() {
  static const RangeFit fit =
      *learn(invented_notes({.pigments = 6, .batches = 20, .seed = 11, .tools = 2}));
  return fit;
}

Prediction first_batch() { return *predict(nobody(), {{{-1, 1, usual}}, {}, 0}); }

double sum_of(const std::vector<double>& weights) {
  return std::accumulate(weights.begin(), weights.end(), 0.0);
}

}

TEST_CASE("before any note the class is all there is") {
  const Prediction f = first_batch();
  const LnSpread t = spread_of(f);
  CHECK(std::abs(t.mean - 0.7) < 1e-3);
  // alpha's sd and tau, tau and sigma_b being uncertain themselves
  const double tau = 0.25, sigma = 0.08, both = std::cosh(2 * std::sqrt(7) * 0.5);
  const double wider = (12 + 2 * both) / 14;
  CHECK(std::abs(t.sd - std::sqrt(0.16 + (tau * tau + sigma * sigma) * wider)) < 1e-3);
  CHECK(std::abs(mL_at_share(f, 0.5) - std::exp(0.7)) < 0.01);
  CHECK(safe_drops(f, {0.5}, 0.05) > 0);
}

TEST_CASE("sticky moves the range up, loose down, each note narrows it") {
  const Prediction f = first_batch();
  const double sd = spread_of(f).sd, mean = spread_of(f).mean;
  const double mL = std::exp(mean);
  double before = -1e9;
  for (int felt = 4; felt >= 0; --felt) {
    const LnSpread t = spread_of(*after(f, {mL, 0, felt}));
    CHECK(t.mean > before);
    before = t.mean;
  }
  CHECK(spread_of(*after(f, {mL, 0, 2})).sd < 0.6 * sd);
  CHECK(spread_of(*after(f, {mL, 0.5, 2})).sd > spread_of(*after(f, {mL, 0, 2})).sd);
}

TEST_CASE("the order of today's notes does not matter") {
  const Prediction f = first_batch();
  const Prediction a = *after(*after(f, {1.5, 0, 1}), {2.5, 0.02, 3});
  const Prediction b = *after(*after(f, {2.5, 0.02, 3}), {1.5, 0, 1});
  for (std::size_t i = 0; i < a.weights.size(); ++i)
    CHECK(std::abs(a.weights[i] - b.weights[i]) < 1e-14);
}

TEST_CASE("chances are chances, and rise with the liquid") {
  Prediction f =
      *predict(somebody(), {{{0, 1, {}}, {3, 0.5, {}}, {-1, 0.2, usual}}, {{0, 1, 0}}, 0.02});
  for (int round = 0; round < 3; ++round) {
    CHECK(std::abs(sum_of(f.weights) - 1) < 1e-12);
    double loose_before = 0;
    for (double mL = 0.05; mL < 60; mL *= 1.05) {
      const auto words = chances(f, {mL});
      double sum = 0;
      for (const double p : words) {
        CHECK(p >= -1e-12);
        sum += p;
      }
      CHECK(std::abs(sum - 1) < 1e-12);
      CHECK(std::abs(words[2] - chance_right(f, {mL})) < 1e-12);
      CHECK(std::abs(words[3] + words[4] - chance_too_loose(f, {mL})) < 1e-12);
      CHECK(chance_too_loose(f, {mL}) >= loose_before);
      loose_before = chance_too_loose(f, {mL});
    }
    f = *after(f, {2 + 0.3 * round, 0.01, 1 + round / 2});
  }
}

TEST_CASE("safe drops are the most that are safe") {
  Prediction f = first_batch();
  for (const double sd : {0.0, 0.05}) {
    for (const double mL : {0.0, 0.2, 0.8, 1.5, 5.0}) {
      const int n = safe_drops(f, {mL, sd}, 0.03);
      if (n > 0) CHECK(chance_too_loose(f, {mL + n * 0.03, sd}) <= 0.04);
      CHECK(chance_too_loose(f, {mL + (n + 1) * 0.03, sd}) > 0.04);
    }
    f = *after(f, {1.2, 0, 1});
  }
  CHECK(safe_drops(f, {0.1}, 1e-9) == 10000);
}

TEST_CASE("the band begins where right is as likely as not, and ends where too loose is") {
  const Prediction f = *after(first_batch(), {1.4, 0, 1});
  const PredictedBand band = band_of(f);
  CHECK(std::abs(chance_right(f, {band.from_mL}) + chance_too_loose(f, {band.from_mL}) - 0.5) <
        1e-6);
  CHECK(std::abs(chance_too_loose(f, {band.to_mL}) - 0.5) < 1e-6);
  CHECK(band.from_mL < band.to_mL);
  CHECK(mL_at_share(f, 0.1) < mL_at_share(f, 0.9));
}

// Simpson's rule over t for one point of theta, with exact normal and logistic.
TEST_CASE("the grid agrees with a finer integral") {
  LearnPriors priors;
  for (NormalPrior& prior : priors.theta) prior.sd = 0;
  priors.walk = 0;
  const Prediction f =
      *after(*predict(*learn({}, priors), {{{-1, 1, usual}}, {}, 0}), {1.6, 0.03, 1});
  const double sd = std::sqrt(0.16 + 0.25 * 0.25 + 0.08 * 0.08), pi = 3.14159265358979;
  const double s = std::sqrt(0.0036 + 3 * 0.0009 / (pi * pi)), slips = 1 / (1 + std::exp(3.0));
  const auto logit = [](double x) { return 1 / (1 + std::exp(-x)); };
  double mass = 0, first = 0, loose = 0;
  const int n = 20000;
  for (int i = 0; i <= n; ++i) {
    const double t = 0.7 + sd * (-8 + 16.0 * i / n), x = std::log(1.6) - t;
    const double p = (1 - slips) * (logit((-0.12 - x) / s) - logit((-0.42 - x) / s)) + slips / 5;
    const double w = (i == 0 || i == n ? 1
                      : i % 2          ? 4
                                       : 2) *
                     p * std::exp(-0.5 * (t - 0.7) * (t - 0.7) / (sd * sd));
    mass += w;
    first += w * t;
    loose += w * logit((std::log(2.5) - t - 0.12) / 0.06);
  }
  CHECK(std::abs(spread_of(f).mean - first / mass) < 1e-6);
  CHECK(std::abs(chance_too_loose(f, {2.5}) - loose / mass) < 1e-6);
}

TEST_CASE("a pigment that was never felt is foreseen by its class, wider than one that was") {
  LearnProblem p = invented_notes({.pigments = 6, .batches = 20, .seed = 11});
  p.pigments.push_back(usual);
  const RangeFit fit = *learn(p);
  const Prediction by_place = *predict(fit, {{{6, 1, {}}}, {}, 0});
  const Prediction by_facts = *predict(fit, {{{-1, 1, usual}}, {}, 0});
  const Prediction felt = *predict(fit, {{{0, 1, {}}}, {}, 0});
  CHECK(by_place.weights == by_facts.weights);
  CHECK(spread_of(by_place).sd > spread_of(felt).sd);
  CHECK(std::abs(spread_of(by_place).mean - fit.pigments[6].ln_demand) < 0.01);
}

TEST_CASE("pigment in two heaps is pigment in one") {
  const Prediction one = *predict(somebody(), {{{0, 1, {}}, {1, 0.5, {}}}, {}, 0});
  const Prediction two = *predict(somebody(), {{{0, 0.4, {}}, {1, 0.5, {}}, {0, 0.6, {}}}, {}, 0});
  CHECK(std::abs(spread_of(one).mean - spread_of(two).mean) < 1e-9);
  CHECK(std::abs(spread_of(one).sd - spread_of(two).sd) < 1e-9);
}

TEST_CASE("what cannot be is named and changes nothing") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const auto fault = [](const PredictBatch& batch) {
    const auto f = predict(somebody(), batch);
    return f ? words::Sentence{} : f.error().what;
  };
  CHECK(fault({}) == Say::learn_no_pigment);
  CHECK(fault({{{0, 0, {}}}, {}, 0}) == Say::learn_no_pigment);
  CHECK(fault({{{6, 1, {}}}, {}, 0}) == Say::learn_not_there);
  CHECK(fault({{{0, nan, {}}}, {}, 0}) == Say::learn_out_of_range);
  CHECK(fault({{{0, -1, {}}}, {}, 0}) == Say::learn_out_of_range);
  CHECK(fault({{{-1, 1, {nan, 0, 0}}}, {}, 0}) == Say::learn_out_of_range);
  CHECK(fault({{{0, 1, {}}}, {{2, 1, 0}}, 0}) == Say::learn_not_there);
  CHECK(fault({{{0, 1, {}}}, {{-1, nan, 0}}, 0}) == Say::learn_out_of_range);
  CHECK(fault({{{0, 1, {}}}, {}, nan}) == Say::learn_out_of_range);
  CHECK(fault({{{0, 1, {}}}, {}, 0, nan}) == Say::learn_out_of_range);
  const Prediction f = first_batch();
  for (const TodayNote& note : {TodayNote{0, 0, 2},
                                {-1, 0, 2},
                                {nan, 0, 2},
                                {2, nan, 2},
                                {2, -1, 2},
                                {2, 0, 5},
                                {2, 0, 1, nan, 0},
                                {2, 0, 1, 0, 1.1},
                                {2, 0, -1}})
    CHECK(after(f, note).error().what == Say::learn_out_of_range);
  CHECK(std::isnan(chance_right(f, PredictionAt{-1})));
  CHECK(std::isnan(chance_right(Prediction{}, PredictionAt{1})));
  CHECK(std::isnan(mL_at_share(f, 1.5)));
  CHECK(safe_drops(f, {nan}, 0.05) == 0);
  CHECK(safe_drops(f, {1}, 0) == 0);
  CHECK(safe_drops({}, {1}, 0.05) == 0);
}

TEST_CASE("a result that was not found foresees nothing, and says why") {
  RangeFit broken = somebody();
  broken.end = LearnEnd::no_peak;
  CHECK(predict(broken, {{{0, 1, {}}}, {}, 0}).error().what == Say::learn_no_peak);
  RangeFit spoilt = somebody();
  spoilt.precision.push_back({100000, 0, 1});
  CHECK(predict(spoilt, {{{0, 1, {}}}, {}, 0}).error().what == Say::learn_not_there);
}

TEST_CASE("a thousand notes, and notes from another world, leave a range") {
  for (const bool slips : {false, true}) {
    LearnPriors priors;
    priors.slips = slips;
    Prediction f = *predict(*learn({}, priors), {{{-1, 1, usual}}, {}, 0});
    for (const TodayNote& far : {TodayNote{1e-9, 0, 4}, {1e9, 0, 0}, {1e9, 0, 2}}) {
      const Prediction now = *after(f, far);
      CHECK(std::abs(sum_of(now.weights) - 1) < 1e-9);
      CHECK(std::isfinite(spread_of(now).mean));
    }
    for (int i = 0; i < 1000; ++i) f = *after(f, {2.0, 0, i % 2 ? 0 : 4});
    CHECK(std::isfinite(spread_of(f).sd));
    CHECK(std::abs(sum_of(f.weights) - 1) < 1e-9);
  }
}

}
