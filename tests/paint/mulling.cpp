#include "paint/mulling.hpp"

#include "words/paint_says.hpp"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>

namespace mulling_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");

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

TEST_CASE("passes needed bring it to the target, none where it is there already") {
  CHECK(rc::check("needed", [] {
    const double floor = some(20), target = floor + some(10), start = floor + some(200);
    const double k = some(2);
    const Interval n = *passes_needed(exactly(start), target, exact_decline(k, floor));
    if (start <= target) {
      RC_ASSERT(n.high == 0);
    } else {
      RC_ASSERT(std::abs(floor + (start - floor) * std::exp(-k * n.middle) - target) <
                1e-9 * start);
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

}
