#include "paint/gum.hpp"

#include "paint/range/note_chance.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

constexpr double usual_sd = 0.25;  // of the ln of a limit
constexpr double slope = 0.15;     // of a verdict, in ln gum
constexpr double otherwise = 0.1;  // verdicts that gum is not the reason of
constexpr double of_holding = 0.2; // weight of a verdict that found no fault
constexpr int half_steps = 200;
constexpr double reach_sd = 5;

// Chance of a fault that comes the likelier, the further ln gum lies beyond the limit.
double chance(double beyond, bool faulty) {
  const double p = logistic(beyond / slope);
  return (1 - otherwise) * (faulty ? p : 1 - p) + otherwise / 2;
}

// Mean of how far the limit lies from the usual one, in ln. `side` is -1 where the fault lies below
// the limit.
double moved_by(double ln_usual, int side, GumVerdict::What fault,
                const std::vector<GumVerdict>& verdicts) {
  std::vector<double> weights;
  const auto off = [](int i) { return reach_sd * usual_sd * i / half_steps; };
  for (int i = -half_steps; i <= half_steps; ++i) {
    double weight = -0.5 * (off(i) / usual_sd) * (off(i) / usual_sd);
    for (const GumVerdict& v : verdicts) {
      const bool speaks = v.what == fault || v.what == GumVerdict::holds;
      if (speaks && v.g_per_mL > 0 && std::isfinite(v.g_per_mL))
        weight +=
            (v.what == fault ? 1 : of_holding) *
            std::log(chance(side * (std::log(v.g_per_mL) - ln_usual - off(i)), v.what == fault));
    }
    weights.push_back(weight);
  }
  const double most = *std::max_element(weights.begin(), weights.end());
  double mass = 0, sum = 0;
  for (int i = -half_steps; i <= half_steps; ++i) {
    const double weight = std::exp(weights[static_cast<std::size_t>(i + half_steps)] - most);
    mass += weight;
    sum += weight * off(i);
  }
  return sum / mass;
}

}

GumMarks usual_marks(PigmentClass family) {
  switch (family) {
  case PigmentClass::organic: return {0.50, 0.65, 1.3, 1.7};
  case PigmentClass::carbon: return {0.60, 0.80, 1.8, 2.2};
  case PigmentClass::mineral:
  case PigmentClass::fine_mineral:
  case PigmentClass::effect:
  case PigmentClass::extender:
  case PigmentClass::unknown: break;
  }
  return {0.35, 0.45, 1.1, 1.4};
}

std::optional<GumState> gum_state(double gum_g, double pigment_mL, const GumMarks& marks) {
  if (!(pigment_mL > 0) || !(gum_g >= 0)) return std::nullopt;
  const double share = gum_g / pigment_mL;
  if (share < marks.little) return GumState::too_little;
  if (share > marks.much) return GumState::too_much;
  if (share >= marks.enough_from && share <= marks.enough_to) return GumState::enough;
  return std::nullopt;
}

GumMarks marks_after(const GumMarks& usual, const std::vector<GumVerdict>& verdicts) {
  const double low = std::log(usual.little * usual.enough_from) / 2;
  const double high = std::log(usual.enough_to * usual.much) / 2;
  double lower = std::exp(moved_by(low, -1, GumVerdict::rubs_off, verdicts));
  const double upper = std::exp(moved_by(high, 1, GumVerdict::too_much, verdicts));
  // Verdicts that contradict each other must not turn the marks around.
  lower = std::min(lower, upper * usual.enough_to / usual.enough_from);
  return {usual.little * lower, usual.enough_from * lower, usual.enough_to * upper,
          usual.much * upper};
}

}
