// Evaporation against formulas for open water, and what a bench is taught against a weighted mean.
#include "paint/drying.hpp"

#include "published/row.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

namespace drying_test {

using namespace paint;
using namespace published;

namespace {

const Room bench{22, 0.45};

const Source uno_note = printed("Uno 1998, as an instrument maker's note prints it");
const Source handbook =
    printed("open water by humidity ratios: a handbook's page quoted at physicsforums.com 242677");
const Source ashrae_book = remembered("ASHRAE Handbook, HVAC Applications (Carrier)");

double kPa(double t) { return *saturation_kPa(t); }

// kg of vapour to 1 kg of dry air (ASHRAE), at 101.325 kPa.
double humidity_ratio(const Room& air) {
  const double vapour = air.humidity * kPa(air.celsius);
  return 0.621945 * vapour / (101.325 - vapour);
}

// kg/(m2 h); temperatures of water and air in °C, humidity 0 to 1, wind in m/s.
double uno(double ts, double ta, double r, double v) {
  const double km_h = 3.6 * v;
  return 5.275e-6 * (std::pow(ts + 17.778, 2.5) - r * std::pow(ta + 17.778, 2.5)) *
         (km_h + 4.02336);
}

double water_surface(double x_surface, double x_air, double v) {
  return (25 + 19 * v) * (x_surface - x_air);
}

// kPa and latent heat in kJ/kg.
double ashrae(double p_surface, double p_air, double latent, double v) {
  return 3600 * (p_surface - p_air) * (0.089 + 0.0782 * v) / latent;
}

double ashrae_of(const Room& air) {
  return ashrae(kPa(air.celsius), air.humidity * kPa(air.celsius), 2501 - 2.37 * air.celsius, 0.15);
}

// The formula's value must lie within our interval: what is checked is that the interval is no
// narrower than what the formulas leave open.
void in_interval(const Source& source, double theirs) {
  const Interval ours = *evaporation_rate(bench);
  const double reach = theirs > ours.middle ? ours.high - ours.middle : ours.middle - ours.low;
  check({"drying/evaporation_rate", "water, 22 °C, 45 %, air at 0.15 m/s, kg/(m2 h)",
         consistent_with(source), theirs, ours.middle, reach,
         "our interval, on the side on which it lies"});
}

}

TEST_CASE("The formulas are written out here as printed: they give their own printed values") {
  // A pool of 25 x 20 m: 0.04 kg/s.
  CHECK(std::abs(water_surface(0.019826, 0.0115, 0.5) * 500 / 3600 - 0.04) < 0.005);
  // ACI 305's example, from memory: 0.25 lb/(ft2 h) read off a chart; still air 4e-5 kg/(s m2 kPa).
  CHECK(std::abs(uno(30.5556, 26.6667, 0.5, 12 * 0.44704) / 4.88243 - 0.25) < 0.01);
  CHECK(std::abs(ashrae(1, 0, 2400, 0.10) / 3600 - 4e-5) < 0.5e-5);
}

TEST_CASE("Our interval holds what three formulas for open water say of a bench, 0.15 m/s") {
  in_interval(uno_note, uno(22, 22, 0.45, 0.15));
  in_interval(handbook, water_surface(humidity_ratio({22, 1}), humidity_ratio(bench), 0.15));
  in_interval(ashrae_book, ashrae_of(bench));
}

TEST_CASE("With temperature and humidity our rate moves as the formulas that use pressures") {
  const auto per = [](const Room& air) { return evaporation_rate(air)->middle / ashrae_of(air); };
  for (const Room& air : {Room{15, 0.70}, Room{30, 0.30}})
    check({"drying/evaporation_rate", "rate over the formula's, as against 22 °C and 45 %",
           ashrae_book, 1, per(air) / per(bench), 0.02, "only the latent heat is left out of ours",
           words::invariant(air.celsius, 0) + " °C, " + words::invariant(100 * air.humidity, 0) +
               " %"});
}

TEST_CASE("Water alone leaves a slab as the handbook's page says, within our interval") {
  const Wet water{.water_g = 20, .volume_mL = 21};
  const double rate = water_surface(humidity_ratio({22, 1}), humidity_ratio(bench), 0.15);
  const double page = 1000 * rate * spread_area_m2(Spread::mulling).middle / 3;
  const DryingPrediction ours = *predict_drying(water, Spread::mulling, bench, 1200);
  const Interval interval = *evaporation_rate(bench);
  check({"drying/predict_drying", "water lost in 20 min from the area of mulling, g",
         consistent_with(handbook), page, ours.lost_g,
         ours.lost_g * (interval.high / interval.middle - 1), "the upper end of our interval"});
}

TEST_CASE("A bench is taught as two measurements of one thing are joined") {
  // 0 +- 0.20 and 0.30 +- 0.25, weighted by 25 and 16. The observation's 0.25 is 0.15 of its own
  // and 0.20 between sittings.
  const double seen = std::exp(0.30);
  const BenchRate after = *updated({0, 0.20, 0}, {1, 1}, seen, 0.15 * seen);
  const Source mean = apart("weighted mean, physlab-wiki.com, by hand: 0 +- 0.20 and 0.30 +- 0.25");
  check({"bench_rate/updated", "ln of the bench's factor after one weighing", mean, 0.1171,
         after.ln_factor, 5e-5, "half of the last figure"});
  check({"bench_rate/updated", "u of that ln", mean, 0.1562, after.ln_u, 5e-5,
         "half of the last figure"});
}

}
