#include "paint/invented_notes.hpp"
#include "paint/range/learn.hpp"
#include "paint/range/learn_joint.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace learn_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

LearnProblem small() {
  LearnProblem p;
  p.pigments = {{0.1, 0.6, 0}, {-0.2, 1.2, 0.1}};
  p.tools = {{0.03}, {0.05}};
  p.batches = {{0.01}, {0.02}};
  p.segments = {{0, {{0, 1.5}}}, {1, {{0, 1.0}, {1, 0.7}}}, {1, {{0, 1.0}, {1, 1.4}}}};
  p.notes = {{0, 0.7, 0.01, {{0, 1}}, 0},
             {0, 1.0, 0.01, {{0, 1}}, 1},
             {0, 1.2, 0, {{0, 0.8}, {1, 0.2}}, 2},
             {1, 1.2, 0.02, {{1, 1}}, 1},
             {1, 1.4, 0.01, {{1, 1}}, 2},
             {2, 1.8, 0.01, {{1, 0.9}, {0, 0.1}}, 3},
             {2, 1.7, 0, {}, 2}};
  return p;
}

Theta centres() {
  Theta theta;
  for (std::size_t i = 0; i < theta_count; ++i) theta[i] = usual_theta()[i].centre;
  return theta;
}

learning::Joint joint_at(const LearnProblem& p, const LearnPriors& priors, const Theta& theta,
                         const std::vector<double>& z) {
  const Eigen::Map<const Eigen::VectorXd> at(z.data(), static_cast<Eigen::Index>(z.size()));
  return learning::Model(p, priors).joint(theta, theta, at);
}

double value_at(const LearnProblem& p, const LearnPriors& priors, std::vector<double> z,
                std::size_t k, double by) {
  z[k] += by;
  return joint_at(p, priors, centres(), z).value;
}

// First and second derivatives beside central differences (of the value, and of the first).
void compare_with_differences(const LearnProblem& p, const LearnPriors& priors,
                              const std::vector<double>& z) {
  constexpr double h = 1e-5;
  const auto here = joint_at(p, priors, centres(), z);
  const Eigen::MatrixXd bent = here.precision;
  for (std::size_t k = 0; k < z.size(); ++k) {
    const double slope = (value_at(p, priors, z, k, h) - value_at(p, priors, z, k, -h)) / (2 * h);
    CHECK(std::abs(here.gradient[static_cast<Eigen::Index>(k)] - slope) <
          1e-6 * (1 + std::abs(slope)));
    std::vector<double> up = z, down = z;
    up[k] += h;
    down[k] -= h;
    const auto above = joint_at(p, priors, centres(), up);
    const auto below = joint_at(p, priors, centres(), down);
    for (auto l = static_cast<Eigen::Index>(k); l < bent.rows(); ++l) {
      const double expected = -(above.gradient[l] - below.gradient[l]) / (2 * h);
      CHECK(std::abs(bent(l, static_cast<Eigen::Index>(k)) - expected) <
            1e-5 * (1 + std::abs(expected)));
    }
  }
}

}

TEST_CASE("a pigment far from its guess is learnt where it was felt, not taken for slips") {
  for (const double right : {0.3, 0.56, 12.0}) {
    LearnProblem problem;
    problem.pigments = {{std::log(1.35), 0.6, 0.3}};
    for (int batch = 0; batch < 3; ++batch) {
      problem.batches.push_back({0.002});
      problem.segments.push_back({batch, {{0, 1}}});
      for (const auto& [share, felt] : {std::pair{0.75, 1}, {1.0, 2}, {1.4, 3}})
        problem.notes.push_back({batch, std::log(right * share), 0.01, {}, felt});
    }
    const auto fit = learn(problem);
    REQUIRE(fit);
    CHECK(fit->end == LearnEnd::found);
    CHECK(std::abs(fit->pigments[0].ln_demand - std::log(right)) < 0.15);
    CHECK(fit->pigments[0].sd < 0.2);
    // Also from where an earlier fit had taken it for something else.
    RangeFit astray = *fit;
    astray.z[static_cast<std::size_t>(astray.pigments[0].at)] = std::log(2.4);
    const auto again = learn(problem, {}, &astray);
    REQUIRE(again);
    CHECK(std::abs(again->pigments[0].ln_demand - fit->pigments[0].ln_demand) < 1e-4);
  }
}

TEST_CASE("slopes and curvatures are those of the value") {
  for (const bool slips : {false, true}) {
    LearnPriors priors;
    priors.slips = slips;
    compare_with_differences(small(), priors, {0.75, 1.0, 0.05, 0.01, -0.02, 3.5});
    compare_with_differences(small(), priors, {0.3, 1.4, -0.2, 0.05, 0.05, 4});
    // So far away that chances are counted by logarithms.
    compare_with_differences(small(), priors, {14.0, 12.0, 5, 0, 0, 3.9});
  }
}

TEST_CASE("near and far notes are counted by the same rule") {
  // At 150 slopes the way of counting changes: the value must not jump there.
  LearnProblem p;
  p.pigments = {{0, 0, 0}};
  p.batches = {{}};
  p.segments = {{0, {{0, 1}}}};
  p.notes = {{0, 0, 0, {}, 1}};
  LearnPriors priors;
  priors.theta[at_batch_sd] = {-20, 0};
  priors.slips = false;
  priors.strength.sd = 0;
  Theta theta = centres();
  theta[at_batch_sd] = -20;
  const double edge = 150 * 0.06 - 0.12; // demand at which the nearer end is 150 slopes away
  const auto value = [&](double z) { return joint_at(p, priors, theta, {z, z}).value; };
  const auto alpha = [](double z) { return -0.5 * z * z / 0.16; };
  for (const double at : {edge, -edge - 0.42 - 0.12, edge - 0.42}) {
    const double jump =
        (value(at + 1e-7) - alpha(at + 1e-7)) - (value(at - 1e-7) - alpha(at - 1e-7));
    CHECK(std::abs(jump) < 1e-5);
  }
}

TEST_CASE("theta is at the posterior's peak, and its covariance is the curvature's inverse") {
  const LearnProblem p = invented_notes({.pigments = 4, .batches = 8, .seed = 7});
  const auto fit = learn(p);
  REQUIRE(fit);
  REQUIRE(fit->end == LearnEnd::found);
  const auto height = [&](std::size_t i, double by, std::size_t j, double too) {
    Theta theta = fit->theta;
    theta[i] += by;
    theta[j] += too;
    return fit_at(p, {}, theta)->log_posterior;
  };
  constexpr double h = 0.01;
  for (std::size_t i = 0; i < theta_count; ++i) {
    const double slope = (height(i, 1e-4, i, 0) - height(i, -1e-4, i, 0)) / 2e-4;
    CHECK(std::abs(slope) * std::sqrt(fit->theta_covariance[i][i]) < 1e-3);
    for (std::size_t j = 0; j < theta_count; ++j) {
      double row = 0; // of curvature times covariance: a row of 1
      for (std::size_t k = 0; k < theta_count; ++k) {
        const double bent = -(height(i, h, k, h) - height(i, h, k, -h) - height(i, -h, k, h) +
                              height(i, -h, k, -h)) /
                            (4 * h * h);
        row += bent * fit->theta_covariance[k][j];
      }
      const double scale = std::sqrt(fit->theta_covariance[j][j] / fit->theta_covariance[i][i]);
      CHECK(std::abs(row - (i == j)) < 0.02 * scale);
    }
  }
}

TEST_CASE("no notes: the priors, and nobody has anything to say against it") {
  LearnProblem p = small();
  p.notes.clear();
  const auto fit = learn(p);
  REQUIRE(fit);
  CHECK(fit->end == LearnEnd::found);
  CHECK(fit->notes == 0);
  for (std::size_t i = 0; i < theta_count; ++i) {
    CHECK(std::abs(fit->theta[i] - usual_theta()[i].centre) < 1e-4);
    CHECK(std::abs(std::sqrt(fit->theta_covariance[i][i]) / usual_theta()[i].sd - 1) < 1e-3);
  }
  CHECK(fit->pigments[0].at == -1);
  CHECK(std::abs(fit->pigments[0].ln_demand - 0.7) < 1e-9);
  CHECK(std::abs(fit->log_marginal) < 1e-6);
  const auto nothing = learn({});
  REQUIRE(nothing);
  CHECK(nothing->end == LearnEnd::found);
}

TEST_CASE("notes that are all alike, one pigment, or that contradict each other give a range") {
  for (int felt = 0; felt < 5; ++felt) {
    LearnProblem p = small();
    for (LearnNote& note : p.notes) note.felt = felt;
    const auto fit = learn(p);
    REQUIRE(fit);
    CHECK(fit->end == LearnEnd::found);
  }
  LearnProblem one;
  one.pigments = {{0, 0.6, 0}};
  one.batches = {{}};
  one.segments = {{0, {{0, 1}}}};
  for (int i = 0; i < 40; ++i)
    one.notes.push_back({0, 0.6 + 0.001 * (i % 2), 0, {}, i % 2 ? 0 : 4});
  for (const bool slips : {false, true}) {
    LearnPriors priors;
    priors.slips = slips;
    const auto fit = learn(one, priors);
    REQUIRE(fit);
    CHECK(fit->end == LearnEnd::found);
    CHECK(std::isfinite(fit->pigments[0].sd));
    const ThetaPlace blamed = slips ? at_slips : at_slope;
    CHECK(fit->theta[blamed] > usual_theta()[blamed].centre);
  }
}

TEST_CASE("words that never meet leave their limits open, where the priors do too") {
  LearnProblem p;
  p.pigments = {{0, 0.6, 0}};
  p.batches = {{}};
  p.segments = {{0, {{0, 1}}}};
  for (int i = 0; i < 15; ++i) p.notes.push_back({0, 0.1 * i, 0, {}, i / 3});
  LearnPriors priors;
  priors.slips = false;
  CHECK(learn(p, priors)->end == LearnEnd::found);
  priors.theta[at_slope].sd = 10;
  CHECK(learn(p, priors)->end != LearnEnd::found);
  CHECK_FALSE(words::say(sentence(learn(p, priors)->end)).empty());
}

TEST_CASE("what cannot be is named") {
  const double nan = std::numeric_limits<double>::quiet_NaN(),
               inf = std::numeric_limits<double>::infinity();
  const auto fault = [](const auto& spoil, LearnPriors priors = {}) {
    LearnProblem p = small();
    spoil(p);
    const auto fit = learn(p, priors);
    return fit ? words::Sentence{} : fit.error().what;
  };
  for (const double bad : {nan, inf, -inf, 1e300}) {
    CHECK(fault([&](auto& p) { p.notes[3].ln_mL = bad; }) == Say::learn_out_of_range);
    CHECK(fault([&](auto& p) { p.notes[3].sd = bad; }) == Say::learn_out_of_range);
    CHECK(fault([&](auto& p) { p.notes[3].dry_gum = bad; }) == Say::learn_out_of_range);
    CHECK(fault([&](auto& p) { p.notes[3].tools[0].second = bad; }) == Say::learn_out_of_range);
    CHECK(fault([&](auto& p) { p.pigments[0].ln_oil = bad; }) == Say::learn_out_of_range);
    CHECK(fault([&](auto& p) { p.pigments[0].q = bad; }) == Say::learn_out_of_range);
    CHECK(fault([&](auto& p) { p.pigments[0].kappa = bad; }) == Say::learn_out_of_range);
    CHECK(fault([&](auto& p) { p.tools[0].sd = bad; }) == Say::learn_out_of_range);
    CHECK(fault([&](auto& p) { p.batches[0].shared_sd = bad; }) == Say::learn_out_of_range);
    CHECK(fault([&](auto& p) { p.segments[0].pigments[0].second = bad; }) ==
          Say::learn_out_of_range);
    LearnPriors priors;
    priors.theta[2].sd = bad;
    CHECK(fault([](auto&) {}, priors) == Say::learn_out_of_range);
    for (double* of : {&priors.strength.sd, &priors.drying, &priors.walk}) {
      priors = {};
      *of = bad;
      CHECK(fault([](auto&) {}, priors) == Say::learn_out_of_range);
    }
  }
  for (const int felt : {-1, 5})
    CHECK(fault([&](auto& p) { p.notes[0].felt = felt; }) == Say::learn_out_of_range);
  for (const int i : {-1, 3, 1000000}) {
    CHECK(fault([&](auto& p) { p.notes[0].segment = i; }) == Say::learn_not_there);
    CHECK(fault([&](auto& p) { p.notes[0].tools = {{i, 1}}; }) == Say::learn_not_there);
    CHECK(fault([&](auto& p) { p.segments[0].batch = i; }) == Say::learn_not_there);
    CHECK(fault([&](auto& p) { p.segments[0].pigments = {{i, 1}}; }) == Say::learn_not_there);
  }
  CHECK(fault([](auto& p) { p.segments[0].pigments.clear(); }) == Say::learn_no_pigment);
  CHECK(fault([](auto& p) { p.segments[0].pigments = {{0, 0}, {1, 0}}; }) == Say::learn_no_pigment);
  LearnProblem p = small();
  p.notes[3].ln_mL = nan;
  CHECK(message(learn(p).error()).find("note 4") != std::string::npos);
}

TEST_CASE("notes far from any sense are answered, with a range or with why not") {
  for (const double far : {-25.0, -3.0, 3.0, 25.0})
    for (int felt = 0; felt < 5; ++felt)
      for (const bool slips : {false, true}) {
        LearnProblem p = small();
        p.notes[0].ln_mL = far;
        p.notes[0].felt = felt;
        LearnPriors priors;
        priors.slips = slips;
        const auto fit = learn(p, priors);
        REQUIRE(fit);
        for (const FittedPigment& pigment : fit->pigments) {
          CHECK(std::isfinite(pigment.ln_demand));
          CHECK((fit->end != LearnEnd::found || pigment.sd > 0));
        }
      }
}

TEST_CASE("a hundred thousand notes") {
  const LearnProblem p = invented_notes({.pigments = 300, .batches = 20000, .seed = 3, .tools = 2});
  const auto at = fit_at(p, {}, centres());
  REQUIRE(at);
  CHECK(at->end == LearnEnd::found);
  CHECK(at->notes > 99000);
}

TEST_CASE("a fit that starts from an earlier one ends where the other does") {
  LearnProblem p = invented_notes({.pigments = 5, .batches = 15, .seed = 5, .tools = 2});
  LearnProblem before = p;
  before.notes.resize(before.notes.size() - 5);
  const auto earlier = learn(before);
  REQUIRE(earlier);
  const auto warm = learn(p, {}, &*earlier), cold = learn(p);
  REQUIRE(warm);
  REQUIRE(cold);
  CHECK(warm->end == LearnEnd::found);
  CHECK(std::abs(warm->log_posterior - cold->log_posterior) < 1e-6);
  for (std::size_t i = 0; i < theta_count; ++i)
    CHECK(std::abs(warm->theta[i] - cold->theta[i]) < 1e-4);
}

TEST_CASE("theta may be held, all of it or a part") {
  LearnPriors priors;
  for (NormalPrior& prior : priors.theta) prior.sd = 0;
  const auto held = learn(small(), priors);
  REQUIRE(held);
  CHECK(held->end == LearnEnd::found);
  CHECK(held->theta == centres());
  priors.theta[at_slope].sd = 0.5;
  const auto one = learn(small(), priors);
  REQUIRE(one);
  CHECK(one->end == LearnEnd::found);
  CHECK(one->theta[at_half_width] == priors.theta[at_half_width].centre);
  CHECK(one->theta_covariance[at_slope][at_slope] > 0);
  CHECK(one->theta_covariance[at_half_width][at_half_width] == 0);
}

TEST_CASE("a tap repeated with nothing changed between counts once") {
  LearnProblem once = small(), twice = small();
  twice.notes.insert(twice.notes.begin() + 2, twice.notes[1]);
  CHECK(learn(twice)->notes == learn(once)->notes);
  CHECK(learn(twice)->log_marginal == learn(once)->log_marginal);
}

}
