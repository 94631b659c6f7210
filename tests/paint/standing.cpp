#include "paint/standing.hpp"

#include "random.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace standing_test {

using namespace paint;

namespace {

const Pigment blue{.g_per_mL = 4, .g_per_mL_u = 0.2, .oil_g_per_100g = 30};
const Pigment white{.g_per_mL = 2, .g_per_mL_u = 0, .oil_g_per_100g = 60};
const Material blue_powder{Kind::pigment, {.pigment = 1}, blue};
const Material white_powder{Kind::pigment, {.pigment = 1}, white};
const Material water{Kind::water, {.water = 1}, {}};
const Material binder{Kind::binder, *parts_of({.gum = 1, .water = 2, .honey = 0.3}), {}};

}

TEST_CASE("nothing anywhere: no ratios, all zero") {
  const Standing s = stand(std::vector<Portion>{}, {});
  CHECK_FALSE(s.binder_ratio);
  CHECK_FALSE(s.flow_put_in);
  CHECK_FALSE(s.flow_now);
  CHECK_FALSE(s.over_oil_point);
  CHECK_FALSE(s.gum_strength);
  CHECK(s.liquid_mL_now.value == 0);
}

TEST_CASE("binder before pigment has a strength and no ratio") {
  const Standing s = stand({{binder, exact(8), "b"}}, {});
  CHECK_FALSE(s.binder_ratio);
  CHECK_FALSE(s.flow_now);
  CHECK(s.gum_strength->value ==
        doctest::Approx(binder.parts.gum / (binder.parts.gum + binder.parts.water)));
}

TEST_CASE("ten grams of pigment, six of binder, one of water, half a gram dried off") {
  const Standing s =
      stand({{blue_powder, exact(10), "p"}, {binder, exact(6), "b"}, {water, exact(1), "w"}},
            {0.5, 0, {{"evaporation", 0.2}}});
  CHECK(s.binder_ratio->value == doctest::Approx(6));
  CHECK(s.liquid_g.value == doctest::Approx(7));
  const double put_in = 6 * mL_per_g(binder.parts) + 1 / 0.99821;
  CHECK(s.flow_put_in->value == doctest::Approx(put_in / 2.5));
  CHECK(s.flow_now->value == doctest::Approx((put_in - 0.5 / 0.99821) / 2.5));
  CHECK(s.over_oil_point->value == doctest::Approx(s.flow_now->value / (30 * 4 / 93.5)));
  CHECK(s.water_g.value == doctest::Approx(6 * binder.parts.water + 0.5));
  CHECK(s.humectant_to_gum->value == doctest::Approx(binder.parts.honey / binder.parts.gum));
  CHECK(s.water_lost_mL.shares.at("evaporation") == doctest::Approx(0.2 / 0.99821));
  CHECK(s.flow_now->shares.at("evaporation") < 0);
  CHECK(s.flow_put_in->shares.count("evaporation") == 0);
}

TEST_CASE("a pigment's density error is shared by all its portions") {
  const Standing once = stand({{blue_powder, exact(10), "p"}}, {});
  const Standing twice = stand({{blue_powder, exact(4), "p"}, {blue_powder, exact(6), "p"}}, {});
  CHECK(uncertainty(twice.pigment_mL) == doctest::Approx(uncertainty(once.pigment_mL)));
  CHECK(once.pigment_mL.shares.at("density:p") == doctest::Approx(-2.5 * 0.05));
  const Standing two = stand({{blue_powder, exact(5), "p"}, {blue_powder, exact(5), "q"}}, {});
  CHECK(uncertainty(two.pigment_mL) < uncertainty(once.pigment_mL));
}

TEST_CASE("a denser truth makes more flow: the signs of the shares") {
  const Standing s = stand({{blue_powder, exact(10), "p"}, {water, {5, 0, {{"d", 0.5}}}, "w"}}, {});
  CHECK(s.flow_now->shares.at("density:p") > 0);
  CHECK(s.flow_now->shares.at("d") > 0);
  CHECK(s.flow_now->shares.at("d") / s.flow_now->value == doctest::Approx(0.1));
}

TEST_CASE("paint added to pigment counts on both sides") {
  const Material paste{Kind::other, {.pigment = 0.5, .gum = 0.2, .water = 0.3}, blue};
  const Standing s = stand({{paste, exact(10), "old"}}, {});
  CHECK(s.pigment_g.value == 5);
  CHECK(s.liquid_g.value == 5);
  CHECK(s.binder_g.value == 0);
  CHECK(s.gum_g.value == doctest::Approx(2));
  CHECK(s.flow_now->value == doctest::Approx(5 * mL_per_g(paste.parts) / 1.25));
}

TEST_CASE("two pigments: oil-absorption points add by volume") {
  const Standing s = stand(
      {{blue_powder, exact(4), "b"}, {white_powder, exact(2), "w"}, {water, exact(3), "d"}}, {});
  const double oil_mL = 1 * 30 * 4 / 93.5 + 1 * 60 * 2 / 93.5;
  CHECK(s.over_oil_point->value == doctest::Approx(3 / 0.99821 / oil_mL));
}

TEST_CASE("what is not known leaves out only what rests on it") {
  Material no_oil = blue_powder;
  no_oil.pigment.oil_g_per_100g = 0;
  const Standing half =
      stand({{blue_powder, exact(5), "p"}, {no_oil, exact(5), "q"}, {binder, exact(3), "b"}}, {});
  CHECK(half.flow_now);
  CHECK_FALSE(half.over_oil_point);
  Material no_density = blue_powder;
  no_density.pigment.g_per_mL = 0;
  const Standing heavy = stand({{no_density, exact(5), "q"}, {binder, exact(3), "b"}}, {});
  CHECK(heavy.binder_ratio->value == doctest::Approx(6));
  CHECK_FALSE(heavy.flow_now);
}

TEST_CASE("alcohol flows while it is there") {
  const Material spirit{Kind::other, {.water = 0.3, .alcohol = 0.7}, {}};
  const std::vector<Portion> both{{blue_powder, exact(4), "p"}, {spirit, exact(10), "s"}};
  const Standing fresh = stand(both, {}, exact(7));
  CHECK(fresh.liquid_mL.value == doctest::Approx(3 / 0.99821 + 7 / 0.7893));
  CHECK(fresh.liquid_mL_now.value == doctest::Approx(fresh.liquid_mL.value));
  CHECK(stand(both, {}, exact(0)).liquid_mL_now.value == doctest::Approx(3 / 0.99821));
  const Material neat{Kind::other, {.alcohol = 1}, {}};
  CHECK(stand({{neat, exact(10), "s"}}, {}).liquid_mL_now.value == doctest::Approx(0));
}

TEST_CASE("not-a-number is not hidden, more lost than there was shows below zero") {
  CHECK(std::isnan(stand({{water, exact(std::nan("")), "w"}}, {}).liquid_g.value));
  CHECK(std::isnan(stand({{water, exact(1), "w"}}, exact(std::nan(""))).water_g.value));
  CHECK(stand({{water, exact(1), "w"}}, exact(2)).water_g.value == doctest::Approx(-1));
}

TEST_CASE("what may dry is what stands there") {
  const Sums sums = sums_of({{blue_powder, exact(10), "p"}, {binder, exact(6), "b"}});
  const Wet w = wet_of(sums, live(sums, {1, 0}));
  CHECK(w.gum_g == doctest::Approx(6 * binder.parts.gum));
  CHECK(w.honey_g == doctest::Approx(6 * binder.parts.honey));
  CHECK(w.water_g == doctest::Approx(6 * binder.parts.water - 1));
  CHECK(w.volume_mL == doctest::Approx(2.5 + 6 * mL_per_g(binder.parts) - 1 / 0.99821));
}

TEST_CASE("a ratio of what one portion brings carries that portion's error once") {
  const Amount unsure{6, 0.3 * 0.3, {{"d", 0.4}}};
  const Standing s = stand({{blue_powder, exact(10), "p"}, {binder, unsure, "b"}}, {});
  // What is left is what the binder is made of, whatever it weighs.
  const Standing sure = stand({{blue_powder, exact(10), "p"}, {binder, exact(6), "b"}}, {});
  CHECK(uncertainty(*s.gum_strength) == doctest::Approx(uncertainty(*sure.gum_strength)));
  CHECK(uncertainty(*s.humectant_to_gum) == doctest::Approx(uncertainty(*sure.humectant_to_gum)));
  CHECK(relative_uncertainty(*s.binder_ratio) == doctest::Approx(0.5 / 6));
  // The volume of pigment cancels in no ratio to it; in the oil point its density does.
  CHECK(s.gum_per_pigment->shares.at("density:p") / s.gum_per_pigment->value ==
        doctest::Approx(0.05));
  CHECK(s.over_oil_point->shares.count("density:p") == 0);
  const double phi = s.pigment_fraction->value;
  CHECK(phi == doctest::Approx(2.5 / (2.5 + s.liquid_mL_now.value)));
  CHECK(s.pigment_fraction->shares.at("d") == doctest::Approx(-phi * (1 - phi) * 0.4 / 6));
}

TEST_CASE("what is shown live is what stands there") {
  const Material spirit{Kind::other, {.water = 0.3, .alcohol = 0.7}, {}};
  const auto same = [](double a, double b) { return std::abs(a - b) <= 1e-9 * (1 + std::abs(b)); };
  holds("live is standing without its uncertainty", [&] {
    const auto grams = [] { return Amount{between(0.1, 20), between(0, 0.1), {}}; };
    const std::vector<Portion> contents{{blue_powder, grams(), "p"},
                                        {white_powder, grams(), "q"},
                                        {binder, grams(), "b"},
                                        {water, grams(), "w"},
                                        {spirit, grams(), "s"}};
    const Sums sums = sums_of(contents);
    const Gone gone{between(-0.5, 0.9) * sums.water_g, between(0, 1) * sums.alcohol_g};
    const Live now = live(sums, gone);
    const Standing s = stand(contents, exact(gone.water_g), exact(sums.alcohol_g - gone.alcohol_g));
    RC_ASSERT(same(now.water_g, s.water_g.value));
    RC_ASSERT(same(now.alcohol_g, s.alcohol_g.value));
    RC_ASSERT(same(now.liquid_mL, s.liquid_mL_now.value));
    RC_ASSERT(same(*now.flow, s.flow_now->value));
    RC_ASSERT(same(*now.over_oil_point, s.over_oil_point->value));
    RC_ASSERT(same(*now.gum_strength, s.gum_strength->value));
    const WentIn there = went_in(contents);
    RC_ASSERT(there.pigment_g == s.pigment_g);
    RC_ASSERT(there.liquid_mL == s.liquid_mL);
    RC_ASSERT(there.dry_gum == dry_gum_put_in(s));
  });
}

}
