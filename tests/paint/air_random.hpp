// Random rooms and paints for properties that must hold of any. Only inside rc::check.
#pragma once

#include "paint/air.hpp"
#include "paint/drying.hpp"

#include <rapidcheck.h>

namespace any {

// Evenly, whatever the size: RapidCheck's own ranges begin near their lower end.
inline double between(double low, double high) {
  return low +
         (high - low) * *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(0, 1000001)) / 1e6;
}

inline bool often() { return *rc::gen::element(true, true, true, false); }

// As paint dries in: up to 98 %.
inline paint::Room room() { return {between(5, 45), between(0, 0.98)}; }

// More than half of them without one of the three that hold water, one in 64 pure water.
inline paint::Wet wet() {
  paint::Wet w;
  if (often()) w.gum_g = between(0.01, 5);
  if (often()) w.glycerin_g = between(0.01, 2);
  if (often()) w.honey_g = between(0.01, 2);
  w.water_g = between(0, 20);
  w.volume_mL =
      w.water_g / 0.99821 + 0.6 * (w.gum_g + w.honey_g) + 0.8 * w.glycerin_g + between(0, 5);
  return w;
}

inline paint::Spread spread() {
  return *rc::gen::element(paint::Spread::gathered, paint::Spread::knife, paint::Spread::mulling);
}

inline paint::BenchRate bench() { return {between(-1, 1), between(0.05, 0.6), 0}; }

// The same paint with other water in it.
inline paint::Wet with_water(paint::Wet w, double water_g) {
  w.volume_mL += (water_g - w.water_g) / 0.99821;
  w.water_g = water_g;
  return w;
}

}
