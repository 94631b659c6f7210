// Making binder and changing its strength: worked examples from outside, and what cannot be.
#include "paint/making.hpp"

#include "paint/binder.hpp"
#include "random.hpp"
#include "words/paint_says.hpp"

#include <cmath>
#include <limits>

namespace making_test {

using namespace paint;
using doctest::Approx;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");

template <class T>
words::Sentence fault(const words::Result<T>& r) {
  return r ? words::Sentence{} : r.error().what;
}

bool near(double a, double b) { return std::abs(a - b) <= 1e-9 * (1 + std::abs(a) + std::abs(b)); }

const Recipe with_honey{.gum = 1, .water = 2, .honey = 0.25};

// Shares by mass of a weaker and a stronger one that together are as strong as wanted, each by how
// far the other lies from it. The examples of the courses below hold it, and it holds to_strength.
struct Mix {
  double weaker = 0, stronger = 0;
};
Mix alligation(double weaker, double stronger, double wanted) {
  return {(stronger - wanted) / (stronger - weaker), (wanted - weaker) / (stronger - weaker)};
}

}

// Pharmaceutical Calculations, US Army Medical Department course MD0802, edition 100, section 2-13:
// to 300 mL of 70 % water is added to make 40 %; the page has 4 parts to 3, and 225 mL.
TEST_CASE("a course's example of alligation: water to a stronger one") {
  const Mix mix = alligation(0, 0.70, 0.40);
  CHECK(mix.weaker / mix.stronger == Approx(3.0 / 4));
  CHECK(300 * mix.weaker / mix.stronger == Approx(225));
}

// A rationale printed beside a question of a pharmacy course (read on a page of answers): 2.5 % to
// 240 g of 0.25 % makes 1 % with 120 g.
TEST_CASE("a printed example of alligation: a stronger one to a weaker") {
  const Mix mix = alligation(0.0025, 0.025, 0.01);
  CHECK(240 * mix.stronger / mix.weaker == Approx(120));
}

// By hand: 60 g of gum in 120 g of water with 15 g of honey are 195 g, of which 7.5 % stay in cloth
// and pot: 180.4 g.
TEST_CASE("a recipe for the gum there is") {
  const auto scaled = scaled_to_gum(with_honey, 60);
  REQUIRE(scaled);
  CHECK(*scaled == Recipe{.gum = 60, .water = 120, .honey = 15});
  CHECK(sum_of(*scaled) == 195);
  CHECK(gets_into_jar(195) == Approx(180.375));
}

// By hand, gum with 12 % of moisture: 100 g of gum 1 : 2 hold 29.333 g of dry gum. To 25 %: 117.333
// g in all, 17.333 of them water more. To 33 %: with x g of gum 29.333 + 0.88 x = 0.33 (100 + x),
// so x = 3.667 / 0.55 = 6.667.
TEST_CASE("a jar is made thinner with water, stronger with gum") {
  const Recipe binder{.gum = 1, .water = 2};
  CHECK(strength_of(binder) == Approx(0.88 / 3));
  const auto thinner = to_strength(binder, 100, 0.25), stronger = to_strength(binder, 100, 0.33);
  REQUIRE(thinner);
  REQUIRE(stronger);
  CHECK(thinner->water_g == Approx(17.3333).epsilon(1e-5));
  CHECK(thinner->gum_g == 0);
  CHECK(stronger->gum_g == Approx(6.6667).epsilon(1e-5));
  CHECK(stronger->water_g == 0);
  CHECK(strength_of(with(binder, 100, *thinner)) == Approx(0.25));
  CHECK(strength_of(with(binder, 100, *stronger)) == Approx(0.33));
  CHECK(to_strength(binder, 100, strength_of(binder))->water_g == Approx(0));
}

// By hand: of 120 g of gum 1 : 2 (40 gum, 80 water) 12 g of water go: 35.2 g of dry gum in 108 g.
TEST_CASE("a jar that stood open is stronger by the water that left it") {
  const auto left = dried_by({.gum = 1, .water = 2}, 120, 12);
  REQUIRE(left);
  CHECK(left->gum == Approx(40));
  CHECK(left->water == Approx(68));
  CHECK(strength_of(*left) == Approx(35.2 / 108));
  CHECK(fault(dried_by({.gum = 1, .water = 2}, 120, 80)) == Say::more_water_than_there_is);
  CHECK(fault(dried_by({.gum = 1, .water = 2}, 120, -1)) == Say::negative_amount);
  CHECK(fault(dried_by({.gum = 1, .water = 2}, 120, none)) == Say::not_a_number);
}

TEST_CASE("gum in spoons is a guess with its width") {
  const auto gum = gum_in_spoons(4, 5);
  REQUIRE(gum);
  CHECK(gum->value == Approx(10));
  CHECK(uncertainty(*gum) == Approx(3));
  CHECK(fault(gum_in_spoons(0, 5)) == Say::measure_not_positive);
  CHECK(fault(gum_in_spoons(1001, 5)) == Say::amount_too_large);
  CHECK(fault(gum_in_spoons(900, 900)) == Say::amount_too_large);
  CHECK(fault(gum_in_spoons(none, 5)) == Say::not_a_number);
}

TEST_CASE("no gum, less than none, more than anybody has, and strengths that cannot be had") {
  CHECK(fault(scaled_to_gum(with_honey, 0)) == Say::measure_not_positive);
  CHECK(fault(scaled_to_gum(with_honey, -5)) == Say::measure_not_positive);
  CHECK(fault(scaled_to_gum(with_honey, none)) == Say::not_a_number);
  CHECK(fault(scaled_to_gum(with_honey, 1e9)) == Say::amount_too_large);
  CHECK(fault(scaled_to_gum({.water = 1}, 60)) == Say::empty_recipe);
  CHECK(fault(to_strength(with_honey, 100, 1.5)) == Say::not_a_share);
  CHECK(fault(to_strength(with_honey, 100, 0.56)) == Say::strength_out_of_reach);
  CHECK(fault(to_strength(with_honey, 100, 0)) == Say::strength_out_of_reach);
  CHECK(fault(to_strength(with_honey, 0, 0.2)) == Say::measure_not_positive);
  CHECK(fault(to_strength({.water = 1}, 100, 0)) == Say::strength_out_of_reach);
  CHECK(strength_of({}) == 0);
}

// The same sums in two ways: parts by alligation here, the gum that stays as much in binder.hpp.
TEST_CASE("what alligation says is what keeps the gum") {
  holds("water and gum", [] {
    const Recipe r{.gum = between(50, 150),
                   .water = between(100, 400),
                   .honey = between(0, 60),
                   .glycerin = between(0, 60)};
    const double grams = between(1, 500), wanted = between(0.1, 0.5);
    const Parts parts = *parts_of(r);
    const auto in = to_strength(r, grams, wanted);
    RC_ASSERT(in.has_value());
    const bool thinner = wanted <= parts.gum;
    const double of_gum = 1 - gum_moisture;
    const Mix mix =
        thinner ? alligation(0, parts.gum, wanted) : alligation(parts.gum, of_gum, wanted);
    if (thinner)
      RC_ASSERT(near(in->water_g, grams * mix.weaker / mix.stronger));
    else
      RC_ASSERT(near(in->gum_g, grams * mix.stronger / mix.weaker));
    RC_ASSERT(near(strength_of(with(r, grams, *in)), wanted));
  });
}

}
