#include "paint/range/helping.hpp"

#include <algorithm>

namespace paint {

Helping first_helping(const Prediction& prediction, double took, double all) {
  constexpr double half = 0.5, most = 0.7;
  if (prediction.points.empty()) return {};
  const FirstLiquid usual = first_liquid(prediction);
  const double wants = all > 0 ? std::min(all, usual.median_mL) : usual.median_mL;
  const double to = std::min(most * wants, usual.cap_mL);
  if (took < half * wants) return {half * wants <= to ? half * wants : half / most * to, to};
  const double again = std::min({took, usual.cap_mL, all > 0 ? all : took});
  return {again, again};
}

}
