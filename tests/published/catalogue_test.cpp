// The catalogue against values from outside it.
#include "paint/catalogue.hpp"
#include "published/row.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <map>
#include <optional>
#include <string>

namespace catalogue_test {

using namespace published;

namespace {

const paint::Pigment& facts(const std::string& id) {
  const auto& all = paint::catalogue();
  const auto found = std::find_if(all.begin(), all.end(), [&](auto& p) { return p.id == id; });
  REQUIRE_MESSAGE(found != all.end(), id);
  return found->facts;
}

void density(const std::string& id, double expected, const Source& source, double tolerance,
             const std::string& why) {
  check({"catalogue/catalogue", "density of a pigment, g/mL", source, expected, facts(id).g_per_mL,
         tolerance, why, id});
}

}

TEST_CASE("densities against Gettens and Stout 1942") {
  const std::map<std::string, double> book{
      {"pw6", 4.2},
      {"pw4", 5.65},
      {"pb29", 2.34},
      {"pb27", 1.83},
      {"pg18", 3.32},
      {"pr108", 4.5},
      {"py35", 4.35},
      {"pbr7_raw_sienna", 3.14},
      {"pbr7_burnt_sienna", 3.56},
      {"pbr7_raw_umber", 3.20},
      {"pbr7_burnt_umber", 3.64},
      {"pbk9", 2.29},
      {"pw18", 2.70},
      {"pw21", 4.36},
      {"pw19", 2.60},
      {"py37", 4.35},
      {"pb30", 3.80},
      {"pb29_lapis", 2.4},
  };
  for (const auto& [id, expected] : book)
    // Cadmium reds run from 3.5 to 5.5, by how much selenium is in them.
    density(id, expected, printed("Gettens & Stout 1942, Painting Materials, table of properties"),
            (id == "pr108" ? 0.1 : 0.05) * expected, "5 %: other lots; cadmium red 10 %");
}

TEST_CASE("densities against other sources") {
  const auto row = [](const std::string& id, double expected, const std::string& source) {
    density(id, expected, printed(source), 0.1 * expected, "a tenth: other grades");
  };
  row("pv19", 1.47, "encyclopaedia article on quinacridone");
  row("pb28", 3.83, "CAMEO, Museum of Fine Arts Boston");
  row("pg7", 2.1, "a supplier's data sheet");
  row("pg18", 3.2, "a supplier's data sheet");
  row("pb72", 4.49, "a supplier's data sheet");
  row("pbk6", 1.77, "a supplier's data sheet");
  row("pbk7", 1.70, "data sheet of a bone black maker");
  row("pb15_3", 1.6, "CAMEO, Museum of Fine Arts Boston");
  row("pr170", 1.4, "encyclopaedia article on PR170");
}

TEST_CASE("oil absorption against data sheets") {
  const auto row = [](const std::string& id, double expected, const std::string& source,
                      double tolerance, const std::string& why) {
    check({"catalogue/catalogue", "oil absorption of a pigment, g/100 g", printed(source), expected,
           facts(id).oil_g_per_100g, tolerance, why, id});
  };
  row("pg18", 55, "a supplier's data sheet", 0.15 * 55, "lots differ by 15 %");
  row("pbk6", 117, "a supplier's data sheet", 0.15 * 117, "lots differ by 15 %");
  // 0.55 mL of linseed oil of 0.935 g/mL to 1 g.
  row("pbk9", 51.4, "data sheet of a bone black maker", 0.15 * 51.4, "lots differ by 15 %");
  row("pb15_3", 42, "a supplier's data sheet: 40 to 50 mL", 4.7, "the printed range");
  row("pw6", 21, "a supplier's data sheet", 0.15 * 21, "lots differ by 15 %");
  // 17 to 22 cm3 of oil of 0.935 g/mL to 100 g.
  const std::string cadmium = "technical information of a cadmium pigment maker: 17 to 22 cm3";
  row("pr108", 18.2, cadmium, 2.5, "the printed range");
  row("py35", 18.2, cadmium, 2.5, "the printed range");
  row("po20", 18.2, cadmium, 2.5, "the printed range");
  row("py37", 18.2, cadmium, 2.5, "the printed range");
  row("py42", 30, "a supplier's page: 25 to 35", 5, "the printed range");
  const std::string linseed = "table for linseed oil paint, after data sheets";
  const std::map<std::string, double> table{{"pb28", 35},
                                            {"pg23", 35},
                                            {"pr101_transparent", 47},
                                            {"pbr7_raw_sienna", 45},
                                            {"pbr7_burnt_sienna", 50},
                                            {"pbr7_raw_umber", 52},
                                            {"pbr7_burnt_umber", 56},
                                            {"pbk9", 50},
                                            {"pw19", 45},
                                            {"pr102_pozzuoli", 40},
                                            {"pbr7_green_umber", 50}};
  for (const auto& [id, oil] : table) row(id, oil, linseed, 0.2 * oil, "lots, and a second hand");
}

namespace {

// What stands in brackets at the end of a source, in g/100 g: "35 to 50", "50 and more", "17 to 22
// mL", "0.55 mL/g"; linseed oil of 0.935 g/mL.
struct Figure {
  double low = 0, high = 0;
};

std::optional<Figure> figure_in(const std::string& from) {
  const auto at = from.rfind('(');
  Figure f;
  if (at == std::string::npos || std::sscanf(from.c_str() + at, "(%lf", &f.low) != 1)
    return std::nullopt;
  if (std::sscanf(from.c_str() + at, "(%lf to %lf", &f.low, &f.high) != 2) f.high = f.low;
  const bool per_g = from.find(" mL/g)") != std::string::npos;
  const double unit = per_g ? 93.5 : from.find(" mL)") != std::string::npos ? 0.935 : 1;
  return Figure{f.low * unit, f.high * unit};
}

}

TEST_CASE("oil absorptions against the figure of the source that each card names, all of them") {
  constexpr double between_lots = 0.15;
  std::ifstream file(SLABSIDE_ROOT "/assets/pigments.json");
  const auto whole = nlohmann::json::parse(file);
  int shown = 0;
  for (const auto& pigment : whole["pigments"]) {
    const paint::CataloguePigment& card = *paint::in_catalogue(pigment["id"]);
    const bool a_guess = card.oil_from.empty();
    const std::string from = a_guess ? card.oil_beside : card.oil_from;
    const auto there = figure_in(from);
    if (!there) continue;
    CAPTURE(card.id);
    ++shown;
    const double ours = card.facts.oil_g_per_100g;
    const double low = (1 - between_lots) * there->low, high = (1 + between_lots) * there->high;
    CHECK((ours < low || ours > high) == a_guess);
    const auto& span = pigment["oil_g_per_100g"];
    const double read = (there->low + there->high) / 2, wide = (there->high - there->low) / 2;
    check({"catalogue/catalogue", "oil absorption where another was read, g/100 g",
           a_guess ? consistent_with(printed(from)) : printed(from), read, ours,
           a_guess ? std::max(span[2].get<double>() - ours, ours - span[0].get<double>())
                   : wide + between_lots * there->high,
           a_guess ? "called a guess: no more than our own span over grades on sale"
                   : "what was read, and 15 % between lots",
           card.id});
  }
  CHECK(shown == 37);
}

}
