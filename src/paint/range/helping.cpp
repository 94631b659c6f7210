#include "paint/range/helping.hpp"

#include <algorithm>

namespace paint {

Helping first_helping(const Prediction& prediction, double took) {
  constexpr double least = 0.5, most = 0.7, least_taken = 0.3;
  if (prediction.points.empty()) return {};
  const double wants = mL_at_share(prediction, 0.5);
  const double limit = mL_at_chance_too_loose(prediction, allowed_too_loose);
  if (took >= least_taken * wants) return {std::min(took, limit), std::min(took, limit)};
  const double high = std::min(most * wants, limit);
  return {least / most * high, high};
}

}
