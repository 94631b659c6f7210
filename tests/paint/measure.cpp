#include "paint/measure.hpp"

#include "random.hpp"
#include "words/paint_says.hpp"

#include <cmath>
#include <limits>

namespace measure_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");
const Material water{Kind::water, {.water = 1}, {}};
const Material binder{Kind::binder, *parts_of({.gum = 1, .water = 2}), {}};
const Material powder{Kind::pigment, {.pigment = 1}, {.g_per_mL = 4}};
const Dropper dropper{.tool = "d1"};

template <class T>
words::Sentence fault(const words::Result<T>& r) {
  return r ? words::Sentence{} : r.error().what;
}

bool near(double a, double b) { return std::abs(a - b) <= 1e-9 * (1 + std::abs(a) + std::abs(b)); }

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
                     .mL_per_drop = *drop_volume_mL(dropper, binder),
                     .calibrated_with = Kind::binder};
  // The usual binder is the 1:2 of this test.
  CHECK(*drop_volume_mL(back, water) == doctest::Approx(0.05));
}

TEST_CASE("amounts that cannot be are refused with their reason") {
  const double huge = std::numeric_limits<double>::infinity();
  CHECK(fault(grams_of_drops(none, dropper, water)) == Say::not_a_number);
  CHECK(fault(grams_of_drops(-1, dropper, water)) == Say::negative_amount);
  CHECK(fault(grams_of_drops(10001, dropper, water)) == Say::amount_too_large);
  CHECK(fault(grams_of_drops(10000, dropper, water)) == words::Sentence{});
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
  CHECK(fault(grams_of_spoons(1, {.tool = "x", .own = none}, water)) == Say::measure_not_positive);
  CHECK(fault(grams_of_drops(1, {.tool = "x", .mL_per_drop = 3}, binder)) ==
        Say::drop_out_of_range);
  CHECK(fault(drop_volume_mL({.tool = "x", .mL_per_drop = 0}, binder)) ==
        Say::measure_not_positive);
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

TEST_CASE("grams grow with the count and with the density, and their parts with them") {
  holds("so many drops and so many more are all of them", [] {
    const double a = between(0, 500), b = between(0, 500);
    const Amount sum = *grams_of_drops(a, dropper, binder) + *grams_of_drops(b, dropper, binder);
    const Amount all = *grams_of_drops(a + b, dropper, binder);
    RC_ASSERT(near(sum.value, all.value));
    RC_ASSERT(near(uncertainty(sum), uncertainty(all)));
  });
  holds("so many spoons and so many more are all of them", [] {
    const double a = between(0, 50), b = between(0, 50);
    const Amount sum = *grams_of_spoons(a, {}, binder) + *grams_of_spoons(b, {}, binder);
    const Amount all = *grams_of_spoons(a + b, {}, binder);
    RC_ASSERT(near(sum.value, all.value));
    RC_ASSERT(near(uncertainty(sum), uncertainty(all)));
  });
  holds("a weighing is itself, the same whatever it weighs", [] {
    const double g = between(0, 5000), step = between(0.001, 1);
    RC_ASSERT(grams_weighed(g, step)->value == g);
    RC_ASSERT(near(uncertainty(*grams_weighed(g, step)), step / std::sqrt(12.0)));
  });
  holds("a drop of another liquid comes back to itself", [] {
    Dropper d = dropper;
    d.mL_per_drop = between(0.004, 0.12);
    Dropper other = d;
    other.mL_per_drop = *drop_volume_mL(d, binder);
    other.calibrated_with = Kind::binder;
    RC_ASSERT(other.mL_per_drop < d.mL_per_drop); // heavier, with a weaker skin
    RC_ASSERT(near(*drop_volume_mL(other, water), d.mL_per_drop));
  });
}

TEST_CASE("a spoon of one's own") {
  const Spoon once = *spoon_weighed("s", {4.9});
  CHECK(once.tool == "s");
  CHECK(once.mL_u / once.mL == doctest::Approx(0.0507).epsilon(0.01)); // 5 % and the scale
  CHECK(fault(spoon_weighed("s", {})) == Say::nothing_counted);
  CHECK(fault(spoon_weighed("s", {4.9, 0})) == Say::measure_not_positive);
  CHECK(fault(spoon_weighed("s", {none})) == Say::not_a_number);
  CHECK(fault(spoon_weighed("s", {-1})) == Say::negative_amount);
  CHECK(fault(spoon_weighed("s", {4.9}, 0)) == Say::measure_not_positive);
  holds("gives back the water it was filled with; filled again it is better known", [] {
    const double g = between(0.5, 300);
    const Spoon s = *spoon_weighed("s", {g});
    RC_ASSERT(near(grams_of_spoons(1, s, water)->value, g));
    RC_ASSERT(near(spoon_weighed("s", {g, g, g, g})->mL_u, s.mL_u / 2));
  });
}

TEST_CASE("a household spoon") {
  holds("a household spoon is known to 5 % of whatever it holds", [] {
    const double mL = between(1, 300);
    RC_ASSERT(near(spoon_of({"x", mL}).mL_u / mL, 0.05 / std::sqrt(3.0)));
  });
}

TEST_CASE("whatever is typed with digits is read as it stands, with comma or point") {
  holds("digits", [] {
    const int whole = *rc::gen::inRange(0, 100000), part = *rc::gen::inRange(0, 1000);
    const std::string behind = std::to_string(1000 + part).substr(1);
    const double expected = whole + part / 1000.0;
    for (const char* mark : {".", ","}) {
      const auto typed = typed_number(std::to_string(whole) + mark + behind);
      RC_ASSERT(typed.has_value());
      RC_ASSERT(std::abs(*typed - expected) < 1e-9);
      RC_ASSERT(!typed_number("-" + std::to_string(whole) + mark + behind));
    }
  });
  holds("any other letter spoils it", [] {
    const auto letter = static_cast<char>(*rc::gen::inRange(1, 128));
    if (std::string("0123456789.,").find(letter) != std::string::npos) RC_DISCARD("allowed");
    std::string text = "123";
    text.insert(static_cast<std::size_t>(*rc::gen::inRange(0, 4)), 1, letter);
    RC_ASSERT(!typed_number(text));
  });
}

TEST_CASE("every surface tension is a liquid's, between soap and water, known to a quarter") {
  for (Kind kind : {Kind::pigment, Kind::binder, Kind::water, Kind::honey, Kind::glycerin,
                    Kind::wetting_aid, Kind::other}) {
    CHECK(surface_tension(kind) >= 30);
    CHECK(surface_tension(kind) <= surface_tension(Kind::water));
    CHECK(surface_tension_relative_u(kind) >= 0);
    CHECK(surface_tension_relative_u(kind) <= 0.25);
  }
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

}
