#include "paint/range/predict.hpp"

#include "paint/range/note_chance.hpp"
#include "paint/range/note_on_grid.hpp"
#include "paint/range/predict_points.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace paint {

namespace {

constexpr double reach = 6;    // of a grid to either side, in sds
constexpr int least_half = 60; // steps to either side
constexpr int most_half = 20000;
constexpr double widest_step = 0.7; // in slopes
constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr int most_drops = 10000;

void add_grid(Prediction& prediction, const learning::Expected& e, double share) {
  const double needed = std::ceil(reach * e.sd / (widest_step * e.hand.slope));
  const int half = std::clamp(static_cast<int>(std::min(needed, 1e6)), least_half, most_half);
  const double step = reach * e.sd / half;
  prediction.points.push_back({e.hand, e.mean - half * step, step, 2 * half + 1});
  const std::size_t begin = prediction.weights.size();
  double sum = 0;
  for (int k = -half; k <= half; ++k) {
    const double off = k * step / e.sd;
    prediction.weights.push_back(std::exp(-0.5 * off * off));
    sum += prediction.weights.back();
  }
  for (std::size_t k = begin; k < prediction.weights.size(); ++k)
    prediction.weights[k] *= share / sum;
}

// Sum of weights times F((x - t) / slope) over one grid. Along it the exponential is multiplied by
// one factor; where it would vanish, F is 1.
double looser(const PredictionPoint& point, const double* weights, double x, double slope) {
  const double from = (point.first - x) / slope, stride = point.step / slope;
  const double skipped = std::ceil((-700 - from) / stride);
  const int begin = skipped > 0 ? static_cast<int>(std::min<double>(skipped, point.count)) : 0;
  double sum = std::accumulate(weights, weights + begin, 0.0);
  const double factor = std::exp(stride);
  double e = std::exp(from + begin * stride);
  for (int k = begin; k < point.count; ++k, e *= factor) sum += weights[k] / (1 + e);
  return sum;
}

// What this studio alone lets expect.
Prediction own_of(const Prediction& prediction) {
  if (prediction.own == 0) return prediction;
  const auto first = prediction.points.begin() + static_cast<std::ptrdiff_t>(prediction.own);
  std::ptrdiff_t before = 0;
  for (auto p = prediction.points.begin(); p != first; ++p) before += p->count;
  Prediction own{{first, prediction.points.end()},
                 {prediction.weights.begin() + before, prediction.weights.end()},
                 prediction.drying};
  const double sum = std::accumulate(own.weights.begin(), own.weights.end(), 0.0);
  if (!(sum > 0)) return {}; // today's notes leave nothing of it
  for (double& weight : own.weights) weight /= sum;
  return own;
}

// Chance of a word or a looser one at ln flow x: `felt` 1 to 4.
double chance_from(const Prediction& prediction, double x, double sd, int felt) {
  if (prediction.points.empty() || !std::isfinite(x) || !(sd >= 0)) return not_a_number;
  double sum = 0;
  const double* weights = prediction.weights.data();
  for (const PredictionPoint& point : prediction.points) {
    sum +=
        looser(point, weights, x - ends_of(point.hand, felt).below, widened(point.hand.slope, sd));
    weights += point.count;
  }
  return sum;
}

// What there is, as if it were of the batch's own strength.
double ln_felt(const Prediction& prediction, const PredictionAt& at) {
  return at.mL > 0 ? std::log(at.mL) - prediction.drying * at.stronger : not_a_number;
}

struct Span {
  double low = infinite, high = -infinite;
};

Span span_of(const Prediction& prediction) {
  Span span;
  for (const PredictionPoint& p : prediction.points) {
    const double beyond =
        p.hand.half_width + p.hand.sticky_reach + p.hand.loose_reach + 40 * p.hand.slope;
    span.low = std::min(span.low, p.first - beyond);
    span.high = std::max(span.high, p.first + p.step * p.count + beyond);
  }
  return span;
}

// Where something that rises along t reaches a level.
template <class Rising>
double reached(const Prediction& prediction, double level, Rising rising) {
  if (prediction.points.empty() || !(level > 0 && level < 1)) return not_a_number;
  auto [low, high] = span_of(prediction);
  while (high - low > 1e-9) {
    const double middle = low + (high - low) / 2;
    if (middle == low || middle == high) break;
    (rising(middle) < level ? low : high) = middle;
  }
  return std::exp(low + (high - low) / 2);
}

double multiply(Prediction& now, const NoteOnGrid& note) {
  double sum = 0;
  double* weight = now.weights.data();
  std::vector<double> chances;
  for (const PredictionPoint& p : now.points) {
    chances_along(p, note, chances);
    for (const double chance : chances) sum += * weight++ *= chance;
  }
  return sum;
}

// Without slips, and a note so far off that no chance is left: by logarithms.
double multiply_far(Prediction& now, const NoteOnGrid& note) {
  double most = -infinite;
  double* weight = now.weights.data();
  for (const PredictionPoint& p : now.points)
    for (int k = 0; k < p.count; ++k, ++weight) {
      *weight = *weight > 0 ? std::log(*weight) + ln_chance(p, k, note) : -infinite;
      most = std::max(most, *weight);
    }
  double sum = 0;
  for (double& w : now.weights) sum += w = std::exp(w - most);
  return sum;
}

}

words::Result<Prediction> predict(const RangeFit& fit, const PredictBatch& batch) {
  const auto expected = learning::expected_at_points(fit, batch);
  if (!expected) return tl::make_unexpected(expected.error());
  Prediction prediction;
  for (const learning::Expected& e : *expected)
    add_grid(prediction, e, 1 / static_cast<double>(expected->size()));
  prediction.drying = fit.priors.drying;
  return prediction;
}

words::Result<Prediction> after(const Prediction& before, const TodayNote& note) {
  if (auto fault = fault_of(note)) return tl::make_unexpected(*std::move(fault));
  const NoteOnGrid seen = on_grid(note, before.drying);
  Prediction now = before;
  double sum = multiply(now, seen);
  if (!(sum > 1e-250)) {
    now = before;
    sum = multiply_far(now, seen);
  }
  for (double& weight : now.weights) weight /= sum;
  return now;
}

std::array<double, 5> chances(const Prediction& prediction, PredictionAt at) {
  std::array<double, 5> words{};
  double from = 1;
  for (int felt = 0; felt < 5; ++felt) {
    const double next =
        felt == 4 ? 0 : chance_from(prediction, ln_felt(prediction, at), at.sd, felt + 1);
    words[static_cast<std::size_t>(felt)] = from - next;
    from = next;
  }
  return words;
}

double chance_right(const Prediction& prediction, PredictionAt at) {
  return chance_from(prediction, ln_felt(prediction, at), at.sd, 2) -
         chance_from(prediction, ln_felt(prediction, at), at.sd, 3);
}

double chance_too_loose(const Prediction& prediction, PredictionAt at) {
  return chance_from(prediction, ln_felt(prediction, at), at.sd, 3);
}

int safe_drops(const Prediction& prediction, PredictionAt at, double drop_mL,
               double drop_stronger) {
  if (!(drop_mL > 0) || !std::isfinite(drop_mL) || !(at.mL >= 0)) return 0;
  const Prediction own = prediction.own > 0 ? own_of(prediction) : Prediction{};
  const auto safe = [&](int drops) {
    const double added = drops * drop_mL, mL = at.mL + added;
    const double stronger = mL > 0 ? (at.mL * at.stronger + added * drop_stronger) / mL : 0;
    const PredictionAt then{mL, at.sd, stronger};
    return chance_too_loose(prediction, then) <= allowed_too_loose &&
           (own.points.empty() || chance_too_loose(own, then) <= allowed_untold);
  };
  int most = 0, too_many = most_drops + 1;
  while (too_many - most > 1) {
    const int middle = (most + too_many) / 2;
    (safe(middle) ? most : too_many) = middle;
  }
  return most;
}

double mL_at_chance_too_loose(const Prediction& prediction, double chance) {
  return reached(prediction, chance, [&](double x) { return chance_from(prediction, x, 0, 3); });
}

FirstLiquid first_liquid(const Prediction& prediction) {
  constexpr double most = 0.7, least_to_most = 5.0 / 7;
  FirstLiquid first;
  first.median_mL = mL_at_share(prediction, 0.5);
  first.cap_mL = mL_at_chance_too_loose(prediction, allowed_too_loose);
  if (prediction.own > 0)
    if (const Prediction own = own_of(prediction); !own.points.empty())
      first.cap_mL = std::min(first.cap_mL, mL_at_chance_too_loose(own, allowed_too_loose));
  first.to_mL = std::min(most * first.median_mL, first.cap_mL);
  first.from_mL = least_to_most * first.to_mL;
  return first;
}

PredictedBand band_of(const Prediction& prediction) {
  return {reached(prediction, 0.5, [&](double x) { return chance_from(prediction, x, 0, 2); }),
          mL_at_chance_too_loose(prediction, 0.5)};
}

double mL_at_share(const Prediction& prediction, double share) {
  return reached(prediction, share, [&](double x) {
    double sum = 0;
    const double* weight = prediction.weights.data();
    for (const PredictionPoint& p : prediction.points) {
      // Each weight lies evenly on one step around its place.
      const double steps = std::clamp((x - p.first) / p.step + 0.5, 0.0, p.count * 1.0);
      const int whole = static_cast<int>(steps);
      sum = std::accumulate(weight, weight + whole, sum);
      if (whole < p.count) sum += weight[whole] * (steps - whole);
      weight += p.count;
    }
    return sum;
  });
}

LnSpread spread_of(const Prediction& prediction) {
  if (prediction.points.empty()) return {not_a_number, not_a_number};
  double mean = 0, square = 0;
  const double origin = prediction.points[0].first; // squares of small numbers
  const double* weight = prediction.weights.data();
  for (const PredictionPoint& p : prediction.points)
    for (int k = 0; k < p.count; ++k, ++weight) {
      const double t = p.first + k * p.step - origin;
      mean += *weight * t;
      square += *weight * t * t;
    }
  return {origin + mean, std::sqrt(std::max(0.0, square - mean * mean))};
}

}
