// Our colours at random points, one line of JSON each, for compare.js.
#include "colour/difference.hpp"

#include <cstdio>
#include <random>

namespace {

using namespace colour;

// Engine and division are the same with every library.
double even(std::mt19937_64& next, double low, double high) {
  return low + (high - low) * static_cast<double>(next() >> 11) / 9007199254740992.0;
}

Lab any(std::mt19937_64& next) {
  const double l = even(next, 0, 100), a = even(next, -100, 100);
  return {l, a, even(next, -100, 100)};
}

void print_pair(const Lab& one, const Lab& other) {
  std::printf("{\"one\":[%.17g,%.17g,%.17g],\"other\":[%.17g,%.17g,%.17g],\"apart\":%.17g}\n",
              one.l, one.a, one.b, other.l, other.a, other.b, difference(one, other));
}

void print_rgb(const Three& rgb) {
  Three linear{};
  for (std::size_t i = 0; i < 3; ++i) linear[i] = srgb_to_linear(rgb[i]);
  const Lab under_65 = lab(times(srgb_to_xyz_d65(), linear), d65);
  const Lab under_50 = lab(times(srgb_to_xyz_d50(), linear), d50);
  std::printf(
      "{\"rgb\":[%.17g,%.17g,%.17g],\"d65\":[%.17g,%.17g,%.17g],\"d50\":[%.17g,%.17g,%.17g]}\n",
      rgb[0], rgb[1], rgb[2], under_65.l, under_65.a, under_65.b, under_50.l, under_50.a,
      under_50.b);
}

}

int main() {
  std::mt19937_64 next(20050101);
  for (int i = 0; i < 10000; ++i) {
    const Lab one = any(next), far = any(next);
    const Lab near{one.l + far.l / 50, one.a + far.a / 20, one.b + far.b / 20};
    print_pair(one, i % 2 == 0 ? far : near);
    const double r = even(next, 0, 1), g = even(next, 0, 1);
    print_rgb({r, g, even(next, 0, 1)});
  }
}
