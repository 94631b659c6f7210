#include "paint/water_activity.hpp"

#include "paint/air_random.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace water_activity_test {

using namespace paint;
using Say = words::PaintSay;

namespace {
const double none = std::nan("");
const double endless = std::numeric_limits<double>::infinity();
const Wet paint_of_ten_grams{
    .gum_g = 2, .glycerin_g = 0.1, .honey_g = 0.3, .water_g = 4.6, .volume_mL = 8.4};
}

TEST_CASE("what cannot be known of held water is an error with words") {
  const Wet wet = paint_of_ten_grams;
  CHECK(held_water_g(wet, -0.01, 22).error().what == Say::humidity_out_of_range);
  CHECK(held_water_g(wet, 1.01, 22).error().what == Say::humidity_out_of_range);
  CHECK(held_water_g(wet, 0.981, 22).error().what == Say::humidity_above_held);
  CHECK(words::message(held_water_g(wet, 0.99, 22).error()) ==
        "What paint holds is known up to 98 % humidity: 99.0 % is more.");
  for (double bad : {none, endless}) {
    CHECK(held_water_g(wet, bad, 22).error().what == Say::not_a_number);
    CHECK(held_water_g({.gum_g = bad}, 0.5, 22).error().what == Say::not_a_number);
  }
  for (double t : {-0.1, 70.1, none})
    CHECK(held_water_g(wet, 0.5, t).error().what == Say::temperature_out_of_range);
  CHECK(held_water_g({.honey_g = -1}, 0.5, 22).error().what == Say::negative_amount);
  CHECK(*held_water_g({}, 0.5, 22) == 0);
}

TEST_CASE("of what may dry each field may spoil the whole") {
  CHECK(rc::check("fields", [] {
    Wet wet = any::wet();
    RC_ASSERT(!fault_of(wet));
    double* field =
        *rc::gen::element(&wet.gum_g, &wet.glycerin_g, &wet.honey_g, &wet.water_g, &wet.volume_mL);
    *field = -any::between(0.001, 5);
    RC_ASSERT(fault_of(wet)->what == Say::negative_amount);
    *field = *rc::gen::element(none, endless, -endless);
    RC_ASSERT(fault_of(wet)->what == Say::not_a_number);
  }));
}

TEST_CASE("glycerin's law turned round gives the activity back, at any temperature") {
  CHECK(rc::check("glycerin", [] {
    const double a = any::between(0.001, 0.98), celsius = any::between(0, 70);
    const double water = *held_water_g({.glycerin_g = 1}, a, celsius) / 18.015;
    const double s = 1 - water / (water + 1 / glycerin_in_water.g_per_mol);
    const double ln = s * s * (glycerin_in_water.norrish_k - glycerin_in_water.bend * s);
    RC_ASSERT(std::abs((1 - s) * std::exp(-ln * 298.15 / (celsius + 273.15)) - a) < 1e-9);
  }));
}

TEST_CASE("honey's water has no step where its line begins and ends") {
  const auto held = [](double a) { return *held_water_g({.honey_g = 1}, a, 20); };
  for (double a = 0.01; a < 0.9; a += 0.001) { // at 0.9 it rises by 20 g to 1 of activity
    CAPTURE(a);
    CHECK(held(a + 1e-6) > held(a));
    CHECK(held(a + 1e-6) - held(a) < 3e-5);
  }
}

TEST_CASE("water held grows with humidity and with what holds it, and adds up") {
  CHECK(rc::check("held", [] {
    const Wet wet = any::wet();
    const double t = any::between(0, 70);
    const double h = any::between(0, 0.97);
    const double held = *held_water_g(wet, h, t);
    if (held > 0) RC_ASSERT(*held_water_g(wet, h + 0.01, t) > held);
    const double parts = *held_water_g({.gum_g = wet.gum_g}, h, t) +
                         *held_water_g({.glycerin_g = wet.glycerin_g}, h, t) +
                         *held_water_g({.honey_g = wet.honey_g}, h, t);
    RC_ASSERT(std::abs(parts - held) <= 1e-12 * (1 + held));
    RC_ASSERT(*held_water_g(wet, 0, t) < 1e-12);
  }));
}

}
