// Densities, binders and oil-absorption points against handbooks and data sheets.
#include "paint/binder.hpp"
#include "paint/honey.hpp"
#include "paint/material.hpp"
#include "published/row.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <string>
#include <utility>

using namespace paint;
using published::check;
using published::Source;

namespace {

double cpvc(double oil, double density) {
  return 1 / (1 + oil_absorption_point({.g_per_mL = density, .oil_g_per_100g = oil}));
}

double density(const Recipe& recipe) { return 1 / mL_per_g(*parts_of(recipe)); }

std::string percent(double p) { return words::fixed(p, 0) + " %"; }

}

TEST_CASE("CPVC from oil absorption: published inputs, CPVC = 1 / (1 + OA rho / 93.5)") {
  const auto row = [](const char* source, double oil, double rho, double expected) {
    check({.formula = "CPVC of one pigment from its oil-absorption point",
           .source = source,
           .expected = expected,
           .ours = cpvc(oil, rho),
           .tolerance = 0.00005,
           .why = "the formula worked by hand to four figures: half of the last"});
  };
  row("R. Lewarchik 2014: rutile, OA 20, 4.2 g/mL", 20, 4.2, 0.5268);
  row("supplier data sheet: viridian, OA 55, 3.2 g/mL", 55, 3.2, 0.3469);
  row("supplier data sheet: PB72, OA 55, 4.49 g/mL", 55, 4.49, 0.2746);
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
    check(
        {.formula = "density of glycerin " + percent(share) + " in water at 20 °C, g/mL",
         .source = "Lange's Handbook, 15th ed., table 5.13 (Bosart & Snoddy), SG 20/20 x 0.998203",
         .expected = gravity * 0.998203,
         .ours = density({.water = 100 - share, .glycerin = share}),
         .tolerance = 0.0006 * gravity,
         .why = "0.05 %, how far Volk & Kaehler's contraction lies from this table, and the "
                "rounding of the pure densities"});
}

TEST_CASE("Honey: specific gravity by moisture, moisture by refractive index") {
  const auto gravity = [](double moisture, double expected, Source kind) {
    check({.formula = "density of honey of " + percent(moisture) + " water at 20 °C, g/mL",
           .source = "White 1975, SG 20/20 x 0.998203",
           .kind = kind,
           .expected = expected * 0.998203,
           .ours = 1 / mL_per_g({.water = moisture / 100, .honey = 1 - moisture / 100}),
           .tolerance = 0.005 * expected,
           .why = "our solids are drawn from the 17 % row alone; 0.5 % from 14 to 20 %"});
  };
  gravity(14, 1.4404, Source::from_memory);
  gravity(17, 1.4237, Source::published);
  gravity(18, 1.4171, Source::published);
  gravity(20, 1.4027, Source::from_memory);
  constexpr std::array<std::pair<double, double>, 8> table{{{1.5044, 13},
                                                            {1.4992, 15},
                                                            {1.4940, 17},
                                                            {1.4915, 18},
                                                            {1.4890, 19},
                                                            {1.4865, 20},
                                                            {1.4840, 21},
                                                            {1.4740, 25}}};
  for (const auto& [index, water] : table)
    check({.formula = "water of honey reading " + words::fixed(index, 4) + " at 20 °C, %",
           .source = "Chataway's table, in S. Bogdanov, Book of Honey, ch. 4",
           .expected = water,
           .ours = *honey_moisture(index) * 100,
           .tolerance = 0.04,
           .why = "Wedmore's fit meets the table within 0.03"});
  check({.formula = "water of honey reading 1.4940 at 25 °C, %",
         .source = "S. Bogdanov, Book of Honey, ch. 4: add 0.00023 for each degree above 20",
         .expected = 17 - 0.00115 / 0.0026,
         .ours = *honey_moisture(1.4940, 25) * 100,
         .tolerance = 0.05,
         .why = "0.0026 to 1 % in the table around 17 %, read straight between its rows"});
}

TEST_CASE("Gum solutions: density by dry mass fraction") {
  constexpr std::array<std::pair<double, double>, 5> table{
      {{0.10, 1.039}, {0.20, 1.084}, {0.30, 1.134}, {0.40, 1.188}, {0.50, 1.248}}};
  for (const auto& [dry, expected] : table)
    check({.formula = "density of " + percent(dry * 100) + " dry gum in water, g/mL",
           .source = "1 / (w 0.60 + (1 - w) / 0.99705) at 25 °C; 0.60 mL/g dry gum",
           .kind = Source::from_memory,
           .expected = expected,
           .ours = 1 / mL_per_g({.gum = dry, .water = 1 - dry}),
           .tolerance = 0.0015 * expected,
           .why = "ours is at 20 °C, where water is 0.12 % denser; 0.02 mL/g would move 30 % by "
                  "0.7 %"});
}

TEST_CASE("Binders: worked strengths of recipes") {
  const auto strength = [](const Ingredients& recipe, const char* source, double expected) {
    check({.formula = "dry gum in a binder by its recipe, %",
           .source = source,
           .expected = expected,
           .ours = facts_of(*mixed(recipe))->gum * 100,
           .tolerance = 0.05,
           .why = "half of the last figure"});
  };
  strength({.gum = 1, .water = 2, .gum_moisture = 0.12},
           "a pigment supplier's recipe, 1 : 2, gum at 12 %: (1 - 0.12) / 3", 29.3);
  strength({.gum = 1, .water = 2, .gum_moisture = 0.15}, "the same with JECFA's most, 15 %", 28.3);
  strength({.gum = 1, .water = 2, .gum_moisture = 0.10},
           "the same with 10 %, JECFA's most if spray dried", 30.0);
  strength({.gum = 100, .water = 333}, "a pigment supplier's recipe page, 100 g to 333 g, at 12 %",
           20.3);
  check({.formula = "dry gum of a card's recipe 1 : 2, %",
         .source = "a pigment supplier's recipe, gum at 12 % moisture: (1 - 0.12) / 3",
         .expected = 29.3,
         .ours = parts_of(*recipe_of({.gum = 1, .water = 2}))->gum * 100,
         .tolerance = 0.05,
         .why = "half of the last figure"});
  check({.formula = "density of water, g/mL at 20 °C",
         .source = "CRC Handbook: 0.9982",
         .expected = 0.9982,
         .ours = usual_g_per_mL(Kind::water),
         .tolerance = 0.00005,
         .why = "half of the last figure"});
}

TEST_CASE("A recipe by volume: 6 fl oz of water and 1 1/2 of glycerin to 3 oz of gum") {
  // Kay 1983, an old book of painting recipes.
  const double fl_oz = 29.5735295625, oz = 28.349523125;
  const Ingredients liquids = *weighed_from({.water = 6 * fl_oz, .glycerin = 1.5 * fl_oz}, 0);
  const Ingredients recipe{.gum = 3 * oz, .water = liquids.water, .glycerin = liquids.glycerin};
  check({.formula = "glycerin to gum as sold of a recipe by volume, g/g",
         .source = "Kay 1983: about 0.65",
         .expected = 0.65,
         .ours = recipe.glycerin / recipe.gum,
         .tolerance = 0.02,
         .why = "printed as about; 3 %"});
  check({.formula = "100 mL of water by mass, g",
         .source = "CRC Handbook: 0.9982 g/mL at 20 °C",
         .expected = 99.82,
         .ours = weighed_from({.water = 100}, 0)->water,
         .tolerance = 0.005,
         .why = "half of the last figure"});
  check({.formula = "glycerin of that recipe back by volume, fl oz",
         .source = "Kay 1983",
         .expected = 1.5,
         .ours = measured_from(recipe, 0.7)->glycerin / fl_oz,
         .tolerance = 1e-9,
         .why = "there and back: rounding only"});
}

TEST_CASE("A wanted strength, by the alligation of pharmacists, and a binder that lost water") {
  const Parts binder = *mixed({.gum = 1, .water = 2}); // 29.33 % dry gum
  const std::string alligation = "alligation (C1 m1 = C2 m2), worked by hand";
  check({.formula = "water to bring 100 g of a 1 : 2 binder to 20 % dry gum, g",
         .source = alligation,
         .expected = 46.67,
         .ours = *water_to_reach(binder, 100, 0.20),
         .tolerance = 0.005,
         .why = "half of the last figure: 100 x 29.333 / 20 - 100"});
  check({.formula = "gum of 12 % moisture to bring it to 35 %, g",
         .source = alligation,
         .expected = 10.69,
         .ours = *gum_to_reach(binder, 100, 0.35),
         .tolerance = 0.005,
         .why = "half of the last figure: 100 x (35 - 29.333) / (88 - 35)"});
  const Parts dried = *weighed_again(binder, 100, 90);
  check({.formula = "dry gum of a 1 : 2 binder after 10 of 100 g have dried off, %",
         .source = alligation,
         .expected = 32.59,
         .ours = dried.gum * 100,
         .tolerance = 0.005,
         .why = "half of the last figure: 29.333 / 0.9"});
  check({.formula = "dry gum of a solution of gum found at 1.188 g/mL, %",
         .source = "1 / (w 0.60 + (1 - w) / 0.99705) at 25 °C; 0.60 mL/g dry gum",
         .kind = Source::from_memory,
         .expected = 40,
         .ours = thickened_to({.gum = 0.3, .water = 0.7}, 1.188)->gum * 100,
         .tolerance = 0.4,
         .why = "water at 20 °C is 0.12 % denser: 0.3 % of gum"});
}

TEST_CASE("Surface tensions by which drops are scaled") {
  const auto row = [](Kind kind, const char* source, double low, double high) {
    check({.formula = "surface tension of " + std::string(name_of(kind)) + ", mN/m",
           .source = source,
           .kind = Source::from_memory,
           .expected = (low + high) / 2,
           .ours = surface_tension(kind),
           .tolerance = (high - low) / 2,
           .why = "the limits that are remembered"});
    // Uniform between the limits (GUM 4.3.7), written to two figures.
    check({.formula = "its relative standard uncertainty",
           .source = "JCGM 100:2008, 4.3.7: half width / sqrt 3",
           .expected = (high - low) / 2 / std::sqrt(3.0) / surface_tension(kind),
           .ours = surface_tension_relative_u(kind),
           .tolerance = 0.01,
           .why = "written to two figures"});
  };
  row(Kind::water, "CRC Handbook, 72.75 at 20 °C, 71.99 at 25 °C", 71.99, 72.75);
  row(Kind::glycerin, "CRC Handbook, 63.4", 62.4, 64.4);
  row(Kind::binder, "gum arabic solutions, 45 to 65", 45, 65);
  row(Kind::honey, "honeys, 50 to 60", 50, 60);
  row(Kind::wetting_aid, "ox gall and soap, 30 to 40", 30, 40);
}
