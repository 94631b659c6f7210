#include "paint/range/learn_facts.hpp"

#include "paint/range/range.hpp"

#include <cmath>

namespace paint {

namespace {

constexpr double between_lots = 0.15; // of ln oil absorption, from memory

}

LearnPigment learn_facts(const Pigment& pigment, bool another_lot) {
  const ClassPrior family = class_prior(pigment.family);
  const double point = oil_absorption_point(pigment);
  LearnPigment facts{family.oil, family.over_oil, 0};
  double variance = 0;
  if (family.over_oil_sd > std::exp(usual_theta()[at_pigment_sd].centre))
    variance += family.over_oil_sd * family.over_oil_sd;
  if (point > 0)
    facts.ln_oil = std::log(point);
  else
    variance += family.oil_sd * family.oil_sd;
  if (another_lot && point > 0) variance += between_lots * between_lots;
  facts.q = std::sqrt(variance);
  return facts;
}

}
