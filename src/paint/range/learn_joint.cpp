#include "paint/range/learn_joint.hpp"

#include "paint/range/learn_start.hpp"
#include "paint/range/note_chance.hpp"

#include <algorithm>
#include <cmath>

namespace paint::learning {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double ln_2pi = 1.8378770664093453;

Limits limits_of(const NoteModel& h) {
  return {
      {-h.half_width - h.sticky_reach, -h.half_width, h.half_width, h.half_width + h.loose_reach},
      h.slope,
      h.slips};
}

// ln of the sum of v d, and each pigment's share of it.
double demand_of(const PlanSegment& segment, const PlanBatch& batch, const VectorXd& z,
                 std::vector<double>& shares) {
  shares.resize(segment.local.size());
  double most = -infinite;
  for (std::size_t k = 0; k < shares.size(); ++k) {
    shares[k] = segment.ln_mL[k] + z[batch.at[static_cast<std::size_t>(segment.local[k])]];
    most = std::max(most, shares[k]);
  }
  double total = 0;
  for (double& share : shares) total += share = std::exp(share - most);
  for (double& share : shares) share /= total;
  return most + std::log(total);
}

bool turns_up(const MatrixXd& curvature) {
  if (curvature.size() == 1) return curvature(0, 0) > 0;
  return Eigen::LDLT<MatrixXd>(-curvature).vectorD().minCoeff() < 0;
}

// The matrix with what turns it upwards bent down to `most` or less, smoothly.
void level(MatrixXd& curvature, double most) {
  const Eigen::SelfAdjointEigenSolver<MatrixXd> parts(curvature);
  VectorXd values = parts.eigenvalues();
  for (double& x : values)
    if (x > 0) x = most > 0 ? x / (1 + x / most) : 0;
  curvature = parts.eigenvectors() * values.asDiagonal() * parts.eigenvectors().transpose();
}

}

Model::Model(const LearnProblem& problem, const LearnPriors& given)
    : plan(plan_of(problem, given)), priors(given) {}

VectorXd Model::start(const NoteModel& hand) const {
  VectorXd z = VectorXd::Zero(plan.size());
  for (int k = 0; k <= plan.alpha_at; ++k) z[k] = priors.alpha.centre;
  for (int k = 0; k < plan.alpha_at; ++k) z[k] += plan.demands[static_cast<std::size_t>(k)].offset;
  if (plan.strength_at >= 0) z[plan.strength_at] = priors.strength.centre;
  return start_near_notes(plan, hand, z);
}

double Model::ln_prior(const Theta& theta) const {
  double ln_density = 0;
  for (std::size_t i = 0; i < theta_count; ++i) {
    const NormalPrior& prior = priors.theta[i];
    if (prior.sd == 0 || (i == at_slips && !priors.slips)) continue;
    const double off = (theta[i] - prior.centre) / prior.sd;
    ln_density -= 0.5 * off * off + std::log(prior.sd) + 0.5 * ln_2pi;
  }
  return ln_density;
}

Joint Model::joint(const Theta& theta, const Theta& nodes_at, const VectorXd& z,
                   Curvature curvature) {
  const NoteModel hand = note_model_of(theta, priors.slips),
                  nodes = note_model_of(nodes_at, priors.slips);
  Joint joint{0, false, VectorXd::Zero(plan.size()), plan.pattern};
  prior_precision = 1 / (hand.pigment_sd * hand.pigment_sd);
  for (const PlanBatch& batch : plan.batches) {
    if (!sum_up(batch, hand, nodes, z)) {
      joint.value = -infinite;
      return joint;
    }
    add_batch(joint, batch, curvature);
  }
  add_priors(joint, hand, z);
  return joint;
}

bool Model::sum_up(const PlanBatch& batch, const NoteModel& hand, const NoteModel& nodes_at,
                   const VectorXd& z) {
  const auto sd = [&](const NoteModel& h) {
    return std::sqrt(h.batch_sd * h.batch_sd + batch.shared_variance);
  };
  const int nodes = nodes_for(sd(nodes_at), nodes_at.slope);
  if (nodes > most_nodes) return false;
  const std::size_t segments = batch.segments.size();
  if (shares.size() < segments) shares.resize(segments);
  demands.resize(segments);
  const double lifted = batch.lifted(z);
  for (std::size_t s = 0; s < segments; ++s)
    demands[s] = demand_of(batch.segments[s], batch, z, shares[s]) + lifted;
  sum.begin(limits_of(hand), sd(hand), nodes, batch.directions());
  for (const PlanNote& note : batch.notes) {
    double t = note.ln_mL - demands[static_cast<std::size_t>(note.moves[0].direction)];
    for (std::size_t m = 1; m < note.moves.size(); ++m)
      t += note.moves[m].share * z[batch.tool_at(note.moves[m].direction)];
    sum.add({note.felt, t,
             note.variance > 0 ? std::sqrt(hand.slope * hand.slope + note.variance) : hand.slope},
            note.moves);
  }
  sum.end();
  return true;
}

// Of a batch that moves along one direction alone.
void Model::turn_one(const PlanBatch& batch, Curvature curvature) {
  const auto places = static_cast<Index>(batch.at.size());
  const double slope = sum.slope[0], bend = sum.curvature(0, 0);
  const double split = curvature == Curvature::bounded ? 0 : slope;
  const auto& at = batch.segments[0].local;
  local_slope.setZero(places);
  for (std::size_t k = 0; k < at.size(); ++k) local_slope[at[k]] = shares[0][k];
  local_slope.tail(static_cast<Index>(batch.common.size())) =
      Eigen::Map<const VectorXd>(batch.common.data(), static_cast<Index>(batch.common.size()));
  local_bend.noalias() = bend * local_slope * local_slope.transpose();
  for (std::size_t k = 0; k < at.size(); ++k) {
    local_bend(at[k], at[k]) += split * shares[0][k];
    for (std::size_t l = 0; l < at.size(); ++l)
      local_bend(at[k], at[l]) -= split * shares[0][k] * shares[0][l];
  }
  local_slope *= slope;
}

// The batch's slope and curvature by its own places, from those along its directions.
bool Model::turn(const PlanBatch& batch, Curvature curvature) {
  const auto places = static_cast<Index>(batch.at.size());
  const bool up = turns_up(sum.curvature);
  if (up && curvature != Curvature::bent)
    level(sum.curvature,
          curvature == Curvature::level ? batch.share_of_prior * prior_precision : 0);
  if (sum.slope.size() == 1) {
    turn_one(batch, curvature);
    return up;
  }
  MatrixXd moves = MatrixXd::Zero(sum.slope.size(), places); // directions by places
  local_bend.setZero(places, places);
  for (std::size_t s = 0; s < batch.segments.size(); ++s) {
    const auto& at = batch.segments[s].local;
    const double slope = curvature == Curvature::bounded ? 0 : sum.slope[static_cast<Index>(s)];
    for (std::size_t k = 0; k < at.size(); ++k) {
      moves(static_cast<Index>(s), at[k]) = shares[s][k];
      local_bend(at[k], at[k]) += slope * shares[s][k];
      for (std::size_t l = 0; l < at.size(); ++l)
        local_bend(at[k], at[l]) -= slope * shares[s][k] * shares[s][l];
    }
  }
  const Index segments = static_cast<Index>(batch.segments.size());
  for (Index t = 0; t < batch.tools; ++t) moves(segments + t, batch.pigments + t) = 1;
  for (std::size_t c = 0; c < batch.common.size(); ++c)
    moves.col(batch.pigments + batch.tools + static_cast<Index>(c))
        .head(segments)
        .setConstant(batch.common[c]);
  local_bend += moves.transpose() * sum.curvature * moves;
  local_slope = moves.transpose() * sum.slope;
  return up;
}

void Model::add_batch(Joint& joint, const PlanBatch& batch, Curvature curvature) {
  joint.turned_up = turn(batch, curvature) || joint.turned_up;
  joint.value += sum.value;
  double* values = joint.precision.valuePtr();
  std::size_t next = 0;
  for (std::size_t i = 0; i < batch.at.size(); ++i) {
    joint.gradient[batch.at[i]] += local_slope[static_cast<Index>(i)];
    for (std::size_t j = 0; j <= i; ++j)
      values[batch.entries[next++]] -= local_bend(static_cast<Index>(i), static_cast<Index>(j));
  }
}

// Batch by batch, each of its places moved a little: half the trace of the covariance times how the
// precision changes.
VectorXd Model::determinant_slope(const Theta& theta, const Theta& nodes_at, const VectorXd& z,
                                  const MatrixXd& covariance) {
  constexpr double h = 1e-5;
  const NoteModel hand = note_model_of(theta, priors.slips),
                  nodes = note_model_of(nodes_at, priors.slips);
  VectorXd slope = VectorXd::Zero(plan.size()), moved = z;
  prior_precision = 1 / (hand.pigment_sd * hand.pigment_sd);
  for (const PlanBatch& batch : plan.batches) {
    if (!sum_up(batch, hand, nodes, z)) continue;
    turn(batch, Curvature::level);
    const MatrixXd before = local_bend;
    for (const int at : batch.at) {
      moved[at] += h;
      sum_up(batch, hand, nodes, moved);
      turn(batch, Curvature::level);
      moved[at] = z[at];
      for (std::size_t i = 0; i < batch.at.size(); ++i)
        for (std::size_t j = 0; j < batch.at.size(); ++j) {
          const auto k = static_cast<Index>(i), l = static_cast<Index>(j);
          slope[at] -=
              0.5 * covariance(batch.at[i], batch.at[j]) * (local_bend(k, l) - before(k, l)) / h;
        }
    }
  }
  return slope;
}

void Model::add_priors(Joint& joint, const NoteModel& hand, const VectorXd& z) const {
  double* values = joint.precision.valuePtr();
  const double alpha = z[plan.alpha_at];
  for (int k = 0; k < plan.alpha_at; ++k) {
    const PlanNormal& demand = plan.demands[static_cast<std::size_t>(k)];
    const double tau = demand.told ? 0 : hand.pigment_sd;
    const double variance = tau * tau + demand.own_variance;
    const double off = z[k] - alpha - demand.offset;
    joint.value -= 0.5 * (off * off / variance + std::log(variance) + ln_2pi);
    joint.gradient[k] -= off / variance;
    joint.gradient[plan.alpha_at] += off / variance;
    values[demand.own] += 1 / variance;
    values[demand.with_alpha] -= 1 / variance;
    values[plan.alpha_entry] += 1 / variance;
  }
  const auto normal = [&](int at, Index entry, double off, double variance) {
    joint.value -= 0.5 * (off * off / variance + std::log(variance) + ln_2pi);
    joint.gradient[at] -= off / variance;
    values[entry] += 1 / variance;
  };
  normal(plan.alpha_at, plan.alpha_entry, alpha - priors.alpha.centre,
         priors.alpha.sd * priors.alpha.sd);
  for (std::size_t t = 0; t < plan.tool_variances.size(); ++t) {
    const int at = plan.alpha_at + 1 + static_cast<int>(t);
    normal(at, plan.tool_entries[t], z[at], plan.tool_variances[t]);
  }
  if (plan.strength_at >= 0)
    normal(plan.strength_at, plan.strength_entry, z[plan.strength_at] - priors.strength.centre,
           priors.strength.sd * priors.strength.sd);
  add_walk(joint, z);
}

// Each level, the one before it being given.
void Model::add_walk(Joint& joint, const VectorXd& z) const {
  double* values = joint.precision.valuePtr();
  for (std::size_t j = 0; j < plan.level_variances.size(); ++j) {
    const int at = plan.levels_at + static_cast<int>(j);
    const double variance = plan.level_variances[j];
    const double off = z[at] - (j > 0 ? z[at - 1] : 0);
    joint.value -= 0.5 * (off * off / variance + std::log(variance) + ln_2pi);
    joint.gradient[at] -= off / variance;
    values[plan.level_entries[2 * j]] += 1 / variance;
    if (j == 0) continue;
    joint.gradient[at - 1] += off / variance;
    values[plan.level_entries[2 * j - 2]] += 1 / variance;
    values[plan.level_entries[2 * j + 1]] -= 1 / variance;
  }
}

bool Factor::take(const Sparse& precision) {
  ldlt.factorize(precision);
  return ldlt.info() == Eigen::Success && ldlt.vectorD().minCoeff() > 0;
}

Mode mode_from(Model& model, Factor& factor, const Theta& theta, const Theta& nodes_at,
               const VectorXd& z) {
  constexpr double settled = 1e-14, all_rounding = 1e-9;
  Mode mode{z, model.joint(theta, nodes_at, z), LearnEnd::no_convergence};
  for (int round = 0; round < 100 && std::isfinite(mode.joint.value); ++round) {
    const bool peak = factor.take(mode.joint.precision);
    if (!peak && !factor.take(model.joint(theta, nodes_at, mode.z, Curvature::bounded).precision)) {
      mode.end = LearnEnd::no_peak;
      return mode;
    }
    const VectorXd step = factor.solve(mode.joint.gradient);
    const double gain = mode.joint.gradient.dot(step);
    if (peak && gain < settled) {
      mode.end = LearnEnd::found;
      return mode;
    }
    if (!peak && gain < settled) {
      mode.end = LearnEnd::no_peak;
      return mode;
    }
    double scale = 1;
    const double slack = 1e-12 * (1 + std::abs(mode.joint.value));
    Joint next = model.joint(theta, nodes_at, mode.z + step);
    while (!(next.value >= mode.joint.value - slack) && scale > 1e-9) {
      scale /= 2;
      next = model.joint(theta, nodes_at, mode.z + scale * step);
    }
    if (scale <= 1e-9) {
      if (peak && gain < all_rounding) mode.end = LearnEnd::found;
      return mode;
    }
    mode.z += scale * step;
    mode.joint = std::move(next);
  }
  return mode;
}

}
