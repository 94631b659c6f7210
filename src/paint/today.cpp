#include "paint/today.hpp"

#include "paint/note_chance.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

constexpr double sticky_reach = 0.30;
constexpr double loose_reach = 0.25;
constexpr double slips = 0.05; // of all notes, spread over all five words
constexpr double reach_sd = 5; // of the grid to either side
constexpr double finest = 0.5; // grid step in slopes

// Chance of a note at x, the ln of flow over demand.
double chance(const Band& band, double x, int note) {
  const double w = band.half_width;
  const double edges[] = {-w - sticky_reach, -w, w, w + loose_reach};
  const double below = note == 0 ? 0 : logistic((edges[note - 1] - x) / band.slope);
  const double up_to = note == 4 ? 1 : logistic((edges[note] - x) / band.slope);

  return (1 - slips) * (up_to - below) + slips / 5;
}

bool possible(const Reading& r) {
  return r.flow > 0 && std::isfinite(r.flow) && r.note >= 0 && r.note <= 4;
}

}

Band after(const Band& before, const std::vector<Reading>& notes) {
  const int half = static_cast<int>(std::ceil(reach_sd * before.sd / (finest * before.slope)));
  const double step = reach_sd * before.sd / half;
  // In logarithms, since hundreds of notes would underflow.
  std::vector<double> weights;
  for (int i = -half; i <= half; ++i) {
    const double off = i * step;
    double weight = -0.5 * (off / before.sd) * (off / before.sd);
    for (const Reading& r : notes)
      if (possible(r))
        weight += std::log(chance(before, std::log(r.flow) - before.middle - off, r.note));
    weights.push_back(weight);
  }
  const double most = *std::max_element(weights.begin(), weights.end());
  double mass = 0, first = 0, second = 0;
  for (int i = -half; i <= half; ++i) {
    const double off = i * step;
    const double weight = std::exp(weights[static_cast<std::size_t>(i + half)] - most);
    mass += weight;
    first += weight * off;
    second += weight * off * off;
  }
  Band now = before;
  now.middle += first / mass;
  now.sd = std::sqrt(second / mass - first / mass * (first / mass));
  return now;
}

}
