#include "paint/mulling.hpp"

#include "paint/faults.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

std::optional<words::Error> fault_of(const Interval& i) {
  for (double x : {i.low, i.middle, i.high})
    if (auto fault = fault_if_negative(x)) return fault;
  if (i.low > i.middle || i.middle > i.high) return words::Error{Say::limits_out_of_order, {}};
  return std::nullopt;
}

std::optional<words::Error> fault_of_rate(double per_pass) {
  if (per_pass > 0 && std::isfinite(per_pass)) return std::nullopt;
  return words::Error{Say::rate_unusable, {}};
}

// A straight line y = a + b x, weighted, of which only the slope is wanted.
struct Slope {
  double value = 0;
  double u = 0;
};

struct Point {
  double x, y, weight;
};

std::optional<Slope> slope_of(const std::vector<Point>& points) {
  double w = 0, x = 0, y = 0;
  for (const Point& p : points) {
    w += p.weight;
    x += p.weight * p.x;
    y += p.weight * p.y;
  }
  if (points.size() < 2 || !(w > 0)) return std::nullopt;
  x /= w;
  y /= w;
  double xx = 0, xy = 0, yy = 0;
  for (const Point& p : points) {
    xx += p.weight * (p.x - x) * (p.x - x);
    xy += p.weight * (p.x - x) * (p.y - y);
    yy += p.weight * (p.y - y) * (p.y - y);
  }
  if (!(xx > 0)) return std::nullopt;
  const double value = xy / xx;
  const auto more = static_cast<double>(points.size()) - 2;
  const double scatter = more > 0 ? (yy - value * xy) / more : 1;
  return Slope{value, std::sqrt(std::max(1.0, scatter) / xx)};
}

double passes(double from, double target, double floor, double per_pass) {
  if (from <= target) return 0;
  return std::log((from - floor) / (target - floor)) / per_pass;
}

}

Fineness specks_said(SpeckWord word) {
  switch (word) {
  case SpeckWord::many: return {20, 60, 200};
  case SpeckWord::few: return {1, 5, 20};
  case SpeckWord::none: return {0, 0, 1};
  }
  return {};
}

std::optional<Decline> decline_guess(PigmentClass family) {
  double least_min = 20, most_min = 60;
  switch (family) {
  case PigmentClass::effect: return std::nullopt;
  case PigmentClass::mineral:
  case PigmentClass::extender: least_min = 5, most_min = 20; break;
  case PigmentClass::unknown: least_min = 5; break;
  case PigmentClass::fine_mineral:
  case PigmentClass::organic:
  case PigmentClass::carbon: break;
  }
  // Middles geometric; both spreads in the logarithm, independent of each other.
  const double middle = std::log(60.0) / (std::sqrt(least_min * most_min) / guess_pass_min);
  const double wide = std::exp(std::hypot(std::log(most_min / least_min), std::log(5.0 / 2.0)) / 2);
  return Decline{{middle / wide, middle, middle * wide}, 0};
}

words::Result<Decline> decline_from(const std::vector<GaugeReading>& readings, double floor) {
  if (auto fault = fault_if_negative(floor)) return tl::make_unexpected(*fault);
  std::vector<Point> points;
  for (const auto& [after, f] : readings) {
    if (auto fault = fault_if_negative(after)) return tl::make_unexpected(*fault);
    if (auto fault = fault_of(f)) return tl::make_unexpected(*fault);
    if (f.middle <= floor) continue;
    if (f.high <= f.middle) return words::failure(Say::limits_out_of_order);
    const double u = std::log((f.high - floor) / (f.middle - floor)) / 2;
    points.push_back({after, std::log(f.middle - floor), 1 / (u * u)});
  }
  const auto slope = slope_of(points);
  if (!slope) return words::failure(Say::readings_too_few);
  const double k = -slope->value;
  if (!(k > 0)) return words::failure(Say::not_declining);
  const double wide = std::exp(2 * slope->u / k);
  return Decline{{k / wide, k, k * wide}, floor};
}

words::Result<double> after_passes(double start, double per_pass, double floor, double passes) {
  for (double x : {start, floor, passes})
    if (auto fault = fault_if_negative(x)) return tl::make_unexpected(*fault);
  if (auto fault = fault_of_rate(per_pass)) return tl::make_unexpected(*fault);
  if (start <= floor) return start;
  return floor + (start - floor) * std::exp(-per_pass * passes);
}

words::Result<Interval> passes_needed(const Fineness& now, double target, const Decline& decline) {
  if (auto fault = fault_of(now)) return tl::make_unexpected(*fault);
  for (double x : {target, decline.floor})
    if (auto fault = fault_if_negative(x)) return tl::make_unexpected(*fault);
  const Interval& k = decline.per_pass;
  for (double rate : {k.low, k.middle, k.high})
    if (auto fault = fault_of_rate(rate)) return tl::make_unexpected(*fault);
  if (k.low > k.middle || k.middle > k.high) return words::failure(Say::limits_out_of_order);
  if (target <= decline.floor)
    return words::failure(Say::target_below_floor,
                          {words::Number(target, 1), words::Number(decline.floor, 1)});
  return Interval{passes(now.low, target, decline.floor, k.high),
                  passes(now.middle, target, decline.floor, k.middle),
                  passes(now.high, target, decline.floor, k.low)};
}

}
