#include "bench/ranges.hpp"

#include "bench/choices.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

std::vector<PigmentRange> ranges_of(const Bench& bench) {
  std::vector<PigmentRange> out;
  for (const session::Card* card : shelf_of(bench, session::CardKind::pigment))
    if (const auto band = paint::class_guess({{card->pigment, 1}})) out.push_back({card, *band});
  std::stable_sort(out.begin(), out.end(), [](const PigmentRange& a, const PigmentRange& b) {
    return a.band.middle > b.band.middle;
  });
  return out;
}

std::pair<double, double> nine_in_ten(const paint::Band& band) {
  constexpr double normal_95 = 1.6449; // the normal distribution's 95th percentile
  const double reach = normal_95 * band.sd;
  return {std::exp(band.middle - reach), std::exp(band.middle + reach)};
}

}
