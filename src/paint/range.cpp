#include "paint/range.hpp"

#include "paint/note_chance.hpp"

#include <cmath>

namespace paint {

// over_oil: from the binder that makers use (below) with each class's oil absorption, less what
// dries off at the slab; effect and extender pigments share the wide one. oil: mean and sd over the
// catalogue's pigments of that class; the 0.30s by hand. binder_g: geometric middle of common
// practice, no source: mineral 4-12, fine mineral 10-18, organic 15-30, carbon 15-40, effect 8-15,
// extender 5-12.
ClassPrior class_prior(PigmentClass family) {
  switch (family) {
  case PigmentClass::mineral: return {0.60, 0.30, 0.12, 0.35, 6.9};
  case PigmentClass::fine_mineral: return {0.80, 0.40, 0.12, 0.35, 13.4};
  case PigmentClass::organic: return {1.20, 0.30, -0.23, 0.16, 21.2};
  case PigmentClass::carbon: return {0.50, 0.45, 0.75, 0.30, 24.5};
  case PigmentClass::effect: return {0.75, 0.50, 0.65, 0.30, 11.0};
  case PigmentClass::extender: return {0.75, 0.50, -0.27, 0.31, 7.7};
  case PigmentClass::unknown: return {0.75, 0.50, 0.04, 0.38, 6.9};
  }
  return {};
}

namespace {

// One pigment's demand: ln flow, the part of its sd that its class has in common, and its own.
struct Demand {
  double middle = 0;
  double class_sd = 0;
  double own_sd = 0;
};

// The density cancels: a flow counted in volumes and r_oa both rise with it.
Demand demand(const Pigment& p) {
  const ClassPrior from = class_prior(p.family);
  const double point = oil_absorption_point(p);
  if (point > 0)
    return {from.over_oil + std::log(point), from.over_oil_sd, p.oil_u / p.oil_g_per_100g};
  return {from.over_oil + from.oil, from.over_oil_sd, from.oil_sd};
}

// The hand's logistic widened by the demand's spread: the variance of a logistic of scale s is
// s^2 pi^2 / 3.
double widened_slope(const Band& band) {
  constexpr double pi = 3.14159265358979323846;
  return std::sqrt(band.slope * band.slope + 3 * band.sd * band.sd / (pi * pi));
}

constexpr double ln_odds_of_4_percent = 3.1780538303479458; // ln(0.96 / 0.04)
constexpr double most_drops = 10000;

}

std::optional<Band> class_guess(const std::vector<PigmentShare>& pigments) {
  double volume = 0;
  double wanted = 0; // mL of liquid by all pigments
  double class_sd = 0;
  double own_variance = 0;
  for (const PigmentShare& share : pigments) {
    if (!(share.volume_share >= 0) || !std::isfinite(share.volume_share)) return std::nullopt;
    const Demand d = demand(share.pigment);
    const double mL = share.volume_share * std::exp(d.middle);
    volume += share.volume_share;
    wanted += mL;
    class_sd += mL * d.class_sd;
    own_variance += mL * d.own_sd * mL * d.own_sd;
  }
  if (!(volume > 0)) return std::nullopt;
  Band band;
  band.middle = std::log(wanted / volume);
  // Errors of class are shared by all, so they add; oil absorptions are each their own.
  band.sd = std::hypot(class_sd, std::sqrt(own_variance)) / wanted;
  return band;
}

Helping first_helping(double usual_g) { return {0.5 * usual_g, 0.7 * usual_g}; }

Helping first_helping(PigmentClass family) { return first_helping(class_prior(family).binder_g); }

double chance_too_loose(const Band& band, double flow) {
  return logistic((std::log(flow) - band.middle - band.half_width) / widened_slope(band));
}

double chance_right(const Band& band, double flow) {
  const double x = std::log(flow) - band.middle;
  const double s = widened_slope(band);
  return logistic((x + band.half_width) / s) - logistic((x - band.half_width) / s);
}

int safe_drops(const Band& band, double flow, double drop_mL, double pigment_mL) {
  if (!(flow >= 0) || !(drop_mL > 0) || !(pigment_mL > 0)) return 0;
  const double loosest =
      std::exp(band.middle + band.half_width - ln_odds_of_4_percent * widened_slope(band));
  const double drops = std::floor((loosest - flow) * pigment_mL / drop_mL);
  if (!(drops > 0)) return 0;
  return static_cast<int>(std::fmin(drops, most_drops));
}

}
