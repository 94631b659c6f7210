#include "paint/air.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <vector>

using namespace paint;
using words::Say;

namespace {

const double none = std::nan("");
const Room usual{22, 0.45};
const Wet paint_of_ten_grams{
    .gum_g = 2, .glycerin_g = 0.1, .honey_g = 0.3, .water_g = 4.6, .volume_mL = 8.4};

// The same law in 20,000 equal steps of time, with nothing clever about it.
double by_small_steps(Wet wet, Spread spread, const Room& air, double seconds) {
  const double pull = evaporation_rate({air.celsius, 0}).middle / 3.6;
  for (int i = 0; i < 20000; ++i) {
    const double area = std::min(spread_area_m2(spread).middle, wet.volume_mL * 0.005);
    const double a = water_activity(wet, air.celsius);
    const double lost = std::max(0.0, a - air.humidity) * pull * area * seconds / 20000;
    wet.water_g -= lost;
    wet.volume_mL -= lost / 0.99821;
  }
  return wet.water_g;
}

}

TEST_CASE("a room is 5 to 45 °C and 0 to 100 %") {
  CHECK(room(21, 50)->humidity == doctest::Approx(0.5));
  CHECK(room(5, 0).has_value());
  CHECK(room(45, 100).has_value());
  CHECK(room(4.9, 50).error().what == Say::temperature_out_of_range);
  CHECK(room(45.1, 50).error().what == Say::temperature_out_of_range);
  CHECK(room(21, -0.1).error().what == Say::humidity_out_of_range);
  CHECK(room(21, 100.1).error().what == Say::humidity_out_of_range);
  CHECK(room(none, 50).error().what == Say::not_a_number);
  CHECK(room(21, none).error().what == Say::not_a_number);
  CHECK(words::message(room(60, 50).error()) == "Between 5 and 45 °C, please: 60.0 is outside.");
}

TEST_CASE("saturation outside 0 to 100 °C is an error") {
  for (double t : {-0.1, 100.1, none}) CHECK_FALSE(saturation_kPa(t).has_value());
}

TEST_CASE("drier and warmer air takes more, saturated air nothing") {
  CHECK(evaporation_rate({22, 0.3}).middle > evaporation_rate(usual).middle);
  CHECK(evaporation_rate({28, 0.45}).middle > evaporation_rate(usual).middle);
  CHECK(evaporation_rate({22, 1}).high == doctest::Approx(0));
  CHECK(std::isnan(evaporation_rate({22, 1.2}).middle));
  CHECK(std::isnan(evaporation_rate({none, 0.5}).low));
}

TEST_CASE("the middle of an area is the geometric mean of its limits") {
  for (Spread spread : {Spread::gathered, Spread::knife, Spread::mulling}) {
    const Interval area = spread_area_m2(spread);
    // Two figures are written: 1.5 %.
    CHECK(std::abs(area.middle / std::sqrt(area.low * area.high) - 1) < 0.015);
  }
  CHECK(spread_area_m2(Spread::covered).high == 0);
}

TEST_CASE("the relative uncertainty is that of both intervals") {
  const auto u = [](const Interval& i) { return std::log(i.high / i.low) / 2 / std::sqrt(3.0); };
  const double both = std::hypot(u(evaporation_rate(usual)), u(spread_area_m2(Spread::mulling)));
  // One figure is all it is known to: 0.4 for 0.35 to 0.45.
  CHECK(std::abs(evaporation_relative_u() - both) < 0.05);
}

TEST_CASE("water held grows with humidity and with what holds it") {
  const Wet wet = paint_of_ten_grams;
  double before = -1;
  for (double h : {0.0, 0.1, 0.3, 0.5, 0.7, 0.9, 0.98}) {
    CHECK(held_water_g(wet, h, 22) > before);
    before = held_water_g(wet, h, 22);
  }
  CHECK(held_water_g(wet, 0, 22) == doctest::Approx(0));
  CHECK(held_water_g({}, 0.5, 22) == 0);
  for (double h : {-0.01, 0.981, none}) CHECK(std::isnan(held_water_g(wet, h, 22)));
  CHECK(std::isnan(held_water_g(wet, 0.5, none)));
  CHECK(std::isnan(held_water_g({.gum_g = -1}, 0.5, 22)));
}

TEST_CASE("water activity is the inverse of held water") {
  Wet wet = paint_of_ten_grams;
  for (double a : {0.05, 0.2, 0.45, 0.6, 0.8, 0.97}) {
    wet.water_g = held_water_g(wet, a, 22);
    CHECK(water_activity(wet, 22) == doctest::Approx(a).epsilon(1e-6));
  }
  CHECK(water_activity(paint_of_ten_grams, 22) == 1);
  CHECK(water_activity({.water_g = 1, .volume_mL = 1}, 22) == 1);
  wet.water_g = none;
  CHECK(std::isnan(water_activity(wet, 22)));
}

TEST_CASE("water only leaves, down to what the room lets it keep, and none from a jar") {
  const Wet wet = paint_of_ten_grams;
  const double kept = held_water_g(wet, usual.humidity, usual.celsius);
  for (Spread spread : {Spread::gathered, Spread::knife, Spread::mulling}) {
    double before = wet.water_g;
    CHECK(water_after(wet, spread, usual, 0) == wet.water_g);
    for (double seconds : {1.0, 60.0, 1200.0, 10800.0, 86400.0, 1e6, 1e9}) {
      const double now = water_after(wet, spread, usual, seconds);
      CHECK(now <= before);
      CHECK(now >= kept);
      before = now;
    }
    CHECK(before == doctest::Approx(kept));
  }
  CHECK(water_after(wet, Spread::covered, usual, 1e6) == wet.water_g);
  CHECK(water_after(wet, Spread::knife, {22, 1}, 1e6) == wet.water_g);
}

TEST_CASE("nearly dry paint in damp air does not grow") {
  Wet wet = paint_of_ten_grams;
  wet.water_g = 0.1;
  CHECK(water_after(wet, Spread::knife, {22, 0.9}, 1e5) == 0.1);
}

TEST_CASE("a room above 98 % ends at what is held at 98 %") {
  const Wet wet = paint_of_ten_grams;
  CHECK(water_after(wet, Spread::mulling, {22, 0.99}, 1e8) ==
        doctest::Approx(held_water_g(wet, 0.98, 22)));
}

TEST_CASE("long steps follow short ones") {
  // 0.3 % of the water there was: a hundredth of what the rate itself is uncertain by.
  for (Spread spread : {Spread::gathered, Spread::knife, Spread::mulling})
    for (double seconds : {600.0, 5400.0, 10800.0, 40000.0}) {
      const Wet wet = paint_of_ten_grams;
      CHECK(std::abs(water_after(wet, spread, usual, seconds) -
                     by_small_steps(wet, spread, usual, seconds)) < 0.003 * wet.water_g);
    }
}

TEST_CASE("a film cannot be thinner than 0.2 mm: a little paint loses no faster on a wide slab") {
  Wet little = paint_of_ten_grams;
  little.volume_mL = 0.4; // 0.002 m2 at most: below even the knife's middle
  little.water_g = 0.25;
  little.gum_g = little.glycerin_g = little.honey_g = 0.01;
  CHECK(water_after(little, Spread::knife, usual, 60) ==
        water_after(little, Spread::mulling, usual, 60));
}

TEST_CASE("what cannot be gives not-a-number, not a guess") {
  const Wet wet = paint_of_ten_grams;
  CHECK(std::isnan(water_after(wet, Spread::knife, usual, -1)));
  CHECK(std::isnan(water_after(wet, Spread::knife, usual, none)));
  CHECK(std::isnan(water_after(wet, Spread::knife, {22, 1.1}, 60)));
  CHECK(std::isnan(water_after(wet, Spread::knife, {none, 0.5}, 60)));
  for (double bad : {-1.0, none, std::numeric_limits<double>::infinity()}) {
    Wet broken = wet;
    broken.water_g = bad;
    CHECK(std::isnan(water_after(broken, Spread::knife, usual, 60)));
  }
}
