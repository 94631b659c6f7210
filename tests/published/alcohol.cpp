// How fast alcohol leaves, beside solvent tables, vapour pressures and activities.
#include "paint/alcohol.hpp"

#include "published/row.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <utility>

namespace alcohol_test {

using namespace paint;
using namespace published;

namespace {

constexpr double ethanol = 46.07, water = 18.015; // g/mol

// g/(m2 s) of neat alcohol from plenty of it.
double neat_rate(double celsius) {
  const Wet none{.volume_mL = 100};
  const double left = alcohol_after(50, none, Spread::knife, {celsius, 0}, 1)->middle;
  return (50 - left) / spread_area_m2(Spread::knife).middle;
}

// Over that of water into dry air.
double beside_water(double celsius) {
  return neat_rate(celsius) / (evaporation_rate({celsius, 0})->middle / 3.6);
}

// g/(m2 s) of so much alcohol in so much water.
double mixed_rate(double alcohol_g, double water_g) {
  const Wet wet{.water_g = water_g, .volume_mL = 100};
  const double left = alcohol_after(alcohol_g, wet, Spread::knife, {25, 0.5}, 0.1)->middle;
  return (alcohol_g - left) / 0.1 / spread_area_m2(Spread::knife).middle;
}

// Activity among water, with so much of 1 mole in all that is alcohol.
double activity(double moles) {
  return mixed_rate(ethanol * moles, water * (1 - moles)) / neat_rate(25);
}

// Antoine's equation for ethanol, kPa, 3 to 96 °C.
double printed_kPa(double celsius) { return std::exp(16.8958 - 3795.17 / (celsius + 230.918)); }
const char* const antoine =
    "Smith, Van Ness, Abbott & Swihart, appendix B.2, Antoine's equation (scribd 607396429)";

}

TEST_CASE("Alcohol against water on the scale of solvents") {
  // 95 % ethanol 1.4, water 0.3, butyl acetate 1: ASTM D3539's thin film, in dry air.
  check({"alcohol/alcohol_after", "rate of alcohol over that of water, 25 °C, dry air",
         printed("relative evaporation rates 1.4 and 0.3 (ilpi.com/msds/ref/evaporationrate.html)"),
         1.4 / 0.3, beside_water(25), (0.05 / 0.3 + 0.05 / 1.4) * 1.4 / 0.3,
         "half of the last figure of each"});
}

TEST_CASE("Alcohol against water by vapour pressure, molar mass and diffusion in air") {
  // At 0 °C 0.102 cm2/s for ethanol (Perry) and 0.219 for water (CRC Handbook); both move with the
  // temperature alike. 3.1697 kPa of water: IAPWS-IF97.
  const double expected =
      ethanol / water * std::pow(0.102 / 0.219, 2.0 / 3) * printed_kPa(25) / 3.1697;
  check({"alcohol/alcohol_after", "rate of alcohol over that of water, 25 °C, dry air",
         apart("molar masses, vapour pressures (Smith, Van Ness, app. B.2; IAPWS-IF97) and "
               "diffusion in air to the power 2/3 (Perry's Handbook, 3-319; "
               "engineeringtoolbox.com d_2010)"),
         expected, beside_water(25), 0.03 * expected, "diffusion is printed to three figures"});
}

TEST_CASE("Alcohol leaves the faster by its vapour pressure") {
  for (double t : {15.0, 35.0}) {
    // The rate of water for each kPa does not depend on the temperature, so nothing but the
    // pressure moves it.
    CHECK(evaporation_rate({t, 0})->middle / evaporation_rate({25, 0})->middle ==
          doctest::Approx(*saturation_kPa(t) / *saturation_kPa(25)));
    const double expected = printed_kPa(t) / printed_kPa(25);
    check({"alcohol/alcohol_after", "alcohol's vapour pressure over that at 25 °C",
           printed(antoine), expected, neat_rate(t) / neat_rate(25), 0.02 * expected,
           "two sets of constants: 0.9 % apart in the pressure itself",
           words::invariant(t, 0) + " °C"});
  }
}

TEST_CASE("Among water alcohol's activity is what vapour over such mixtures says") {
  constexpr std::array<std::pair<double, double>, 3> unifac{
      {{0.05, 0.2416}, {0.1, 0.3433}, {0.2, 0.4314}}};
  for (const auto& [moles, expected] : unifac)
    check({"alcohol/alcohol_after", "activity of alcohol in water, 25 °C",
           apart("UNIFAC (Fredenslund, Jones & Prausnitz 1975), group parameters from the data "
                 "files of thermo (github.com/CalebBell/thermo)"),
           expected, activity(moles), 0.3 * expected + 0.01,
           "one curve for all mixtures; UNIFAC itself overstates the last trace",
           "mole fraction " + words::invariant(moles, 2)});
  // The last trace: 55.34 mol of water in a litre, over Henry's constant and the vapour pressure.
  const double trace = 55.34e3 / (1.9 * printed_kPa(25) * 1000);
  check({"alcohol/alcohol_after", "activity of a trace of alcohol in water over its mole fraction",
         printed("Henry's constant 1.9 mol/(m3 Pa), Sander 2015, doi 10.5194/acp-15-4399-2015"),
         trace, activity(1e-5) / 1e-5, 0.15 * trace, "1.7 to 2.0 in its best rated sources"});
}

}
