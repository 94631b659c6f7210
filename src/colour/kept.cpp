#include "colour/kept.hpp"

#include "colour/match.hpp"

#include <algorithm>
#include <cmath>

namespace colour {

namespace {

constexpr auto white_at = static_cast<std::size_t>(Shared::white);

double squares_of(const std::array<Three, shared_parts>& shared, std::size_t i) {
  double sum = 0;
  for (const Three& by : shared) sum += by[i] * by[i];
  return sum;
}

}

// Another photo may have been read by other rules: neither surer nor less sure than was said then.
Reading kept_reading(const Lab& lab, const Three& sd, const std::optional<KeptParts>& parts) {
  Reading r;
  r.d50 = lab;
  r.d65 = under_d65(lab);
  r.shared = camera_doubts(lab);
  for (std::size_t i = 0; i < 3; ++i) {
    const double all = sd[i] * sd[i], camera = squares_of(r.shared, i);
    const double white = parts ? parts->white[i] : 0, own = parts ? parts->own[i] : 0;
    const double left =
        parts ? std::max(0.0, all - white * white - own * own) : std::min(camera, all);
    if (camera > 0)
      for (Three& by : r.shared) by[i] *= std::sqrt(left / camera);
    r.shared[white_at][i] = white;
    r.own[i][i] = parts ? own * own : all - left;
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
