#include "paint/air.hpp"

#include <cmath>

namespace paint {

namespace {

using words::Say;

tl::unexpected<words::Error> outside(Say what, double value, double low, double high) {
  return words::failure(what,
                        {words::fixed(value, 1), words::fixed(low, 0), words::fixed(high, 0)});
}

double ln_saturation_Pa(double kelvin) {
  const double t = kelvin;
  return -5800.2206 / t + 1.3914993 - 0.048640239 * t + 4.1764768e-5 * t * t -
         1.4452093e-8 * t * t * t + 6.5459673 * std::log(t);
}

double slope_of_ln_saturation(double kelvin) {
  const double t = kelvin;
  return 5800.2206 / (t * t) - 0.048640239 + 2 * 4.1764768e-5 * t - 3 * 1.4452093e-8 * t * t +
         6.5459673 / t;
}

constexpr double freezing_K = 273.15;

}

words::Result<Room> room(double celsius, double humidity_percent) {
  for (double x : {celsius, humidity_percent})
    if (!std::isfinite(x)) return words::failure(Say::not_a_number, {words::fixed(x, 0)});
  if (celsius < 5 || celsius > 45) return outside(Say::temperature_out_of_range, celsius, 5, 45);
  if (humidity_percent < 0 || humidity_percent > 100)
    return outside(Say::humidity_out_of_range, humidity_percent, 0, 100);
  return Room{celsius, humidity_percent / 100};
}

words::Result<double> saturation_kPa(double celsius) {
  if (!std::isfinite(celsius)) return words::failure(Say::not_a_number, {words::fixed(celsius, 0)});
  if (celsius < 0 || celsius > 100) return outside(Say::temperature_out_of_range, celsius, 0, 100);
  return std::exp(ln_saturation_Pa(celsius + freezing_K)) / 1000;
}

words::Result<double> humidity_ratio(const Room& air, double pressure_kPa) {
  const auto sound = room(air.celsius, air.humidity * 100);
  if (!sound) return tl::make_unexpected(sound.error());
  if (!(pressure_kPa >= 60 && pressure_kPa <= 110))
    return outside(Say::pressure_out_of_range, pressure_kPa, 60, 110);
  const double vapour = air.humidity * *saturation_kPa(air.celsius);
  return 0.621945 * vapour / (pressure_kPa - vapour);
}

words::Result<double> dew_point(const Room& air) {
  const auto sound = room(air.celsius, air.humidity * 100);
  if (!sound) return tl::make_unexpected(sound.error());
  const double wanted = std::log(air.humidity) + ln_saturation_Pa(air.celsius + freezing_K);
  if (wanted < ln_saturation_Pa(freezing_K)) return words::failure(Say::frost_not_dew);
  // Newton's steps; the logarithm is so nearly straight that six of them end below 1e-9 °C.
  double t = air.celsius + freezing_K;
  for (int i = 0; i < 6; ++i) t -= (ln_saturation_Pa(t) - wanted) / slope_of_ln_saturation(t);
  return t - freezing_K;
}

}
