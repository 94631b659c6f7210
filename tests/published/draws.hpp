// Monte Carlo beside our propagation of uncertainty (JCGM 101:2008).
#pragma once

#include "published/row.hpp"

#include <cmath>
#include <cstdint>
#include <random>

namespace published {

inline constexpr int draws = 1000000;
inline const Source drawn_apart = apart("Monte Carlo of 10^6 draws (JCGM 101:2008), mt19937_64");

// The standard's distributions differ from library to library, its engines do not.
class Random {
public:
  explicit Random(std::uint64_t seed) : engine(seed) {}
  double even() { return 2 * unit() - 1; } // -1 to 1
  double normal() {                        // Box & Muller's
    const double r = std::sqrt(-2 * std::log(1 - unit()));
    return r * std::cos(6.283185307179586 * unit());
  }

private:
  double unit() { return static_cast<double>(engine() >> 11) * 0x1p-53; }
  std::mt19937_64 engine;
};

struct Drawn {
  double mean = 0;
  double sd = 0;
};

template <class Draw>
Drawn of_draws(Draw draw) {
  double mean = 0, squares = 0;
  for (int i = 1; i <= draws; ++i) { // Welford's way
    const double x = draw();
    const double off = x - mean;
    mean += off / i;
    squares += off * (x - mean);
  }
  return {mean, std::sqrt(squares / (draws - 1))};
}

}
