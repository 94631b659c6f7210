// Where paint stands, against a batch reckoned by hand and against drawing it a million times.
#include "paint/gum.hpp"
#include "paint/mixture.hpp"
#include "published/draws.hpp"

#include <doctest/doctest.h>

#include <array>

namespace standing_test {

using namespace paint;
using namespace published;

namespace {

const Material water{Kind::water, {.water = 1}, {}};
const Material binder{Kind::binder, *parts_of({.gum = 1, .water = 2, .honey = 0.25}), {}};

Material powder(double g_per_mL, double g_per_mL_u, double oil, double oil_u) {
  return {Kind::pigment,
          {.pigment = 1},
          {.g_per_mL = g_per_mL, .g_per_mL_u = g_per_mL_u, .oil_g_per_100g = oil, .oil_u = oil_u}};
}

}

TEST_CASE("a batch reckoned by hand") {
  // 12 g of 4.2 g/mL and 30 g of oil; 5.543027 g of gum 1 : water 2, dry gum 0.88/3 of it, 0.60
  // mL/g; 0.5 g of water. Liquid 5.543027 * 0.883934 + 0.5 / 0.99821 = 5.400567 mL.
  Mixture m;
  put(m, "p", powder(4.2, 0, 30, 0), exact(12));
  put(m, "b", {Kind::binder, *parts_of({.gum = 1, .water = 2}), {}}, exact(5.543027));
  put(m, "w", water, exact(0.5));
  const Standing s = stand(m);
  const Source hand = apart("composition by mass, water 0.99821 g/mL (CRC Handbook)");
  const std::string why = "the six digits that were written";
  check({"standing/stand", "g binder to 10 g pigment", hand, 4.619189, s.binder_ratio->value, 2e-6,
         why});
  check({"standing/stand", "mL liquid to 1 mL pigment", hand, 1.890198, s.flow_now->value, 2e-6,
         why});
  check({"standing/stand", "flow over the oil-absorption point", hand, 1.402647,
         s.over_oil_point->value, 2e-6, why});
  check({"standing/stand", "g dry gum to 1 mL pigment", hand, 0.569084, s.gum_per_pigment->value,
         2e-6, why});
  check({"standing/stand", "pigment in the wet volume", hand, 0.345997, s.pigment_fraction->value,
         2e-6, why});
}

TEST_CASE("the uncertainty of every ratio is that of drawing the batch") {
  const Amount grams{12, 0.03 * 0.03, {}}, liquid{6, 0.09 * 0.09, {{"dropper", 0.15}}};
  const Amount drops{1, 0.02 * 0.02, {{"dropper", 0.025}}}, gone{0.5, 0, {{"evaporation", 0.08}}};
  Mixture m;
  put(m, "p", powder(4.2, 0.08, 30, 1.2), grams);
  put(m, "b", binder, liquid);
  put(m, "w", water, drops);
  m.water_gone = gone;
  const Standing s = stand(m);

  const double mL_of_binder = mL_per_g(binder.parts);
  const auto drawn = [&](auto ratio) {
    Random random(7);
    return of_draws([&] {
      const double tool = random.normal();
      const double pigment = 12 + 0.03 * random.normal();
      const double b = 6 + 0.09 * random.normal() + 0.15 * tool;
      const double w = 1 + 0.02 * random.normal() + 0.025 * tool - (0.5 + 0.08 * random.normal());
      const double moister = 0.0153 * random.normal(), gum_v = 0.02 * random.normal();
      const double density = 4.2 / (1 - 0.08 / 4.2 * random.normal());
      const double oil = 30 + 1.2 * random.normal();
      const double held = b * binder.parts.gum / 0.88 * moister;
      const double gum = b * binder.parts.gum - held, wet = b * binder.parts.water + held + w;
      const double mL = b * mL_of_binder + held * (1 / 0.99821 - 0.6) +
                        b * binder.parts.gum * gum_v + w / 0.99821;
      return ratio(pigment, pigment / density, mL, gum, wet, pigment * oil / 93.5);
    });
  };
  const auto same = [](const char* what, const Amount& ours, const Drawn& by_draws) {
    check({"standing/stand", std::string("u of ") + what, drawn_apart, by_draws.sd,
           uncertainty(ours), 0.02 * by_draws.sd,
           "0.1 % of 10^6 draws, and what first order leaves out at 4 %"});
  };
  using D = double;
  same("flow", *s.flow_now, drawn([](D, D v, D mL, D, D, D) { return mL / v; }));
  same("flow over the oil point", *s.over_oil_point,
       drawn([](D, D, D mL, D, D, D oil) { return mL / oil; }));
  same("gum strength", *s.gum_strength,
       drawn([](D, D, D, D gum, D wet, D) { return gum / (gum + wet); }));
  same("gum to pigment", *s.gum_per_pigment, drawn([](D, D v, D, D gum, D, D) { return gum / v; }));
  same("pigment in the wet volume", *s.pigment_fraction,
       drawn([](D, D v, D mL, D, D, D) { return v / (v + mL); }));
}

TEST_CASE("half by eye, drawn") {
  Mixture m;
  put(m, "b", binder, {6, 0.3 * 0.3, {}});
  const auto two = part(m, half_by_eye(), "move");
  Random random(9);
  const Drawn drawn =
      of_draws([&] { return (6 + 0.3 * random.normal()) * (0.5 + 0.05 * random.normal()); });
  check({"mixture/part", "u of half of it by eye, g", drawn_apart, drawn.sd,
         uncertainty(grams_of(two->taken, {})), 0.01 * drawn.sd,
         "0.1 % of 10^6 draws, and the product of the two errors"});
}

TEST_CASE("a jar weighed, by generalised least squares") {
  // x' = x + P 1 (w - 1 x) / (1 P 1 + r) for the three amounts and what stayed on the tools, with
  // their covariance P; worked in Python.
  Mixture m;
  put(m, "p", powder(4.2, 0, 30, 0), {10, 0.0016, {}});
  put(m, "b", binder, {6, 0.01, {{"dropper", 0.3}}});
  put(m, "w", water, {1, 0.001, {{"dropper", 0.05}}});
  const auto gathered = part(m, {0.075, 0.05 * 0.05 / 12, {}}, "gathered");
  const auto w =
      weighed(gathered->left, gathered->taken, {17 * 0.925 - 0.5, 0.0016, {}}, {}, "jar");
  REQUIRE(w);
  const Mixture all = joined(w->there, w->on_tools);
  const Source squares = apart("generalised least squares, worked in Python");
  const std::array<double, 3> values{9.9958287, 5.7001887, 0.9517695};
  const std::array<double, 3> us{0.0398454, 0.1903028, 0.0430036};
  for (std::size_t i = 0; i < values.size(); ++i) {
    const Amount& grams = all.contents[i].grams;
    const std::string at = m.contents[i].card;
    check({"mixture/weighed", "g of each after the jar was weighed", squares, values[i],
           grams.value, 1e-6, "the digits written", at});
    check({"mixture/weighed", "u of each after the jar was weighed, g", squares, us[i],
           uncertainty(grams), 1e-6, "the digits written", at});
  }
}

TEST_CASE("what practice puts in stands within enough gum") {
  // g binder (gum 1 : water 2, so 0.293 dry gum) to 10 g pigment at the middle of what makers use;
  // densities as handbooks have them. Enough: the middle of our range, to its half width.
  struct Paint {
    const char* name;
    PigmentClass family;
    double g_per_mL, low, high;
  };
  for (const Paint& p : {Paint{"cadmium red", PigmentClass::mineral, 4.9, 4, 6},
                         Paint{"ultramarine", PigmentClass::mineral, 2.35, 6, 10},
                         Paint{"red iron oxide", PigmentClass::mineral, 5.0, 5, 8},
                         Paint{"quinacridone", PigmentClass::organic, 1.5, 15, 30},
                         Paint{"lamp black", PigmentClass::carbon, 1.8, 15, 40}}) {
    const double gum = std::sqrt(p.low * p.high) / 10 * 0.88 / 3 * p.g_per_mL;
    CAPTURE(std::string(p.name));
    CHECK(gum_state(gum, 1, usual_marks(p.family)) == GumState::enough);
    const double low = p.family == PigmentClass::mineral  ? 0.45
                       : p.family == PigmentClass::carbon ? 0.80
                                                          : 0.65;
    const double high = p.family == PigmentClass::mineral  ? 1.1
                        : p.family == PigmentClass::carbon ? 1.8
                                                           : 1.3;
    check({"gum/gum_state", "g dry gum to 1 mL pigment that is enough", consistent_with(practice()),
           gum, (low + high) / 2, (high - low) / 2, "half the width of what we call enough",
           p.name});
  }
}

}
