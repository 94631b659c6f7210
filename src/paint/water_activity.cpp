#include "paint/water_activity.hpp"

#include "paint/faults.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr double most_held = 0.98; // above, paint is a dilute solution
constexpr double water_g_per_mol = 18.015;

std::optional<words::Error> activity_fault(double a) {
  if (a >= 0 && a <= most_held) return std::nullopt;
  const words::Sentence what = !std::isfinite(a) ? Say::not_a_number
                               : a < 0 || a > 1  ? Say::humidity_out_of_range
                                                 : Say::humidity_above_held;
  return words::Error{what, {words::Number(100 * a, 1)}};
}

std::optional<words::Error> warmth_fault(double celsius) {
  if (std::isfinite(celsius) && celsius >= 0 && celsius <= 70) return std::nullopt;
  return words::Error{Say::temperature_out_of_range, {words::Number(celsius, 1), "0", "70"}};
}

// g water to 1 g dry gum. M0 as published for Acacia nilotica at 30 °C; C and K chosen to meet that
// paper's 33.6 g/100 g at 92.3 %.
double held_by_gum(double a) {
  constexpr double m0 = 0.0846, c = 10, k = 0.819;
  return m0 * c * k * a / ((1 - k * a) * (1 - k * a + c * k * a));
}

// The mole fraction of water whose activity is a. Newton's steps from x = a: the function rises and
// bends down, so that from the left of its root each step comes nearer and none oversteps.
double mole_fraction(const Solute& solute, double a) {
  double x = a;
  for (int i = 0; i < 20; ++i) {
    const double s = 1 - x;
    const double low = s * s * (solute.norrish_k - solute.bend * s);
    const double slope = 1 / x + s * (2 * solute.norrish_k - 3 * solute.bend * s);
    const double step = (std::log(x / a) - low) / slope;
    x -= step;
    if (std::abs(step) < 1e-13 * x) break;
  }
  return x;
}

double held_by_solute(const Solute& solute, double a) {
  if (a <= 0) return 0;
  const double x = mole_fraction(solute, a);
  return water_g_per_mol / solute.g_per_mol * x / (1 - x);
}

double held_by_glycerin(double a, double celsius) {
  constexpr double kelvin = 273.15;
  const double colder = (25 + kelvin) / (celsius + kelvin);
  Solute glycerin = glycerin_in_water;
  glycerin.norrish_k *= colder;
  glycerin.bend *= colder;
  return held_by_solute(glycerin, a);
}

// The middle of four lines through measured honeys.
constexpr double line_at_none = 0.243, line_per_percent = 0.0173;
constexpr double line_from = 14, line_to = 21; // % of moisture

double held_by_honey(double a) {
  const double percent = (a - line_at_none) / line_per_percent;
  if (percent < line_from) {
    constexpr double law_there = 0.447241; // Norrish's at 14 %
    return held_by_solute(honey_sugars,
                          a * law_there / (line_at_none + line_per_percent * line_from));
  }
  const double by_law = held_by_solute(honey_sugars, a);
  return percent > line_to ? by_law : std::min(by_law, percent / (100 - percent));
}

double held(const Wet& wet, double a, double celsius) {
  double water = 0;
  if (wet.gum_g > 0) water += wet.gum_g * held_by_gum(a);
  if (wet.glycerin_g > 0) water += wet.glycerin_g * held_by_glycerin(a, celsius);
  if (wet.honey_g > 0) water += wet.honey_g * held_by_honey(a);
  return water;
}

}

std::optional<words::Error> fault_of(const Wet& wet) {
  for (double x : {wet.gum_g, wet.glycerin_g, wet.honey_g, wet.water_g, wet.volume_mL})
    if (auto fault = fault_if_negative(x)) return fault;
  return std::nullopt;
}

words::Result<double> held_water_g(const Wet& wet, double humidity, double celsius) {
  if (const auto fault = fault_of(wet)) return tl::make_unexpected(*fault);
  if (const auto fault = activity_fault(humidity)) return tl::make_unexpected(*fault);
  if (const auto fault = warmth_fault(celsius)) return tl::make_unexpected(*fault);
  return held(wet, humidity, celsius);
}

}
