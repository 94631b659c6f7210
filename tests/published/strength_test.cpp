// What is learnt where the binder changes, today's level among the rest, against the same model
// written apart, on simulated notes.
#include "paint/range/learn_facts.hpp"
#include "paint/range/predict.hpp"
#include "published/columns.hpp"
#include "published/row.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace strength_test {

using namespace paint;
using published::check;

namespace {

const auto apart = published::apart(
    "the same model in NumPy, written apart from this program, on data/range_strength.csv");
const std::string agreed = "both stop within 1e-5 of the peak";
const std::vector<std::string> names = {"blue", "sienna", "violet", "black", "earth"};

Pigment pigment(PigmentClass family, double over) { // an oil absorption point of so much
  Pigment p{.g_per_mL = 1, .family = family};
  p.oil_g_per_100g = 93.5 * over;
  return p;
}

constexpr double unwetted = 0, knife = 1; // stages

LearnProblem notes() {
  auto table = published::columns_of("range_strength.csv");
  LearnProblem problem;
  for (const Pigment& p :
       {pigment(PigmentClass::mineral, 0.83), pigment(PigmentClass::mineral, 1.75),
        pigment(PigmentClass::organic, 0.83), pigment(PigmentClass::carbon, 1.93),
        pigment(PigmentClass::mineral, 0)})
    problem.pigments.push_back(learn_facts(p));
  problem.tools = {{0.03}, {0.05}};
  for (std::size_t i = 0; i < table["felt"].size(); ++i) {
    const int batch = static_cast<int>(table["batch"][i]) - 1;
    const double stage = table["stage"][i], sd = table["sd"][i];
    if (batch == static_cast<int>(problem.batches.size())) {
      problem.batches.push_back({table["shared_sd"][i]});
      LearnSegment segment{batch, {}};
      for (int k = 0; k < 5; ++k)
        if (const double mL = table[names[static_cast<std::size_t>(k)] + "_mL"][i]; mL > 0)
          segment.pigments.push_back({k, mL});
      problem.segments.push_back(segment);
    }
    if (stage == unwetted) continue; // all of them won't move or sticky
    problem.notes.push_back({batch,
                             std::log(table["liquid_mL"][i]),
                             stage == knife ? std::hypot(sd, knife_sd) : sd,
                             {{0, table["bulb"][i]}, {1, table["spoon"][i]}},
                             static_cast<int>(table["felt"][i]),
                             table["dry_gum"][i]});
  }
  return problem;
}

const RangeFit& fitted() {
  static const RangeFit fit = *learn(notes());
  return fit;
}

}

TEST_CASE("what a class and an oil absorption let expect") {
  const std::vector<double> mean = {0.5668352109, 0.939807894, 0.9918352109, 1.203760001, 0.72};
  const std::vector<double> q = {0.1620293567, 0.1738691509, 0.1502540656, 0.3005696292,
                                 0.2304886114};
  const LearnProblem problem = notes();
  for (std::size_t k = 0; k < 5; ++k) {
    check({"learn_facts/learn_facts", "ln demand before any note, less alpha", apart, mean[k],
           problem.pigments[k].ln_oil + problem.pigments[k].kappa, 1e-9, "rounding", names[k]});
    check({"learn_facts/learn_facts", "its sd beyond tau", apart, q[k], problem.pigments[k].q, 1e-9,
           "rounding", names[k]});
  }
}

TEST_CASE("a studio whose binder changes: at the priors' centres") {
  Theta centres;
  for (std::size_t i = 0; i < theta_count; ++i) centres[i] = usual_theta()[i].centre;
  const auto at = fit_at(notes(), {}, centres);
  REQUIRE(at);
  check({"learn/fit_at", "ln marginal likelihood at the priors' centres, binder changing", apart,
         -47.64368701, at->log_marginal, 2e-4, "two sums over nodes"});
  const std::vector<double> levels = {-0.005643665385, -0.01372950294, -0.01259097639};
  for (std::size_t j = 0; j < levels.size(); ++j)
    check({"learn/fit_at", "level of earlier batches at the priors' centres", apart, levels[j],
           at->z[static_cast<std::size_t>(at->levels_at) + j], 1e-5, "where either stops",
           std::to_string(j + 1)});
}

TEST_CASE("a studio whose binder changes: parameters, demands, strength") {
  const std::vector<double> theta = {-2.18066934,  -1.137728335, -1.246227497, -3.004258034,
                                     -1.409420201, -2.378319392, -3.649685905};
  const std::vector<double> theta_error = {0.2059003871, 0.1429161262, 0.4426998287, 0.2801287965,
                                           0.3966657114, 0.3280960998, 0.7845241688};
  const std::vector<double> demand = {0.134203192, 0.1494023214, 0.9206667845, 0.7644231149,
                                      0.3719445458};
  const std::vector<double> error = {0.08277557253, 0.1786448541, 0.08585117331, 0.07870979873,
                                     0.09153136355};
  RangeFit low, high;
  for (std::size_t i = 0; i < theta_count; ++i) {
    low.theta[i] = usual_theta()[i].centre - (i % 2 ? 0.8 : -0.8) * usual_theta()[i].sd;
    high.theta[i] = usual_theta()[i].centre + (i % 2 ? 0.8 : -0.8) * usual_theta()[i].sd;
  }
  for (const RangeFit* start :
       {static_cast<const RangeFit*>(nullptr), &std::as_const(low), &std::as_const(high)}) {
    const RangeFit fit = *learn(notes(), {}, start);
    CHECK(fit.end == LearnEnd::found);
    CHECK(fit.notes == 51);
    CHECK(fit.z.size() == 12);
    const std::string of = "learn/learn";
    for (std::size_t i = 0; i < theta_count; ++i) {
      check({of, "ln (slips: logit) of a parameter, binder changing", apart, theta[i], fit.theta[i],
             1e-4, agreed, std::to_string(i + 1)});
      check({of, "standard error of it, binder changing", apart, theta_error[i],
             std::sqrt(fit.theta_covariance[i][i]), 0.01 * theta_error[i],
             "second differences of either: 1 %", std::to_string(i + 1)});
    }
    for (std::size_t k = 0; k < 5; ++k) {
      check({of, "ln demand of a pigment, binder changing", apart, demand[k],
             fit.pigments[k].ln_demand, 1e-4, agreed, names[k]});
      check({of, "standard error of ln demand, binder changing", apart, error[k],
             fit.pigments[k].sd, 0.01 * error[k], "second differences of either: 1 %", names[k]});
    }
    check({of, "change of ln demand with the dry gum's share", apart, 3.885019247,
           fit.z[static_cast<std::size_t>(fit.strength_at)], 1e-4, agreed});
    check({of, "ln posterior of theta, binder changing", apart, -48.76172794, fit.log_posterior,
           2e-4, agreed});
  }
}

namespace {

struct Foreseen {
  double mean = 0, sd = 0, from = 0, to = 0, limit = 0, loose = 0, right = 0;
  int drops = 0;
  double median = 0, cap = 0, first = 0, last = 0;
};

void compare(const std::string& name, const Prediction& before, const std::vector<TodayNote>& today,
             double now_mL, const Foreseen& expected) {
  Prediction now = before;
  for (const TodayNote& note : today) now = *after(now, note);
  const std::string of = "predict/predict", thousandth = "0.1 % of a volume";
  const auto row = [&](const char* what, double value, double ours, double allowed,
                       const std::string& why) {
    check({of, what, apart, value, ours, allowed, why, name});
  };
  const auto mL = [&](const char* what, double value, double ours) {
    row(what, value, ours, 1e-3 * value, thousandth);
  };
  row("mean of ln mL at the middle of right, binder changing", expected.mean, spread_of(now).mean,
      2e-4, "two grids");
  row("sd of it, binder changing", expected.sd, spread_of(now).sd, 2e-4, "two grids");
  mL("where right begins, mL", expected.from, band_of(now).from_mL);
  mL("where right ends, mL", expected.to, band_of(now).to_mL);
  mL("mL where too loose has 4 %, binder changing", expected.limit,
     mL_at_chance_too_loose(now, 0.04));
  row("chance of too loose, binder changing", expected.loose, chance_too_loose(now, {now_mL}), 2e-4,
      "two grids");
  row("chance of right, binder changing", expected.right, chance_right(now, {now_mL}), 5e-4,
      "two grids");
  row("safe drops of 0.05 mL, binder changing", expected.drops, safe_drops(now, {now_mL}, 0.05), 0,
      "exact");
  const FirstLiquid first = first_liquid(before);
  mL("median of what will be wanted, mL", expected.median, first.median_mL);
  mL("first liquid: where too loose has 4 %, mL", expected.cap, first.cap_mL);
  mL("first liquid: least, mL", expected.first, first.from_mL);
  mL("first liquid: most, mL", expected.last, first.to_mL);
}

}

TEST_CASE(
    "five forecasts, of a thinner binder, a blend, a pigment never felt, a studio's beginning") {
  compare("one pigment", *predict(fitted(), {{{0, 1.5, {}}}, {{0, 1, 0}}, 0.02, 0.22}), {}, 1,
          {0.2429156545, 0.1368790162, 1.135096397, 1.427339293, 1.067255368, 0.01792971484,
           0.1958711544, 1, 1.274196981, 1.067255368, 0.6370984903, 0.8919378865});
  compare("one pigment, two notes", *predict(fitted(), {{{0, 1.5, {}}}, {{0, 1, 0}}, 0.02, 0.22}),
          {{0.85, std::hypot(0.01, knife_sd), 0, 0, 0}, {1.05, 0.01, 1, 0, 0}}, 1.05,
          {0.3201493224, 0.08777714444, 1.228480048, 1.536584373, 1.233817987, 0.003104208491,
           0.09690088491, 3, 1.274196981, 1.067255368, 0.6370984903, 0.8919378865});
  compare(
      "a blend",
      *predict(fitted(), {{{0, 0.6, {}}, {1, 0.9, {}}}, {{0, 0.7, 0}, {1, 0.3, 0}}, 0.02, 0.293}),
      {}, 1,
      {0.5494453019, 0.1580955555, 1.541508612, 1.939380617, 1.411026344, 0.0005618617224,
       0.01086492534, 8, 1.728976201, 1.411026344, 0.8644881004, 1.210283341});
  compare("never felt",
          *predict(fitted(), {{{-1, 1.2, learn_facts(pigment(PigmentClass::mineral, 1.45))}},
                              {{0, 1, 0}},
                              0.02,
                              0.293}),
          {}, 0.8,
          {0.6497726228, 0.3793851175, 1.704305387, 2.145113456, 1.104178719, 0.008726980399,
           0.01675506724, 6, 1.912231379, 1.104178719, 0.7886990852, 1.104178719});
  compare("a studio's third batch", *predict(fitted(), {{{0, 1.5, {}}}, {{0, 1, 0}}, 0.02, 0.22}),
          {{1.05, std::hypot(0.01, knife_sd), 1, 0, felt_late}}, 1.05,
          {0.2578699558, 0.1107075234, 1.154344212, 1.448582898, 1.120963109, 0.01556389947,
           0.235388143, 1, 1.274196981, 1.067255368, 0.6370984903, 0.8919378865});
}

}
