#include "colour/difference.hpp"

#include <cmath>
#include <numbers>

namespace colour {

namespace {

double radians(double degrees) { return degrees * std::numbers::pi / 180; }
double square(double x) { return x * x; }

// How much of 25^7 a chroma has, which both G and R_C are made of.
double share_of_seventh(double chroma) {
  const double seventh = std::pow(chroma, 7);
  return std::sqrt(seventh / (seventh + 6103515625.0));
}

struct Hues {
  double from_one = 0, middle = 0; // degrees
};

// The shorter way round; where one has no hue, the other's counts.
Hues hues(const Lab& one, const Lab& other) {
  const double h1 = hue_degrees(one), h2 = hue_degrees(other);
  if (chroma(one) * chroma(other) == 0) return {0, h1 + h2};
  const double straight = h2 - h1, sum = h1 + h2;
  if (std::abs(straight) <= 180) return {straight, sum / 2};
  return {straight > 0 ? straight - 360 : straight + 360,
          sum < 360 ? sum / 2 + 180 : sum / 2 - 180};
}

}

Apart apart(const Lab& first, const Lab& second) {
  const double g = 0.5 * (1 - share_of_seventh((chroma(first) + chroma(second)) / 2));
  const Lab one{first.l, (1 + g) * first.a, first.b}, other{second.l, (1 + g) * second.a, second.b};
  const double c1 = chroma(one), c2 = chroma(other), middle = (c1 + c2) / 2;
  const auto [turn, h] = hues(one, other);

  const double t = 1 - 0.17 * std::cos(radians(h - 30)) + 0.24 * std::cos(radians(2 * h)) +
                   0.32 * std::cos(radians(3 * h + 6)) - 0.20 * std::cos(radians(4 * h - 63));
  const double from_50 = square((one.l + other.l) / 2 - 50);
  const double s_l = 1 + 0.015 * from_50 / std::sqrt(20 + from_50);
  const double s_c = 1 + 0.045 * middle, s_h = 1 + 0.015 * middle * t;
  const double theta = 30 * std::exp(-square((h - 275) / 25));
  const double r_t = -2 * share_of_seventh(middle) * std::sin(radians(2 * theta));

  const double in_chroma = (c2 - c1) / s_c;
  const double in_hue = 2 * std::sqrt(c1 * c2) * std::sin(radians(turn / 2)) / s_h;
  return {(other.l - one.l) / s_l, in_chroma, in_hue, r_t};
}

// c^2 + h^2 + R_T c h, written as two squares; |R_T| is less than 2.
Three as_squares(const Apart& by) {
  const double half = by.together / 2;
  return {by.lightness, by.chroma + half * by.hue, by.hue * std::sqrt(1 - square(half))};
}

double difference(const Lab& one, const Lab& other) {
  const Three by = as_squares(apart(one, other));
  return std::sqrt(square(by[0]) + square(by[1]) + square(by[2]));
}

}
