// How fast alcohol leaves, beside solvent tables and vapour pressures.
#include "paint/alcohol.hpp"

#include "published/row.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace paint;
using published::check;
using published::Source;

namespace {

// g/(m2 s) of neat alcohol from plenty of it.
double neat_rate(double celsius) {
  const Wet none{.volume_mL = 100};
  const double left = alcohol_after(50, none, Spread::knife, {celsius, 0}, 1)->middle;
  return (50 - left) / spread_area_m2(Spread::knife).middle;
}

// g of little alcohol in this much water that leave in a second, to 1 g that is there.
double dilute_rate(double alcohol_g, double water_g) {
  const Wet wet{.water_g = water_g, .volume_mL = 100};
  const double left = alcohol_after(alcohol_g, wet, Spread::knife, {25, 0.5}, 0.1)->middle;
  return (alcohol_g - left) / 0.1 / spread_area_m2(Spread::knife).middle;
}

// Antoine's equation for ethanol, kPa and K: printed in a table of constants (scribd 468071058).
double printed_kPa(double celsius) { return std::exp(16.19 - 3424 / (celsius + 273.15 - 55.72)); }

}

TEST_CASE("Alcohol against water on the scale of solvents") {
  // 95 % ethanol 1.4, water 0.3, butyl acetate 1: ASTM D3539's thin film, in dry air.
  const double ours = neat_rate(25) / (evaporation_rate({25, 0})->middle / 3.6);
  check({"rate of alcohol over that of water, 25 °C, dry air",
         "relative evaporation rates 1.4 and 0.3 (ilpi.com/msds/ref/evaporationrate.html)",
         Source::published, 1.4 / 0.3, ours, 0.4 * 1.4 / 0.3,
         "one figure each; the factor of 2.5 is far wider"});
}

TEST_CASE("Alcohol leaves the faster by its vapour pressure") {
  for (double t : {15.0, 35.0}) {
    const double water = *saturation_kPa(t) / *saturation_kPa(25);
    // The rate of water for each kPa does not depend on the temperature, so nothing but the
    // pressure moves it.
    CHECK(evaporation_rate({t, 0})->middle / evaporation_rate({25, 0})->middle ==
          doctest::Approx(water));
    check({"alcohol's vapour pressure over that at 25 °C", "Antoine constants, scribd 468071058",
           Source::published, printed_kPa(t) / printed_kPa(25), neat_rate(t) / neat_rate(25),
           0.02 * printed_kPa(t) / printed_kPa(25), "constants of four figures"});
  }
}

TEST_CASE("Among water alcohol's activity is what vapour over such mixtures says") {
  // Vapour-liquid equilibrium at 25 °C, from memory: 0.1 of the moles 0.31, 0.2 0.44, 0.4 0.56.
  const struct {
    double moles, activity;
  } table[] = {{0.05, 0.20}, {0.1, 0.31}, {0.2, 0.44}, {0.4, 0.56}};
  for (const auto& [moles, activity] : table) {
    const double g = 46.07 * moles, water = 18.015 * (1 - moles);
    check({"activity of alcohol, mole fraction " + words::fixed(moles, 2),
           "vapour-liquid equilibrium of ethanol and water", Source::from_memory, activity,
           dilute_rate(g, water) / neat_rate(25), 0.3 * activity + 0.01,
           "one curve for all mixtures; paint lies below 0.2"});
  }
}
