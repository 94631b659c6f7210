#include "paint/pans.hpp"

#include "paint/faults.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

std::optional<words::Error> fault_of_size(double x, double most) {
  if (auto fault = fault_if_not_positive(x)) return fault;
  if (x > most)
    return words::Error{Say::amount_too_large, {words::Number(x, 0), words::Number(most, 0)}};
  return std::nullopt;
}

std::optional<words::Error> fault_of_pan(double capacity_mL, double dry_share, int layers) {
  if (auto fault = fault_of_size(capacity_mL, 1000)) return fault;
  if (auto fault = fault_if_no_share(dry_share)) return fault;
  if (layers < 0 || layers > 100)
    return words::Error{Say::layers_out_of_range, {std::to_string(layers)}};
  return std::nullopt;
}

// The share of its capacity that a pan holds.
double filled(double dry_share, int layers) { return 1 - std::pow(1 - dry_share, layers); }

double wet_of_pan(double capacity_mL, double dry_share, int layers) {
  if (dry_share == 0) return capacity_mL * layers;
  return capacity_mL * filled(dry_share, layers) / dry_share;
}

words::Result<PanPlan> one_pan(double capacity_mL, double dry_share, double fill_share) {
  if (auto fault = fault_of_pan(capacity_mL, dry_share, 0)) return tl::make_unexpected(*fault);
  if (auto fault = fault_if_no_share(fill_share)) return tl::make_unexpected(*fault);
  if (fill_share == 0) return words::failure(Say::not_a_share, {"0"});
  const auto layers = layers_to(fill_share, dry_share);
  if (!layers) return tl::make_unexpected(layers.error());
  return PanPlan{1, *layers, wet_of_pan(capacity_mL, dry_share, *layers),
                 capacity_mL * filled(dry_share, *layers)};
}

}

words::Result<Interval> dry_over_wet(const Film& film, double cpvc, double wet_mL) {
  if (const auto sound = pvc(film); !sound) return tl::make_unexpected(sound.error());
  if (auto fault = fault_if_no_share(cpvc)) return tl::make_unexpected(*fault);
  if (cpvc == 0) return words::failure(Say::not_a_share, {"0"});
  if (auto fault = fault_of_size(wet_mL, 1e9)) return tl::make_unexpected(*fault);
  const double solid = film.pigment_mL + film.binder_mL;
  if (solid > wet_mL)
    return words::failure(Say::wet_less_than_dry,
                          {words::Number(wet_mL, 2), words::Number(solid, 2)});
  const double loose = std::min(wet_mL, std::max(solid, film.pigment_mL / cpvc));
  return Interval{solid / wet_mL, (solid + loose) / 2 / wet_mL, loose / wet_mL};
}

words::Result<int> layers_to(double fill_share, double dry_share) {
  for (double share : {fill_share, dry_share})
    if (auto fault = fault_if_no_share(share)) return tl::make_unexpected(*fault);
  for (int layers = 0; layers <= 100; ++layers)
    if (filled(dry_share, layers) >= fill_share - 1e-12) return layers;
  return words::failure(Say::fill_out_of_reach, {words::Number(fill_share * 100, 0)});
}

words::Result<PanPlan> pans_of(double batch_mL, double capacity_mL, double dry_share,
                               double fill_share) {
  auto plan = one_pan(capacity_mL, dry_share, fill_share);
  if (!plan) return plan;
  if (!std::isfinite(batch_mL))
    return words::failure(Say::not_a_number, {words::Number(batch_mL, 0)});
  if (batch_mL < 0) return words::failure(Say::negative_amount, {words::Number(batch_mL, 1)});
  if (batch_mL > 5000)
    return words::failure(Say::amount_too_large, {words::Number(batch_mL, 0), "5000"});
  const double pans = std::floor(batch_mL / plan->wet_mL + 1e-9);
  if (pans > 1e6) return words::failure(Say::amount_too_large, {words::Number(pans, 0), "1000000"});
  plan->pans = static_cast<int>(pans);
  plan->wet_mL *= pans;
  return plan;
}

words::Result<PanPlan> batch_for(int pans, double capacity_mL, double dry_share,
                                 double fill_share) {
  auto plan = one_pan(capacity_mL, dry_share, fill_share);
  if (!plan) return plan;
  if (pans < 0) return words::failure(Say::negative_amount, {std::to_string(pans)});
  if (pans > 10000) return words::failure(Say::amount_too_large, {std::to_string(pans), "10000"});
  plan->pans = pans;
  plan->wet_mL *= pans;
  return plan;
}

}
