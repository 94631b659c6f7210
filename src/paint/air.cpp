#include "paint/air.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace paint {

namespace {

using words::Say;

constexpr double most_held = 0.98; // where ASTM D5032 ends
constexpr double thinnest_film_m = 0.2e-3;
constexpr double water_g_per_mL = 0.99821;
// kPa between wet paint and air at 22 °C and 45 %.
constexpr double reference_kPa = 2.64475 * 0.55;
constexpr Interval reference_rate{0.08, 0.14, 0.26};
constexpr double no_number = std::numeric_limits<double>::quiet_NaN();

words::Error outside(Say what, double value, double low, double high) {
  return {what, {words::fixed(value, 1), words::fixed(low, 0), words::fixed(high, 0)}};
}

bool sound(const Wet& wet) {
  for (double x : {wet.gum_g, wet.glycerin_g, wet.honey_g, wet.water_g, wet.volume_mL})
    if (!(x >= 0) || !std::isfinite(x)) return false;
  return true;
}

bool in_d5032(double celsius) { return celsius >= 0 && celsius <= 70; }

bool sound(const Room& air) { return room(air.celsius, air.humidity * 100).has_value(); }

// Guggenheim, Anderson & de Boer, g water to 1 g dry gum. M0 as published for Acacia nilotica at
// 30 °C; C and K chosen to meet that paper's 33.6 g/100 g at 92.3 %. Choice of C: +-0.013.
double held_by_gum(double a) {
  constexpr double m0 = 0.0846, c = 10, k = 0.819;
  return m0 * c * k * a / ((1 - k * a) * (1 - k * a + c * k * a));
}

// ASTM D5032 (equation from memory, +-2 % RH), g water to 1 g glycerin.
double held_by_glycerin(double a, double t) {
  const double shift = 25.60 - 0.1950 * t + 0.0008 * t * t;
  const double h = 100 * a + shift;
  const double percent = std::sqrt((100 + shift) * (100 + shift) + shift * shift - h * h) - shift;
  return (100 - percent) / percent;
}

// Water activity of honey, +-0.06: the line of Chirife, Zamora & Motto 2006 (from memory) lowered
// by 0.03 towards the Turkish and Slovenian honeys measured below it. g water to 1 g solids.
double held_by_honey(double a) {
  const double percent = std::max(0.0, (a - 0.237) / 0.0177);
  return percent / (100 - percent);
}

double held(const Wet& wet, double a, double celsius) {
  return wet.gum_g * held_by_gum(a) + wet.glycerin_g * held_by_glycerin(a, celsius) +
         wet.honey_g * held_by_honey(a);
}

// m2 over which the paint lies once `lost` g of water have left it.
double film_m2(const Wet& wet, double lost, double spread) {
  const double mL = std::max(0.0, wet.volume_mL - lost / water_g_per_mL);
  return std::min(spread, mL * 1e-6 / thinnest_film_m);
}

}

words::Result<Room> room(double celsius, double humidity_percent) {
  for (double x : {celsius, humidity_percent})
    if (std::isnan(x)) return words::failure(Say::not_a_number, {words::fixed(x, 0)});
  if (celsius < 5 || celsius > 45)
    return tl::make_unexpected(outside(Say::temperature_out_of_range, celsius, 5, 45));
  if (humidity_percent < 0 || humidity_percent > 100)
    return tl::make_unexpected(outside(Say::humidity_out_of_range, humidity_percent, 0, 100));
  return Room{celsius, humidity_percent / 100};
}

words::Result<double> saturation_kPa(double celsius) {
  if (!(celsius >= 0 && celsius <= 100))
    return tl::make_unexpected(outside(Say::temperature_out_of_range, celsius, 0, 100));
  const double t = celsius + 273.15;
  const double ln_pascal = -5800.2206 / t + 1.3914993 - 0.048640239 * t + 4.1764768e-5 * t * t -
                           1.4452093e-8 * t * t * t + 6.5459673 * std::log(t);
  return std::exp(ln_pascal) / 1000;
}

Interval spread_area_m2(Spread spread) {
  switch (spread) {
  case Spread::covered: return {0, 0, 0};
  case Spread::gathered: return {0.002, 0.0032, 0.005};
  case Spread::knife: return {0.003, 0.0049, 0.008};
  case Spread::mulling: return {0.02, 0.032, 0.05};
  }
  return {};
}

Interval evaporation_rate(const Room& air) {
  if (!sound(air)) return {no_number, no_number, no_number};
  const double times = *saturation_kPa(air.celsius) * (1 - air.humidity) / reference_kPa;
  return {reference_rate.low * times, reference_rate.middle * times, reference_rate.high * times};
}

double evaporation_relative_u() { return 0.4; }

double held_water_g(const Wet& wet, double humidity, double celsius) {
  if (!sound(wet) || !(humidity >= 0 && humidity <= most_held) || !in_d5032(celsius))
    return no_number;
  return held(wet, humidity, celsius);
}

double water_activity(const Wet& wet, double celsius) {
  if (!sound(wet) || !in_d5032(celsius)) return no_number;
  if (wet.water_g > held(wet, most_held, celsius)) return 1;
  double low = 0;
  double high = most_held;
  while (high - low > 1e-9) {
    const double middle = (low + high) / 2;
    (held(wet, middle, celsius) < wet.water_g ? low : high) = middle;
  }
  return high;
}

double water_after(const Wet& wet, Spread spread, const Room& air, double seconds) {
  if (!sound(wet) || !sound(air) || !(seconds >= 0)) return no_number;
  const double kept = held(wet, std::min(air.humidity, most_held), air.celsius);
  if (wet.water_g <= kept) return wet.water_g;

  const double area = spread_area_m2(spread).middle;
  // g/(m2 s) for each unit of activity above the room's; 1 kg/h is 1/3.6 g/s.
  const double pull = reference_rate.middle / reference_kPa * *saturation_kPa(air.celsius) / 3.6;
  const auto leaving = [&](double water) { // g/s
    Wet then = wet;
    then.water_g = water;
    const double a = water_activity(then, air.celsius);
    return pull * std::max(0.0, a - air.humidity) * film_m2(wet, wet.water_g - water, area);
  };

  // Midpoint steps of at most a tenth of what is still to leave; the last thousandth counts as
  // gone.
  const double nearly = kept + 0.001 * (wet.water_g - kept);
  double water = wet.water_g;
  while (seconds > 0) {
    if (water <= nearly) return kept;
    const double rate = leaving(water);
    if (rate <= 0) return water;
    const double step = std::min(seconds, 0.1 * (water - kept) / rate);
    water -= step * leaving(water - step * rate / 2);
    seconds -= step;
  }
  return water;
}

}
