#include "paint/learn_facts.hpp"

#include <cmath>

namespace paint {

namespace {

struct Family {
  double kappa = 0, kappa_sd = 0; // ln of demand over r_oa
  double oil = 0, oil_sd = 0;     // ln r_oa over the catalogue's pigments; the 0.30s by hand
};

// Own estimate: where each figure is from, range.cpp says; a test holds the two together.
Family family_of(PigmentClass c) {
  switch (c) {
  case PigmentClass::mineral: return {0.60, 0.30, 0.12, 0.35};
  case PigmentClass::fine_mineral: return {0.80, 0.40, 0.12, 0.35};
  case PigmentClass::organic: return {1.20, 0.30, -0.23, 0.16};
  case PigmentClass::carbon: return {0.50, 0.45, 0.75, 0.30};
  case PigmentClass::effect: return {0.75, 0.50, 0.65, 0.30};
  case PigmentClass::extender: return {0.75, 0.50, -0.27, 0.31};
  case PigmentClass::unknown: return {0.75, 0.50, 0.04, 0.38};
  }
  return {};
}

constexpr double between_lots = 0.15; // of ln oil absorption, from memory

}

LearnPigment learn_facts(const Pigment& pigment, bool another_lot) {
  const Family family = family_of(pigment.family);
  const double point = oil_absorption_point(pigment);
  LearnPigment facts{family.oil, family.kappa, 0};
  double variance = 0;
  if (family.kappa_sd > std::exp(usual_theta()[at_pigment_sd].centre))
    variance += family.kappa_sd * family.kappa_sd;
  if (point > 0)
    facts.ln_oil = std::log(point);
  else
    variance += family.oil_sd * family.oil_sd;
  if (another_lot && point > 0) variance += between_lots * between_lots;
  facts.q = std::sqrt(variance);
  return facts;
}

}
