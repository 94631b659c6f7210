#include "paint/range/learn_climb.hpp"

#include "paint/range/note_chance.hpp"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace paint::learning {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

// Steps and slopes are counted in sds of theta's prior, as many as are free.
class Climber {
public:
  Climber(Model& of, Factor& with, const Start& start)
      : model(of), factor(with), theta(start.theta) {
    for (std::size_t i = 0; i < theta_count; ++i)
      if (model.priors.theta[i].sd > 0 && (i != at_slips || model.priors.slips)) free.push_back(i);
    moves = MatrixXd::Zero(model.plan.size(), count());
    for (std::size_t k = 0; k < start.z_by_theta.size(); ++k)
      for (Index i = 0; i < count(); ++i)
        moves(static_cast<Index>(k), i) =
            start.z_by_theta[k][free[static_cast<std::size_t>(i)]] * sd(i);
    mode = mode_from(model, factor, theta, theta, start.z);
    take_height();
  }

  Index count() const { return static_cast<Index>(free.size()); }
  Summit run(const std::array<Theta, theta_count>& earlier);
  Summit summit(LearnEnd end) const;

private:
  double sd(Index i) const { return model.priors.theta[free[static_cast<std::size_t>(i)]].sd; }
  Theta moved(const VectorXd& by) const;
  void take_height();
  double near(const VectorXd& by, VectorXd* rest);
  double beside(const VectorXd& by, const VectorXd& determinant_slope);
  VectorXd slope();
  MatrixXd first_guess();
  bool stride(const VectorXd& slope, VectorXd& step);
  bool climb_up(MatrixXd& inverse);
  MatrixXd bend(const VectorXd& steps);
  bool take_spread(const VectorXd& steps);
  bool left_open() const;

  Model& model;
  Factor& factor;
  std::vector<std::size_t> free;
  Theta theta;
  Mode mode;
  double height = -infinite; // ln posterior of theta
  VectorXd rest;             // what is left of Newton's step at the mode
  MatrixXd moves;            // how z moves with theta
  MatrixXd spread;           // of theta
};

Theta Climber::moved(const VectorXd& by) const {
  Theta to = theta;
  for (Index i = 0; i < count(); ++i) to[free[static_cast<std::size_t>(i)]] += by[i] * sd(i);
  return to;
}

// Laplace's marginal around z, carried on to the mode that the next Newton step would reach.
double laplace(const Model& model, Factor& factor, const Joint& joint, const VectorXd& step) {
  constexpr double half_ln_2pi = 0.9189385332046727;
  return joint.value + 0.5 * joint.gradient.dot(step) + half_ln_2pi * model.plan.size() -
         factor.half_ln_determinant();
}

void Climber::take_height() {
  height = -infinite;
  if (mode.joint.turned_up) mode.joint = model.joint(theta, theta, mode.z, Curvature::level);
  if (mode.end != LearnEnd::found || !factor.take(mode.joint.precision)) return;
  rest = factor.solve(mode.joint.gradient);
  height = laplace(model, factor, mode.joint, rest) + model.ln_prior(theta);
}

// Height at a theta beside this one, with z moved along, by one look. `ahead`: the Newton step
// there.
double Climber::near(const VectorXd& by, VectorXd* ahead) {
  const Theta there = moved(by);
  const Joint joint = model.joint(there, theta, mode.z + moves * by, Curvature::level);
  if (!std::isfinite(joint.value) || !factor.take(joint.precision)) return -infinite;
  const VectorXd step = factor.solve(joint.gradient);
  if (ahead) *ahead = step;
  return laplace(model, factor, joint, step) + model.ln_prior(there);
}

// The same, with what the determinant does on that step: right to the second order.
double Climber::beside(const VectorXd& by, const VectorXd& determinant_slope) {
  VectorXd step;
  const double height_there = near(by, &step);
  return std::isfinite(height_there) ? height_there - determinant_slope.dot(step) : height_there;
}

// By forward differences, which also tell how z moves with theta; what is known of that from before
// carries z along, so both are right once little changes.
VectorXd Climber::slope() {
  constexpr double h = 1e-5;
  VectorXd g(count()), ahead(mode.z.size());
  for (Index i = 0; i < count(); ++i) {
    const VectorXd by = VectorXd::Unit(count(), i) * h;
    g[i] = (near(by, &ahead) - height) / h;
    moves.col(i) += (ahead - rest) / h;
  }
  return g;
}

// Inverse curvature from second differences along each of theta, the prior's at most.
MatrixXd Climber::first_guess() {
  constexpr double h = 1e-2;
  MatrixXd inverse = MatrixXd::Identity(count(), count());
  for (Index i = 0; i < count(); ++i) {
    const VectorXd by = VectorXd::Unit(count(), i) * h;
    const double bent = (2 * height - near(by, nullptr) - near(-by, nullptr)) / (h * h);
    if (std::isfinite(bent) && bent > 1) inverse(i, i) = 1 / bent;
  }
  return inverse;
}

// Takes the step, or as much of it as goes up.
bool Climber::stride(const VectorXd& g, VectorXd& step) {
  constexpr double longest = 1.5;
  if (step.norm() > longest) step *= longest / step.norm();
  const double slack = 1e-12 * (1 + std::abs(height));
  for (int halved = 0; halved < 30; ++halved, step /= 2) {
    const Theta there = moved(step);
    Mode next = mode_from(model, factor, there, there, mode.z + moves * step);
    if (next.end != LearnEnd::found) next = mode_from(model, factor, there, there, mode.z);
    if (next.end != LearnEnd::found) continue;
    const Theta before = theta;
    const double height_before = height;
    std::swap(mode, next);
    theta = there;
    take_height();
    if (height >= height_before + 1e-4 * g.dot(step) - slack) return true;
    std::swap(mode, next);
    theta = before;
    take_height();
  }
  return false;
}

// True where theta has settled.
bool Climber::climb_up(MatrixXd& inverse) {
  constexpr double settled = 1e-10,
                   near_enough = 1e-6; // ln posterior still to be gained, twice
  VectorXd g = slope();
  for (int round = 0; round < 60; ++round) {
    if (!g.allFinite()) return false;
    VectorXd step = inverse * g;
    if (g.dot(step) < settled) return true;
    if (!stride(g, step)) return g.dot(inverse * g) < near_enough;
    const VectorXd before = g;
    g = slope();
    const VectorXd fall = before - g;
    const double along = step.dot(fall);
    if (along <= 1e-12) continue;
    const MatrixXd left = MatrixXd::Identity(count(), count()) - step * fall.transpose() / along;
    inverse = left * inverse * left.transpose() + step * step.transpose() / along;
  }
  return g.dot(inverse * g) < near_enough;
}

// Minus the second derivatives by theta, from heights `steps` away.
MatrixXd Climber::bend(const VectorXd& steps) {
  const Index n = count();
  factor.take(mode.joint.precision);
  const VectorXd fall = model.determinant_slope(theta, theta, mode.z, factor.inverse());
  const double here = height - fall.dot(rest);
  MatrixXd bent(n, n);
  VectorXd up(n);
  for (Index i = 0; i < n; ++i) {
    const VectorXd by = VectorXd::Unit(n, i) * steps[i];
    up[i] = here - beside(by, fall);
    bent(i, i) = (up[i] + here - beside(-by, fall)) / (steps[i] * steps[i]);
  }
  for (Index i = 0; i < n; ++i)
    for (Index j = 0; j < i; ++j) {
      const VectorXd by = VectorXd::Unit(n, i) * steps[i] + VectorXd::Unit(n, j) * steps[j];
      bent(i, j) = bent(j, i) = (here - beside(by, fall) - up[i] - up[j]) / (steps[i] * steps[j]);
    }
  return bent;
}

// False where the height is not a peak as seen by these steps.
bool Climber::take_spread(const VectorXd& steps) {
  const MatrixXd bent = bend(steps);
  const Eigen::LLT<MatrixXd> factors(bent);
  if (!bent.allFinite() || (count() > 0 && factors.info() != Eigen::Success)) return false;
  spread = factors.solve(MatrixXd::Identity(count(), count()));
  return true;
}

// A limit or the slope that even these notes leave unknown by a factor of seven: no two words meet,
// and a prior that is too wide to hold it.
bool Climber::left_open() const {
  constexpr double unknown = 2;
  for (Index i = 0; i < count(); ++i)
    if (free[static_cast<std::size_t>(i)] <= at_slope && std::sqrt(spread(i, i)) * sd(i) > unknown)
      return true;
  return false;
}

Summit Climber::run(const std::array<Theta, theta_count>& earlier) {
  if (!std::isfinite(height)) return summit(mode.end);
  MatrixXd inverse(count(), count());
  for (Index i = 0; i < count(); ++i)
    for (Index j = 0; j < count(); ++j)
      inverse(i, j) =
          earlier[free[static_cast<std::size_t>(i)]][free[static_cast<std::size_t>(j)]] /
          (sd(i) * sd(j));
  if (count() > 0 && !(Eigen::LLT<MatrixXd>(inverse).info() == Eigen::Success))
    inverse = first_guess();
  const bool settled = climb_up(inverse);
  const VectorXd sds = inverse.diagonal().cwiseMax(1e-12).cwiseMin(1).cwiseSqrt();
  // Wider where notes contradict each other, for there the height is rough.
  const bool peak = take_spread(0.003 * sds) || take_spread(0.1 * sds) || take_spread(0.5 * sds);
  if (!peak) return summit(settled ? LearnEnd::no_peak : LearnEnd::no_convergence);
  if (settled && left_open()) return summit(LearnEnd::separated);
  return summit(settled ? LearnEnd::found : LearnEnd::no_convergence);
}

Summit Climber::summit(LearnEnd end) const {
  Summit s;
  s.theta = theta;
  s.mode = mode;
  s.log_posterior = height;
  s.end = end;
  s.z_by_theta.resize(static_cast<std::size_t>(mode.z.size()));
  for (Index i = 0; i < count(); ++i) {
    const std::size_t a = free[static_cast<std::size_t>(i)];
    for (Index k = 0; k < mode.z.size(); ++k)
      s.z_by_theta[static_cast<std::size_t>(k)][a] = moves(k, i) / sd(i);
    for (Index j = 0; j < count() && spread.size() > 0; ++j)
      s.covariance[a][free[static_cast<std::size_t>(j)]] = spread(i, j) * sd(i) * sd(j);
  }
  return s;
}

}

double Summit::by_theta_variance(int at) const {
  const Theta& by = z_by_theta[static_cast<std::size_t>(at)];
  double sum = 0;
  for (std::size_t i = 0; i < theta_count; ++i)
    for (std::size_t j = 0; j < theta_count; ++j) sum += by[i] * covariance[i][j] * by[j];
  return sum;
}

Summit climb(Model& model, Factor& factor, const Start& start) {
  return Climber(model, factor, start).run(start.covariance);
}

Summit stand(Model& model, Factor& factor, const Theta& theta) {
  const Climber at(model, factor, {theta, model.start(note_model_of(theta)), {}, {}});
  Summit summit = at.summit(LearnEnd::found);
  summit.end = summit.mode.end;
  return summit;
}

}
