#include "paint/range/range.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

constexpr int samples = 61;
constexpr double reach_sd = 3; // sampled so far beyond the band's edges
constexpr double reach_beyond = 0.3;

}

Band band_seen(const Prediction& prediction) {
  Band band;
  band.middle = std::log(mL_at_share(prediction, 0.5));
  band.sd = spread_of(prediction).sd;
  const PredictedBand edges = band_of(prediction);
  band.from = std::log(edges.from_mL);
  band.to = std::log(edges.to_mL);
  const double reach = reach_sd * band.sd + reach_beyond;
  band.first = band.from - reach;
  band.step = (band.to - band.from + 2 * reach) / (samples - 1);
  for (int i = 0; i < samples; ++i)
    band.right.push_back(chance_right(prediction, {std::exp(band.first + i * band.step), 0}));
  return band;
}

double chance_right(const Band& band, double flow) {
  if (!(flow >= 0)) return std::nan("");
  if (flow == 0 || band.right.size() < 2 || !(band.step > 0)) return 0;
  const double at = (std::log(flow) - band.first) / band.step;
  const auto last = static_cast<double>(band.right.size() - 1);
  if (!(at >= 0 && at <= last)) return 0;
  const auto i = std::min(static_cast<std::size_t>(at), band.right.size() - 2);
  const double share = at - static_cast<double>(i);
  return band.right[i] * (1 - share) + band.right[i + 1] * share;
}

// over_oil: from the g of binder (gum 1 : water 2) to 10 g of pigment that makers use (common
// practice, no source: mineral 4-12, fine mineral 10-18, organic 15-30, carbon 15-40, effect 8-15,
// extender 5-12) with each class's oil absorption, less what dries off at the slab; its sd is what
// is left beyond tau once half of the oil absorption is followed, by hand; effect and extender
// pigments share the wide one. oil: mean and sd over the catalogue's pigments of that
// class; the 0.30s by hand.
ClassPrior class_prior(PigmentClass family) {
  switch (family) {
  case PigmentClass::mineral: return {0.60, 0.15, 0.12, 0.35};
  case PigmentClass::fine_mineral: return {0.80, 0.25, 0.12, 0.35};
  case PigmentClass::organic: return {1.20, 0.15, -0.23, 0.16};
  case PigmentClass::carbon: return {0.50, 0.30, 0.75, 0.30};
  case PigmentClass::effect: return {0.75, 0.40, 0.65, 0.30};
  case PigmentClass::extender: return {0.75, 0.40, -0.27, 0.31};
  case PigmentClass::unknown: return {0.75, 0.40, 0.04, 0.38};
  }
  return {};
}

}
