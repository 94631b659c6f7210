#include "paint/drop.hpp"

#include "paint/faults.hpp"
#include "words/paint_says.hpp"

#include <cmath>
#include <initializer_list>
#include <numbers>
#include <optional>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr double gravity = 980.665; // cm/s2, so that mN/m, g and cm go together
constexpr double widest = 1.2;

std::optional<words::Error> fault_of(std::initializer_list<double> values) {
  for (double v : values)
    if (auto fault = fault_if_not_positive(v)) return fault;
  return std::nullopt;
}

// The u of 0 to `widest` at which a rising function takes a value.
template <class Function>
words::Result<double> where(Function rising, double value) {
  if (!(value <= rising(widest))) return words::failure(Say::drop_out_of_range);
  double low = 0, high = widest;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2;
    (rising(middle) < value ? low : high) = middle;
  }
  return high;
}

}

double drop_weight_factor(double u) {
  return 1 +
         u * (-0.9121 +
              u * (-2.109 + u * (13.38 + u * (-27.29 + u * (27.53 + u * (-13.58 + u * 2.593))))));
}

words::Result<double> drop_mL(double tip_mm, double tension_mN_per_m, double g_per_mL) {
  if (auto fault = fault_of({tip_mm, tension_mN_per_m, g_per_mL}))
    return tl::make_unexpected(*fault);
  const double r = tip_mm / 20; // cm
  const double value = g_per_mL * gravity * r * r / (2 * std::numbers::pi * tension_mN_per_m);
  const auto u = where([](double x) { return x * x * x * drop_weight_factor(x); }, value);
  if (!u) return u;
  return std::pow(r / *u, 3);
}

words::Result<double> tip_of_drop_mm(double mL, double tension_mN_per_m, double g_per_mL) {
  if (auto fault = fault_of({mL, tension_mN_per_m, g_per_mL})) return tl::make_unexpected(*fault);
  const double side = std::cbrt(mL);
  const double value = g_per_mL * gravity * side * side / (2 * std::numbers::pi * tension_mN_per_m);
  const auto u = where([](double x) { return x * drop_weight_factor(x); }, value);
  if (!u) return u;
  return 20 * *u * side;
}

}
