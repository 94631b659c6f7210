#include "bench/measures.hpp"

#include "bench/materials.hpp"
#include "paint/measure.hpp"
#include "session/amounts.hpp"

#include <cmath>

namespace bench {

namespace {

constexpr double any_drop_mL = 0.035;
constexpr double most_spoons = 12; // more is weighed: own choice

}

Measures measures_of(const Bench& bench, const session::Card& liquid) {
  Measures m;
  m.drop_mL = mL_of(bench, liquid, TapAmount{}).value_or(any_drop_mL);
  m.spoon_mL = mL_of(bench, liquid, TapAmount{session::Unit::spoons, 1}).value_or(0);
  const auto material = session::material_of(liquid);
  if (const double per_g = material ? paint::mL_per_g(material->parts) : 0; per_g > 0)
    m.g_per_mL = 1 / per_g;
  return m;
}

Measures measures_of_binder(const Bench& bench) {
  for (const session::Card& card : materials_of(bench))
    if (card.kind() == session::CardKind::binder) return measures_of(bench, card);
  return {any_drop_mL, 0, 1};
}

double spoons_in(double mL, const Measures& of) {
  const double spoons = of.spoon_mL > 0 ? std::floor(4 * mL / of.spoon_mL) / 4 : 0;
  return spoons <= most_spoons ? spoons : 0;
}

double spoons_between(double low_mL, double high_mL, const Measures& of) {
  if (!(of.spoon_mL > 0)) return 0;
  const double middle = std::round(2 * (low_mL + high_mL) / of.spoon_mL) / 4;
  for (const double spoons : {middle, middle - 0.25, middle + 0.25})
    if (const double mL = spoons * of.spoon_mL; mL >= low_mL && mL <= high_mL && spoons > 0)
      return spoons <= most_spoons ? spoons : 0;
  return 0;
}

}
