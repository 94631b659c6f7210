// Evaporation against published formulas, and each formula against its own printed value.
#include "paint/drying.hpp"

#include "published/row.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

using namespace paint;
using published::check;
using published::Source;

namespace {

const Room bench{22, 0.45};

double kPa(double t) { return *saturation_kPa(t); }

// kg/(m2 h); temperatures of water and air in °C, humidity 0 to 1, wind in m/s.
// Uno 1998, unrounded form as printed in an instrument maker's note.
double uno(double ts, double ta, double r, double v) {
  const double km_h = 3.6 * v;
  return 5.275e-6 * (std::pow(ts + 17.778, 2.5) - r * std::pow(ta + 17.778, 2.5)) *
         (km_h + 4.02336);
}

// Open water, from humidity ratios: an engineering handbook's page.
double water_surface(double x_surface, double x_air, double v) {
  return (25 + 19 * v) * (x_surface - x_air);
}

// ASHRAE (Carrier), from memory: kPa and latent heat in kJ/kg.
double ashrae(double p_surface, double p_air, double latent, double v) {
  return 3600 * (p_surface - p_air) * (0.089 + 0.0782 * v) / latent;
}

double ashrae_of(const Room& air) {
  return ashrae(kPa(air.celsius), air.humidity * kPa(air.celsius), 2501 - 2.37 * air.celsius, 0.15);
}

// The published value must lie within our interval.
void in_interval(const std::string& what, const std::string& source, Source kind, double published,
                 const Interval& ours) {
  const double reach = published > ours.middle ? ours.high - ours.middle : ours.middle - ours.low;
  check({what + ", kg/(m2 h)", source, kind, published, ours.middle, reach,
         "our interval, on the side on which it lies"});
}

}

TEST_CASE("The published formulas give their own printed values") {
  check({"open water 25 x 20 m by humidity ratios, kg/s",
         "an engineering handbook's swimming pool, as quoted in a forum", Source::published, 0.04,
         water_surface(0.019826, 0.0115, 0.5) * 500 / 3600, 0.005, "half of the printed figure"});
  check({"concrete at 87 F, air 80 F and 50 %, 12 mph, lb/(ft2 h)", "ACI 305 nomograph's example",
         Source::from_memory, 0.25, uno(30.5556, 26.6667, 0.5, 12 * 0.44704) / 4.88243, 0.01,
         "read off a chart"});
  check({"still air, kg/(s m2 kPa)", "ASHRAE Handbook", Source::from_memory, 4e-5,
         ashrae(1, 0, 2400, 0.10) / 3600, 0.5e-5, "half of its one figure"});
}

TEST_CASE("Our interval holds what three published formulas say of a bench, 0.15 m/s") {
  const Interval ours = *evaporation_rate(bench);
  const std::string what = "water, 22 °C, 45 %, 0.15 m/s";
  in_interval(what, "Uno 1998", Source::published, uno(22, 22, 0.45, 0.15), ours);
  in_interval(what, "open water, an engineering handbook's page", Source::published,
              water_surface(*humidity_ratio({22, 1}), *humidity_ratio(bench), 0.15), ours);
  in_interval(what, "ASHRAE (Carrier)", Source::from_memory, ashrae_of(bench), ours);
}

TEST_CASE("Below the rim of a pan less leaves than from the slab") {
  // That the air above stands still and the way is longer: our own reading of ten batches.
  const Interval slab = *evaporation_rate(bench);
  const Interval pan = *evaporation_rate(bench, Surface::pan);
  CHECK(pan.low < slab.low);
  CHECK(pan.middle < slab.middle);
  CHECK(pan.high < slab.high);
  // Half a pan, 3 cm2 and 1 mL of paint: its constant-rate part 8 to 40 h, middle 12 to 16, by that
  // reading; with 0.4 g of free water.
  const double hours = 0.4e-3 / (pan.middle * 3e-4);
  check({"free water of 1 mL in 3 cm2 of pan, h", "common practice, no source",
         Source::common_practice, 14, hours, 6, "a pan is ready for more in 12 to 48 h"});
}

TEST_CASE("With temperature and humidity our rate moves as the formulas that use pressures") {
  const auto per = [](const Room& air) { return evaporation_rate(air)->middle / ashrae_of(air); };
  for (const Room& air : {Room{15, 0.70}, Room{30, 0.30}})
    check({"rate at " + std::to_string(int(air.celsius)) + " °C over that at 22 °C, by ASHRAE's",
           "ASHRAE (Carrier)", Source::from_memory, 1, per(air) / per(bench), 0.02,
           "only the latent heat is left out of ours"});
}

TEST_CASE("Water alone leaves a slab as the handbook's page says, within our interval") {
  const Wet water{.water_g = 20, .volume_mL = 21};
  const double rate = water_surface(*humidity_ratio({22, 1}), *humidity_ratio(bench), 0.15);
  const double page = 1000 * rate * spread_area_m2(Spread::mulling).middle / 3;
  const Foretold ours = *foretell(water, Spread::mulling, bench, 1200);
  const Interval interval = *evaporation_rate(bench);
  check({"water lost in 20 min from the mulling's area, g",
         "open water, an engineering handbook's page", Source::published, page, ours.lost_g,
         ours.lost_g * (interval.high / interval.middle - 1), "the upper end of our interval"});
  CHECK(20 - *water_after(water, Spread::mulling, bench, 1200) == ours.lost_g);
}

TEST_CASE("A bench is taught as two measurements of one thing are joined") {
  // 0 +- 0.20 and 0.30 +- 0.25, weighted by 25 and 16: 0.1171 +- 0.1562. The observation's 0.25 is
  // 0.15 of its own and 0.20 between sittings.
  const double seen = std::exp(0.30);
  const BenchRate after = *taught({0, 0.20, 0}, {1, 1}, seen, 0.15 * seen);
  const std::string source = "weighted mean (Bevington & Robinson)";
  check({"ln of the bench's factor after one weighing", source, Source::from_memory, 0.1171,
         after.ln_factor, 5e-5, "half of the last figure"});
  check({"its standard uncertainty", source, Source::from_memory, 0.1562, after.ln_u, 5e-5,
         "half of the last figure"});
}
