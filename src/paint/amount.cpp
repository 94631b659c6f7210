#include "paint/amount.hpp"

#include "words/paint_says.hpp"

#include <cmath>

namespace paint {

namespace {

// c_a * a + c_b * b in the uncertainties, for a result of the given value.
Amount combined(double value, const Amount& a, double c_a, const Amount& b, double c_b) {
  Amount out;
  out.value = value;
  out.variance = c_a * c_a * a.variance + c_b * c_b * b.variance;
  for (const auto& [tool, share] : a.shares) out.shares[tool] += c_a * share;
  for (const auto& [tool, share] : b.shares) out.shares[tool] += c_b * share;
  return out;
}

}

Amount exact(double value) { return {value, 0, {}}; }

double uncertainty(const Amount& a) {
  double sum = a.variance;
  for (const auto& [tool, share] : a.shares) sum += share * share;
  return std::sqrt(sum);
}

double relative_uncertainty(const Amount& a) {
  return a.value == 0 ? 0 : uncertainty(a) / std::abs(a.value);
}

double covariance(const Amount& a, const Amount& b) {
  double sum = 0;
  for (const auto& [tool, share] : a.shares) {
    const auto same = b.shares.find(tool);
    if (same != b.shares.end()) sum += share * same->second;
  }
  return sum;
}

std::optional<words::Error> fault_of(const Amount& a) {
  using Say = words::PaintSay;
  if (a.variance < 0) return words::Error{Say::negative_amount, {words::Number(a.variance, 2)}};
  for (double part : {a.value, uncertainty(a)})
    if (!std::isfinite(part)) return words::Error{Say::not_a_number, {words::Number(part, 1)}};
  return std::nullopt;
}

Amount operator+(const Amount& a, const Amount& b) {
  return combined(a.value + b.value, a, 1, b, 1);
}

Amount operator-(const Amount& a, const Amount& b) {
  return combined(a.value - b.value, a, 1, b, -1);
}

Amount scaled(const Amount& a, double factor) {
  return combined(a.value * factor, a, factor, {}, 0);
}

Amount product(const Amount& a, const Amount& b) {
  return combined(a.value * b.value, a, b.value, b, a.value);
}

Amount quotient(const Amount& a, const Amount& b) {
  const double value = a.value / b.value;
  return combined(value, a, 1 / b.value, b, -value / b.value);
}

}
