#include "paint/range/learn.hpp"

#include "paint/range/learn_climb.hpp"
#include "paint/range/learn_start.hpp"
#include "paint/range/note_chance.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

using namespace learning;

NoteModel note_model_of(const Theta& theta, bool slips) {
  return {std::exp(theta[at_half_width]),       std::exp(theta[at_sticky_reach]),
          std::exp(theta[at_loose_reach]),      std::exp(theta[at_slope]),
          std::exp(theta[at_pigment_sd]),       std::exp(theta[at_batch_sd]),
          slips ? logistic(theta[at_slips]) : 0};
}

std::array<NormalPrior, theta_count> usual_theta() {
  return {{{std::log(0.12), 0.4},
           {std::log(0.30), 0.5},
           {std::log(0.25), 0.5},
           {std::log(0.06), 0.5},
           {std::log(0.25), 0.5},
           {std::log(0.08), 0.5},
           {-3, 1}}};
}

words::Sentence sentence(LearnEnd end) {
  switch (end) {
  case LearnEnd::found: return {};
  case LearnEnd::separated: return words::PaintSay::learn_separated;
  case LearnEnd::no_convergence: return words::PaintSay::learn_no_convergence;
  case LearnEnd::no_peak: return words::PaintSay::learn_no_peak;
  }
  return {};
}

namespace {

Theta centres(const LearnPriors& priors) {
  Theta theta;
  for (std::size_t i = 0; i < theta_count; ++i) theta[i] = priors.theta[i].centre;
  return theta;
}

// Where an earlier result leaves off: its theta, and z for what it knew already.
Start start_of(const Model& model, const RangeFit* earlier) {
  const Theta prior = centres(model.priors);
  Start start{prior, model.start(note_model_of(prior)), {}, {}};
  if (!earlier) return start;
  for (std::size_t i = 0; i < theta_count; ++i)
    if (model.priors.theta[i].sd > 0 && std::isfinite(earlier->theta[i]))
      start.theta[i] = earlier->theta[i];
  start.covariance = earlier->theta_covariance;
  start.z_by_theta.resize(static_cast<std::size_t>(model.plan.size()));
  const auto take = [&](int to, int from) {
    const auto i = static_cast<std::size_t>(from);
    if (to < 0 || from < 0 || i >= earlier->z.size() || !std::isfinite(earlier->z[i])) return;
    start.z[to] = earlier->z[i];
    if (i < earlier->z_by_theta.size())
      start.z_by_theta[static_cast<std::size_t>(to)] = earlier->z_by_theta[i];
  };
  const std::size_t pigments = std::min(model.plan.pigment_at.size(), earlier->pigments.size());
  for (std::size_t i = 0; i < pigments; ++i)
    take(model.plan.pigment_at[i], earlier->pigments[i].at);
  const std::size_t tools = std::min(model.plan.tool_at.size(), earlier->tools.size());
  for (std::size_t i = 0; i < tools; ++i) take(model.plan.tool_at[i], earlier->tools[i].at);
  take(model.plan.alpha_at, earlier->alpha_at);
  take(model.plan.strength_at, earlier->strength_at);
  for (int at = model.plan.levels_at, from = earlier->levels_at; at < model.plan.size();)
    take(at++, from > earlier->alpha_at ? from++ : -1);
  start.z = start_near_notes(model.plan, note_model_of(start.theta), start.z);
  return start;
}

// Modes and errors of pigments and tools, from z and its covariance.
void name_parts(RangeFit& fit, const LearnProblem& problem, const Plan& plan, const Summit& summit,
                Factor& factor) {
  const auto variance = [&](int at) {
    Eigen::VectorXd one = Eigen::VectorXd::Zero(plan.size());
    one[at] = 1;
    return factor.solve(one)[at] + summit.by_theta_variance(at);
  };
  const double alpha_variance = variance(plan.alpha_at);
  const double tau_2 = std::exp(2 * summit.theta[at_pigment_sd] +
                                2 * summit.covariance[at_pigment_sd][at_pigment_sd]);
  for (std::size_t i = 0; i < problem.pigments.size(); ++i) {
    const LearnPigment& facts = problem.pigments[i];
    const int at = plan.pigment_at[i];
    if (at >= 0)
      fit.pigments.push_back({facts, at, summit.mode.z[at], std::sqrt(variance(at))});
    else
      fit.pigments.push_back(
          {facts, at, summit.mode.z[plan.alpha_at] + facts.ln_oil + facts.kappa,
           std::sqrt(alpha_variance + (facts.told ? 0 : tau_2) + facts.q * facts.q)});
  }
  for (std::size_t i = 0; i < problem.tools.size(); ++i) {
    const int at = plan.tool_at[i];
    fit.tools.push_back({problem.tools[i].sd, at, at < 0 ? 0 : summit.mode.z[at]});
  }
}

std::vector<MatrixEntry> entries_of(const Sparse& matrix) {
  std::vector<MatrixEntry> entries;
  for (int column = 0; column < matrix.outerSize(); ++column)
    for (Sparse::InnerIterator at(matrix, column); at; ++at)
      entries.push_back({static_cast<int>(at.row()), column, at.value()});
  return entries;
}

RangeFit fit_of(const LearnProblem& problem, Model& model, Factor& factor, const Summit& summit) {
  RangeFit fit;
  fit.priors = model.priors;
  fit.theta = summit.theta;
  fit.theta_covariance = summit.covariance;
  fit.alpha_at = model.plan.alpha_at;
  fit.strength_at = model.plan.strength_at;
  fit.levels_at = model.plan.levels_at;
  fit.z.assign(summit.mode.z.begin(), summit.mode.z.end());
  fit.z_by_theta = summit.z_by_theta;
  fit.precision = entries_of(summit.mode.joint.precision);
  fit.batches = static_cast<int>(model.plan.batches.size());
  fit.notes = model.plan.notes;
  fit.log_posterior = summit.log_posterior;
  fit.log_marginal = summit.log_posterior - model.ln_prior(summit.theta);
  fit.end = summit.end;
  if (factor.take(summit.mode.joint.precision))
    name_parts(fit, problem, model.plan, summit, factor);
  else
    fit.end = LearnEnd::no_peak;
  return fit;
}

}

words::Result<RangeFit> learn(const LearnProblem& problem, const LearnPriors& priors,
                              const RangeFit* earlier) {
  if (auto fault = fault_of(problem, priors)) return tl::make_unexpected(*fault);
  Model model(problem, priors);
  Factor factor(model);
  Summit summit = climb(model, factor, start_of(model, earlier));
  // Where notes contradict each other the way up may end at a ledge: once more from the priors, and
  // from hands that slip more and differ more from batch to batch.
  for (const double looser : {earlier ? 0.0 : 0.5, 1.0, 2.0}) {
    if (summit.end == LearnEnd::found) break;
    Start start = start_of(model, nullptr);
    for (const std::size_t i : {std::size_t{at_batch_sd}, std::size_t{at_slips}})
      start.theta[i] += looser * priors.theta[i].sd;
    Summit other = climb(model, factor, start);
    if (other.end == LearnEnd::found) summit = std::move(other);
  }
  return fit_of(problem, model, factor, summit);
}

words::Result<RangeFit> fit_at(const LearnProblem& problem, const LearnPriors& priors,
                               const Theta& theta) {
  if (auto fault = fault_of(problem, priors)) return tl::make_unexpected(*fault);
  Model model(problem, priors);
  Factor factor(model);
  return fit_of(problem, model, factor, stand(model, factor, theta));
}

}
