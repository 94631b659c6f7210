#include "paint/faults.hpp"

#include "words/paint_says.hpp"

#include <cmath>

namespace paint {

using Say = words::PaintSay;

std::optional<words::Error> fault_if_negative(double x) {
  if (!std::isfinite(x)) return words::Error{Say::not_a_number, {words::Number(x, 0)}};
  if (x < 0) return words::Error{Say::negative_amount, {words::Number(x, 3)}};
  return std::nullopt;
}

std::optional<words::Error> fault_if_not_positive(double x) {
  if (!std::isfinite(x)) return words::Error{Say::not_a_number, {words::Number(x, 0)}};
  if (x <= 0) return words::Error{Say::measure_not_positive, {words::Number(x, 3)}};
  return std::nullopt;
}

std::optional<words::Error> fault_if_no_share(double x, double least, double most) {
  if (!std::isfinite(x)) return words::Error{Say::not_a_number, {words::Number(x, 0)}};
  if (x < least || x > most) return words::Error{Say::not_a_share, {words::Number(x, 3)}};
  return std::nullopt;
}

}
