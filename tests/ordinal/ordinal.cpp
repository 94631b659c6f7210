#include "ordinal/ordinal.hpp"

#include "paint/range/note_chance.hpp"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace ordinal {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;
using paint::word_chance;
using paint::WordChance;
using Fault = std::optional<std::string>;

constexpr double infinite = std::numeric_limits<double>::infinity();

Fault row_fault(const OrdinalData& data, std::size_t i) {
  const OrdinalRow& row = data.rows[i];
  const std::string fault = "row " + std::to_string(i + 1);
  if (row.word < 0 || row.word >= data.words) return fault;
  if (row.x.size() != data.rows[0].x.size()) return fault;
  if (row.groups.size() != data.factor_groups.size()) return fault;
  for (std::size_t f = 0; f < row.groups.size(); ++f)
    if (row.groups[f] < 0 || row.groups[f] >= data.factor_groups[f]) return fault;
  for (const double x : row.x)
    if (!std::isfinite(x)) return "not a number";
  return std::nullopt;
}

Fault fault_of(const OrdinalData& data) {
  if (data.rows.empty() || data.words < 2) return "row 0";
  std::vector<int> said(static_cast<std::size_t>(data.words));
  for (std::size_t i = 0; i < data.rows.size(); ++i) {
    if (auto fault = row_fault(data, i)) return fault;
    ++said[static_cast<std::size_t>(data.rows[i].word)];
  }
  for (std::size_t w = 0; w < said.size(); ++w)
    if (said[w] == 0) return "word " + std::to_string(w) + " is never said";
  return std::nullopt;
}

bool usable(const OrdinalData& data, const OrdinalParameters& p) {
  const auto finite = [](double x) { return std::isfinite(x); };
  return static_cast<int>(p.thresholds.size()) == data.words - 1 &&
         p.slopes.size() == data.rows[0].x.size() && p.sds.size() == data.factor_groups.size() &&
         std::adjacent_find(p.thresholds.begin(), p.thresholds.end(), std::greater_equal<>()) ==
             p.thresholds.end() &&
         std::all_of(p.thresholds.begin(), p.thresholds.end(), finite) &&
         std::all_of(p.slopes.begin(), p.slopes.end(), finite) &&
         std::all_of(p.sds.begin(), p.sds.end(),
                     [](double s) { return std::isfinite(s) && s > 0; });
}

// Chance of a row's word with its location moved by `off`.
WordChance chance(const OrdinalRow& row, const OrdinalParameters& p, double off) {
  double location = off;
  for (std::size_t k = 0; k < row.x.size(); ++k) location += p.slopes[k] * row.x[k];
  const auto w = static_cast<std::size_t>(row.word);
  return word_chance(w == 0 ? -infinite : p.thresholds[w - 1] - location,
                     w == p.thresholds.size() ? infinite : p.thresholds[w] - location);
}

// Value, gradient and minus the Hessian of one thing.
struct Curve {
  double value = 0;
  VectorXd gradient;
  MatrixXd precision;
};

// The ln likelihood by thresholds and slopes, effects left out.
Curve fixed_curve(const OrdinalData& data, const OrdinalParameters& p) {
  const auto cuts = static_cast<Index>(p.thresholds.size());
  const Index n = cuts + static_cast<Index>(p.slopes.size());
  Curve c{0, VectorXd::Zero(n), MatrixXd::Zero(n, n)};
  VectorXd above(n), below(n); // how the ends of the word's interval move with each parameter
  for (const OrdinalRow& row : data.rows) {
    const WordChance w = chance(row, p, 0);
    above.setZero();
    for (Index k = cuts; k < n; ++k) above[k] = -row.x[static_cast<std::size_t>(k - cuts)];
    below = above;
    if (row.word < cuts) above[row.word] = 1;
    if (row.word > 0) below[row.word - 1] = 1;
    c.value += w.ln_p;
    c.gradient += w.by_above * above + w.by_below * below;
    c.precision -= w.by_above_2 * above * above.transpose() +
                   w.by_below_2 * below * below.transpose() +
                   w.by_both * (above * below.transpose() + below * above.transpose());
  }
  return c;
}

OrdinalParameters moved(OrdinalParameters p, const VectorXd& step) {
  Index k = 0;
  for (double& t : p.thresholds) t += step[k++];
  for (double& s : p.slopes) s += step[k++];
  return p;
}

// Thresholds where nothing explains the words: the logits of their shares.
OrdinalParameters start(const OrdinalData& data) {
  OrdinalParameters p;
  std::vector<double> said(static_cast<std::size_t>(data.words));
  for (const OrdinalRow& row : data.rows) ++said[static_cast<std::size_t>(row.word)];
  double below = 0;
  for (std::size_t w = 0; w + 1 < said.size(); ++w) {
    below += said[w];
    p.thresholds.push_back(std::log(below / (static_cast<double>(data.rows.size()) - below)));
  }
  p.slopes.assign(data.rows[0].x.size(), 0);
  p.sds.assign(data.factor_groups.size(), 1);
  return p;
}

// A slope whose error is as wide as this, over the whole span of its x, rests on nothing.
bool runs_away(const OrdinalData& data, const OrdinalFit& fit) {
  constexpr double wide = 100;
  for (std::size_t k = 0; k < fit.at.slopes.size(); ++k) {
    double least = infinite, most = -infinite;
    for (const OrdinalRow& row : data.rows) {
      least = std::min(least, row.x[k]);
      most = std::max(most, row.x[k]);
    }
    const double error = fit.standard_errors[fit.at.thresholds.size() + k];
    if (!(error * (most - least) < wide)) return true;
  }
  return false;
}

void take_errors(OrdinalFit& fit, const MatrixXd& precision) {
  const MatrixXd covariance = precision.inverse();
  fit.standard_errors.clear();
  for (Index k = 0; k < covariance.rows(); ++k)
    fit.standard_errors.push_back(std::sqrt(covariance(k, k)));
}

OrdinalFit fit_fixed(const OrdinalData& data) {
  OrdinalFit fit;
  fit.at = start(data);
  fit.end = OrdinalEnd::no_convergence;
  Curve here = fixed_curve(data, fit.at);
  for (int round = 0; round < 100; ++round) {
    const VectorXd step = here.precision.ldlt().solve(here.gradient);
    if (here.gradient.dot(step) < 1e-16) {
      fit.end = OrdinalEnd::found;
      break;
    }
    double scale = 1;
    OrdinalParameters next = moved(fit.at, step);
    while (scale > 1e-12 &&
           (!usable(data, next) || !(fixed_curve(data, next).value >= here.value))) {
      scale /= 2;
      next = moved(fit.at, scale * step);
    }
    if (scale <= 1e-12) {
      if (here.gradient.dot(step) < 1e-9) fit.end = OrdinalEnd::found; // rounding is all there is
      break;
    }
    fit.at = next;
    here = fixed_curve(data, fit.at);
  }
  fit.log_likelihood = here.value;
  take_errors(fit, here.precision);
  if (runs_away(data, fit)) fit.end = OrdinalEnd::separated;
  return fit;
}

// Effects in their own sds, factor after factor.
struct Effects {
  std::vector<Index> first; // of each factor
  Index count = 0;

  explicit Effects(const OrdinalData& data) {
    for (const int groups : data.factor_groups) {
      first.push_back(count);
      count += groups;
    }
  }
};

// ln of words and effects together, by the effects.
Curve joint_curve(const OrdinalData& data, const OrdinalParameters& p, const Effects& effects,
                  const VectorXd& u) {
  Curve c{-0.5 * u.squaredNorm(), -u, MatrixXd::Identity(u.size(), u.size())};
  for (const OrdinalRow& row : data.rows) {
    double off = 0;
    for (std::size_t f = 0; f < p.sds.size(); ++f)
      off += p.sds[f] * u[effects.first[f] + row.groups[f]];
    const WordChance w = chance(row, p, off);
    c.value += w.ln_p;
    for (std::size_t f = 0; f < p.sds.size(); ++f) {
      const Index a = effects.first[f] + row.groups[f];
      c.gradient[a] -= p.sds[f] * (w.by_above + w.by_below);
      for (std::size_t g = 0; g < p.sds.size(); ++g)
        c.precision(a, effects.first[g] + row.groups[g]) -=
            p.sds[f] * p.sds[g] * (w.by_above_2 + w.by_below_2 + 2 * w.by_both);
    }
  }
  return c;
}

struct Laplace {
  double value = -infinite;
  VectorXd mode;
  bool found = false;
};

Laplace laplace(const OrdinalData& data, const OrdinalParameters& p, const VectorXd& from) {
  const Effects effects(data);
  Laplace at{-infinite, from};
  Curve here = joint_curve(data, p, effects, at.mode);
  for (int round = 0; round < 100; ++round) {
    const Eigen::LLT<MatrixXd> factor(here.precision);
    if (factor.info() != Eigen::Success) return at;
    const VectorXd step = factor.solve(here.gradient);
    if (here.gradient.dot(step) < 1e-16) {
      at.value = here.value - factor.matrixLLT().diagonal().array().log().sum();
      at.found = true;
      return at;
    }
    double scale = 1;
    Curve next = joint_curve(data, p, effects, at.mode + step);
    while (scale > 1e-12 && !(next.value >= here.value - 1e-13 * std::abs(here.value))) {
      scale /= 2;
      next = joint_curve(data, p, effects, at.mode + scale * step);
    }
    at.mode += scale * step;
    here = next;
  }
  return at;
}

// First threshold, ln of the gaps, slopes, ln of the sds: any numbers will do.
VectorXd free_form(const OrdinalParameters& p) {
  std::vector<double> v{p.thresholds[0]};
  for (std::size_t k = 1; k < p.thresholds.size(); ++k)
    v.push_back(std::log(p.thresholds[k] - p.thresholds[k - 1]));
  v.insert(v.end(), p.slopes.begin(), p.slopes.end());
  for (const double sd : p.sds) v.push_back(std::log(sd));
  return Eigen::Map<VectorXd>(v.data(), static_cast<Index>(v.size()));
}

OrdinalParameters bound_form(const OrdinalParameters& like, const VectorXd& v) {
  OrdinalParameters p = like;
  Index k = 0;
  p.thresholds[0] = v[k++];
  for (std::size_t j = 1; j < p.thresholds.size(); ++j)
    p.thresholds[j] = p.thresholds[j - 1] + std::exp(v[k++]);
  for (double& slope : p.slopes) slope = v[k++];
  for (double& sd : p.sds) sd = std::exp(v[k++]);
  return p;
}

// Quasi-Newton (BFGS) on Laplace's value, by central differences.
class Climb {
public:
  Climb(const OrdinalData& of, const OrdinalParameters& from)
      : data(of), like(from), v(free_form(from)) {
    best.mode = VectorXd::Zero(Effects(data).count);
    best = value(v);
  }

  OrdinalFit run() {
    MatrixXd inverse = MatrixXd::Identity(v.size(), v.size());
    VectorXd slope = gradient();
    OrdinalEnd end = OrdinalEnd::no_convergence;
    for (int round = 0; round < 200 && end != OrdinalEnd::found; ++round) {
      const VectorXd step = stride(inverse * slope, slope);
      const VectorXd before = slope;
      slope = gradient();
      const VectorXd fall = before - slope;
      if (slope.cwiseAbs().maxCoeff() < 1e-6) end = OrdinalEnd::found;
      const double along = step.dot(fall);
      if (step.norm() == 0) break;
      if (along <= 0) continue;
      const MatrixXd left =
          MatrixXd::Identity(v.size(), v.size()) - step * fall.transpose() / along;
      inverse = left * inverse * left.transpose() + step * step.transpose() / along;
    }
    OrdinalFit fit;
    fit.at = bound_form(like, v);
    fit.end = best.found ? end : OrdinalEnd::no_peak;
    return fit;
  }

private:
  Laplace value(const VectorXd& at) {
    const OrdinalParameters p = bound_form(like, at);
    if (!usable(data, p)) return {};
    return laplace(data, p, best.mode);
  }

  VectorXd gradient() {
    constexpr double h = 1e-4;
    VectorXd g(v.size());
    for (Index k = 0; k < v.size(); ++k) {
      VectorXd up = v, down = v;
      up[k] += h;
      down[k] -= h;
      g[k] = (value(up).value - value(down).value) / (2 * h);
    }
    return g;
  }

  VectorXd stride(VectorXd step, const VectorXd& slope) {
    if (step.norm() > 1) step /= step.norm();
    for (int halved = 0; halved < 40; ++halved, step /= 2) {
      const Laplace next = value(v + step);
      if (!next.found || !(next.value >= best.value + 1e-4 * slope.dot(step))) continue;
      v += step;
      best = next;
      return step;
    }
    return VectorXd::Zero(v.size());
  }

  const OrdinalData& data;
  OrdinalParameters like;
  VectorXd v;
  Laplace best;
};

void take_effects(OrdinalFit& fit, const OrdinalData& data) {
  const Effects effects(data);
  const Laplace at = laplace(data, fit.at, VectorXd::Zero(effects.count));
  if (!at.found) fit.end = OrdinalEnd::no_peak;
  fit.log_likelihood = at.value;
  fit.effects.clear();
  for (std::size_t f = 0; f < effects.first.size(); ++f) {
    std::vector<double>& of = fit.effects.emplace_back();
    for (Index g = 0; g < data.factor_groups[f]; ++g)
      of.push_back(fit.at.sds[f] * at.mode[effects.first[f] + g]);
  }
}

}

Result<OrdinalFit> fit_ordinal(const OrdinalData& data) {
  if (const auto fault = fault_of(data)) return tl::make_unexpected(*fault);
  OrdinalFit fit = fit_fixed(data);
  if (data.factor_groups.empty() || fit.end != OrdinalEnd::found) return fit;
  fit.at.sds.assign(data.factor_groups.size(), 1);
  OrdinalFit mixed = Climb(data, fit.at).run();
  take_effects(mixed, data);
  return mixed;
}

Result<OrdinalFit> ordinal_at(const OrdinalData& data, const OrdinalParameters& parameters) {
  if (const auto fault = fault_of(data)) return tl::make_unexpected(*fault);
  if (!usable(data, parameters)) return tl::make_unexpected("parameters");
  OrdinalFit fit;
  fit.at = parameters;
  take_effects(fit, data);
  return fit;
}

}
