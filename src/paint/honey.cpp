#include "paint/honey.hpp"

#include <cmath>

namespace paint {

using words::Say;

words::Result<double> honey_moisture(double refractive_index, double celsius) {
  for (double v : {refractive_index, celsius})
    if (!std::isfinite(v)) return words::failure(Say::not_a_number, {words::fixed(v, 1)});
  if (celsius < 5 || celsius > 45)
    return words::failure(Say::temperature_out_of_range, {words::fixed(celsius, 1), "5", "45"});
  const double at_20 = refractive_index + 0.00023 * (celsius - 20);
  if (at_20 < 1.474 || at_20 > 1.505)
    return words::failure(Say::honey_index_out_of_range, {words::fixed(refractive_index, 4)});
  return (-0.2681 - std::log10(at_20 - 1)) / 0.002243 / 100;
}

}
