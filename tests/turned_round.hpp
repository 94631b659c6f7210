// What only tests ask: formulas of paint the other way round, so that they can be held against
// what is printed. No fault is looked for.
#pragma once

#include "paint/drying.hpp"
#include "paint/film.hpp"
#include "paint/layer_time.hpp"
#include "paint/pans.hpp"

#include <cmath>

namespace turned_round {

// Where a rising function takes a value, between two ends.
template <class Function>
double where(Function rising, double value, double low, double high) {
  for (int i = 0; i < 100; ++i) {
    const double middle = (low + high) / 2;
    (rising(middle) < value ? low : high) = middle;
  }
  return (low + high) / 2;
}

inline words::Result<double> water_after(const paint::Wet& wet, paint::Spread spread,
                                         const paint::Room& room, double seconds,
                                         const paint::BenchRate& bench = {}) {
  return predict_drying(wet, spread, room, seconds, bench)
      .map([&](const paint::DryingPrediction& f) { return wet.water_g - f.lost_g; });
}

// Relative humidity at which the paint would neither gain nor lose. Above 0.98 as an ideal dilute
// solution that meets the uptakes there: what is missing to 1 falls as water grows.
inline double water_activity(const paint::Wet& wet, double celsius) {
  const auto held = [&](double humidity) { return *held_water_g(wet, humidity, celsius); };
  const double most = held(0.98);
  if (wet.water_g >= most) return 1 - 0.02 * most / wet.water_g;
  return where(held, wet.water_g, 0, 0.98);
}

// Share of the free water of a layer that is gone after so many hours.
inline double share_gone(const paint::Course& course, double hours) {
  return where([&](double share) { return *hours_until(course, share); }, hours, 0, 1 - 1e-15);
}

// A pan after so many layers, dry share above 0.
inline paint::PanPlan pan_of_layers(double capacity_mL, double dry_share, int layers) {
  return *paint::batch_for(1, capacity_mL, dry_share, 1 - std::pow(1 - dry_share, layers));
}

inline words::Result<double> cpvc(const paint::Pigment& pigment) {
  return paint::cpvc({{pigment, 1}});
}

}
