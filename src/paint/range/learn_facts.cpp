#include "paint/range/learn_facts.hpp"

#include "paint/range/range.hpp"

#include <cmath>

namespace paint {

namespace {

constexpr double between_lots = 0.15; // of ln oil absorption, from memory
// How far ln demand follows ln oil absorption within a class, and the sd of that: own choice,
// between what paste theory has (1) and what makers of one class differ by (0.2 to 0.3).
constexpr double follows = 0.5, follows_sd = 0.2;

}

LearnPigment learn_facts(const Pigment& pigment, bool another_lot) {
  const ClassPrior family = class_prior(pigment.family);
  const double point = oil_absorption_point(pigment);
  LearnPigment facts{family.oil, family.over_oil, 0};
  double variance = family.over_oil_sd * family.over_oil_sd;
  const auto add = [&](double sd) { variance += sd * sd; };
  if (point > 0) {
    const double off = std::log(point) - family.oil;
    facts.ln_oil += follows * off;
    add(follows_sd * off);
    if (another_lot) add(follows * between_lots);
  } else {
    add(follows * family.oil_sd);
  }
  facts.q = std::sqrt(variance);
  return facts;
}

}
