#include "paint/air.hpp"

#include "words/paint_says.hpp"

#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

tl::unexpected<words::Error> outside(words::Sentence what, double value, double low, double high) {
  return words::failure(what,
                        {words::Number(value, 1), words::Number(low, 0), words::Number(high, 0)});
}

// Hyland & Wexler 1983 over water, constants as in the ASHRAE Handbook of Fundamentals.
double ln_saturation_Pa(double kelvin) {
  const double t = kelvin;
  return -5800.2206 / t + 1.3914993 - 0.048640239 * t + 4.1764768e-5 * t * t -
         1.4452093e-8 * t * t * t + 6.5459673 * std::log(t);
}

constexpr double freezing_K = 273.15;

}

words::Result<Room> room(double celsius, double humidity_percent) {
  for (double x : {celsius, humidity_percent})
    if (!std::isfinite(x)) return words::failure(Say::not_a_number, {words::Number(x, 0)});
  if (celsius < 5 || celsius > 45) return outside(Say::temperature_out_of_range, celsius, 5, 45);
  if (humidity_percent < 0 || humidity_percent > 100)
    return outside(Say::humidity_out_of_range, humidity_percent, 0, 100);
  return Room{celsius, humidity_percent / 100};
}

words::Result<double> saturation_kPa(double celsius) {
  if (!std::isfinite(celsius))
    return words::failure(Say::not_a_number, {words::Number(celsius, 0)});
  if (celsius < 0 || celsius > 100) return outside(Say::temperature_out_of_range, celsius, 0, 100);
  return std::exp(ln_saturation_Pa(celsius + freezing_K)) / 1000;
}

}
