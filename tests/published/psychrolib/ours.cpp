// Our saturation pressure over a grid, one line of JSON each, for compare.js.
#include "paint/air.hpp"

#include <cstdio>

int main() {
  // From just above the triple point, below which psychrolib goes over to ice.
  for (double t = 0.25; t <= 100; t += 0.25)
    std::printf("{\"t\":%g,\"kPa\":%.17g}\n", t, *paint::saturation_kPa(t));
}
