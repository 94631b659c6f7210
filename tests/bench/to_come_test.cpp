#include "bench/materials.hpp"
#include "bench/pads_slab.hpp"
#include "planned.hpp"

#include <algorithm>

namespace to_come_test {

using namespace bench;
using namespace hands;

namespace {

const ToComeView* honey_to_come(const SlabView& slab) {
  const auto one = std::find_if(slab.to_come.begin(), slab.to_come.end(),
                                [](const auto& v) { return v.kind == session::CardKind::honey; });
  return one == slab.to_come.end() ? nullptr : &*one;
}

}

TEST_CASE("who counts the drops of what is to come is asked for as many as were said at first") {
  for (const double planned : {7.0, 11.0, 14.0, 22.0, 26.0}) {
    CAPTURE(planned);
    Hands h;
    session::RecipeCard recipe;
    recipe.pigments = {{"pb28", session::SaidIn::spoons, 1, "teaspoon"}};
    recipe.liquids = {{"gum_12", session::SaidIn::spoons, 1, "teaspoon"},
                      {"honey_11", session::SaidIn::drops, planned, "dropper"}};
    recipe.per_spoons = 1;
    recipe.per_with = "teaspoon";
    on_shelf(h, recipe_card("r", "By the spoon", recipe));
    for (const char* pad : {"recipes", "recipe r", "begin"}) h.tap(pad);
    SlabView slab = h.slab();
    REQUIRE(honey_to_come(slab));
    const Tapped whole = honey_to_come(slab)->amount;
    REQUIRE(whole.spoons == 0);
    REQUIRE(whole.drops >= 5);
    for (int i = 3; i < whole.drops; ++i) h.tap("add honey_11");
    slab = h.slab();
    REQUIRE(honey_to_come(slab));
    CHECK(honey_to_come(slab)->amount.drops == 3);
    for (int i = 0; i < 3; ++i) h.tap("add honey_11");
    slab = h.slab();
    CHECK_FALSE(honey_to_come(slab));
  }
}

// The maker's own honey, as a recipe names it, beside the one that always ships.
TEST_CASE("no pad moves while what was planned goes in, and its honey is the only one") {
  Hands h;
  session::RecipeCard recipe;
  recipe.pigments = {{"pb28", session::SaidIn::spoons, 1, "teaspoon"}};
  recipe.liquids = {{"gum_12", session::SaidIn::spoons, 1, "teaspoon"},
                    {"honey_pure", session::SaidIn::drops, 7, "dropper"}};
  recipe.per_spoons = 1;
  recipe.per_with = "teaspoon";
  on_shelf(h, {"honey_pure", "Honey", session::LiquidCard{session::CardKind::honey, {.honey = 1}}});
  on_shelf(h, recipe_card("r", "By the spoon", recipe));
  for (const char* pad : {"recipes", "recipe r", "begin"}) h.tap(pad);
  const auto before = material_pads(h.b);
  REQUIRE(h.shows("add honey_pure"));
  CHECK_FALSE(h.shows("add honey_11"));
  for (const char* pad : {"add honey_pure", "add gum_12", "add honey_pure", "add glycerin"}) {
    h.tap(pad);
    CHECK(material_pads(h.b) == before);
  }
}

// Whatever the recipe names, and whatever else goes in: a hand knows the pads by heart.
TEST_CASE("no pad moves while anything that has one goes in") {
  const std::vector<std::vector<std::string>> liquids{{"gum_12", "glycerin"},
                                                      {"gum_12", "honey_pure"},
                                                      {"gum_12"},
                                                      {"gum_12", "water", "glycerin"}};
  for (const bool own_honey : {false, true})
    for (const auto& of : liquids) {
      Hands h;
      session::RecipeCard recipe;
      recipe.pigments = {{"pb28", session::SaidIn::spoons, 1, "teaspoon"}};
      for (const std::string& liquid : of)
        recipe.liquids.push_back({liquid, session::SaidIn::drops, 7, "dropper"});
      recipe.per_spoons = 1;
      recipe.per_with = "teaspoon";
      if (own_honey || std::count(of.begin(), of.end(), "honey_pure"))
        on_shelf(h, {"honey_pure", "Honey",
                     session::LiquidCard{session::CardKind::honey, {.honey = 1}}});
      on_shelf(h, recipe_card("r", "By the spoon", recipe));
      for (const char* pad : {"recipes", "recipe r", "begin"}) h.tap(pad);
      const auto named = [&] {
        std::string out;
        for (const PadId& pad : material_pads(h.b)) out += name_of(pad) + "; ";
        return out;
      };
      const std::string before = named();
      for (const PadId& pad : material_pads(h.b)) {
        if (pad.kind != SlabPad::add || pad.arg == "pb28") continue;
        CAPTURE(pad.arg);
        for (int i = 0; i < 8; ++i) h.tap("add " + pad.arg);
        CHECK(named() == before);
      }
    }
}

}
