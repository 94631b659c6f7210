#include "paint/tools_loss.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {
constexpr double between_gatherings = 0.02;
}

Amount foretold(const ToolsLoss& loss) {
  return {loss.share, loss.u * loss.u + between_gatherings * between_gatherings, {}};
}

ToolsLoss updated(const ToolsLoss& loss, double observed, double observed_u) {
  if (!(observed <= 1) || !(observed_u > 0) || !std::isfinite(observed_u)) return loss;
  const double noise = std::hypot(observed_u, between_gatherings);
  const double prior = loss.u * loss.u;
  const double gain = prior / (prior + noise * noise);
  ToolsLoss after = loss;
  after.share = std::max(0.0, loss.share + gain * (observed - loss.share));
  after.u = loss.u * std::sqrt(1 - gain);
  ++after.observations;
  return after;
}

}
