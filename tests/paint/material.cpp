#include "paint/material.hpp"

#include "random.hpp"
#include "words/paint_says.hpp"

#include <cmath>
#include <limits>

namespace material_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

double sum(const Parts& p) {
  return p.pigment + p.gum + p.water + p.glycerin + p.honey + p.alcohol + p.other;
}

}

TEST_CASE("names of classes come back from their words") {
  for (PigmentClass c :
       {PigmentClass::mineral, PigmentClass::fine_mineral, PigmentClass::organic,
        PigmentClass::carbon, PigmentClass::effect, PigmentClass::extender, PigmentClass::unknown})
    CHECK(pigment_class_named(name_of(c)) == c);
  CHECK(pigment_class_named("rare").error().args == words::Args{"rare"});
}

TEST_CASE("a recipe's parts sum to 1 and count bought water as water") {
  const Parts p =
      *parts_of({.gum = 100, .water = 200, .honey = 15, .glycerin = 8, .alcohol = 3, .other = 1});
  CHECK(sum(p) == doctest::Approx(1));
  CHECK(p.water == doctest::Approx((200 + 12 + 0.17 * 15) / 327));
  CHECK(*parts_of({.gum = 1, .water = 2}) == *parts_of({.gum = 2, .water = 4}));
}

TEST_CASE("a recipe that cannot be is refused with its reason") {
  CHECK(parts_of({}).error().what == Say::empty_recipe);
  CHECK(parts_of({.gum = 1, .water = -2}).error().what == Say::negative_amount);
  CHECK(parts_of({.gum = std::nan("")}).error().what == Say::not_a_number);
  CHECK(parts_of({.gum = std::numeric_limits<double>::infinity()}).error().what ==
        Say::not_a_number);
}

TEST_CASE("volumes add: half water and half pigment by mass") {
  const Material m{Kind::other, {.pigment = 0.5, .water = 0.5}, {.g_per_mL = 4}};
  CHECK(g_per_mL(m) == doctest::Approx(1 / (0.5 / 4 + 0.5 / 0.99821)));
  // The liquid part alone is water, whatever swims in it.
  CHECK(mL_per_g(m.parts) == doctest::Approx(1 / 0.99821));
}

TEST_CASE("what has no density says 0") {
  CHECK(g_per_mL({Kind::pigment, {.pigment = 1}, {}}) == 0);
  CHECK(g_per_mL({Kind::pigment, {.pigment = 1}, {.g_per_mL = std::nan("")}}) == 0);
  CHECK(g_per_mL({}) == 0);
  CHECK(mL_per_g({.pigment = 1}) == 0);
  CHECK(usual_g_per_mL(Kind::pigment) == 0);
}

TEST_CASE("no oil absorption or no density: no oil-absorption point") {
  CHECK(oil_absorption_point({.g_per_mL = 4.2}) == 0);
  CHECK(oil_absorption_point({.oil_g_per_100g = 30}) == 0);
  CHECK(oil_absorption_point({.g_per_mL = -4, .oil_g_per_100g = 30}) == 0);
  CHECK(oil_absorption_point({.g_per_mL = std::nan(""), .oil_g_per_100g = 30}) == 0);
}

TEST_CASE("any recipe and any blend") {
  holds("a recipe's parts sum to 1", [] {
    const Parts p = *parts_of({.gum = between(0, 9),
                               .water = between(0.1, 9),
                               .honey = between(0, 9),
                               .glycerin = between(0, 9),
                               .alcohol = between(0, 9),
                               .other = between(0, 9)});
    RC_ASSERT(std::abs(sum(p) - 1) < 1e-12);
  });
  holds("a paint is denser than its liquid and lighter than its pigment", [] {
    const double solid = between(0.01, 0.99);
    const Material m{
        Kind::other, {.pigment = solid, .water = 1 - solid}, {.g_per_mL = between(1.1, 8)}};
    RC_ASSERT(g_per_mL(m) > 0.99821);
    RC_ASSERT(g_per_mL(m) < m.pigment.g_per_mL);
  });
  holds("the oil-absorption point grows with oil and with density", [] {
    const Pigment p{.g_per_mL = between(0.5, 20), .oil_g_per_100g = between(1, 200)};
    Pigment more = p;
    more.oil_g_per_100g *= 2;
    RC_ASSERT(std::abs(oil_absorption_point(more) - 2 * oil_absorption_point(p)) < 1e-9);
    more.g_per_mL *= 1.5;
    RC_ASSERT(std::abs(oil_absorption_point(more) - 3 * oil_absorption_point(p)) < 1e-9);
  });
}

}
