// The catalogue against values from outside it.
#include "paint/catalogue.hpp"
#include "published/row.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <string>

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
