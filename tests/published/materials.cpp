// Densities, binders and oil-absorption points against handbooks and data sheets.
#include "paint/binder.hpp"
#include "paint/material.hpp"
#include "published/row.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <string>
#include <utility>

namespace materials_test {

using namespace paint;
using namespace published;

namespace {

double density(const Recipe& recipe) { return 1 / mL_per_g(*parts_of(recipe)); }

std::string percent(double p) { return words::invariant(p, 0) + " %"; }

}

TEST_CASE("Oil-absorption points: published inputs, OA rho / 93.5") {
  const auto row = [](const std::string& at, double oil, double rho, double expected) {
    check({"material/oil_absorption_point", "CPVC of one pigment from its oil-absorption point",
           apart("1 / (1 + OA rho / 93.5) by hand; Lewarchik 2014 and suppliers' data sheets"),
           expected, 1 / (1 + oil_absorption_point({.g_per_mL = rho, .oil_g_per_100g = oil})), 5e-5,
           "half of the last figure", at});
  };
  row("rutile, OA 20, 4.2 g/mL", 20, 4.2, 0.5268);
  row("viridian, OA 55, 3.2 g/mL", 55, 3.2, 0.3469);
  row("PB72, OA 55, 4.49 g/mL", 55, 4.49, 0.2746);
}

TEST_CASE("Glycerin in water: Bosart & Snoddy's specific gravities") {
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
  for (const auto& [share, gravity] : table)
    check({"material/mL_per_g", "density of glycerin in water at 20 °C, g/mL",
           printed("Lange's Handbook, 15th ed., table 5.13 (Bosart & Snoddy), SG 20/20 x 0.998203"),
           gravity * 0.998203, density({.water = 100 - share, .glycerin = share}), 0.0006 * gravity,
           "0.05 %, how far Volk & Kaehler's contraction lies from this table, and the rounding of "
           "the pure densities",
           percent(share)});
}

TEST_CASE("Honey: specific gravity by moisture, moisture by refractive index") {
  const auto gravity = [](double moisture, double expected, const Source& source) {
    check({"material/mL_per_g", "density of honey at 20 °C, g/mL", source, expected * 0.998203,
           1 / mL_per_g({.water = moisture / 100, .honey = 1 - moisture / 100}), 0.005 * expected,
           "our solids are drawn from the 17 % row alone; 0.5 % from 14 to 20 %",
           percent(moisture) + " water"});
  };
  const Source white = remembered("White 1975, SG 20/20 x 0.998203");
  gravity(14, 1.4404, white);
  gravity(17, 1.423, printed("a honey trader's specification, SG 20/20 (21food.com 2090114)"));
  gravity(18, 1.417, printed("a beekeepers' page, SG 20/20 (beeclubpellas.blogspot.com 2009/10)"));
  gravity(20, 1.4027, white);
}

const Source gum_volume = remembered("1 / (w 0.60 + (1 - w) / 0.99705) at 25 °C, 0.58 to 0.62 mL "
                                     "to 1 g of dry gum");

TEST_CASE("Gum solutions: density by dry mass fraction") {
  constexpr std::array<std::pair<double, double>, 5> table{
      {{0.10, 1.039}, {0.20, 1.084}, {0.30, 1.134}, {0.40, 1.188}, {0.50, 1.248}}};
  for (const auto& [dry, expected] : table)
    check({"material/mL_per_g", "density of dry gum in water, g/mL", gum_volume, expected,
           1 / mL_per_g({.gum = dry, .water = 1 - dry}), 0.0015 * expected,
           "ours is at 20 °C, where water is 0.12 % denser; 0.02 mL/g would move 30 % by 0.7 %",
           percent(dry * 100)});
}

TEST_CASE("Water at 20 °C, by which everything is measured") {
  const Source iapws = library("IAPWS-IF97 by iapws 1.5.2 (Python; Debian's python3-iapws)");
  const std::string figure = "half of the last figure of ours";
  check({"material/usual_g_per_mL", "density of water, g/mL at 20 °C", iapws, 0.998206,
         usual_g_per_mL(Kind::water), 0.00001, figure});
}

TEST_CASE("Binders: worked strengths of recipes") {
  const auto row = [&](const Recipe& grams, double expected, const std::string& at) {
    check({"material/parts_of", "dry gum in a binder by its recipe, %",
           apart("a pigment supplier's recipes, by hand: gum (1 - moisture) over all"), expected,
           parts_of(grams)->gum * 100, 0.05, "half of the last figure", at});
  };
  row({.gum = 1, .water = 2}, 29.3, "1 : 2, 12 % moisture");
  row({.gum = 100, .water = 333}, 20.3, "100 g : 333 g, 12 %");
}

TEST_CASE("A wanted strength, by the alligation of pharmacists") {
  const Parts binder = *parts_of({.gum = 1, .water = 2}); // 29.33 % dry gum
  const Source alligation = apart("alligation (C1 m1 = C2 m2), by hand");
  const std::string figure = "half of the last figure";
  check({"binder/water_to_reach", "water to bring 100 g of a 1 : 2 binder to 20 % dry gum, g",
         alligation, 46.67, *water_to_reach(binder, 100, 0.20), 0.005, figure});
  check({"binder/gum_to_reach", "gum of 12 % moisture to bring 100 g of a 1 : 2 binder to 35 %, g",
         alligation, 10.69, *gum_to_reach(binder, 100, 0.35), 0.005, figure});
}

TEST_CASE("Surface tensions by which drops are scaled") {
  const auto row = [](Kind kind, const Source& source, double expected, double tolerance,
                      const std::string& why) {
    check({"material/surface_tension", "surface tension, mN/m", source, expected,
           surface_tension(kind), tolerance, why, std::string(name_of(kind))});
  };
  row(Kind::water, library("IAPWS R1-76 by iapws 1.5.2 (Python; Debian's python3-iapws)"), 72.736,
      0.05, "the formula's 0.5 % is wider");
  row(Kind::glycerin, printed("astarmathsandphysics.com, surface tension, 20 °C"), 63.1, 0.7,
      "the 1 % that the program states");
  const auto between = [&](Kind kind, const std::string& what, double low, double high) {
    row(kind, remembered(what), (low + high) / 2, (high - low) / 2, "the limits remembered");
    // Uniform between the limits, written to two figures.
    check({"material/surface_tension_relative_u", "relative u of a surface tension",
           apart("JCGM 100:2008, 4.3.7: half width / sqrt 3, of limits from memory"),
           (high - low) / 2 / std::sqrt(3.0) / surface_tension(kind),
           surface_tension_relative_u(kind), 0.01, "written to two figures",
           std::string(name_of(kind))});
  };
  between(Kind::binder, "gum arabic solutions, 45 to 65", 45, 65);
  between(Kind::honey, "honeys, 50 to 60", 50, 60);
  between(Kind::wetting_aid, "ox gall and soap, 30 to 40", 30, 40);
}

}
