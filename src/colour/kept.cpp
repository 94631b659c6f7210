#include "colour/kept.hpp"

#include "colour/match.hpp"

#include <algorithm>
#include <cmath>

namespace colour {

Reading kept_reading(const Lab& lab, const Three& sd) {
  Reading r;
  r.d50 = lab;
  r.d65 = under_d65(lab);
  r.shared = camera_doubts(lab);
  for (std::size_t i = 0; i < 3; ++i) {
    double shared = 0;
    for (const Three& by : r.shared) shared += by[i] * by[i];
    // Another photo may have been read by other rules: never surer than was said then.
    if (shared > sd[i] * sd[i] && shared > 0)
      for (Three& by : r.shared) by[i] *= sd[i] / std::sqrt(shared);
    r.own[i][i] = std::max(0.0, sd[i] * sd[i] - shared);
  }
  return r;
}

void add_repeat(Repeats& repeats, const Reading& one, const Reading& other) {
  repeats.squares += surprise(one, other);
  repeats.degrees += 3;
}

double doubt_of(const Repeats& repeats) {
  constexpr double stated = 6; // degrees
  return std::sqrt((stated + repeats.squares) / (stated + repeats.degrees));
}

}
