#include "paint/binder.hpp"

#include "random.hpp"
#include "words/paint_says.hpp"

#include <cmath>

namespace binder_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");

template <class T>
words::Sentence fault(const words::Result<T>& r) {
  return r ? words::Sentence{} : r.error().what;
}

bool near(double a, double b) { return std::abs(a - b) <= 1e-9 * (1 + std::abs(a) + std::abs(b)); }

Parts any_binder() {
  return *parts_of({.gum = between(50, 150),
                    .water = between(100, 400),
                    .honey = between(0, 60),
                    .glycerin = between(0, 60),
                    .alcohol = between(0, 10),
                    .other = between(0, 3)});
}

const Parts one_to_two = *parts_of({.gum = 1, .water = 2});

}

TEST_CASE("density lies between the lightest and the densest part") {
  holds("glycerin in water", [] {
    const double w = between(0, 1);
    const double d = 1 / mL_per_g({.water = 1 - w, .glycerin = w});
    RC_ASSERT(d >= usual_g_per_mL(Kind::water) - 1e-12);
    RC_ASSERT(d <= usual_g_per_mL(Kind::glycerin) + 1e-12);
  });
}

TEST_CASE("a wanted strength is reached and the mass is kept") {
  holds("with water", [] {
    const Parts p = any_binder();
    const double grams = between(1, 500), wanted = p.gum * between(0.2, 1);
    const auto water = water_to_reach(p, grams, wanted);
    RC_ASSERT(water.has_value());
    RC_ASSERT(*water >= -1e-9);
    RC_ASSERT(near(p.gum * grams / (grams + *water), wanted));
  });
  holds("with gum", [] {
    const Parts p = any_binder();
    const double moisture = between(0.05, 0.15);
    const double grams = between(1, 500), wanted = between(p.gum, 0.55);
    const auto gum = gum_to_reach(p, grams, wanted, moisture);
    RC_ASSERT(gum.has_value());
    RC_ASSERT(near((p.gum * grams + *gum * (1 - moisture)) / (grams + *gum), wanted));
  });
  CHECK(fault(water_to_reach(one_to_two, 100, 0.3)) == Say::strength_out_of_reach);
  CHECK(fault(water_to_reach(one_to_two, 100, 0)) == Say::strength_out_of_reach);
  CHECK(fault(water_to_reach(one_to_two, 100, none)) == Say::not_a_number);
  CHECK(fault(water_to_reach(one_to_two, -1, 0.2)) == Say::negative_amount);
  CHECK(fault(water_to_reach(one_to_two, none, 0.2)) == Say::not_a_number);
  CHECK(fault(water_to_reach({}, 1, 0.2)) == Say::empty_recipe);
  CHECK(fault(water_to_reach({.gum = 0.5, .water = 0.6}, 1, 0.2)) == Say::not_a_share);
  CHECK(fault(gum_to_reach(one_to_two, 100, 0.2)) == Say::strength_out_of_reach);
  CHECK(fault(gum_to_reach(one_to_two, 100, 0.56)) == Say::strength_out_of_reach);
  CHECK(fault(gum_to_reach(one_to_two, 100, 1.5)) == Say::not_a_share);
  CHECK(fault(gum_to_reach(one_to_two, 100, 0.4, 0.5)) == Say::not_a_share);
}

TEST_CASE("a binder's card keeps within limits of honey, glycerin and water to gum") {
  const auto says = [](const Recipe& r) {
    const auto wrong = fault_of_recipe(r);
    return wrong ? wrong->what : words::Sentence{};
  };
  CHECK(says({.gum = 10, .water = 20, .honey = 5}) == words::Sentence{});
  CHECK(says({.gum = 10, .water = 200, .honey = 30, .glycerin = 30}) == words::Sentence{});
  CHECK(says({.gum = 10, .water = 20, .honey = 999}) == Say::recipe_honey);
  CHECK(says({.gum = 10, .water = 20, .glycerin = 31}) == Say::recipe_glycerin);
  CHECK(says({.gum = 10, .water = 201}) == Say::recipe_water);
  CHECK(says({.honey = 1}) == Say::recipe_honey);
  CHECK(fault_of_recipe({.gum = 10, .honey = 999})->args ==
        words::Args{words::Number(999, 1), words::Number(10, 1), words::Number(3, 0)});
}

}
