// Our air over a grid, one line of JSON a room, for compare.js.
#include "paint/air.hpp"

#include <cstdio>

int main() {
  // From just above the triple point, below which psychrolib goes over to ice.
  for (double t = 0.25; t <= 100; t += 0.25)
    std::printf("{\"t\":%g,\"kPa\":%.17g}\n", t, *paint::saturation_kPa(t));
  for (int t = 5; t <= 45; ++t)
    for (int percent = 1; percent <= 100; ++percent) {
      const auto room = paint::room(t, percent);
      for (double kPa : {80.0, 101.325})
        std::printf("{\"t\":%d,\"h\":%.17g,\"air_kPa\":%g,\"ratio\":%.17g}\n", t, room->humidity,
                    kPa, *paint::humidity_ratio(*room, kPa));
      if (const auto dew = paint::dew_point(*room))
        std::printf("{\"t\":%d,\"h\":%.17g,\"dew\":%.17g}\n", t, room->humidity, *dew);
    }
}
