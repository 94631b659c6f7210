// The learnt range against the same model written apart, on simulated notes.
#include "paint/range/learn.hpp"
#include "published/feel_notes.hpp"

#include <doctest/doctest.h>

namespace learn_test {

using namespace paint;
using namespace published;

namespace {

const std::string of = "learn/learn", agreed = "both stop within 1e-5 of the peak";
const std::vector<std::string> named = {"half width", "reach of sticky", "reach of loose",
                                        "slope",      "sd of pigments",  "sd of batches",
                                        "slips"};

struct Expected {
  std::vector<double> theta, theta_error, ln_d, ln_d_error;
  double log_marginal = 0, log_posterior = 0;
};

void compare(const RangeFit& ours, const Expected& expected, const std::string& how) {
  for (std::size_t i = 0; i < expected.theta.size(); ++i) {
    check({of, "ln (slips: logit) of a parameter " + how, prototype, expected.theta[i],
           ours.theta[i], 1e-4, agreed, named[i]});
    check({of, "standard error of it " + how, prototype, expected.theta_error[i],
           std::sqrt(ours.theta_covariance[i][i]), 0.01 * expected.theta_error[i],
           "second differences of either: 1 %", named[i]});
  }
  for (std::size_t k = 0; k < 4; ++k) {
    check({of, "ln demand of a pigment " + how, prototype, expected.ln_d[k],
           ours.pigments[k].ln_demand, 1e-4, agreed, four[k]});
    check({of, "standard error of ln demand " + how, prototype, expected.ln_d_error[k],
           ours.pigments[k].sd, 0.01 * expected.ln_d_error[k], "second differences of either: 1 %",
           four[k]});
  }
  check({of, "ln marginal likelihood " + how, prototype, expected.log_marginal, ours.log_marginal,
         1e-4, agreed});
  check({of, "ln posterior of theta " + how, prototype, expected.log_posterior, ours.log_posterior,
         1e-5, agreed});
}

const Expected without = {
    {-2.2355436125, -0.9930272234, -1.7620950188, -3.0223101685, -1.5674581718, -2.5334231299},
    {0.1917736595, 0.1242668560, 0.3280573136, 0.2539035554, 0.3808903106, 0.3810694018},
    {0.6116246627, 0.4181543228, 1.0381199576, 1.1436832600},
    {0.0768853444, 0.1867310353, 0.0644355673, 0.0813902693},
    -29.5731870828,
    -31.2708066919};
const Expected with = {{-2.2327166312, -0.9947319463, -1.7593169917, -3.0316290892, -1.5668199443,
                        -2.5332578133, -3.5739133029},
                       {0.1932372807, 0.1258831727, 0.3314503022, 0.2594056210, 0.3812009785,
                        0.3820832015, 0.8023458491},
                       {0.6110069589, 0.4167716992, 1.0378445441, 1.1434503273},
                       {0.0772497706, 0.1874447340, 0.0645547007, 0.0816902309},
                       -30.1576933452,
                       -32.9388285951};

// Three starts: the priors' centres, and two corners.
std::vector<RangeFit> from_three_starts(const LearnPriors& priors) {
  std::vector<RangeFit> results{*learn(feel_notes(), priors)};
  for (const double side : {-1.0, 1.0}) {
    RangeFit start;
    for (std::size_t i = 0; i < theta_count; ++i)
      start.theta[i] = priors.theta[i].centre + side * (i % 2 ? -0.8 : 0.8) * priors.theta[i].sd;
    results.push_back(*learn(feel_notes(), priors, &start));
  }
  return results;
}

}

TEST_CASE("a studio of 39 notes: parameters, demands and their errors") {
  for (const RangeFit& result : from_three_starts(feel_priors(false))) {
    CHECK(result.end == LearnEnd::found);
    compare(result, without, "(no slips)");
  }
  for (const RangeFit& result : from_three_starts(feel_priors(true))) {
    CHECK(result.end == LearnEnd::found);
    compare(result, with, "(with slips)");
  }
}

TEST_CASE("a studio of 39 notes at the priors' centres") {
  Theta centres;
  for (std::size_t i = 0; i < theta_count; ++i) centres[i] = usual_theta()[i].centre;
  for (const bool slips : {false, true}) {
    const auto at = fit_at(feel_notes(), feel_priors(slips), centres);
    REQUIRE(at);
    const std::string how = slips ? "with slips" : "no slips";
    check({"learn/fit_at", "ln marginal likelihood at the priors' centres", prototype,
           slips ? -33.0953718122 : -32.1480548878, at->log_marginal, 1e-5,
           "rounding, and 23 nodes", how});
    const std::vector<double> modes =
        slips ? std::vector{0.5998652604, 0.3963116335, 1.0179732258, 1.1345171804, 0.6271277122}
              : std::vector{0.6003009498, 0.3996017111, 1.0182878891, 1.1346442393, 0.6280769140};
    for (std::size_t k = 0; k < 5; ++k)
      check({"learn/fit_at", "ln demands, then alpha, at the priors' centres", prototype, modes[k],
             at->z[k], 1e-6, "where either stops", how + ", " + std::to_string(k + 1)});
  }
}

}
