#include "paint/range.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace paint;

namespace {

const double none = std::nan("");
const Pigment mineral{
    .g_per_mL = 4.2, .oil_g_per_100g = 30, .oil_u = 4.5, .family = PigmentClass::mineral};
const Pigment organic{.g_per_mL = 1.5, .oil_g_per_100g = 50, .family = PigmentClass::organic};

// The normal demand folded into the logistic hand by summing over 4,001 demands.
double too_loose_by_sum(const Band& band, double flow) {
  double sum = 0;
  double weights = 0;
  for (int i = -2000; i <= 2000; ++i) {
    const double z = i / 250.0;
    const double weight = std::exp(-z * z / 2);
    const double x = std::log(flow) - band.middle - band.sd * z - band.half_width;
    sum += weight / (1 + std::exp(-x / band.slope));
    weights += weight;
  }
  return sum / weights;
}

Band band(double middle, double sd, double slope = 0.06) {
  Band b;
  b.middle = middle;
  b.sd = sd;
  b.slope = slope;
  return b;
}

}

TEST_CASE("without pigment there is no guess") {
  CHECK_FALSE(class_guess({}));
  CHECK_FALSE(class_guess({{mineral, 0}}));
  CHECK_FALSE(class_guess({{mineral, -1}}));
  CHECK_FALSE(class_guess({{mineral, none}}));
}

TEST_CASE("one pigment: class and oil absorption, both uncertain") {
  const Band b = *class_guess({{mineral, 0.7}});
  CHECK(b.middle == doctest::Approx(0.60 + std::log(30 * 4.2 / 93.5)));
  CHECK(b.sd == doctest::Approx(std::hypot(0.30, 0.15)));
  CHECK(b.rests_on == RestsOn::class_guess);
  CHECK(b.batches == 0);
}

TEST_CASE("an unknown oil absorption widens the guess") {
  Pigment bare = mineral;
  bare.oil_g_per_100g = 0;
  CHECK(class_guess({{bare, 1}})->sd > class_guess({{mineral, 1}})->sd);
  CHECK(class_guess({{Pigment{}, 1}})->middle == doctest::Approx(0.75 + 0.04));
}

TEST_CASE("a blend lies between its pigments, and does not depend on how it is listed") {
  const double low = class_guess({{organic, 1}})->middle;
  const double high = class_guess({{mineral, 1}})->middle;
  const Band half = *class_guess({{mineral, 1}, {organic, 1}});
  CHECK(half.middle > std::min(low, high));
  CHECK(half.middle < std::max(low, high));
  CHECK(std::exp(half.middle) == doctest::Approx((std::exp(low) + std::exp(high)) / 2));
  CHECK(class_guess({{organic, 3}, {mineral, 3}})->middle == doctest::Approx(half.middle));
}

TEST_CASE("one class's error does not shrink by blending, each pigment's own does") {
  Pigment sure = mineral;
  sure.oil_u = 0;
  CHECK(class_guess({{sure, 1}, {sure, 1}})->sd == doctest::Approx(0.30));
  CHECK(class_guess({{mineral, 1}, {mineral, 1}})->sd < class_guess({{mineral, 1}})->sd);
}

TEST_CASE("chances: right is likeliest in the middle, too loose grows, edges at a half") {
  const Band b = band(std::log(2.0), 0.2);
  CHECK(chance_right(b, 2) > chance_right(b, 1.5));
  CHECK(chance_right(b, 2) > chance_right(b, 2.6));
  CHECK(chance_too_loose(b, 2 * std::exp(0.12)) == doctest::Approx(0.5));
  CHECK(chance_too_loose(b, 2.2) < chance_too_loose(b, 2.3));
  CHECK(chance_right(b, 0) == 0);
  CHECK(chance_too_loose(b, 0) == 0);
  CHECK(std::isnan(chance_right(b, -1)));
  CHECK(std::isnan(chance_too_loose(b, none)));
}

TEST_CASE("the closed form against the sum over demands") {
  for (double sd : {0.0, 0.05, 0.1, 0.19, 0.3, 0.5, 0.7})
    for (double slope : {0.03, 0.06, 0.12}) {
      const Band b = band(1, sd, slope);
      double four_percent = 0; // the flow where the closed form says 4 %
      for (double x = -4; x < 4; x += 0.01) {
        const double flow = std::exp(x);
        // 2.3 points is the largest gap between a normal and a logistic of one variance.
        CHECK(std::abs(chance_too_loose(b, flow) - too_loose_by_sum(b, flow)) < 0.024);
        if (chance_too_loose(b, flow) <= 0.04) four_percent = flow;
      }
      // Where advice is given it is good to a tenth of a point; the promise is one point wide.
      CHECK(std::abs(chance_too_loose(b, four_percent) - too_loose_by_sum(b, four_percent)) <
            0.001);
    }
}

TEST_CASE("safe drops: the largest number that keeps the chance at 4 %") {
  const Band b = band(std::log(2.5), 0.2);
  const double drop = 0.033;
  const double pigment = 2.4;
  for (double flow : {0.0, 0.5, 1.2, 1.6}) {
    const int n = safe_drops(b, flow, drop, pigment);
    CHECK(n > 0);
    CHECK(chance_too_loose(b, flow + n * drop / pigment) <= 0.04);
    CHECK(chance_too_loose(b, flow + (n + 1) * drop / pigment) > 0.04);
  }
  CHECK(safe_drops(b, 2.5, drop, pigment) == 0);
  CHECK(safe_drops(b, 9, drop, pigment) == 0);
}

TEST_CASE("safe drops of what cannot be: none") {
  const Band b = band(std::log(2.5), 0.2);
  CHECK(safe_drops(b, none, 0.03, 2) == 0);
  CHECK(safe_drops(b, -1, 0.03, 2) == 0);
  CHECK(safe_drops(b, 1, 0, 2) == 0);
  CHECK(safe_drops(b, 1, none, 2) == 0);
  CHECK(safe_drops(b, 1, 0.03, 0) == 0);
  CHECK(safe_drops(band(none, 0.2), 1, 0.03, 2) == 0);
  CHECK(safe_drops(b, 1, 1e-12, 2) == 10000);
}

TEST_CASE("a first helping of an unknown pigment is that of the class that wants least") {
  for (PigmentClass c : {PigmentClass::mineral, PigmentClass::fine_mineral, PigmentClass::organic,
                         PigmentClass::carbon, PigmentClass::effect, PigmentClass::extender}) {
    CHECK(first_helping(c).low < first_helping(c).high);
    CHECK(first_helping(PigmentClass::unknown).high <= first_helping(c).high);
  }
}
