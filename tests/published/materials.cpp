// Densities and oil-absorption points against handbooks and data sheets.
#include "paint/material.hpp"
#include "published/about.hpp"

#include <doctest/doctest.h>

#include <array>
#include <utility>

using namespace paint;

namespace {

double cpvc(double oil, double density) {
  return 1 / (1 + oil_absorption_point({.g_per_mL = density, .oil_g_per_100g = oil}));
}

double density(const Recipe& recipe) { return 1 / mL_per_g(*parts_of(recipe)); }

}

TEST_CASE("CPVC from oil absorption: published inputs, CPVC = 1 / (1 + OA rho / 93.5)") {
  // Rutile OA 20, rho 4.2: R. Lewarchik 2014 (his own answer is an image). Viridian 55, 3.2 and
  // PB72 55, 4.49: supplier data sheets. The answers were worked by hand to four figures: half of
  // the last.
  CHECK(cpvc(20, 4.2) == within(0.5268, 0.00005));
  CHECK(cpvc(55, 3.2) == within(0.3469, 0.00005));
  CHECK(cpvc(55, 4.49) == within(0.2746, 0.00005));
}

TEST_CASE("Glycerin in water: specific gravity 20/20 of Bosart & Snoddy, Lange's 15th ed. 5.13") {
  constexpr std::array<std::pair<double, double>, 11> table{{{0, 1},
                                                             {10, 1.02395},
                                                             {20, 1.0488},
                                                             {30, 1.0747},
                                                             {40, 1.10135},
                                                             {50, 1.12845},
                                                             {60, 1.15605},
                                                             {70, 1.18355},
                                                             {80, 1.2109},
                                                             {90, 1.23755},
                                                             {100, 1.26362}}};
  for (const auto& [percent, gravity] : table) {
    CAPTURE(percent);
    const double printed = gravity * 0.998203;
    const double ours = density({.water = 100 - percent, .glycerin = percent});
    // Volumes are added: the contraction the header admits, 1.134 % at 60 %, and never the other
    // way by more than the rounding of the pure densities.
    CHECK(ours <= printed * 1.0001);
    CHECK(ours >= printed * (1 - 0.0115));
  }
}

TEST_CASE("Honey: specific gravity 20/20 by moisture, White 1975") {
  // 17 and 18 % were read, 14 and 20 % are from memory. Our solids are drawn from the 17 % row
  // alone; honeys of other moisture follow within 0.5 %.
  constexpr std::array<std::pair<double, double>, 4> table{
      {{14, 1.4404}, {17, 1.4237}, {18, 1.4171}, {20, 1.4027}}};
  const double solids = parts_of({.honey = 1})->honey;
  CHECK(solids == doctest::Approx(0.83));
  for (const auto& [moisture, gravity] : table) {
    CAPTURE(moisture);
    const Parts honey{.water = moisture / 100, .honey = 1 - moisture / 100};
    CHECK(1 / mL_per_g(honey) == relative(gravity * 0.998203, 0.005));
  }
}

TEST_CASE("Gum solutions: density by dry mass fraction at 25 °C") {
  // An independent calculation with the same partial volume, 0.60 mL/g from memory, in water at
  // 25 °C; ours is at 20 °C, 0.12 % denser. v +-0.02 would move the row at 0.30 by 0.7 %.
  constexpr std::array<std::pair<double, double>, 5> table{
      {{0.10, 1.039}, {0.20, 1.084}, {0.30, 1.134}, {0.40, 1.188}, {0.50, 1.248}}};
  for (const auto& [dry, printed] : table)
    CHECK(1 / mL_per_g({.gum = dry, .water = 1 - dry}) == relative(printed, 0.0015));
}

TEST_CASE("One part gum to two of water holds 29.3 % dry gum") {
  // A pigment supplier's recipe, gum at 12 % moisture inside JECFA's 15 %: (1 - 0.12) / 3.
  CHECK(parts_of({.gum = 1, .water = 2})->gum == within(0.293, 0.0005));
  // 100 g to 333 g of water: 20.3 %.
  CHECK(parts_of({.gum = 100, .water = 333})->gum == within(0.203, 0.0005));
}
