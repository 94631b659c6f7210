// Water in gum, glycerin, honey and sugar against sorption papers, ASTM D5032 and Norrish.
#include "paint/water_activity.hpp"
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

std::string number(double x) { return words::fixed(x, x < 1 ? 2 : 1); }

// Weight percent of glycerin whose solution stands at this humidity.
double glycerin_percent(double humidity, double celsius) {
  return 100 / (1 + *held_water_g({.glycerin_g = 1}, humidity, celsius));
}

double activity_of_glycerin(double percent, double celsius) {
  return *water_activity({.glycerin_g = percent, .water_g = 100 - percent, .volume_mL = 100},
                         celsius);
}

double activity_of_honey(double moisture) {
  return *water_activity({.honey_g = 100 - moisture, .water_g = moisture, .volume_mL = 70}, 20);
}

// Norrish as printed, g of solute in 1 g of water.
double norrish(double g, double g_per_mol, double k) {
  const double s = g / g_per_mol / (g / g_per_mol + 1 / 18.015);
  return (1 - s) * std::exp(-k * s * s);
}

}

TEST_CASE("ASTM D5032: glycerin against humidity at 20 and 25 °C") {
  constexpr std::array<std::pair<double, double>, 4> at_20{
      {{0.30, 90.5}, {0.50, 78.9}, {0.70, 61.1}, {0.90, 31.1}}};
  constexpr std::array<std::pair<double, double>, 4> at_25{
      {{0.30, 90.7}, {0.50, 79.1}, {0.70, 61.4}, {0.95, 19.2}}};
  const auto row = [](double h, double g, double celsius) {
    check({"glycerin at " + number(h) + " and " + number(celsius) + " °C, wt %",
           "ASTM D5032, its equation worked apart from this code", Source::from_memory, g,
           glycerin_percent(h, celsius), 0.05, "half of the last figure"});
  };
  for (const auto& [h, g] : at_20) row(h, g, 20);
  for (const auto& [h, g] : at_25) row(h, g, 25);
}

TEST_CASE("Glycerin by Norrish, in his range") {
  for (double percent : {10, 20, 30, 40, 50, 60, 70})
    check({"water activity of " + number(percent) + " % glycerin, 25 °C",
           "Norrish 1966 with 1.16 (PMC2836749, table 3)", Source::published,
           norrish(percent / (100 - percent), 92.094, 1.16), activity_of_glycerin(percent, 25),
           0.02, "ASTM D5032 is good to 2 % of humidity"});
}

TEST_CASE("Glycerin solutions as others measured them") {
  check({"water activity of 18 % glycerol", "a food-testing agar set at 0.95", Source::published,
         0.95, activity_of_glycerin(18, 25), 0.01, "what such a medium is given to"});
  check({"water activity of 68.7 % glycerol, 25 °C",
         "activity model of Zhang, Grace & Sun 2022, computed from its code", Source::published,
         0.654, activity_of_glycerin(68.7, 25), 0.03, "2 % of humidity, equation from memory"});
  // 60 to 70 % neither lost nor gained in a laboratory, and 70 % and more gained: a room of 50 to
  // 75 %.
  check({"water activity of 65 % glycerol, which neither lost nor gained in a laboratory",
         "PMC9205919; rooms of 50 to 75 %", Source::published, 0.625, activity_of_glycerin(65, 22),
         0.125, "the room's humidity was not given"});
}

TEST_CASE("Little glycerin in much water lowers its activity by mole fractions") {
  // Raoult's law, with nothing of ours in it: 2 % is 0.0040 of the moles.
  const double moles = (2 / 92.094) / (2 / 92.094 + 98 / 18.015);
  check({"1 less water activity of 2 % glycerin", "Raoult's law", Source::published, moles,
         1 - activity_of_glycerin(2, 25), 0.03 * moles, "the law's own limit"});
}

TEST_CASE("Gum: Acacia nilotica holds 33.6 g to 100 g dry at 92.3 % and 30 °C") {
  const auto held = [](double h) { return *held_water_g({.gum_g = 100}, h, 30); };
  check({"water of 100 g dry gum at 92.3 %, g",
         "Acacia nilotica, 30 °C (doi 10.1186/s42269-022-00928-4)", Source::published, 33.6,
         held(0.923), 0.17, "K was solved from this one point, three figures"});
  for (double h : {0.50, 0.60})
    check({"loss on drying of gum kept at " + number(h) + ", %",
           "traded gum 10 to 15 %; JECFA allows 15", Source::from_memory, 12.5,
           100 * held(h) / (100 + held(h)), 2.5, "the range itself"});
}

TEST_CASE("Honey: moisture in equilibrium with air, Martin 1958") {
  constexpr std::array<std::pair<double, double>, 7> table{{{15.9, 0.50},
                                                            {16.8, 0.55},
                                                            {18.3, 0.60},
                                                            {20.9, 0.65},
                                                            {24.2, 0.70},
                                                            {28.3, 0.75},
                                                            {33.1, 0.80}}};
  for (const auto& [moisture, humidity] : table)
    check({"water activity of honey of " + number(moisture) + " %", "Martin 1958",
           Source::from_memory, humidity, activity_of_honey(moisture), 0.06,
           "honeys differ by that"});
}

TEST_CASE("Measured honeys, and the lines drawn through others, lie within 0.06") {
  constexpr std::array<std::pair<double, double>, 2> turkish{{{15.0, 0.470}, {20.4, 0.563}}};
  constexpr std::array<std::pair<double, double>, 2> slovenian{{{14.0, 0.479}, {18.6, 0.557}}};
  const auto row = [](double moisture, double a, const char* source, Source kind) {
    check({"water activity of honey of " + number(moisture) + " %", source, kind, a,
           activity_of_honey(moisture), 0.06, "honeys differ by that"});
  };
  for (const auto& [moisture, a] : turkish)
    row(moisture, a, "Turkish flower honeys (doi 10.1590/1678-457X.31716)", Source::published);
  for (const auto& [moisture, a] : slovenian)
    row(moisture, a, "Slovenian flower honeys (scribd 167493103)", Source::published);
  for (double moisture : {15.0, 18.0, 21.0}) {
    row(moisture, 0.267 + 0.0177 * moisture, "line of Chirife, Zamora & Motto 2006",
        Source::from_memory);
    row(moisture, 0.248 + 0.0175 * moisture, "line of Perez 2009", Source::from_memory);
  }
}

TEST_CASE("Saturated sucrose by Norrish") {
  // 67.5 % by mass: 0.4815 g of water to 1 g.
  const double held = *held_by({342.30, 6.47}, 0.843);
  check({"water to 1 g sucrose at 0.843, g",
         "textbook activity of saturated sucrose; Norrish's 6.47 +- 0.06", Source::from_memory,
         0.4815, held, 0.02, "0.004 of activity, which its 0.06 is"});
}

TEST_CASE("Mixtures: Ross's rule, each by itself in all the water") {
  // Ross 1975, from memory: good where little is dissolved.
  constexpr std::array<std::array<double, 2>, 3> mixtures{{{1, 1}, {2, 0.5}, {0.5, 2}}};
  for (const auto& [glycerin, honey] : mixtures) {
    const double ross = norrish(glycerin / 10, 92.094, 1.16) * norrish(honey / 10, 180.16, 2.25);
    const Wet mixed{.glycerin_g = glycerin, .honey_g = honey, .water_g = 10, .volume_mL = 13};
    check({"water activity of " + number(glycerin) + " g glycerin and " + number(honey) +
               " g honey solids in 10 g water",
           "Ross 1975, with Norrish for each", Source::from_memory, ross,
           *water_activity(mixed, 25), 0.005, "the two rules part further only where it is drier"});
  }
}

TEST_CASE("Added uptakes: 10 g gum, 2 g glycerol, 1 g honey solids at 50 % and 25 °C") {
  const double held = *held_water_g({.gum_g = 10, .glycerin_g = 2, .honey_g = 1}, 0.50, 25);
  check({"water held by 10 g gum, 2 g glycerin and 1 g honey solids at 0.50, g",
         "12.5 g/100 g, D5032's 79.1 % and Martin's 15.9 %, added by hand", Source::from_memory,
         1.252 + 0.528 + 0.189, held, 0.02, "a tenth of honey's share"});
}
