// A recipe's card on Shelf: what it says, where it comes from, and what is done from it.
#include "bench/choices.hpp"
#include "bench/recipes.hpp"
#include "planned.hpp"

namespace recipe_card_test {

using namespace bench;
using doctest::Approx;
using namespace hands;
using session::SaidIn;

namespace {

void open_recipe(Hands& h, const session::RecipeCard& recipe) {
  on_shelf(h, recipe_card("r", "Evening over the weir", recipe));
  for (const char* pad : {"shelf", "kind_of recipe", "card r"}) h.tap(pad);
}

RecipeView shown(Hands& h) {
  const auto shelf = std::get<ShelfView>(view(h.b, h.now()).screen);
  REQUIRE(shelf.recipe);
  return *shelf.recipe;
}

session::RecipeCard in_spoons() {
  session::RecipeCard recipe;
  recipe.pigments = {{"pb28", SaidIn::spoons, 2, "teaspoon"}, {"pw6", SaidIn::g, 1.5}};
  recipe.liquids = {{"gum_12", SaidIn::spoons, 1, "teaspoon"},
                    {"glycerin", SaidIn::drops, 4, "dropper"}};
  recipe.per_spoons = 1;
  recipe.per_with = "teaspoon";
  return recipe;
}

}

TEST_CASE("all that a recipe's card says is for one weight of pigment") {
  session::RecipeCard recipe;
  recipe.pigments = {{"pb28", SaidIn::g, 15}, {"pw6", SaidIn::g, 5}};
  recipe.liquids = {{"gum_12", SaidIn::g, 10.2}, {"glycerin", SaidIn::drops, 4, "dropper"}};
  recipe.per_g = 10;
  Hands h;
  open_recipe(h, recipe);
  const RecipeView whole = shown(h);
  CHECK(whole.per_g == 20);
  CHECK(whole.pigments[0].amount == 15);
  CHECK(whole.liquids[0].amount == Approx(20.4));
  CHECK(whole.liquids[1].scoop.count == 8);
  recipe.pigments = {{"pb28", SaidIn::g, 13}}; // 5.2 drops are none that fall
  Hands other;
  open_recipe(other, recipe);
  const RecipeView as_the_liquids = shown(other);
  CHECK(as_the_liquids.per_g == 10);
  CHECK(as_the_liquids.pigments[0].amount == Approx(10));
  CHECK(as_the_liquids.liquids[1].scoop.count == 4);
}

TEST_CASE("a recipe's card says each thing in its maker's measure, and marks what is a guess") {
  Hands h;
  open_recipe(h, in_spoons());
  const RecipeView v = shown(h);
  REQUIRE(v.pigments.size() == 2);
  CHECK(v.pigments[0].name == shelf_card(h.b, "pb28")->name);
  CHECK(v.pigments[0].colour == pigment_of(*shelf_card(h.b, "pb28")).colour);
  CHECK(v.pigments[0].scoop.count == 2);
  CHECK(v.pigments[0].scoop.name == shelf_card(h.b, "teaspoon")->name);
  CHECK(v.pigments[0].guess);
  CHECK(v.pigments[0].g > 0);
  CHECK(v.pigments[0].u > 0.3 * v.pigments[0].g);
  CHECK(v.pigments[1].in == SaidIn::g);
  CHECK(v.pigments[1].amount == 1.5);
  CHECK_FALSE(v.pigments[1].guess);
  REQUIRE(v.liquids.size() == 2);
  CHECK(v.liquids[0].kind == session::CardKind::binder);
  CHECK(v.liquids[0].g > 5); // heavier than water
  CHECK_FALSE(v.liquids[0].guess);
  CHECK(v.liquids[1].scoop.drops);
  CHECK(v.liquids[1].scoop.count == 4);
  REQUIRE(v.per);
  CHECK(v.per->count == 1);
  CHECK(v.from == session::RecipeFrom::own_head);
  CHECK(v.batch.empty());
  CHECK_FALSE(v.mine);
  CHECK(v.made.empty());
}

TEST_CASE("a recipe whose pigment is put away, or never was here, still names it") {
  Hands h;
  session::RecipeCard recipe = in_spoons();
  recipe.pigments.push_back({"sold_out", SaidIn::parts, 3});
  on_shelf(h, recipe_card("r", "Old sky", recipe));
  for (const char* pad : {"shelf", "card pw6", "change", "put_away", "kind_of recipe", "card r"}) {
    if (!h.shows(pad)) h.b.shelf_page.search = "pw6";
    h.tap(pad);
  }
  const RecipeView v = shown(h);
  REQUIRE(v.pigments.size() == 3);
  CHECK_FALSE(v.pigments[0].gone);
  CHECK(v.pigments[1].gone);
  CHECK(v.pigments[1].name == h.b.away.front().name);
  CHECK(v.pigments[2].gone);
  CHECK(v.pigments[2].name == "sold_out");
  CHECK(v.pigments[2].g == 0);
}

TEST_CASE("planned from its card, a recipe leads the plan, and its card lists the batch") {
  Hands h;
  open_recipe(h, in_spoons());
  h.tap("make");
  CHECK(h.b.screen == Screen::plan);
  CHECK(recipe_followed(h.b) == "r");
  REQUIRE(h.b.plan.blend.size() == 2);
  CHECK(h.b.plan.blend[0] == BlendPart{"pb28", 2, SaidIn::spoons, "teaspoon"});
  h.tap("begin");
  const std::string batch = h.b.batch;
  REQUIRE(h.b.folded->plan);
  CHECK(h.b.folded->plan->of.recipe == "r");
  for (const char* pad : {"shelf", "kind_of recipe", "card r"}) h.tap(pad);
  REQUIRE(shown(h).made.size() == 1);
  CHECK(shown(h).made[0].name == h.b.folded->name);
  h.tap("batch_of " + batch);
  CHECK(h.b.screen == Screen::book);
}

TEST_CASE("a name that is taken away keeps a recipe's card open, and says so") {
  Hands h;
  open_recipe(h, in_spoons());
  h.give(Text{*pad_named("says name"), ""});
  h.tap("make");
  CHECK(h.b.screen == Screen::shelf);
  CHECK(h.b.notice.error);
  CHECK(shelf_card(h.b, "r")->name == "Evening over the weir");
}

TEST_CASE("one that was kept from a batch says which, as long as the batch is there") {
  Hands h;
  h.gather();
  session::RecipeCard recipe = in_spoons();
  recipe.from = session::RecipeFrom::batch;
  recipe.batch = h.b.batches.front();
  recipe.mine = true;
  recipe.note = "a little more white in summer";
  open_recipe(h, recipe);
  CHECK(shown(h).batch == name_of_batch(h.b, recipe.batch));
  CHECK_FALSE(shown(h).batch.empty());
  CHECK(shown(h).mine);
  CHECK(shown(h).note == recipe.note);
}

}
