#include "paint/range/helping.hpp"

#include "paint/range/learn_facts.hpp"

#include <doctest/doctest.h>

namespace helping_test {

using namespace paint;

namespace {

Prediction untaught(PigmentClass family, double density = 4.2, double oil = 30) {
  const Pigment pigment{
      .g_per_mL = density, .oil_g_per_100g = oil, .oil_u = 0.15 * oil, .family = family};
  return *predict(*learn({}), {{{-1, 1, learn_facts(pigment)}}, {}, 0});
}

// A paint that was felt often near a flow of 2.
Prediction taught() {
  Prediction now = untaught(PigmentClass::mineral);
  for (const auto& [flow, felt] : {std::pair{1.6, 1}, {1.9, 2}, {2.0, 2}, {2.1, 2}, {2.4, 3}})
    now = *after(now, {flow, 0, felt});
  return now;
}

constexpr PigmentClass classes[] = {
    PigmentClass::mineral, PigmentClass::fine_mineral, PigmentClass::organic, PigmentClass::carbon,
    PigmentClass::effect,  PigmentClass::extender,     PigmentClass::unknown};

}

TEST_CASE("a first helping is half to seven tenths of what a paint is known to want") {
  const Prediction prediction = taught();
  const double wants = mL_at_share(prediction, 0.5);
  const Helping helping = first_helping(prediction);
  CHECK(helping.low == doctest::Approx(0.5 * wants));
  CHECK(helping.high == doctest::Approx(0.7 * wants));
}

TEST_CASE("of no class is a first helping too loose by a chance of more than 4 %") {
  for (const PigmentClass family : classes)
    for (const double density : {1.5, 4.2, 8.0}) {
      CAPTURE(static_cast<int>(family));
      CAPTURE(density);
      const Prediction prediction = untaught(family, density);
      const Helping helping = first_helping(prediction);
      CHECK(helping.low > 0);
      CHECK(helping.low / helping.high == doctest::Approx(0.5 / 0.7));
      CHECK(helping.high <= 0.7 * mL_at_share(prediction, 0.5) * 1.0001);
      CHECK(chance_too_loose(prediction, {helping.high, 0}) <= allowed_too_loose * 1.0001);
    }
}

TEST_CASE("made again, it is what that batch took first, but for the same limit") {
  const Prediction prediction = taught();
  CHECK(first_helping(prediction, 1.2).low == 1.2);
  CHECK(first_helping(prediction, 1.2).high == 1.2);
  const Helping flooded = first_helping(prediction, 4);
  CHECK(chance_too_loose(prediction, {flooded.high, 0}) <= allowed_too_loose * 1.0001);
  CHECK(first_helping(prediction, 0.05).high == first_helping(prediction).high); // a drop
  CHECK(first_helping(Prediction{}).high == 0);
}

TEST_CASE(
    "what a recipe takes in all bounds the first helping, and more than usual changes nothing") {
  const Prediction prediction = taught();
  const double wants = mL_at_share(prediction, 0.5);
  CHECK(first_helping(prediction, 0, 0.4 * wants).low == doctest::Approx(0.2 * wants));
  CHECK(first_helping(prediction, 0, 0.4 * wants).high == doctest::Approx(0.28 * wants));
  CHECK(first_helping(prediction, 0.8 * wants, 0.4 * wants).high == doctest::Approx(0.4 * wants));
  CHECK(first_helping(prediction, 0, 9 * wants).high == first_helping(prediction).high);
}

}
