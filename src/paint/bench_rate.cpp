#include "paint/bench_rate.hpp"

#include "words/paint_says.hpp"

#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr double between_sittings = 0.20;
constexpr double most_ln_factor = 3;

}

std::optional<words::Error> fault_of(const BenchRate& bench) {
  if (std::abs(bench.ln_factor) <= most_ln_factor && bench.ln_u > 0 && std::isfinite(bench.ln_u))
    return std::nullopt;
  return words::Error{Say::bench_rate_unusable, {}};
}

double relative_u(const BenchRate& bench) { return std::hypot(bench.ln_u, between_sittings); }

DryingPrediction then(const DryingPrediction& first, const DryingPrediction& next) {
  return {first.lost_g + next.lost_g, first.per_ln_factor * next.carried + next.per_ln_factor,
          first.carried * next.carried};
}

DryingPrediction since(const DryingPrediction& first, const DryingPrediction& whole) {
  const double carried = first.carried == 0 ? 0 : whole.carried / first.carried;
  return {whole.lost_g - first.lost_g, whole.per_ln_factor - first.per_ln_factor * carried,
          carried};
}

words::Result<BenchRate> updated(const BenchRate& bench, const DryingPrediction& predicted,
                                 double observed_g, double observed_u) {
  if (const auto fault = fault_of(bench)) return tl::make_unexpected(*fault);
  for (double x : {predicted.lost_g, predicted.per_ln_factor, observed_g, observed_u})
    if (!std::isfinite(x)) return words::failure(Say::not_a_number, {words::Number(x, 0)});
  if (predicted.lost_g <= 0 || observed_g <= 0) return words::failure(Say::nothing_lost);
  if (observed_u <= 0)
    return words::failure(Say::uncertainty_not_positive, {words::Number(observed_u, 3)});

  // ln observed = ln foretold + e (ln factor - what it was) + noise, e the elasticity.
  const double e = predicted.per_ln_factor / predicted.lost_g;
  const double noise = std::hypot(observed_u / observed_g, between_sittings);
  const double prior = bench.ln_u * bench.ln_u;
  const double gain = e * prior / (e * e * prior + noise * noise);
  BenchRate after = bench;
  after.ln_factor += gain * std::log(observed_g / predicted.lost_g);
  after.ln_u = bench.ln_u * std::sqrt(1 - gain * e);
  ++after.observations;
  if (const auto fault = fault_of(after)) return tl::make_unexpected(*fault);
  return after;
}

}
