#include "paint/measure.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace paint;
using words::Say;

namespace {

const double none = std::nan("");
const Material water{Kind::water, {.water = 1}, {}};
const Material binder{Kind::binder, *parts_of({.gum = 1, .water = 2}), {}};
const Material powder{Kind::pigment, {.pigment = 1}, {.g_per_mL = 4}};
const Dropper dropper{.tool = "d1"};

Say fault(const words::Result<Amount>& r) { return r ? Say::none : r.error().what; }

}

TEST_CASE("drops: scatter is each drop's own, calibration is the tool's") {
  const Dropper exact_one{.tool = "d1", .mL_per_drop = 0.05, .mL_per_drop_u = 0};
  const double one = uncertainty(*grams_of_drops(1, exact_one, water));
  const double hundred = uncertainty(*grams_of_drops(100, exact_one, water));
  CHECK(hundred == doctest::Approx(10 * one));
  CHECK(one == doctest::Approx(0.05 * 0.05 * 0.99821)); // 5 % of a drop

  const Amount a = *grams_of_drops(40, dropper, water);
  CHECK(a.value == doctest::Approx(2 * 0.99821));
  CHECK(a.shares.at("d1") == doctest::Approx(0.19 * a.value));
  CHECK(a.shares.size() == 1);
  CHECK(grams_of_drops(0, dropper, water)->value == 0);
}

TEST_CASE("a dropper calibrated with the very liquid is not scaled and has no error of scaling") {
  Dropper own = dropper;
  own.mL_per_drop = 0.031;
  own.calibrated_with = Kind::binder;
  CHECK(drop_volume_mL(own, binder) == 0.031);
  CHECK(grams_of_drops(10, own, binder)->shares.count("tension:binder") == 0);
  CHECK(grams_of_drops(10, dropper, binder)->shares.count("tension:binder") == 1);
}

TEST_CASE("scaling there and back gives the same drop") {
  const Dropper back{.tool = "d1",
                     .mL_per_drop = drop_volume_mL(dropper, binder),
                     .calibrated_with = Kind::binder};
  // The usual binder is the 1:2 of this test.
  CHECK(drop_volume_mL(back, water) == doctest::Approx(0.05));
}

TEST_CASE("amounts that cannot be are refused with their reason") {
  const double huge = std::numeric_limits<double>::infinity();
  CHECK(fault(grams_of_drops(none, dropper, water)) == Say::not_a_number);
  CHECK(fault(grams_of_drops(-1, dropper, water)) == Say::negative_amount);
  CHECK(fault(grams_of_drops(10001, dropper, water)) == Say::amount_too_large);
  CHECK(fault(grams_of_drops(10000, dropper, water)) == Say::none);
  CHECK(fault(grams_of_drops(huge, dropper, water)) == Say::amount_too_large);
  CHECK(fault(grams_of_spoons(none, {}, water)) == Say::not_a_number);
  CHECK(fault(grams_of_spoons(-0.5, {}, water)) == Say::negative_amount);
  CHECK(fault(grams_of_spoons(1000.5, {}, water)) == Say::amount_too_large);
  CHECK(fault(grams_weighed(none)) == Say::not_a_number);
  CHECK(fault(grams_weighed(-0.1)) == Say::negative_amount);
  CHECK(fault(grams_weighed(5000.1)) == Say::amount_too_large);
}

TEST_CASE("measures that cannot be are refused") {
  CHECK(fault(grams_of_drops(1, {.tool = "x", .mL_per_drop = 0}, water)) ==
        Say::measure_not_positive);
  CHECK(fault(grams_of_drops(1, {.tool = "x", .mL_per_drop_u = -1}, water)) ==
        Say::measure_not_positive);
  CHECK(fault(grams_of_spoons(1, {.tool = "x", .mL = none}, water)) == Say::measure_not_positive);
  CHECK(fault(grams_weighed(1, 0)) == Say::measure_not_positive);
  CHECK(fault(grams_weighed(1, none)) == Say::measure_not_positive);
  CHECK(fault(grams_of_drops(1, dropper, {})) == Say::density_not_known);
  CHECK(fault(grams_of_spoons(1, {}, {})) == Say::density_not_known);
  CHECK(fault(grams_of_drops(1, {.tool = "x", .calibrated_with = Kind::pigment}, water)) ==
        Say::density_not_known);
}

TEST_CASE("a spoon of powder goes by its heap, never by its true density") {
  const Spoon spoon{.tool = "s"};
  CHECK(fault(grams_of_spoons(1, spoon, powder)) == Say::powder_not_weighed);
  Material weighed = powder;
  weighed.pigment.heap_g_per_mL = 0.8;
  weighed.pigment.heap_g_per_mL_u = 0.08;
  const Amount a = *grams_of_spoons(2, spoon, weighed);
  CHECK(a.value == doctest::Approx(8));
  CHECK(a.shares.at("heap:s") == doctest::Approx(0.8));
  CHECK(a.shares.at("s") == doctest::Approx(8 * 0.15 / 5));
}

TEST_CASE("typed numbers: a comma or a point, and nothing else") {
  CHECK(typed_number("12.5") == 12.5);
  CHECK(typed_number("12,5") == 12.5);
  CHECK(typed_number("0") == 0);
  CHECK(typed_number(",5") == 0.5);
  CHECK(typed_number("7.") == 7);
  CHECK(typed_number("123456789012345") == 123456789012345.0);
  for (const char* bad : {"", ".", ",", "1.2.3", "1,2.3", "1,000.5", "-1", "+1", "1e3", " 1", "1 ",
                          "0x10", "nan", "inf", "½", "1234567890123456"}) {
    CAPTURE(std::string(bad));
    const auto typed = typed_number(bad);
    CHECK_FALSE(typed.has_value());
    if (!typed) CHECK(typed.error() == words::Error{Say::not_a_number, {bad}});
  }
}
