// Water in gum, glycerin, honey and sugar against sorption papers, activity models and Norrish.
#include "paint/water_activity.hpp"
#include "published/row.hpp"
#include "turned_round.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <string>
#include <utility>

namespace held_water_test {

using namespace paint;
using namespace published;

namespace {

using Pairs = std::initializer_list<std::pair<double, double>>;

std::string percent(double p) { return words::invariant(p, p == std::round(p) ? 0 : 1) + " %"; }

double activity_of_glycerin(double p, double celsius) {
  return turned_round::water_activity({.glycerin_g = p, .water_g = 100 - p, .volume_mL = 100},
                                      celsius);
}

double activity_of_honey(double moisture) {
  return turned_round::water_activity(
      {.honey_g = 100 - moisture, .water_g = moisture, .volume_mL = 70}, 20);
}

// Norrish as printed, g of solute in 1 g of water.
double norrish(double g, double g_per_mol, double k) {
  const double s = g / g_per_mol / (g / g_per_mol + 1 / 18.015);
  return (1 - s) * std::exp(-k * s * s);
}

// Of so much glycerin in water over water's, both at 24 °C: Volk & Kaehler 2018, Exp. Fluids 59:75.
double gravity_at_24(double share) {
  const double water = 997.14, neat = 1273.3 - 0.6121 * 24, a = 0.010757;
  const double shrunk = 1 + a * std::pow(std::sin(3.14159265 * std::pow(share, 1.31)), 0.81);
  return shrunk * (1 + (neat / water - 1) / (1 + neat / water * (1 / share - 1)));
}

void glycerin(const Source& source, double p, double celsius, double expected, double tolerance,
              const std::string& why) {
  check({"water_activity/held_water_g",
         "water activity of glycerin in water, " + words::invariant(celsius, 0) + " °C", source,
         expected, activity_of_glycerin(p, celsius), tolerance, why, percent(p)});
}

}

TEST_CASE("Glycerin by a model of 2022, which our two constants were fitted to") {
  for (const auto& [p, a] : Pairs{{10, 0.9759},
                                  {20, 0.9470},
                                  {30, 0.9117},
                                  {40, 0.8677},
                                  {50, 0.8117},
                                  {60, 0.7383},
                                  {68.7, 0.6536},
                                  {70, 0.6387},
                                  {80, 0.4985}})
    glycerin(
        consistent_with(apart(
            "Zhang, Grace & Sun 2022, by the formula in the source of aquasol 1.8.0 (Python)")),
        p, 25, a, 0.006, "two constants for nine values");
}

TEST_CASE("Glycerin by Norrish, in his range") {
  for (double p : {10, 20, 30, 40, 50, 60})
    glycerin(consistent_with(apart("Norrish 1966 with 1.16 (PMC2836749, table 3)")), p, 25,
             norrish(p / (100 - p), 92.094, 1.16), 0.012,
             "the law's own limit: it is good to 60 % by mass");
}

TEST_CASE("Glycerin by the specific gravity at which it keeps air so moist") {
  for (const double percent : {30, 40, 50, 60, 70, 80, 90}) {
    const double gravity = std::pow(19.9 - 0.189 * percent, 0.0806);
    double low = 0, high = 1;
    for (int i = 0; i < 40; ++i) {
      const double share = (low + high) / 2;
      (gravity_at_24(share) < gravity ? low : high) = share;
    }
    check({"water_activity/held_water_g", "water activity of glycerin of a specific gravity",
           remembered("Forney & Brandl 1992, HortTechnology 2:52: [19.9 - 0.189 RH]^0.0806, 24 °C"),
           percent / 100, activity_of_glycerin(100 * low, 24), 0.01,
           "0.002 of specific gravity, as their curve meets their points",
           words::invariant(percent, 0) + " %"});
  }
}

TEST_CASE("Glycerin solutions as others measured them") {
  glycerin(printed("a food-testing agar with 18 % glycerol, set at 0.95"), 18, 25, 0.95, 0.01,
           "what such a medium is given to");
  // 60 to 70 % neither lost nor gained in a laboratory, and 70 % and more gained: a room of 50 to
  // 75 %.
  glycerin(printed("PMC9205919: 60 to 70 % neither lost nor gained in a laboratory"), 65, 22, 0.625,
           0.125, "the room's humidity was not given: 50 to 75 %");
}

TEST_CASE("Little glycerin in much water lowers its activity by mole fractions") {
  // With nothing of ours in it: 2 % is 0.0040 of the moles.
  const double moles = (2 / 92.094) / (2 / 92.094 + 98 / 18.015);
  check({"water_activity/held_water_g", "1 less water activity of 2 % glycerin",
         apart("Raoult's law"), moles, 1 - activity_of_glycerin(2, 25), 0.03 * moles,
         "the law's own limit"});
}

TEST_CASE("Gum: Acacia nilotica holds 33.6 g to 100 g dry at 92.3 % and 30 °C") {
  const auto held = [](double h) { return *held_water_g({.gum_g = 100}, h, 30); };
  check({"water_activity/held_water_g", "water of 100 g dry gum at 92.3 %, g",
         consistent_with(printed("Acacia nilotica, 30 °C, doi 10.1186/s42269-022-00928-4")), 33.6,
         held(0.923), 0.17, "our K was solved from this one point, three figures"});
  for (double h : {0.50, 0.60})
    check({"water_activity/held_water_g", "loss on drying of gum kept in a room, %",
           remembered("traded gum 10 to 15 %; JECFA allows 15"), 12.5,
           100 * held(h) / (100 + held(h)), 2.5, "the range itself", percent(100 * h)});
}

TEST_CASE("Honey: lines and tables of water activity by moisture") {
  const auto row = [](const Source& source, double moisture, double a) {
    check({"water_activity/held_water_g", "water activity of honey", consistent_with(source), a,
           activity_of_honey(moisture), 0.045,
           "the sources lie so far on either side of their mean", percent(moisture)});
  };
  // The ends of what was found of both: the driest with the lowest activity.
  const Source turkish =
      printed("Turkish flower honeys, doi 10.1590/1678-457X.31716, ends of both ranges");
  const Source slovenian =
      printed("Slovenian flower honeys, scribd 167493103, ends of both ranges");
  for (const auto& [moisture, a] : Pairs{{15.0, 0.470}, {20.4, 0.563}}) row(turkish, moisture, a);
  for (const auto& [moisture, a] : Pairs{{14.0, 0.479}, {18.6, 0.557}}) row(slovenian, moisture, a);
  const Source chirife = remembered("line of Chirife, Zamora & Motto 2006");
  const Source perez = remembered("line of Perez and others 2009");
  for (double moisture : {15.0, 18.0, 21.0}) {
    row(chirife, moisture, 0.267 + 0.0177 * moisture);
    row(perez, moisture, 0.248 + 0.0175 * moisture);
  }
  for (const auto& [moisture, humidity] : Pairs{{15.9, 0.50},
                                                {16.8, 0.55},
                                                {18.3, 0.60},
                                                {20.9, 0.65},
                                                {24.2, 0.70},
                                                {28.3, 0.75},
                                                {33.1, 0.80}})
    row(remembered("Martin 1958, honey in equilibrium with air"), moisture, humidity);
  // How fast it rises with moisture: all four say 0.017 to 0.018, Norrish's law 0.024.
  const double slope = (activity_of_honey(18) - activity_of_honey(15)) / 3;
  const auto rises = [&](const Source& source, double by) {
    check({"water_activity/held_water_g", "water activity of honey to 1 % of moisture, 15 to 18 %",
           consistent_with(source), by, slope, 0.0008, "0.005 of activity over the range of each"});
  };
  rises(turkish, (0.563 - 0.470) / 5.4);
  rises(slovenian, (0.557 - 0.479) / 4.6);
  rises(chirife, 0.0177);
  rises(perez, 0.0175);
}

TEST_CASE("Mixtures: Ross's rule, each by itself in all the water") {
  // Good where little is dissolved.
  constexpr std::array<std::array<double, 2>, 3> mixtures{{{1, 1}, {2, 0.5}, {0.5, 2}}};
  for (const auto& [glycerin, honey] : mixtures) {
    const double ross = norrish(glycerin / 10, 92.094, 1.16) * norrish(honey / 10, 180.16, 2.25);
    const Wet mixed{.glycerin_g = glycerin, .honey_g = honey, .water_g = 10, .volume_mL = 13};
    check({"water_activity/held_water_g",
           "water activity of glycerin and honey solids in 10 g of water",
           remembered("Ross 1975, with Norrish for each"), ross,
           turned_round::water_activity(mixed, 25), 0.005,
           "the two rules part further only where it is drier",
           words::invariant(glycerin, 1) + " g and " + words::invariant(honey, 1) + " g"});
  }
}

}
