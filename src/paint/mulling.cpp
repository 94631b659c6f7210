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
