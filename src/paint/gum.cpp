#include "paint/gum.hpp"

namespace paint {

namespace {

struct Marks { // g dry gum per mL pigment
  double little, enough_from, enough_to, much;
};

Marks marks_of(PigmentClass family) {
  switch (family) {
  case PigmentClass::organic: return {0.50, 0.65, 1.3, 1.7};
  case PigmentClass::carbon: return {0.60, 0.80, 1.8, 2.2};
  default: return {0.35, 0.45, 1.1, 1.4};
  }
}

}

std::optional<GumState> gum_state(double gum_g, double pigment_mL, PigmentClass family) {
  if (!(pigment_mL > 0) || !(gum_g >= 0)) return std::nullopt;
  const double share = gum_g / pigment_mL;
  const Marks marks = marks_of(family);
  if (share < marks.little) return GumState::too_little;
  if (share > marks.much) return GumState::too_much;
  if (share >= marks.enough_from && share <= marks.enough_to) return GumState::enough;
  return std::nullopt;
}

}
