#include "paint/standing.hpp"

namespace paint {

namespace {

constexpr double water_mL_per_g = 1 / 0.99821; // 20 °C

struct Sums {
  Amount alcohol_mL;
  double oil_mL = 0; // at the oil-absorption point
  bool oil_known = true;
  bool densities_known = true;
};

void add_pigment(Standing& s, Sums& sums, const Portion& portion) {
  const Pigment& p = portion.material.pigment;
  const Amount grams = scaled(portion.grams, portion.material.parts.pigment);
  s.pigment_g = s.pigment_g + grams;
  if (!(p.g_per_mL > 0)) {
    sums.densities_known = false;
    return;
  }
  Amount volume = scaled(grams, 1 / p.g_per_mL);
  volume.shares["density:" + portion.card] -= volume.value * p.g_per_mL_u / p.g_per_mL;
  s.pigment_mL = s.pigment_mL + volume;
  const double point = oil_absorption_point(p);
  sums.oil_mL += volume.value * point;
  sums.oil_known = sums.oil_known && point > 0;
}

void add_liquid(Standing& s, const Portion& portion) {
  const Parts& parts = portion.material.parts;
  const double g = portion.grams.value;
  const Amount liquid = scaled(portion.grams, 1 - parts.pigment);
  s.liquid_g = s.liquid_g + liquid;
  s.liquid_mL = s.liquid_mL + scaled(liquid, mL_per_g(parts));
  s.gum_g += g * parts.gum;
  s.glycerin_g += g * parts.glycerin;
  s.honey_g += g * parts.honey;
  s.water_g += g * parts.water;
  // What stays is summed by itself, not by subtraction: it must not carry the alcohol's scatter.
  const double stays = 1 - parts.pigment - parts.alcohol;
  Parts without = parts;
  without.alcohol = 0;
  s.liquid_mL_now =
      s.liquid_mL_now + scaled(portion.grams, stays > 0 ? stays * mL_per_g(without) : 0);
}

void take_ratios(Standing& s, const Sums& sums) {
  if (s.gum_g > 0) s.gum_strength = s.gum_g / (s.gum_g + s.water_g);
  if (!(s.pigment_g.value > 0)) return;
  s.binder_ratio = scaled(quotient(s.binder_g, s.pigment_g), 10);
  if (!sums.densities_known) return;
  s.flow_put_in = quotient(s.liquid_mL, s.pigment_mL);
  s.flow_now = quotient(s.liquid_mL_now, s.pigment_mL);
  if (sums.oil_known) s.over_oil_point = s.liquid_mL_now.value / sums.oil_mL;
}

}

Standing stand(const std::vector<Portion>& contents, const Amount& water_lost) {
  Standing s;
  Sums sums;
  for (const Portion& portion : contents) {
    if (portion.material.parts.pigment > 0) add_pigment(s, sums, portion);
    if (portion.material.kind == Kind::binder) s.binder_g = s.binder_g + portion.grams;
    add_liquid(s, portion);
  }
  s.water_lost_mL = scaled(water_lost, water_mL_per_g);
  s.liquid_mL_now = s.liquid_mL_now - s.water_lost_mL;
  s.water_g -= water_lost.value;
  s.humectant_g = s.glycerin_g + s.honey_g;
  take_ratios(s, sums);
  return s;
}

Wet wet_of(const Standing& s) {
  return {s.gum_g, s.glycerin_g, s.honey_g, s.water_g, s.pigment_mL.value + s.liquid_mL_now.value};
}

}
