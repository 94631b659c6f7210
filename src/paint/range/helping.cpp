#include "paint/range/helping.hpp"

#include <algorithm>

namespace paint {

Helping first_helping(const Prediction& prediction, double took) {
  constexpr double least_taken = 0.3;
  if (prediction.points.empty()) return {};
  const FirstLiquid usual = first_liquid(prediction);
  if (took < least_taken * usual.median_mL) return {usual.from_mL, usual.to_mL};
  const double again = std::min(took, usual.cap_mL);
  return {again, again};
}

}
