#include "paint/range/learn_facts.hpp"
#include "paint/range/range.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace learn_facts_test {

using namespace paint;

TEST_CASE("the learnt range begins where the class lies") {
  for (const PigmentClass c :
       {PigmentClass::mineral, PigmentClass::fine_mineral, PigmentClass::organic,
        PigmentClass::carbon, PigmentClass::effect, PigmentClass::extender, PigmentClass::unknown})
    for (const double oil : {0.0, 30.0}) {
      Pigment pigment{.g_per_mL = 3, .oil_g_per_100g = oil};
      pigment.family = c;
      const LearnPigment facts = learn_facts(pigment);
      const ClassPrior prior = class_prior(c);
      const double point = oil_absorption_point(pigment);
      CHECK(facts.kappa == prior.over_oil);
      const double off = point > 0 ? std::log(point) - prior.oil : 0;
      CHECK(std::abs(facts.ln_oil - (prior.oil + 0.5 * off)) < 1e-12);
      CHECK(std::abs(facts.q - std::hypot(prior.over_oil_sd, 0.2 * off,
                                          point > 0 ? 0 : 0.5 * prior.oil_sd)) < 1e-12);
    }
}

TEST_CASE("another lot's oil absorption is known less well, its absence least") {
  Pigment blue{.g_per_mL = 4.2, .oil_g_per_100g = 30, .family = PigmentClass::mineral};
  const double known = learn_facts(blue).q, other_lot = learn_facts(blue, true).q;
  CHECK(std::abs(known - 0.15) < 0.005);
  CHECK(std::abs(other_lot - std::hypot(known, 0.5 * 0.15)) < 1e-12);
  blue.oil_g_per_100g = 0;
  CHECK(std::abs(learn_facts(blue).q - std::hypot(0.15, 0.5 * 0.35)) < 1e-12);
  CHECK(learn_facts(blue, true).q == learn_facts(blue).q);
}

}
