// A plan that is kept as a recipe: with its binder, and once.
#include "bench/choices.hpp"
#include "planned.hpp"
#include "words/bench_says.hpp"

namespace recipes_kept_test {

using namespace bench;
using namespace hands;
using session::SaidIn;

namespace {

std::vector<const session::Card*> recipes(const Hands& h) {
  return shelf_of(h.b, session::CardKind::recipe);
}

const session::RecipeCard& facts(const session::Card& card) {
  return std::get<session::RecipeCard>(card.facts);
}

bool said_to_be_there(const Hands& h) {
  return h.b.notice.error &&
         h.b.notice.error->what == words::Sentence(words::BenchSay::recipe_there);
}

}

TEST_CASE("a recipe that is kept from Plan takes the binder that was chosen there") {
  Hands h;
  h.tap("pigment pb28");
  h.tap("binder gum_13");
  h.tap("keep_recipe");
  REQUIRE(recipes(h).size() == 1);
  const session::RecipeCard& recipe = facts(*recipes(h)[0]);
  REQUIRE(recipe.liquids.size() == 1);
  CHECK(recipe.liquids[0] == session::Said{"gum_13", SaidIn::parts, 0}); // as much as it wants
  const std::string id = recipes(h)[0]->id;
  h.tap("binder gum_12");
  for (const std::string& pad :
       {std::string("pigment pb28"), std::string("recipes"), "recipe " + id})
    h.tap(pad);
  CHECK(h.b.plan.binder == "gum_13");
  CHECK_FALSE(h.b.notice.error);
  h.tap("weigh");
  h.type("10");
  const Planned p = planned_now(h);
  CHECK_FALSE(p.as_made); // how much of it is learnt, not what was guessed on that day
  CHECK(p.binder_g > 0);
}

TEST_CASE("the same plan makes one recipe, however often it is kept") {
  Hands h;
  h.tap("pigment pb28");
  h.tap("keep_recipe");
  CHECK_FALSE(said_to_be_there(h));
  for (int i = 0; i < 3; ++i) h.tap("keep_recipe");
  CHECK(said_to_be_there(h));
  CHECK(recipes(h).size() == 1);
  CHECK(h.b.plan.recipe == recipes(h)[0]->id);
  SUBCASE("by another name it is another") {
    h.give(Text{*pad_named("name"), "Ferry sky"});
    h.tap("keep_recipe");
    h.tap("keep_recipe");
    CHECK(recipes(h).size() == 2);
  }
  SUBCASE("with another binder it is another") {
    h.tap("binder gum_13");
    h.tap("keep_recipe");
    CHECK(recipes(h).size() == 2);
  }
  SUBCASE("one that is its maker's own is not kept once more for everybody") {
    session::Card mine = *recipes(h)[0];
    std::get<session::RecipeCard>(mine.facts).mine = true;
    on_shelf(h, mine);
    h.tap("keep_recipe");
    CHECK(recipes(h).size() == 1);
  }
}

TEST_CASE("a recipe that Plan was filled with is there already") {
  Hands h;
  session::RecipeCard recipe;
  recipe.pigments = {{"pb28", SaidIn::spoons, 1, "teaspoon"}};
  recipe.liquids = {{"gum_12", SaidIn::spoons, 1, "teaspoon"}};
  recipe.per_spoons = 1;
  recipe.per_with = "teaspoon";
  on_shelf(h, recipe_card("r", "By the spoon", recipe));
  for (const char* pad : {"recipes", "recipe r", "keep_recipe"}) h.tap(pad);
  CHECK(said_to_be_there(h));
  CHECK(recipes(h).size() == 1);
  h.tap("parts pb28");
  h.type("2");
  h.tap("keep_recipe");
  CHECK(recipes(h).size() == 2);
}

}
