#include "paint/range/predict_points.hpp"

#include "paint/range/learn_plan.hpp"
#include "words/paint_says.hpp"

#include <Eigen/Dense>
#include <Eigen/SparseCholesky>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

namespace paint::learning {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;
using Say = words::PaintSay;

words::Error outside(const std::string& where, const char* field, int least, int most) {
  return {Say::learn_out_of_range, {where, field, std::to_string(least), std::to_string(most)}};
}

bool within(double x, double least, double most) { return x >= least && x <= most; }

// What a result read from bytes may have wrong in itself.
bool sound(const RangeFit& fit) {
  const auto n = static_cast<int>(fit.z.size());
  const auto there = [n](int at) { return at >= 0 && at < n; };
  return there(fit.alpha_at) && fit.strength_at < n && fit.z_by_theta.size() == fit.z.size() &&
         std::all_of(fit.pigments.begin(), fit.pigments.end(),
                     [&](const FittedPigment& p) { return p.at < n; }) &&
         std::all_of(fit.tools.begin(), fit.tools.end(),
                     [&](const FittedTool& t) { return t.at < n; }) &&
         std::all_of(fit.precision.begin(), fit.precision.end(),
                     [&](const MatrixEntry& e) { return there(e.row) && there(e.column); });
}

std::optional<words::Error> fault_in(const RangeFit& fit, const PredictBatch& batch) {
  if (fit.end != LearnEnd::found) return words::Error{sentence(fit.end), {}};
  if (!sound(fit)) return words::Error{Say::learn_not_there, {"z", "at"}};
  bool any = false;
  for (std::size_t i = 0; i < batch.pigments.size(); ++i) {
    const PredictPart& part = batch.pigments[i];
    const std::string where = "pigment " + std::to_string(i + 1);
    if (part.fit >= static_cast<int>(fit.pigments.size()))
      return words::Error{Say::learn_not_there, {where, "learnt"}};
    if (!within(part.mL, 0, 1e6)) return outside(where, "mL", 0, 1000000);
    if (!within(part.facts.ln_oil, -10, 10)) return outside(where, "ln_oil", -10, 10);
    if (!within(part.facts.kappa, -10, 10)) return outside(where, "kappa", -10, 10);
    if (!within(part.facts.q, 0, 10)) return outside(where, "q", 0, 10);
    any = any || part.mL > 0;
  }
  for (std::size_t i = 0; i < batch.tools.size(); ++i) {
    const PredictTool& tool = batch.tools[i];
    const std::string where = "tool " + std::to_string(i + 1);
    if (tool.fit >= static_cast<int>(fit.tools.size()))
      return words::Error{Say::learn_not_there, {where, "learnt"}};
    if (!within(tool.share, -10, 10)) return outside(where, "share", -10, 10);
    if (!within(tool.sd, 0, 10)) return outside(where, "sd", 0, 10);
  }
  if (!within(batch.shared_sd, 0, 10)) return outside("batch", "shared_sd", 0, 10);
  if (!within(batch.dry_gum, 0, 1)) return outside("batch", "dry_gum", 0, 1);
  if (!any) return words::Error{Say::learn_no_pigment, {"batch"}};
  return std::nullopt;
}

using Factor = Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Lower>;

bool factored(Factor& factor, const RangeFit& fit) {
  std::vector<Eigen::Triplet<double>> entries;
  for (const MatrixEntry& e : fit.precision) entries.emplace_back(e.row, e.column, e.value);
  const auto n = static_cast<Index>(fit.z.size());
  Eigen::SparseMatrix<double> precision(n, n);
  precision.setFromTriplets(entries.begin(), entries.end());
  factor.compute(precision);
  return factor.info() == Eigen::Success && factor.vectorD().minCoeff() > 0;
}

// A pigment of the batch, where z has it or only its class.
struct Part {
  int at = -1; // in z; alpha's if it was never felt
  double offset = 0;
  double own_variance = 0; // besides tau's
  bool felt = false, told = false;
  double ln_mL = 0;
};

std::vector<Part> parts_of(const RangeFit& fit, const PredictBatch& batch) {
  std::vector<Part> parts;
  std::map<int, std::size_t> seen;
  for (const PredictPart& from : batch.pigments) {
    if (from.mL == 0) continue;
    if (const auto twice = seen.find(from.fit); from.fit >= 0 && twice != seen.end()) {
      double& ln_mL = parts[twice->second].ln_mL;
      ln_mL = std::log(std::exp(ln_mL) + from.mL);
      continue;
    }
    if (from.fit >= 0) seen[from.fit] = parts.size();
    Part part;
    part.at = fit.alpha_at;
    part.ln_mL = std::log(from.mL);
    const FittedPigment* known = from.fit < 0 ? nullptr : &fit.pigments[place(from.fit)];
    if (known && known->at >= 0) {
      part.at = known->at;
      part.felt = true;
    } else {
      const LearnPigment& facts = known ? known->facts : from.facts;
      part.offset = facts.ln_oil + facts.kappa;
      part.own_variance = facts.q * facts.q;
      part.told = facts.told;
    }
    parts.push_back(part);
  }
  return parts;
}

// Steps away from the mode of theta.
std::vector<VectorXd> points_of(const RangeFit& fit) {
  constexpr auto n = static_cast<Index>(theta_count);
  MatrixXd covariance(n, n);
  std::vector<Index> free;
  for (Index i = 0; i < n; ++i) {
    for (Index j = 0; j < n; ++j)
      covariance(i, j) =
          fit.theta_covariance[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)];
    if (covariance(i, i) > 0) free.push_back(i);
  }
  if (free.empty()) return {VectorXd::Zero(n)};
  const MatrixXd of_free = covariance(free, free);
  const Eigen::LLT<MatrixXd> root(of_free);
  if (root.info() != Eigen::Success) return {};
  const MatrixXd columns = root.matrixL();
  std::vector<VectorXd> points;
  const double reach = std::sqrt(static_cast<double>(free.size()));
  for (Index k = 0; k < columns.cols(); ++k)
    for (const double side : {reach, -reach}) {
      VectorXd step = VectorXd::Zero(n);
      for (std::size_t i = 0; i < free.size(); ++i)
        step[free[i]] = side * columns(static_cast<Index>(i), k);
      points.push_back(step);
    }
  return points;
}

double z_at(const RangeFit& fit, int at, const VectorXd& step) {
  double z = fit.z[place(at)];
  for (std::size_t i = 0; i < theta_count; ++i)
    z += fit.z_by_theta[place(at)][i] * step[static_cast<Index>(i)];
  return z;
}

// How far today's batch may have walked from the middle of the latest ones.
double walked_variance(const RangeFit& fit) {
  const double walk = fit.priors.walk;
  return walk * walk * (std::min(fit.batches, level_from[0]) / 2.0 + 0.5);
}

struct Lean { // on z, and what is beside it
  VectorXd along;
  double variance = 0;
};

void lean_on_strength(Expected& e, Lean& lean, const RangeFit& fit, double dry_gum,
                      const VectorXd& step) {
  const double stronger = dry_gum - usual_dry_gum;
  if (fit.strength_at < 0) {
    e.mean += stronger * fit.priors.strength.centre;
    return;
  }
  e.mean += stronger * z_at(fit, fit.strength_at, step);
  lean.along[fit.strength_at] += stronger;
}

void lean_on_tools(Expected& e, Lean& lean, const RangeFit& fit, const PredictBatch& batch,
                   const VectorXd& step) {
  for (const PredictTool& tool : batch.tools) {
    const FittedTool* known = tool.fit < 0 ? nullptr : &fit.tools[place(tool.fit)];
    if (known && known->at >= 0) {
      e.mean -= tool.share * z_at(fit, known->at, step);
      lean.along[known->at] -= tool.share;
    } else {
      const double off = tool.share * (known ? known->sd : tool.sd);
      lean.variance += off * off;
    }
  }
}

Expected expected_at(const RangeFit& fit, const PredictBatch& batch, const std::vector<Part>& parts,
                     const Factor& factor, const VectorXd& step) {
  Theta theta = fit.theta;
  for (std::size_t i = 0; i < theta_count; ++i) theta[i] += step[static_cast<Index>(i)];
  Expected e{note_model_of(theta, fit.priors.slips)};
  std::vector<double> wanted;
  for (const Part& part : parts)
    wanted.push_back(part.ln_mL + part.offset + z_at(fit, part.at, step));
  const double most = *std::max_element(wanted.begin(), wanted.end());
  double sum = 0;
  for (double& w : wanted) sum += w = std::exp(w - most);
  e.mean = most + std::log(sum);
  Lean lean{VectorXd::Zero(static_cast<Index>(fit.z.size())),
            e.hand.batch_sd * e.hand.batch_sd + batch.shared_sd * batch.shared_sd +
                walked_variance(fit)};
  const double tau_2 = e.hand.pigment_sd * e.hand.pigment_sd;
  for (std::size_t k = 0; k < parts.size(); ++k) {
    const double share = wanted[k] / sum;
    lean.along[parts[k].at] += share;
    if (!parts[k].felt)
      lean.variance += share * share * ((parts[k].told ? 0 : tau_2) + parts[k].own_variance);
  }
  lean_on_strength(e, lean, fit, batch.dry_gum, step);
  lean_on_tools(e, lean, fit, batch, step);
  e.sd = std::sqrt(lean.variance + lean.along.dot(VectorXd(factor.solve(lean.along))));
  return e;
}

}

words::Result<std::vector<Expected>> expected_at_points(const RangeFit& fit,
                                                        const PredictBatch& batch) {
  if (auto fault = fault_in(fit, batch)) return tl::make_unexpected(*fault);
  Factor factor;
  const std::vector<VectorXd> points = points_of(fit);
  if (points.empty() || !factored(factor, fit)) return words::failure(Say::learn_no_peak);
  const std::vector<Part> parts = parts_of(fit, batch);
  std::vector<Expected> expected;
  for (const VectorXd& step : points) {
    expected.push_back(expected_at(fit, batch, parts, factor, step));
    const Expected& e = expected.back();
    if (!std::isfinite(e.mean) || !(e.sd > 0) || !std::isfinite(e.sd) || !(e.hand.slope > 0))
      return words::failure(Say::learn_no_peak);
  }
  return expected;
}

}
