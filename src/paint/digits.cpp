#include "paint/digits.hpp"

#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr int most_places = 15;

double power_of_ten(int n) { return std::pow(10.0, n); }

// The place of the first digit: 0 for 1 to 9.99, -1 for 0.1 to 0.99.
int first_place(double positive) { return static_cast<int>(std::floor(std::log10(positive))); }

}

std::string written(double value, int decimals) {
  if (decimals >= 0) return words::number(value, std::min(decimals, most_places));
  const double unit = power_of_ten(-decimals);
  return words::number(std::round(value / unit) * unit, 0);
}

words::Result<int> decimals_by(double uncertainty, int significant) {
  if (!std::isfinite(uncertainty))
    return words::failure(Say::not_a_number, {words::Number(uncertainty, 0)});
  if (uncertainty <= 0)
    return words::failure(Say::uncertainty_not_positive, {words::Number(uncertainty, 3)});
  if (significant < 1 || significant > 2)
    return words::failure(Say::digits_out_of_range, {std::to_string(significant)});
  if (uncertainty < 1e-14) return words::failure(Say::uncertainty_too_small);
  const int place = first_place(uncertainty);
  const double digits = std::round(uncertainty * power_of_ten(significant - 1 - place));
  const bool carried = digits >= power_of_ten(significant); // 0.0996 is 0.10, not 0.100
  return std::max(significant - 1 - place - (carried ? 1 : 0), -most_places);
}

words::Result<Shown> shown(const Amount& amount, int significant) {
  if (const auto fault = fault_of(amount)) return tl::make_unexpected(*fault);
  const double u = uncertainty(amount);
  const auto decimals = decimals_by(u, significant);
  if (!decimals) return tl::make_unexpected(decimals.error());
  return Shown{written(amount.value, *decimals), written(u, *decimals), *decimals};
}

words::Result<int> decimals_to_step(double step) {
  if (!std::isfinite(step)) return words::failure(Say::not_a_number, {words::Number(step, 0)});
  if (step <= 0) return words::failure(Say::measure_not_positive, {words::Number(step, 3)});
  if (step < 0.001) return words::failure(Say::step_too_small);
  // Of 0.001 itself the logarithm may come out above 3 by a rounding.
  return std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)));
}

int decimals_as_read(double value, int most) {
  if (!std::isfinite(value)) return 0;
  for (int decimals = 0; decimals < most; ++decimals) {
    const double scaled = value * power_of_ten(decimals);
    if (std::abs(scaled - std::round(scaled)) < 1e-6) return decimals;
  }
  return std::clamp(most, 0, 6);
}

int decimals_of_grams(double grams) {
  const double g = std::abs(grams);
  if (!std::isfinite(g)) return 0;
  if (g >= 99.95) return 0;
  if (g >= 0.995) return 1;
  if (g >= 0.0095 || g < 5e-7) return 2;
  return -first_place(g) - (g * power_of_ten(-first_place(g)) >= 9.5 ? 1 : 0);
}

words::Result<std::string> grams_written(const Amount& grams) {
  if (const auto fault = fault_of(grams)) return tl::make_unexpected(*fault);
  const int most = decimals_of_grams(grams.value);
  const auto borne = decimals_by(uncertainty(grams), 1);
  // Less than a gram keeps its two decimals: a drop is never nothing.
  const bool small = std::abs(grams.value) < 0.995;
  return written(grams.value, small || !borne ? most : std::min(most, *borne));
}

}
