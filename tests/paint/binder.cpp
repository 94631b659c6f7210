#include "paint/binder.hpp"

#include "paint/honey.hpp"
#include "random.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

using namespace paint;
using words::Say;

namespace {

const double none = std::nan("");
const double infinite = std::numeric_limits<double>::infinity();

template <class T>
Say fault(const words::Result<T>& r) {
  return r ? Say::none : r.error().what;
}

bool near(double a, double b) { return std::abs(a - b) <= 1e-9 * (1 + std::abs(a) + std::abs(b)); }

double sum(const Parts& p) {
  return p.pigment + p.gum + p.water + p.glycerin + p.honey + p.alcohol + p.other;
}

bool same(const Parts& a, const Parts& b) {
  return near(a.gum, b.gum) && near(a.water, b.water) && near(a.glycerin, b.glycerin) &&
         near(a.honey, b.honey) && near(a.alcohol, b.alcohol) && near(a.other, b.other);
}

Ingredients any_recipe() {
  return {.gum = between(50, 150),
          .water = between(100, 400),
          .honey = between(0, 60),
          .sugar = between(0, 30),
          .glycerin = between(0, 60),
          .ox_gall = between(0, 5),
          .alcohol = between(0, 10),
          .preservative = between(0, 3),
          .gum_moisture = between(0.08, 0.16),
          .honey_moisture = between(0.14, 0.22)};
}

const Parts one_to_two = *mixed({.gum = 1, .water = 2});

}

TEST_CASE("what goes into the pot is what is in it") {
  holds("parts sum to 1 and do not depend on the size of the pot", [] {
    const Ingredients r = any_recipe();
    const Parts p = *mixed(r);
    RC_ASSERT(near(sum(p), 1));
    Ingredients twice = r;
    for (double* amount : {&twice.gum, &twice.water, &twice.honey, &twice.sugar, &twice.glycerin,
                           &twice.ox_gall, &twice.alcohol, &twice.preservative})
      *amount *= 2;
    RC_ASSERT(same(*mixed(twice), p));
  });
  holds("a card's recipe is the same liquid", [] {
    const Ingredients r = any_recipe();
    const auto card = recipe_of(r);
    RC_ASSERT(card.has_value());
    RC_ASSERT(same(*parts_of(*card), *mixed(r)));
  });
  holds("by volume and back by mass", [] {
    const Ingredients r = any_recipe();
    const double heap = between(0.4, 0.9);
    RC_ASSERT(same(*mixed(*weighed_from(*measured_from(r, heap), heap)), *mixed(r)));
  });
  holds("the facts add up", [] {
    const Parts p = *mixed(any_recipe());
    const auto f = facts_of(p);
    RC_ASSERT(f.has_value());
    RC_ASSERT(near(f->solids, f->gum + f->humectant + p.other));
    RC_ASSERT(near(*f->humectant_per_gum, f->humectant / f->gum));
    RC_ASSERT(f->g_per_mL > 0.95);
    RC_ASSERT(f->g_per_mL < 1.5);
  });
  holds("density lies between the lightest and the densest part", [] {
    const double w = between(0, 1);
    const double d = 1 / mL_per_g({.water = 1 - w, .glycerin = w});
    RC_ASSERT(d >= usual_g_per_mL(Kind::water) - 1e-12);
    RC_ASSERT(d <= usual_g_per_mL(Kind::glycerin) + 1e-12);
  });
  CHECK_FALSE(facts_of({.water = 1})->humectant_per_gum);
  CHECK(facts_of({.water = 1})->solids == 0);
}

TEST_CASE("pots that cannot be") {
  CHECK(fault(mixed({})) == Say::empty_recipe);
  CHECK(fault(mixed({.gum = none})) == Say::not_a_number);
  CHECK(fault(mixed({.gum = 1, .water = infinite})) == Say::not_a_number);
  CHECK(fault(mixed({.gum = 1e308, .water = 1e308})) == Say::not_a_number);
  CHECK(fault(mixed({.gum = 1, .water = -1})) == Say::negative_amount);
  CHECK(fault(mixed({.gum = 1, .gum_moisture = 0.31})) == Say::not_a_share);
  CHECK(fault(mixed({.gum = 1, .gum_moisture = none})) == Say::not_a_number);
  CHECK(fault(mixed({.honey = 1, .honey_moisture = 0.09})) == Say::not_a_share);
  CHECK(fault(recipe_of({})) == Say::empty_recipe);
  CHECK(fault(recipe_of({.gum = 1, .gum_moisture = 0})) == Say::recipe_too_dry);
  CHECK(fault(recipe_of({.gum = 1, .water = 1, .gum_moisture = 0})) == Say::none);
  CHECK(fault(weighed_from({.gum = 1}, 0)) == Say::measure_not_positive);
  CHECK(fault(weighed_from({.gum = 1}, none)) == Say::measure_not_positive);
  CHECK(fault(weighed_from({.water = 1}, 0)) == Say::none);
  CHECK(fault(measured_from({.gum = -1}, 0.7)) == Say::negative_amount);
  CHECK(fault(facts_of({})) == Say::empty_recipe);
  CHECK(fault(facts_of({.gum = none})) == Say::not_a_number);
  CHECK(fault(facts_of({.gum = 0.5, .water = 0.6})) == Say::not_a_share);
  CHECK(fault(facts_of({.pigment = 0.5, .water = 0.5})) == Say::not_a_share);
}

TEST_CASE("a wanted strength is reached and the mass is kept") {
  holds("with water", [] {
    const Parts p = *mixed(any_recipe());
    const double grams = between(1, 500), wanted = p.gum * between(0.2, 1);
    const auto water = water_to_reach(p, grams, wanted);
    RC_ASSERT(water.has_value());
    RC_ASSERT(*water >= -1e-9);
    RC_ASSERT(near(p.gum * grams / (grams + *water), wanted));
  });
  holds("with gum", [] {
    const Parts p = *mixed(any_recipe());
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
  CHECK(fault(gum_to_reach(one_to_two, 100, 0.2)) == Say::strength_out_of_reach);
  CHECK(fault(gum_to_reach(one_to_two, 100, 0.56)) == Say::strength_out_of_reach);
  CHECK(fault(gum_to_reach(one_to_two, 100, 1.5)) == Say::not_a_share);
  CHECK(fault(gum_to_reach(one_to_two, 100, 0.4, 0.5)) == Say::not_a_share);
}

TEST_CASE("a binder that lost water") {
  holds("keeps everything else, found by the scale or by its density", [] {
    const Parts p = *mixed(any_recipe());
    const double then = between(10, 500), gone = p.water * between(0, 0.6);
    const auto now = weighed_again(p, then, then * (1 - gone));
    RC_ASSERT(now.has_value());
    RC_ASSERT(near(sum(*now), 1));
    RC_ASSERT(near(now->gum * (1 - gone), p.gum));
    RC_ASSERT(near(now->water * (1 - gone), p.water - gone));
    const auto found = thickened_to(p, 1 / mL_per_g(*now));
    RC_ASSERT(found.has_value());
    RC_ASSERT(std::abs(found->gum - now->gum) < 1e-6);
  });
  holds("denser is stronger", [] {
    const double a = between(1.132, 1.6), b = between(1.132, 1.6);
    RC_ASSERT(thickened_to(one_to_two, std::max(a, b))->gum >=
              thickened_to(one_to_two, std::min(a, b))->gum);
  });
  CHECK(same(*weighed_again(one_to_two, 10, 10), one_to_two));
  CHECK(fault(weighed_again(one_to_two, 10, 11)) == Say::bottle_gained);
  CHECK(fault(weighed_again(one_to_two, 10, 2)) == Say::water_more_than_there);
  CHECK(fault(weighed_again({.water = 1}, 10, 0)) == Say::water_more_than_there);
  CHECK(fault(weighed_again(one_to_two, 0, 0)) == Say::empty_recipe);
  CHECK(fault(weighed_again(one_to_two, none, 1)) == Say::not_a_number);
  CHECK(fault(weighed_again({}, 2, 1)) == Say::empty_recipe);
  CHECK(fault(thickened_to(one_to_two, 1.1)) == Say::density_out_of_reach);
  CHECK(fault(thickened_to(one_to_two, 1.7)) == Say::density_out_of_reach);
  CHECK(fault(thickened_to(one_to_two, none)) == Say::not_a_number);
  CHECK(fault(thickened_to({}, 1.1)) == Say::empty_recipe);
}

TEST_CASE("a refractometer on honey") {
  holds("more water bends light less; a warmer reading is corrected upwards", [] {
    const double n = between(1.4745, 1.5045), t = between(20.1, 21.9);
    RC_ASSERT(*honey_moisture(n) > *honey_moisture(std::min(1.505, n + 0.0005)));
    RC_ASSERT(*honey_moisture(n, t) < *honey_moisture(n, 20));
  });
  CHECK(fault(honey_moisture(1.47)) == Say::honey_index_out_of_range);
  CHECK(fault(honey_moisture(1.51)) == Say::honey_index_out_of_range);
  CHECK(fault(honey_moisture(none)) == Say::not_a_number);
  CHECK(fault(honey_moisture(1.49, none)) == Say::not_a_number);
  CHECK(fault(honey_moisture(1.49, 50)) == Say::temperature_out_of_range);
  CHECK(fault(honey_moisture(1.49, infinite)) == Say::not_a_number);
}

TEST_CASE("a binder's card keeps within limits of honey, glycerin and water to gum") {
  const auto says = [](const Recipe& r) {
    const auto wrong = fault_of_recipe(r);
    return wrong ? wrong->what : Say::none;
  };
  CHECK(says({.gum = 10, .water = 20, .honey = 5}) == Say::none);
  CHECK(says({.gum = 10, .water = 200, .honey = 30, .glycerin = 30}) == Say::none);
  CHECK(says({.gum = 10, .water = 20, .honey = 999}) == Say::recipe_honey);
  CHECK(says({.gum = 10, .water = 20, .glycerin = 31}) == Say::recipe_glycerin);
  CHECK(says({.gum = 10, .water = 201}) == Say::recipe_water);
  CHECK(says({.honey = 1}) == Say::recipe_honey);
  CHECK(fault_of_recipe({.gum = 10, .honey = 999})->args ==
        std::vector<std::string>{"999.0", "10.0", "3"});
}
