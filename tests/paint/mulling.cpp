#include "paint/mulling.hpp"

#include "words/paint_says.hpp"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

using namespace paint;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");
const double endless = std::numeric_limits<double>::infinity();

double some(int most) { return *rc::gen::inRange(1, most * 100) / 100.0; }

Decline exact_decline(double k, double floor) { return {{k, k, k}, floor}; }
Fineness exactly(double value) { return {value, value, value}; }

}

TEST_CASE("the three words follow each other without a gap") {
  const Fineness many = specks_said(SpeckWord::many), few = specks_said(SpeckWord::few);
  const Fineness clean = specks_said(SpeckWord::none);
  CHECK(many.low == few.high);
  CHECK(few.low == clean.high);
  CHECK(passes_needed(clean, 1, exact_decline(0.3, 0))->high == 0);
}

TEST_CASE("mulling takes away, never below the floor; two stretches make one") {
  CHECK(rc::check("decline", [] {
    const double floor = some(20), start = floor + some(100), k = some(2), n = some(9), m = some(9);
    const double then = *after_passes(start, k, floor, n);
    RC_ASSERT(then <= start);
    RC_ASSERT(then >= floor);
    const double both = *after_passes(start, k, floor, n + m);
    RC_ASSERT(std::abs(*after_passes(then, k, floor, m) - both) < 1e-9);
    RC_ASSERT(*after_passes(start, k, floor, 0) == start);
    RC_ASSERT(*after_passes(floor / 2, k, floor, n) == floor / 2);
  }));
  CHECK(after_passes(none, 1, 0, 1).error().what == Say::not_a_number);
  CHECK(after_passes(10, 0, 0, 1).error().what == Say::rate_unusable);
  CHECK(after_passes(10, none, 0, 1).error().what == Say::rate_unusable);
  CHECK(after_passes(10, 1, -1, 1).error().what == Say::negative_amount);
  CHECK(after_passes(10, 1, 0, endless).error().what == Say::not_a_number);
}

TEST_CASE("passes needed bring it to the target, none where it is there already") {
  CHECK(rc::check("needed", [] {
    const double floor = some(20), target = floor + some(10), start = floor + some(200);
    const double k = some(2);
    const Interval n = *passes_needed(exactly(start), target, exact_decline(k, floor));
    if (start <= target) {
      RC_ASSERT(n.high == 0);
    } else {
      RC_ASSERT(std::abs(*after_passes(start, k, floor, n.middle) - target) < 1e-9 * start);
    }
    const Decline wide{{k / 2, k, k * 2}, floor};
    const Interval range = *passes_needed({start, start, start * 1.2}, target, wide);
    RC_ASSERT(range.low <= n.middle);
    RC_ASSERT(range.high >= n.middle);
  }));
  const Decline d = exact_decline(0.5, 10);
  CHECK(passes_needed(exactly(30), 10, d).error().what == Say::target_below_floor);
  CHECK(passes_needed(exactly(none), 20, d).error().what == Say::not_a_number);
  CHECK(passes_needed({5, 4, 6}, 20, d).error().what == Say::limits_out_of_order);
  CHECK(passes_needed(exactly(30), -1, d).error().what == Say::negative_amount);
  CHECK(passes_needed(exactly(30), 20, exact_decline(0, 10)).error().what == Say::rate_unusable);
  CHECK(passes_needed(exactly(30), 20, {{2, 1, 3}, 10}).error().what == Say::limits_out_of_order);
}

TEST_CASE("two or more readings give back the rate they were made with") {
  CHECK(rc::check("fit", [] {
    const double floor = some(10), start = floor + some(100), k = some(1);
    std::vector<GaugeReading> readings;
    const int count = *rc::gen::inRange(2, 8);
    for (int i = 0; i < count; ++i) {
      const double f = *after_passes(start, k, floor, i);
      if (f - floor > 1e-6) readings.push_back({i * 1.0, {f * 0.9, f, f * 1.1}});
    }
    RC_PRE(readings.size() >= 2);
    const Decline d = *decline_from(readings, floor);
    RC_ASSERT(std::abs(d.per_pass.middle - k) < 1e-6);
    RC_ASSERT(d.per_pass.low < k);
    RC_ASSERT(d.per_pass.high > k);
    RC_ASSERT(d.floor == floor);
  }));
}

TEST_CASE("the rate's limits are those that the readings' limits leave") {
  // ln(1.2) / 2 is each reading's u; two passes apart the slope's is that times sqrt 2 / 2.
  const Decline d = *decline_from({{0, {60, 80, 96}}, {2, {30, 40, 48}}});
  const double k = std::log(2.0) / 2, u = std::log(1.2) / 2 * std::sqrt(2.0) / 2;
  CHECK(d.per_pass.middle == doctest::Approx(k));
  CHECK(d.per_pass.high == doctest::Approx(k * std::exp(2 * u / k)));
  CHECK(d.per_pass.low == doctest::Approx(k / std::exp(2 * u / k)));
}

TEST_CASE("closer limits narrow the rate, scatter widens it") {
  const auto wide = [](double part, double middle) {
    const Decline d = *decline_from({{0, {80 * (1 - part), 80, 80 * (1 + part)}},
                                     {2, {middle * (1 - part), middle, middle * (1 + part)}},
                                     {4, {20 * (1 - part), 20, 20 * (1 + part)}}});
    return d.per_pass.high / d.per_pass.low;
  };
  CHECK(wide(0.05, 40) < wide(0.2, 40));
  CHECK(wide(0.05, 40) < wide(0.05, 70));
}

TEST_CASE("readings that tell no rate are errors") {
  const Fineness f{30, 40, 50};
  CHECK(decline_from({}).error().what == Say::readings_too_few);
  CHECK(decline_from({{0, f}}).error().what == Say::readings_too_few);
  CHECK(decline_from({{2, f}, {2, f}}).error().what == Say::readings_too_few);
  CHECK(decline_from({{0, f}, {2, f}}).error().what == Say::not_declining);
  CHECK(decline_from({{0, f}, {2, f}}, 45).error().what == Say::readings_too_few);
  CHECK(decline_from({{0, f}, {none, f}}).error().what == Say::not_a_number);
  CHECK(decline_from({{0, f}, {-1, f}}).error().what == Say::negative_amount);
  CHECK(decline_from({{0, f}, {1, {40, 40, 40}}}).error().what == Say::limits_out_of_order);
  CHECK(decline_from({{0, f}, {1, f}}, endless).error().what == Say::not_a_number);
}

TEST_CASE("a first guess for all but flakes, whose spread holds its middle") {
  for (const auto family :
       {PigmentClass::mineral, PigmentClass::organic, PigmentClass::carbon,
        PigmentClass::fine_mineral, PigmentClass::extender, PigmentClass::unknown}) {
    const Decline d = *decline_guess(family);
    CHECK(d.per_pass.low < d.per_pass.middle);
    CHECK(d.per_pass.middle < d.per_pass.high);
  }
  CHECK_FALSE(decline_guess(PigmentClass::effect).has_value());
}
