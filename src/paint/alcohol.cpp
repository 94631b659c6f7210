#include "paint/alcohol.hpp"

#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr double alcohol_g_per_mL = 0.7893; // 20 °C
// g of alcohol whose activity among 1 g of water is a half: molar masses, and an activity
// coefficient of 4; 3.7 for the last trace by Henry's constant, 3.2 for one mole in ten (van Laar's
// equation, constants from memory).
constexpr double half_active = 46.07 / 18.015 / 4;
// By molar mass and diffusion in air, 0.119 against 0.25 cm2/s (from memory).
const double mass_to_water = 46.07 / 18.015 * std::pow(0.119 / 0.25, 2.0 / 3);
constexpr double either_way = 2.5;

// Antoine's equation, constants from memory; -57 to 80 °C.
double alcohol_kPa(double celsius) {
  const double mmHg = std::pow(10, 8.20417 - 1642.89 / (celsius + 230.300));
  return mmHg * 0.133322;
}

// m + b ln m falls evenly in time: the m at which it has fallen by `gone`.
double left(double m, double b, double gone) {
  if (m <= 0 || b <= 0) return std::max(0.0, m - gone);
  const double c = (m - gone) / b + std::log(m / b);
  // exp(y) + y = c for y = ln(m / b), by Newton's steps from above: they fall without overstepping.
  double y = c > 1 ? std::log(c) : c;
  for (int i = 0; i < 50; ++i) {
    const double step = (std::exp(y) + y - c) / (std::exp(y) + 1);
    y -= step;
    if (std::abs(step) < 1e-14 * (1 + std::abs(y))) break;
  }
  return std::min(m, b * std::exp(y));
}

}

words::Result<Interval> alcohol_after(double alcohol_g, const Wet& wet, Spread spread,
                                      const Room& air, double seconds, const BenchRate& bench) {
  if (!std::isfinite(alcohol_g))
    return words::failure(Say::not_a_number, {words::Number(alcohol_g, 0)});
  if (alcohol_g < 0) return words::failure(Say::negative_amount, {words::Number(alcohol_g, 3)});
  if (const auto fault = fault_of(wet)) return tl::make_unexpected(*fault);
  if (const auto fault = fault_of(bench)) return tl::make_unexpected(*fault);
  if (const auto fault = fault_of_time(seconds)) return tl::make_unexpected(*fault);
  const auto sound = room(air.celsius, air.humidity * 100);
  if (!sound) return tl::make_unexpected(sound.error());
  const double water = evaporation_rate({air.celsius, 0})->middle / *saturation_kPa(air.celsius);
  const double covers = covered_m2(wet.volume_mL + alcohol_g / alcohol_g_per_mL, spread);
  const double g_per_s =
      std::exp(bench.ln_factor) * water * mass_to_water * alcohol_kPa(air.celsius) * covers / 3.6;
  const double gone = g_per_s * seconds;
  const double b = half_active * wet.water_g;
  return Interval{left(alcohol_g, b, gone * either_way), left(alcohol_g, b, gone),
                  left(alcohol_g, b, gone / either_way)};
}

}
