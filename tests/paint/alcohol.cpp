#include "paint/alcohol.hpp"

#include "paint/air_random.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace alcohol_test {

using namespace paint;
using Say = words::PaintSay;

namespace {
const Room usual{22, 0.45};
const Wet paint_of_ten_grams{
    .gum_g = 2, .glycerin_g = 0.1, .honey_g = 0.3, .water_g = 4.6, .volume_mL = 8.4};
}

TEST_CASE("alcohol only leaves, all of it in the end, and none from a jar") {
  CHECK(rc::check("leaves", [] {
    const Wet wet = any::wet();
    const Room air{any::between(5, 45), any::between(0, 1)};
    const Spread spread = any::spread();
    const double g = any::between(0, 3);
    const double t = any::between(0, 20000);
    const Interval soon = *alcohol_after(g, wet, spread, air, t);
    const Interval later = *alcohol_after(g, wet, spread, air, 1.1 * t + 1);
    RC_ASSERT(soon.low <= soon.middle && soon.middle <= soon.high && soon.high <= g);
    RC_ASSERT(later.middle <= soon.middle);
    RC_ASSERT(soon.low >= 0);
    RC_ASSERT(alcohol_after(g, wet, Spread::covered, air, t)->low >= g * (1 - 1e-9));
    RC_ASSERT(alcohol_after(g, wet, spread, air, 1e9)->high < 1e-9);
  }));
}

TEST_CASE("two halves of a time are the whole, where there is paint enough for the spread") {
  CHECK(rc::check("composition", [] {
    Wet wet = any::wet();
    wet.volume_mL += 7; // 0.2 mm over the widest spread
    const double first = any::between(0, 5000);
    const double second = any::between(0, 5000);
    const double g = any::between(0, 3);
    const Spread spread = any::spread();
    const double then = alcohol_after(g, wet, spread, usual, first)->middle;
    RC_ASSERT(std::abs(alcohol_after(then, wet, spread, usual, second)->middle -
                       alcohol_after(g, wet, spread, usual, first + second)->middle) < 1e-9);
  }));
}

TEST_CASE("more water keeps it longer, warmth and a fast bench drive it out") {
  const auto left = [](const Wet& wet, const Room& air, double ln) {
    return alcohol_after(0.5, wet, Spread::knife, air, 900, {ln, 0.3, 0})->middle;
  };
  const double now = left(paint_of_ten_grams, usual, 0);
  CHECK(left(any::with_water(paint_of_ten_grams, 6), usual, 0) > now);
  CHECK(left(paint_of_ten_grams, {30, 0.45}, 0) < now);
  CHECK(left(paint_of_ten_grams, usual, 0.5) < now);
}

TEST_CASE("neat alcohol dries away in a finite time") {
  CHECK(alcohol_after(1, {.volume_mL = 5}, Spread::knife, usual, 100)->low > 0);
  CHECK(alcohol_after(1, {.volume_mL = 5}, Spread::knife, usual, 7200)->high == 0);
}

TEST_CASE("what cannot be is an error with words") {
  const Wet wet = paint_of_ten_grams;
  const double none = std::nan("");
  const double endless = std::numeric_limits<double>::infinity();
  for (double bad : {none, endless}) {
    CHECK(alcohol_after(bad, wet, Spread::knife, usual, 60).error().what == Say::not_a_number);
    CHECK(alcohol_after(1, wet, Spread::knife, usual, bad).error().what == Say::not_a_number);
    CHECK(alcohol_after(1, {.gum_g = bad}, Spread::knife, usual, 60).error().what ==
          Say::not_a_number);
  }
  CHECK(alcohol_after(-1, wet, Spread::knife, usual, 60).error().what == Say::negative_amount);
  CHECK(alcohol_after(1, wet, Spread::knife, usual, -60).error().what == Say::time_below_zero);
  CHECK(alcohol_after(1, wet, Spread::knife, {60, 0.5}, 60).error().what ==
        Say::temperature_out_of_range);
  CHECK(alcohol_after(1, wet, Spread::knife, usual, 60, {9, 0.3, 0}).error().what ==
        Say::bench_rate_unusable);
  CHECK(alcohol_after(0, {}, Spread::knife, usual, 60)->middle == 0);
}

}
