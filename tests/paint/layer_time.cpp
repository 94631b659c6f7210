#include "paint/layer_time.hpp"

#include "turned_round.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

namespace layer_time_test {

using namespace paint;
using turned_round::share_gone;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");
const double endless = std::numeric_limits<double>::infinity();
const Room usual{22, 0.45};
// 1 mL of paint of 3 g mineral pigment to 2 mL of binder 1:2.
const Layer half_pan{{.gum_g = 0.21, .honey_g = 0.03, .water_g = 0.55, .volume_mL = 1}, 3};

double some(int most) { return *rc::gen::inRange(1, most * 100) / 100.0; }
Course any_course() { return {some(2), some(2), some(2)}; }

std::vector<WeighIn> weighed(const Course& c, const std::vector<double>& hours) {
  std::vector<WeighIn> out{{0, 20}};
  for (double h : hours) out.push_back({h, 20 - share_gone(c, h) * c.free_g});
  return out;
}

}

TEST_CASE("time and share are each other's inverse, and both rise") {
  CHECK(rc::check("inverse", [] {
    const Course c = any_course();
    const double share = *rc::gen::inRange(0, 999) / 1000.0;
    const double hours = *hours_until(c, share);
    RC_ASSERT(std::abs(share_gone(c, hours) - share) < 1e-9);
    RC_ASSERT(*hours_until(c, share + 0.0005) > hours);
    RC_ASSERT(share_gone(c, hours + 0.01) >= share_gone(c, hours));
    RC_ASSERT(share_gone(c, hours + 1e6) <= 1);
  }));
  CHECK(hours_until({1, 1, 1}, 0) == 0);
}

TEST_CASE("it is the slower of two rates, in small steps too") {
  for (const Course c : {Course{1, 0.05, 0.2}, Course{1, 0.3, 0.1}, Course{0.5, 0.1, 0.25}}) {
    double gone = 0, hours = 0;
    while (gone < 0.9 * c.free_g) {
      gone += std::min(c.constant_g_h, c.falling_per_h * (c.free_g - gone)) * 1e-4;
      hours += 1e-4;
    }
    CHECK(hours == doctest::Approx(*hours_until(c, 0.9)).epsilon(1e-3));
  }
}

TEST_CASE("what a layer loses: as its course, and wider the farther ahead") {
  const Drying d = *drying_of(half_pan, usual);
  const Interval ready = *layer_hours(d);
  // From the pour to when the middle course is ready: that share of its free water.
  CHECK(loses_g(d, ready, 0, ready.middle)->middle == doctest::Approx(ready_share * d.free_g));
  // A layer that the scale knows to be twice as slow loses in twice the time.
  const Interval slower{2 * ready.low, 2 * ready.middle, 2 * ready.high};
  CHECK(loses_g(d, slower, 0, 2 * ready.middle)->middle ==
        doctest::Approx(loses_g(d, ready, 0, ready.middle)->middle));
  CHECK(rc::check("opens", [&] {
    const double from = some(40), near = from + some(10), far = near + some(10);
    const Interval soon = *loses_g(d, ready, from, near), late = *loses_g(d, ready, from, far);
    RC_ASSERT(soon.low <= soon.middle);
    RC_ASSERT(soon.middle <= soon.high);
    RC_ASSERT(late.middle >= soon.middle);
    RC_ASSERT(std::abs(loses_g(d, ready, 0, from)->middle + soon.middle -
                       loses_g(d, ready, 0, near)->middle) < 1e-6);
  }));
  CHECK(loses_g(d, ready, 5, 5)->high == 0);
  CHECK(loses_g(d, ready, 0, 1e6)->high <= 1.05 * d.free_g + 1e-9);
  CHECK(loses_g(d, ready, -1, 5).error().what == Say::negative_amount);
  CHECK(loses_g(d, ready, 5, 4).error().what == Say::negative_amount);
  CHECK(loses_g(d, {0, 1, 2}, 0, 4).error().what == Say::measure_not_positive);
  CHECK(loses_g(d, ready, none, 4).error().what == Say::not_a_number);
}

TEST_CASE("courses that cannot be are errors") {
  CHECK(hours_until({0, 1, 1}, 0.5).error().what == Say::measure_not_positive);
  CHECK(hours_until({1, none, 1}, 0.5).error().what == Say::not_a_number);
  CHECK(hours_until({1, 1, endless}, 0.5).error().what == Say::not_a_number);
  CHECK(hours_until({1, 1, 1}, 1).error().what == Say::not_a_share);
  CHECK(hours_until({1, 1, 1}, -0.1).error().what == Say::not_a_share);
  CHECK(hours_until({1, 1, 1}, none).error().what == Say::not_a_number);
  CHECK(hours_until({1, 1, -1}, 0.5).error().what == Say::measure_not_positive);
}

TEST_CASE("damper air, a thicker layer and a larger share take longer") {
  CHECK(rc::check("longer", [] {
    Layer layer = half_pan;
    layer.area_cm2 = some(20);
    const double damp = *rc::gen::inRange(5, 85) / 100.0;
    const Interval now = *layer_hours(*drying_of(layer, {22, damp}));
    RC_ASSERT(now.low < now.middle);
    RC_ASSERT(now.middle < now.high);
    RC_ASSERT(layer_hours(*drying_of(layer, {22, damp}), 0.9)->middle > now.middle);
    layer.area_cm2 *= 0.9;
    RC_ASSERT(layer_hours(*drying_of(layer, {22, damp}))->middle > now.middle);
    const Drying damper = *drying_of(half_pan, {22, damp + 0.05});
    const Drying drier = *drying_of(half_pan, {22, damp});
    RC_ASSERT(damper.free_g < drier.free_g);
    RC_ASSERT(damper.constant_g_h.middle < drier.constant_g_h.middle);
  }));
}

TEST_CASE("the constant rate is the pan's, by its area; diffusion minds the depth, not the area") {
  CHECK(rc::check("area", [] {
    Layer layer = half_pan;
    layer.area_cm2 = some(20);
    const Room air{22, *rc::gen::inRange(5, 85) / 100.0};
    const Drying d = *drying_of(layer, air);
    const double per_m2 = evaporation_rate(air, Surface::pan)->middle * 1000; // g/(m2 h)
    RC_ASSERT(std::abs(d.constant_g_h.middle - per_m2 * layer.area_cm2 / 10000) < 1e-9);
    // Twice the paint on twice the area is the same layer.
    const Wet& wet = layer.wet;
    const Layer twice{{.gum_g = 2 * wet.gum_g,
                       .honey_g = 2 * wet.honey_g,
                       .water_g = 2 * wet.water_g,
                       .volume_mL = 2 * wet.volume_mL},
                      2 * layer.area_cm2};
    const Drying same = *drying_of(twice, air);
    RC_ASSERT(std::abs(same.free_g - 2 * d.free_g) < 1e-9);
    RC_ASSERT(std::abs(same.falling_per_h.middle / d.falling_per_h.middle - 1) < 1e-9);
  }));
}

TEST_CASE("layers that cannot be are errors") {
  Layer layer = half_pan;
  layer.area_cm2 = 0;
  CHECK(drying_of(layer, usual).error().what == Say::measure_not_positive);
  layer.area_cm2 = none;
  CHECK(drying_of(layer, usual).error().what == Say::not_a_number);
  layer.area_cm2 = 1001;
  CHECK(drying_of(layer, usual).error().what == Say::amount_too_large);
  layer = half_pan;
  layer.wet.water_g = 0.01;
  CHECK(drying_of(layer, usual).error().what == Say::nothing_to_dry);
  layer = half_pan;
  layer.wet.volume_mL = 0.4;
  CHECK(drying_of(layer, usual).error().what == Say::volume_too_small);
  layer.wet.gum_g = endless;
  CHECK(drying_of(layer, usual).error().what == Say::not_a_number);
  CHECK(drying_of(half_pan, {22, 0.99}).error().what == Say::humidity_above_held);
  CHECK(drying_of(half_pan, {60, 0.5}).error().what == Say::temperature_out_of_range);
  CHECK(layer_hours(Drying{}).error().what == Say::measure_not_positive);
}

TEST_CASE("weighings replace the expected speed: the range holds the truth, whatever the speed") {
  const Drying expected = *drying_of(half_pan, usual);
  CHECK(rc::check("holds the truth", [&] {
    // Any shape between the ends, any speed within a factor of 10.
    const double speed = std::pow(10.0, *rc::gen::inRange(-1000, 1000) / 1000.0);
    const auto between = [](const Interval& i) {
      return i.low * std::pow(i.high / i.low, *rc::gen::inRange(0, 1001) / 1000.0);
    };
    const Course truth{expected.free_g, between(expected.constant_g_h) * speed,
                       between(expected.falling_per_h) * speed};
    const double wanted = *hours_until(truth, 0.8);
    const double first = *rc::gen::inRange(15, 60) / 100.0;
    const auto ins = weighed(truth, {*hours_until(truth, first), *hours_until(truth, first + 0.3)});
    const Interval range = *layer_hours(expected, ins, 0.8, 0.01);
    RC_ASSERT(range.low <= wanted);
    RC_ASSERT(range.high >= wanted);
    RC_ASSERT(range.low > 0);
  }));
}

TEST_CASE("the range holds a layer that is almost only wet surface, or almost only diffusion") {
  const Drying d = *drying_of(half_pan, usual);
  for (const Course truth : {Course{d.free_g, d.constant_g_h.high, d.falling_per_h.low},
                             Course{d.free_g, d.constant_g_h.low, d.falling_per_h.high}}) {
    const Interval range =
        *layer_hours(d, weighed(truth, {*hours_until(truth, 0.25)}), 0.8, 0.0001);
    CHECK(range.low <= *hours_until(truth, 0.8));
    CHECK(range.high >= *hours_until(truth, 0.8));
  }
}

TEST_CASE("the first weighing's error is in all, so that many later ones do not do away with it") {
  const Drying d{1, {0.1, 0.1, 0.1}, {100, 100, 100}};
  std::vector<WeighIn> ins{{0, 20}};
  for (int i = 0; i < 400; ++i) ins.push_back({5 + i * 1e-6, 19.5});
  // All at a half: one step's u = 0.0289 g is 5.8 % of what was lost by then; 5 % for the free
  // water.
  const Interval range = *layer_hours(d, ins, 0.5, 0.1);
  CHECK(range.high / range.middle > 1.05 * std::exp(2 * 0.057));
  CHECK(range.high / range.middle < 1.05 * std::exp(2 * 0.060));
}

TEST_CASE("a weighing near the end tells more than one at the beginning, a finer scale more too") {
  const Drying expected = *drying_of(half_pan, usual);
  const Course truth{expected.free_g, expected.constant_g_h.middle, expected.falling_per_h.middle};
  const auto wide = [&](double share, double step) {
    const Interval i =
        *layer_hours(expected, weighed(truth, {*hours_until(truth, share)}), 0.8, step);
    return i.high / i.low;
  };
  const Interval before = *layer_hours(expected);
  CHECK(wide(0.75, 0.01) < before.high / before.low);
  CHECK(wide(0.75, 0.01) < wide(0.2, 0.01));
  CHECK(wide(0.5, 0.01) < wide(0.5, 0.1));
}

TEST_CASE("weighings that contradict or say nothing are told apart") {
  const Drying d = *drying_of(half_pan, usual);
  const auto fault = [&](std::vector<WeighIn> ins, double step = 0.01) {
    return layer_hours(d, ins, 0.8, step).error().what;
  };
  CHECK(fault({}) == Say::weigh_ins_too_few);
  CHECK(fault({{0, 20}}) == Say::weigh_ins_too_few);
  CHECK(fault({{1, 20}, {2, 19.9}}) == Say::weigh_ins_out_of_order);
  CHECK(fault({{0, 20}, {5, 19.8}, {5, 19.7}}) == Say::weigh_ins_out_of_order);
  CHECK(fault({{0, 20}, {5, none}}) == Say::not_a_number);
  CHECK(fault({{0, 20}, {endless, 19}}) == Say::not_a_number);
  CHECK(fault({{0, -20}, {5, 19}}) == Say::negative_amount);
  CHECK(fault({{0, 20}, {5, 19}}) == Say::weighing_contradicts);   // more than all its water
  CHECK(fault({{0, 20}, {5, 20.2}}) == Say::weighing_contradicts); // gained
  CHECK(fault({{0, 20}, {5, 20}}) == Say::weigh_ins_say_nothing);
  CHECK(fault({{0, 20}, {5, 19.9}}, 0) == Say::measure_not_positive);
  CHECK(layer_hours(d, {{0, 20}, {5, 19.9}}, 1).error().what == Say::not_a_share);
}

}
