#include "paint/range/told.hpp"

#include "paint/catalogue.hpp"
#include "paint/range/learn_facts.hpp"
#include "paint/range/learn_plan.hpp"
#include "words/paint_says.hpp"

#include <Eigen/LU>
#include <Eigen/SparseCholesky>

#include <algorithm>
#include <cmath>
#include <limits>

namespace paint {

namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;
using learning::place;

// What two studios differ by, own choice, no source: where a hand calls it right, ln flow; its
// edges, ln; one pigment from another lot, ln demand, as between_lots of learn_facts.cpp.
constexpr double hands_apart = 0.20, edges_apart = 0.40, lots_apart = 0.15;
// Their gums, in what strength does: by a fifth, as their solutions' viscosities rise. The rest of
// the usual sd is of how paste follows the liquid's viscosity, which is no other there.
constexpr double gums_apart = 0.8;
constexpr double doubled = 2;
// In ln: what is told no surer than to a factor of two makes a first helping smaller than no word
// at all would. Own choice.
constexpr double says_nothing_sd = 0.7;
constexpr double odds_for = 9; // that another studio's word holds here, beforehand

// Of so many of z.
MatrixXd covariance_of(const RangeFit& fit, const std::vector<int>& at) {
  const auto n = static_cast<Eigen::Index>(fit.z.size());
  std::vector<Eigen::Triplet<double>> entries;
  for (const MatrixEntry& e : fit.precision) entries.emplace_back(e.row, e.column, e.value);
  Eigen::SparseMatrix<double> precision(n, n);
  precision.setFromTriplets(entries.begin(), entries.end());
  const Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Lower> factor(precision);
  const auto count = static_cast<Eigen::Index>(at.size());
  MatrixXd by_theta(count, theta_count), of_theta(theta_count, theta_count);
  for (std::size_t i = 0; i < theta_count; ++i)
    for (std::size_t j = 0; j < theta_count; ++j)
      of_theta(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) =
          fit.theta_covariance[i][j];
  MatrixXd out(count, count);
  for (Eigen::Index k = 0; k < count; ++k) {
    VectorXd one = VectorXd::Zero(n);
    one[at[place(static_cast<int>(k))]] = 1;
    const VectorXd column = factor.solve(one);
    for (Eigen::Index l = 0; l < count; ++l) out(l, k) = column[at[place(static_cast<int>(l))]];
    for (std::size_t i = 0; i < theta_count; ++i)
      by_theta(k, static_cast<Eigen::Index>(i)) =
          fit.z_by_theta[place(at[place(static_cast<int>(k))])][i];
  }
  return out + by_theta * of_theta * by_theta.transpose();
}

// What all of that studio's demands may be off by together: between any two of them, on average.
double common_variance(const ToldRange& told) {
  const std::size_t count = told.pigments.size();
  double sum = 0, pairs = 0, least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < count; ++i) {
    least = std::min(least, told.covariance[covariance_entry(i, i)]);
    for (std::size_t j = 0; j < i; ++j, ++pairs) sum += told.covariance[covariance_entry(i, j)];
  }
  return pairs > 0 ? std::clamp(sum / pairs, 0.0, least) : 0;
}

double doubted_variance(const NormalPrior& said) { return doubled * said.sd * said.sd; }

// What another's tells of where they usually lie.
double moved_centre(const NormalPrior& said, const NormalPrior& usual, double variance) {
  const double v = usual.sd * usual.sd;
  return usual.centre + (said.centre - usual.centre) * v / (v + variance);
}

// Of another's hand no more than that is believed: this one may be any of them.
NormalPrior of_hands(const NormalPrior& said, const NormalPrior& usual) {
  const double variance = doubted_variance(said) + edges_apart * edges_apart;
  return {moved_centre(said, usual, variance), usual.sd};
}

NormalPrior of_gums(const NormalPrior& said, const NormalPrior& usual) {
  const double variance = doubted_variance(said) + gums_apart * gums_apart;
  return {moved_centre(said, usual, variance), std::min(std::sqrt(variance), usual.sd)};
}

// ln of what the notes are worth, theta integrated over.
double evidence(const RangeFit& fit) {
  std::vector<Eigen::Index> free;
  MatrixXd covariance(theta_count, theta_count);
  for (std::size_t i = 0; i < theta_count; ++i) {
    const auto row = static_cast<Eigen::Index>(i);
    for (std::size_t j = 0; j < theta_count; ++j)
      covariance(row, static_cast<Eigen::Index>(j)) = fit.theta_covariance[i][j];
    if (covariance(row, row) > 0) free.push_back(row);
  }
  const MatrixXd of_free = covariance(free, free);
  return fit.log_posterior + 0.5 * std::log(std::max(1e-300, of_free.determinant()));
}

}

ToldRange told_by(const RangeFit& fit, const std::vector<std::string>& names) {
  ToldRange told;
  std::vector<int> at;
  for (std::size_t i = 0; i < fit.pigments.size() && i < names.size(); ++i) {
    if (fit.pigments[i].at < 0 || names[i].empty()) continue;
    told.pigments.push_back(names[i]);
    told.ln_demands.push_back(fit.pigments[i].ln_demand);
    at.push_back(fit.pigments[i].at);
  }
  if (at.empty()) return told;
  at.push_back(fit.alpha_at);
  at.push_back(fit.strength_at < 0 ? fit.alpha_at : fit.strength_at);
  const MatrixXd covariance = covariance_of(fit, at);
  const auto count = static_cast<Eigen::Index>(told.pigments.size());
  // So that rounding, when it is written, makes no matrix of nothing.
  const double more = 2e-6 * static_cast<double>(count);
  for (Eigen::Index i = 0; i < count; ++i)
    for (Eigen::Index j = 0; j <= i; ++j)
      told.covariance.push_back(covariance(i, j) + (i == j ? more : 0));
  told.class_offset = {fit.z[place(fit.alpha_at)], std::sqrt(covariance(count, count))};
  told.strength = fit.strength_at < 0 ? fit.priors.strength
                                      : NormalPrior{fit.z[place(fit.strength_at)],
                                                    std::sqrt(covariance(count + 1, count + 1))};
  for (std::size_t i = 0; i < theta_count; ++i)
    told.hand[i] = {fit.theta[i], std::sqrt(fit.theta_covariance[i][i])};
  told.batches = fit.batches;
  told.notes = fit.notes;
  return told;
}

namespace {

bool is_a_hand(const std::array<NormalPrior, theta_count>& hand) {
  constexpr double most_sd = 5;
  const auto usual = usual_theta();
  for (std::size_t i = 0; i < theta_count; ++i)
    if (std::abs(hand[i].centre - usual[i].centre) > most_sd * usual[i].sd) return false;
  return true;
}

std::optional<words::Error> implausible_strength(const NormalPrior& said) {
  constexpr double most_sd = 3;
  constexpr double stronger = 0.147; // dry gum's share of gum 1 : 1, less that of gum 1 : 2
  const NormalPrior usual = LearnPriors{}.strength;
  if (!(said.sd > 0)) return words::Error{words::PaintSay::told_certain_strength, {}};
  if (std::abs(said.centre - usual.centre) <= most_sd * usual.sd) return std::nullopt;
  return words::Error{words::PaintSay::told_implausible_strength,
                      {words::Number(std::exp(stronger * said.centre), 1),
                       words::Number(std::exp(stronger * usual.centre), 1)}};
}

}

std::optional<words::Error> implausible(const ToldRange& told) {
  const double most = std::log(5);
  if (told.batches < 1) return words::Error{words::PaintSay::told_of_nothing, {}};
  for (std::size_t i = 0; i < told.pigments.size(); ++i) {
    const CataloguePigment* known = in_catalogue(told.pigments[i]);
    if (!known) continue;
    const LearnPigment usual = learn_facts(known->facts);
    const double expected = usual.ln_oil + usual.kappa;
    if (std::abs(told.ln_demands[i] - expected) > most)
      return words::Error{words::PaintSay::told_implausible,
                          {known->name, words::Number(std::exp(told.ln_demands[i]), 1),
                           words::Number(std::exp(expected), 1)}};
  }
  if (std::abs(told.class_offset.centre) > most)
    return words::Error{words::PaintSay::told_implausible_offset,
                        {words::Number(std::exp(told.class_offset.centre), 2)}};
  if (auto fault = implausible_strength(told.strength)) return fault;
  return is_a_hand(told.hand) ? std::nullopt
                              : std::optional(words::Error{words::PaintSay::told_no_hand, {}});
}

bool is_older(const ToldRange& told, const ToldRange& than) {
  return !told.from.empty() && told.from == than.from && told.batches < than.batches;
}

LearnPriors priors_told(const ToldRange& told) {
  LearnPriors priors;
  for (std::size_t i = 0; i < theta_count; ++i)
    priors.theta[i] = of_hands(told.hand[i], priors.theta[i]);
  const double offset_sd = std::sqrt(doubled * common_variance(told) + hands_apart * hands_apart);
  if (offset_sd < says_nothing_sd) priors.alpha = {told.class_offset.centre, offset_sd};
  priors.strength = of_gums(told.strength, priors.strength);
  return priors;
}

LearnPigment facts_told(const ToldRange& told, const LearnPigment& usual, const std::string& name) {
  const double common = common_variance(told);
  const auto at = std::find(told.pigments.begin(), told.pigments.end(), name);
  LearnPigment facts = usual;
  if (name.empty() || at == told.pigments.end()) {
    const double offset = told.class_offset.sd * told.class_offset.sd - common;
    const double sd = std::sqrt(doubled * std::max(0.0, offset));
    if (sd < says_nothing_sd) facts.q = std::hypot(usual.q, sd);
    return facts;
  }
  const auto k = static_cast<std::size_t>(at - told.pigments.begin());
  const double own = told.covariance[covariance_entry(k, k)] - common;
  const double q = std::sqrt(doubled * own + lots_apart * lots_apart);
  if (!(q < says_nothing_sd)) return usual;
  facts.ln_oil = told.ln_demands[k] - told.class_offset.centre;
  facts.kappa = 0;
  facts.q = q;
  facts.told = true;
  return facts;
}

words::Result<RangeFit> learn_told(const LearnProblem& problem, const ToldVariant& told,
                                   const RangeFit* earlier) {
  const bool of_told = earlier && earlier->told;
  LearnProblem by_word = problem;
  by_word.pigments = told.pigments;
  auto with = learn(by_word, told.priors, of_told ? earlier : nullptr);
  auto without = learn(problem, {}, of_told ? earlier->own.get() : earlier);
  if (!with || with->end != LearnEnd::found) return without;
  with->told = true;
  with->told_share = 1;
  if (!without || without->end != LearnEnd::found) return with;
  const double odds =
      problem.notes.empty() ? odds_for : odds_for * std::exp(evidence(*with) - evidence(*without));
  if (odds < 1) return without;
  with->told_share = 1 / (1 + 1 / odds);
  with->own = std::make_shared<const RangeFit>(*std::move(without));
  return with;
}

words::Result<Prediction> predict_told(const RangeFit& fit, const PredictBatch& batch,
                                       const PredictBatch& own) {
  auto by_word = predict(fit, batch);
  if (!by_word || !fit.own) return by_word;
  auto alone = predict(*fit.own, own);
  if (!alone) return alone;
  for (double& weight : by_word->weights) weight *= fit.told_share;
  for (double& weight : alone->weights) weight *= 1 - fit.told_share;
  by_word->own = by_word->points.size();
  by_word->points.insert(by_word->points.end(), alone->points.begin(), alone->points.end());
  by_word->weights.insert(by_word->weights.end(), alone->weights.begin(), alone->weights.end());
  return by_word;
}

}
