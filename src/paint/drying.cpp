#include "paint/drying.hpp"

#include "paint/water.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr double thinnest_film_m = 0.2e-3;
// kPa between wet paint and air at 22 °C and 45 %.
constexpr double reference_kPa = 2.64475 * 0.55;
constexpr Interval reference_slab{0.08, 0.14, 0.26};
constexpr Interval reference_pan{0.05, 0.10, 0.20};
constexpr double longest_s = 1e10;

// What stays the same while one paint dries.
struct Course {
  Wet wet;
  Room air;
  double g_per_m2_s = 0; // for each unit of activity above the room's
  Spread spread = Spread::covered;
  double dry_mL = 0; // the paint's volume without its water
  double most_g = 0; // water held at the last activity of `dry` below
};

struct Point {
  double water_g = 0;
  double activity = 0;
};

// Between two points the rate is straight. Below, fixed activities; above, where the paint is as a
// dilute solution, the water doubles from point to point until what is missing to 1 is nothing.
constexpr std::array dry{0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98};
constexpr int last_dry = static_cast<int>(dry.size()) - 1;
constexpr int doublings = 5;
constexpr int top = last_dry + doublings;

// What is held at `dry` by 1 g each, worked out once: it spares the numbers that are shown live
// most of their time. Glycerin's depends on the temperature too.
struct PerGram {
  double gum = 0, honey = 0;
};

std::array<PerGram, dry.size()> held_per_gram() {
  std::array<PerGram, dry.size()> table;
  for (std::size_t i = 0; i < dry.size(); ++i)
    table[i] = {*held_water_g({.gum_g = 1}, dry[i], 20), *held_water_g({.honey_g = 1}, dry[i], 20)};
  return table;
}

double held_at(const Wet& wet, std::size_t i, double celsius) {
  static const auto table = held_per_gram();
  const double sweet =
      wet.glycerin_g > 0 ? *held_water_g({.glycerin_g = wet.glycerin_g}, dry[i], celsius) : 0;
  return wet.gum_g * table[i].gum + wet.honey_g * table[i].honey + sweet;
}

Point point(const Course& c, int i) {
  if (i < last_dry) {
    const auto at = static_cast<std::size_t>(i);
    return {held_at(c.wet, at, c.air.celsius), dry[at]};
  }
  const double times = 1 << (i - last_dry);
  return {c.most_g * times, i == top ? 1 : 1 - (1 - dry.back()) / times};
}

// Where the paint is at rest in the room.
Point rest(const Course& c) {
  return {*held_water_g(c.wet, c.air.humidity, c.air.celsius), c.air.humidity};
}

// g/s; negative where the paint takes water up.
double leaving(const Course& c, const Point& p) {
  return c.g_per_m2_s * (p.activity - c.air.humidity) *
         covered_m2(c.dry_mL + p.water_g / water_g_per_mL, c.spread);
}

// A stretch on which the rate is straight in the water.
struct Stretch {
  Point low, high;
};

// Cuts a stretch at a point within it and keeps the side on which the water lies.
void cut(Stretch& s, const Point& at, double water, bool falling) {
  if (!(at.water_g > s.low.water_g && at.water_g < s.high.water_g)) return;
  const bool above = falling ? water > at.water_g : water >= at.water_g;
  (above ? s.low : s.high) = at;
}

// `i` is the point just below the water, moved to there.
Stretch stretch_at(const Course& c, double water, bool falling, int& i) {
  Stretch s{point(c, i), {}};
  while (i > 0 && (falling ? water <= s.low.water_g : water < s.low.water_g)) s.low = point(c, --i);
  s.high = i < top ? point(c, i + 1) : Point{2 * water + 1, 1};
  while (i < top && !falling && water >= s.high.water_g) {
    s.low = s.high;
    s.high = ++i < top ? point(c, i + 1) : Point{2 * water + 1, 1};
  }
  if (s.low.activity < c.air.humidity && c.air.humidity < s.high.activity)
    cut(s, rest(c), water, falling);
  const double fills_g =
      (spread_area_m2(c.spread).middle * thinnest_film_m * 1e6 - c.dry_mL) * water_g_per_mL;
  const double part = (fills_g - s.low.water_g) / (s.high.water_g - s.low.water_g);
  cut(s, {fills_g, std::lerp(s.low.activity, s.high.activity, part)}, water, falling);
  return s;
}

// (1 - exp(-x)) / x and ln(1 + x) / x, both 1 at 0.
double fallen(double x) { return x == 0 ? 1 : -std::expm1(-x) / x; }
double log_ratio(double x) { return x == 0 ? 1 : std::log1p(x) / x; }

struct End {
  double water_g = 0;
  double leaving_g_s = 0;
};

double straight(const Course& c, const Stretch& s, double water) {
  const double at_low = leaving(c, s.low);
  const double slope = (leaving(c, s.high) - at_low) / (s.high.water_g - s.low.water_g);
  return at_low + slope * (water - s.low.water_g);
}

// g/s that leave at the start.
double leaving_first(const Course& c) {
  const double water = c.wet.water_g;
  const bool falling = water > c.most_g || water > rest(c).water_g;
  int i = top;
  return straight(c, stretch_at(c, water, falling, i), water);
}

End end_of(const Course& c, double seconds) {
  double water = c.wet.water_g;
  const bool falling = water > c.most_g || water > rest(c).water_g;
  int i = top;
  while (true) {
    const Stretch s = stretch_at(c, water, falling, i);
    const double at_low = leaving(c, s.low);
    const double slope = (leaving(c, s.high) - at_low) / (s.high.water_g - s.low.water_g);
    const double rate = at_low + slope * (water - s.low.water_g);
    const Point& next = falling ? s.low : s.high;
    const double rate_there = leaving(c, next);
    if (water == next.water_g || (falling ? rate <= 0 : rate >= 0)) return {water, 0};
    // Where the rate vanishes at the end of a stretch, that is never reached.
    const bool ends = rate_there / rate > 0;
    const double until =
        ends ? (water - next.water_g) / rate_there * log_ratio(rate / rate_there - 1) : 0;
    if (!ends || until > seconds) {
      const double left = water - rate * seconds * fallen(slope * seconds);
      return {left, rate + slope * (left - water)};
    }
    water = next.water_g;
    seconds -= until;
  }
}

double g_per_m2_s(const Room& air, const BenchRate& bench) {
  const double kg_per_m2_h = reference_slab.middle / reference_kPa * *saturation_kPa(air.celsius);
  return std::exp(bench.ln_factor) * kg_per_m2_h / 3.6;
}

words::Result<Course> course(const Wet& wet, Spread spread, const Room& air,
                             const BenchRate& bench) {
  if (const auto fault = fault_of(bench)) return tl::make_unexpected(*fault);
  const auto sound = room(air.celsius, air.humidity * 100);
  if (!sound) return tl::make_unexpected(sound.error());
  if (const auto fault = fault_of(wet)) return tl::make_unexpected(*fault);
  const auto known = held_water_g({}, air.humidity, air.celsius);
  if (!known) return tl::make_unexpected(known.error());
  const double dry_mL = wet.volume_mL - wet.water_g / water_g_per_mL;
  // Sums of volumes round.
  if (dry_mL < -1e-9 * (1 + wet.volume_mL))
    return words::failure(Say::volume_too_small,
                          {words::Number(wet.volume_mL, 2), words::Number(wet.water_g, 2)});
  return Course{wet,
                air,
                g_per_m2_s(air, bench),
                spread,
                std::max(0.0, dry_mL),
                held_at(wet, last_dry, air.celsius)};
}

words::Result<End> end_of(const Wet& wet, Spread spread, const Room& air, double seconds,
                          const BenchRate& bench) {
  if (const auto fault = fault_of_time(seconds)) return tl::make_unexpected(*fault);
  const auto c = course(wet, spread, air, bench);
  if (!c) return tl::make_unexpected(c.error());
  if (spread == Spread::covered) return End{wet.water_g, 0};
  return end_of(*c, seconds);
}

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

double covered_m2(double mL, Spread spread) {
  return std::min(spread_area_m2(spread).middle, mL * 1e-6 / thinnest_film_m);
}

std::optional<words::Error> fault_of_time(double seconds) {
  if (!std::isfinite(seconds)) return words::Error{Say::not_a_number, {words::Number(seconds, 0)}};
  if (seconds < 0) return words::Error{Say::time_below_zero, {words::Number(seconds, 0)}};
  if (seconds > longest_s) return words::Error{Say::time_too_long, {}};
  return std::nullopt;
}

words::Result<Interval> evaporation_rate(const Room& air, Surface surface) {
  const auto sound = room(air.celsius, air.humidity * 100);
  if (!sound) return tl::make_unexpected(sound.error());
  const Interval reference = surface == Surface::pan ? reference_pan : reference_slab;
  const double times = *saturation_kPa(air.celsius) * (1 - air.humidity) / reference_kPa;
  return Interval{reference.low * times, reference.middle * times, reference.high * times};
}

words::Result<DryingPrediction> predict_drying(const Wet& wet, Spread spread, const Room& air,
                                               double seconds, const BenchRate& bench) {
  const auto end = end_of(wet, spread, air, seconds, bench);
  if (!end) return tl::make_unexpected(end.error());
  if (spread == Spread::covered) return DryingPrediction{};
  const double first = leaving_first(*course(wet, spread, air, bench));
  // Twice the rate is twice the time, so a factor moves the end along the rate there, and so does a
  // gram more at the start by the time in which it would leave.
  return DryingPrediction{wet.water_g - end->water_g, end->leaving_g_s * seconds,
                          first == 0 ? 0 : end->leaving_g_s / first};
}

}
