// Recipes in a maker's own measures: kept, planned, scaled, and what they leave open.
#include "bench/choices.hpp"
#include "bench/kept_lists.hpp"
#include "bench/pads_plan.hpp"
#include "bench/recipes.hpp"
#include "bench/shelf.hpp"
#include "paint/heap.hpp"
#include "planned.hpp"
#include "words/bench_says.hpp"

#include <cmath>

namespace recipes_test {

using namespace bench;
using doctest::Approx;
using namespace hands;
using session::SaidIn;

namespace {

// A second spoon of 15 mL on the shelf.
void own_tablespoon(Hands& h) {
  for (const char* pad : {"shelf", "kind_of spoon", "new_card", "fact water_g"}) h.tap(pad);
  h.type("15");
  h.give(Text{*pad_named("says name"), "tablespoon"});
  h.tap("card_done");
  h.tap("plan");
}

std::string spoon_named(Hands& h, const std::string& name) {
  for (const session::Card* card : shelf_of(h.b, session::CardKind::spoon))
    if (card->name == name) return card->id;
  FAIL(name);
  return "";
}

void amount(Hands& h, const std::string& pigment, const std::string& number) {
  h.tap("parts " + pigment);
  h.type(number);
}

// A tablespoon of blue and a quarter teaspoon of white.
void blue_and_white(Hands& h) {
  own_tablespoon(h);
  h.tap("pigment pb28");
  h.tap("another_pigment");
  h.b.plan.search = "pw6";
  h.tap("pigment pw6");
  h.tap("leave");
  h.tap("say_in spoons");
  while (h.b.plan.blend[0].with != spoon_named(h, "tablespoon")) h.tap("spoon pb28");
  amount(h, "pb28", "1");
  amount(h, "pw6", "0.25");
}

const session::RecipeCard& only_recipe(Hands& h) {
  const auto recipes = shelf_of(h.b, session::CardKind::recipe);
  REQUIRE(recipes.size() == 1);
  return std::get<session::RecipeCard>(recipes.front()->facts);
}

}

TEST_CASE("spoons go in as they are said and come out as grams with their width") {
  Hands h;
  blue_and_white(h);
  CHECK(h.b.plan.want == Want::as_it_stands);
  const Planned p = planned_now(h);
  const auto heap = paint::heap_of(pigment_of(*shelf_card(h.b, "pb28")).pigment);
  CHECK(heap.guess);
  CHECK(p.pigments[0].grams == Approx(15.0 * heap.g_per_mL).epsilon(0.01));
  CHECK(p.pigments[0].guess);
  // A factor of two either way is most of what is not known.
  CHECK(p.pigments[0].u / p.pigments[0].grams > 0.39);
  CHECK(p.pigments[0].u / p.pigments[0].grams < 0.45);
  const auto lines = plan_shown(h).lines;
  REQUIRE(lines.size() >= 3);
  REQUIRE(lines[0].scoops.size() == 1);
  CHECK(lines[0].scoops[0].count == 1);
  CHECK(lines[0].guess);
  CHECK(lines[1].scoops[0].count == 0.25);
  CHECK(lines[2].why == PlanView::Step::first_helping);
}

TEST_CASE("a powder whose spoon was weighed is no guess") {
  Hands h;
  for (const char* pad : {"shelf", "card pb28", "change", "fact heap"})
    if (h.shows(pad)) h.tap(pad);
  if (!h.b.number) {
    h.b.shelf_page.search = "pb28";
    for (const char* pad : {"card pb28", "change", "fact heap"}) h.tap(pad);
  }
  h.type("0.9");
  h.tap("card_done");
  h.tap("plan");
  h.tap("pigment pb28");
  h.tap("say_in spoons");
  const Planned p = planned_now(h);
  CHECK_FALSE(p.pigments[0].guess);
  CHECK(p.pigments[0].grams == Approx(4.5).epsilon(0.01));
  CHECK(p.pigments[0].u / p.pigments[0].grams > 0.1);
}

TEST_CASE("spoons, grams and parts are three ways to say one recipe") {
  Hands h;
  blue_and_white(h);
  const Planned before = planned_now(h);
  h.tap("say_in g");
  CHECK(planned_now(h).pigments[0].grams == Approx(before.pigments[0].grams).epsilon(0.01));
  CHECK(planned_now(h).pigments[0].u == 0);
  h.tap("say_in parts");
  CHECK(planned_now(h).pigment_g == Approx(before.pigment_g).epsilon(0.01));
  h.tap("say_in spoons");
  CHECK(h.b.plan.blend[0].parts == Approx(1).epsilon(0.02));
  CHECK(h.b.plan.blend[1].parts == Approx(0.25).epsilon(0.05));
}

TEST_CASE("pans scale a recipe, and each amount is the best set of the maker's own spoons") {
  Hands h;
  blue_and_white(h);
  const double ratio = planned_now(h).pigments[0].grams / planned_now(h).pigments[1].grams;
  while (h.b.plan.want != Want::pans) h.tap("want");
  h.tap("weigh");
  h.type("12");
  const Planned p = planned_now(h);
  CHECK(p.pigments[0].grams / p.pigments[1].grams == Approx(ratio));
  const auto line = plan_shown(h).lines[0];
  REQUIRE_FALSE(line.scoops.empty());
  const auto set =
      scooped(h.b, *shelf_card(h.b, "pb28"), p.pigments[0].grams, 0.02 * p.pigments[0].grams);
  REQUIRE(set);
  CHECK(line.scoops.size() == set->of.size());
  h.tap("more_of_it");
  CHECK(planned_now(h).pans == 13);
  h.tap("fewer");
  CHECK(planned_now(h).pans == 12);
}

TEST_CASE(
    "what begins in spoons is recorded in spoons, the guess on its card for this batch alone") {
  Hands h;
  blue_and_white(h);
  h.tap("begin");
  REQUIRE(h.b.folded);
  CHECK(h.b.folded->warnings.empty());
  int spooned = 0;
  for (const session::Line& line : h.lines)
    if (const auto* added = std::get_if<session::Added>(&line.event))
      spooned += added->unit == session::Unit::spoons;
  CHECK(spooned == 2);
  const paint::Amount& pigment = h.b.folded->standing.pigment_g;
  CHECK(paint::uncertainty(pigment) / pigment.value > 0.3);
  CHECK(pigment_of(*shelf_card(h.b, "pb28")).pigment.heap_g_per_mL == 0);
}

TEST_CASE("one tap keeps a batch as a recipe; the next plans by it, and the plan names it") {
  Hands h;
  h.begin();
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("6");
  for (int i = 0; i < 6; ++i) h.tap("add water");
  for (int i = 0; i < 3; ++i) h.tap("pass");
  h.tap("felt right");
  const std::string made = h.b.batch;
  h.tap("gather");
  h.tap("close");
  REQUIRE(h.shows("keep_as_recipe"));
  h.tap("keep_as_recipe");
  const session::RecipeCard& recipe = only_recipe(h);
  CHECK(recipe.from == session::RecipeFrom::batch);
  CHECK(recipe.batch == made);
  CHECK(recipe.per_g == 10);
  REQUIRE(recipe.pigments.size() == 1);
  CHECK(recipe.pigments[0] == session::Said{"pb28", SaidIn::g, 12});
  REQUIRE(recipe.liquids.size() == 2);
  CHECK(recipe.liquids[0].amount == Approx(5));
  h.tap("keep_as_recipe"); // plans by it
  CHECK(h.b.screen == Screen::plan);
  CHECK(shelf_of(h.b, session::CardKind::recipe).size() == 1);
  CHECK(planned_now(h).binder_g == Approx(6).epsilon(0.01));
  CHECK(planned_now(h).by_recipe);
  REQUIRE(planned_now(h).extras.size() == 1);
  while (h.b.plan.want != Want::pigment_g) h.tap("want");
  h.tap("weigh");
  h.type("24");
  CHECK(planned_now(h).binder_g == Approx(12).epsilon(0.01));
  h.tap("begin");
  REQUIRE(h.b.folded->plan);
  CHECK(h.b.folded->plan->of.recipe == recipe_of_batch(h.b, made));
}

TEST_CASE("a recipe out of one's own head is kept from Plan, found there, and used") {
  Hands h;
  blue_and_white(h);
  h.give(Text{*pad_named("name"), "Ferry sky"});
  h.tap("keep_recipe");
  const session::RecipeCard recipe = only_recipe(h);
  CHECK(recipe.from == session::RecipeFrom::own_head);
  REQUIRE(recipe.pigments.size() == 2);
  CHECK(recipe.pigments[1] == session::Said{"pw6", SaidIn::spoons, 0.25, h.b.plan.blend[1].with});
  CHECK(plan_shown(h).recipe_kept);
  for (const char* pad : {"pigment pb28", "pigment pw6", "recipes"}) h.tap(pad);
  const std::string id = shelf_of(h.b, session::CardKind::recipe).front()->id;
  h.tap("recipe " + id);
  CHECK(h.b.plan.name == "Ferry sky");
  CHECK(h.b.plan.blend.size() == 2);
  CHECK(h.b.plan.said_in == SaidIn::spoons);
}

TEST_CASE("as far as the pigment lasts that gives out first") {
  Hands h;
  h.tap("pigment pb28");
  while (h.b.plan.want != Want::dried_g) h.tap("want");
  h.tap("want");
  CHECK(h.b.plan.want == Want::pigment_g); // no card says how much is left
  for (session::Card& card : h.b.shelf)
    if (card.id == "pb28") card.made_g = 37;
  while (h.b.plan.want != Want::all_left) h.tap("want");
  CHECK(planned_now(h).pigment_g == Approx(37));
  CHECK_FALSE(h.shows("weigh"));
}

TEST_CASE("a recipe whose pigment is gone says which, and takes the rest") {
  Hands h;
  session::RecipeCard recipe;
  recipe.pigments = {{"pb28", SaidIn::g, 10}, {"sold_out", SaidIn::g, 2}};
  recipe.liquids = {{"gum_12", SaidIn::g, 6}};
  on_shelf(h, recipe_card("r", "Old sky", recipe));
  for (const char* pad : {"recipes", "recipe r"}) h.tap(pad);
  REQUIRE(h.b.notice.error);
  CHECK(*h.b.notice.error == words::Error{words::BenchSay::not_on_shelf, {"sold_out", "4"}});
  REQUIRE(h.b.plan.blend.size() == 1);
  CHECK_FALSE(h.b.plan.as_made);
  CHECK(recipe_followed(h.b).empty());
}

TEST_CASE("a recipe whose honey is put away says so, and keeps its binder") {
  Hands h;
  session::RecipeCard recipe;
  recipe.pigments = {{"pb28", SaidIn::g, 10}};
  recipe.liquids = {{"gum_12", SaidIn::g, 6}, {"honey_11", SaidIn::g, 1}};
  on_shelf(h, recipe_card("r", "Old sky", recipe));
  const auto honey = std::find_if(h.b.shelf.begin(), h.b.shelf.end(),
                                  [](const session::Card& card) { return card.id == "honey_11"; });
  REQUIRE(honey != h.b.shelf.end());
  h.b.away.push_back(*honey);
  h.b.shelf.erase(honey);
  for (const char* pad : {"recipes", "recipe r"}) h.tap(pad);
  REQUIRE(h.b.notice.error);
  CHECK(*h.b.notice.error ==
        words::Error{words::BenchSay::not_on_shelf, {h.b.away.back().name, "4"}});
  REQUIRE(h.b.plan.as_made);
  CHECK(h.b.plan.as_made->extras.empty());
}

TEST_CASE("binder to a spoon of powder is scaled by what that spoon weighs") {
  Hands h;
  session::RecipeCard recipe;
  recipe.pigments = {{"pb28", SaidIn::spoons, 2, "teaspoon"}};
  recipe.liquids = {{"gum_12", SaidIn::spoons, 1, "teaspoon"},
                    {"honey_11", SaidIn::drops, 3, "dropper"}};
  recipe.per_spoons = 1;
  recipe.per_with = "teaspoon";
  on_shelf(h, recipe_card("r", "By the spoon", recipe));
  for (const char* pad : {"recipes", "recipe r"}) h.tap(pad);
  const Planned p = planned_now(h);
  CHECK(p.binder_g == Approx(2 * 5 / 0.8839).epsilon(0.01));
  REQUIRE(p.extras.size() == 1);
  CHECK(p.extras[0].card == "honey_11");
}

TEST_CASE("a card put away while it is planned leaves the plan, and its recipe no longer leads") {
  Hands h;
  blue_and_white(h);
  h.tap("keep_recipe");
  h.tap("shelf");
  h.b.shelf_page.search = "pw6";
  h.b.shelf_page.kind = ShelfKind::pigment;
  for (const char* pad : {"card pw6", "change", "put_away", "plan"}) h.tap(pad);
  CHECK(h.b.plan.blend.size() == 1);
  CHECK(recipe_followed(h.b).empty());
  CHECK(planned_now(h).pigments.size() == 1);
}

TEST_CASE("a spoon put away leaves amounts that cannot be measured, and Plan says so") {
  Hands h;
  blue_and_white(h);
  h.tap("shelf");
  for (const std::string& pad :
       {std::string("kind_of spoon"), "card " + spoon_named(h, "tablespoon"),
        std::string("put_away"), std::string("plan")})
    h.tap(pad);
  const auto p = planned(h.b);
  REQUIRE(p);
  REQUIRE_FALSE(*p);
  CHECK(p->error().what == words::BenchSay::spoon_gone);
  CHECK(plan_shown(h).why_not);
}

TEST_CASE("amounts out of range are refused and change nothing") {
  Hands h;
  blue_and_white(h);
  for (const char* number : {"0", "1001", "99999999"}) {
    h.tap("parts pb28");
    h.type(number);
    REQUIRE(h.b.number);
    CHECK(h.b.number->error);
    h.tap("leave");
  }
  CHECK(h.b.plan.blend[0].parts == 1);
}

TEST_CASE("a recipe is mine, or not, on its card; it can be put away and brought back") {
  Hands h;
  blue_and_white(h);
  h.tap("keep_recipe");
  const std::string id = shelf_of(h.b, session::CardKind::recipe).front()->id;
  for (const std::string& pad : {std::string("shelf"), std::string("kind_of recipe"), "card " + id,
                                 std::string("choice mine"), std::string("card_done")})
    h.tap(pad);
  CHECK(only_recipe(h).mine);
  h.tap("card " + id);
  h.tap("put_away");
  CHECK(shelf_of(h.b, session::CardKind::recipe).empty());
  CHECK_FALSE(h.shows("new_card"));
  for (const std::string& pad : {std::string("kept_away"), "card " + id, std::string("bring_back")})
    h.tap(pad);
  CHECK(only_recipe(h).mine);
}

TEST_CASE("the workshop's own pigments come first, the catalogue behind one pad") {
  Hands h;
  CHECK(h.shows("pigment " + plan_shown(h).pigments.front().pad.arg));
  CHECK_FALSE(h.shows("all_others"));
  h.begin();
  h.tap("add gum_12");
  h.tap("plan");
  CHECK(plan_shown(h).pigments.size() == 1);
  CHECK(h.shows("pigment pb28"));
  h.tap("all_others");
  CHECK(plan_shown(h).pigments.size() > 8);
  h.tap("all_others");
  CHECK(plan_shown(h).pigments.size() == 1);
  h.give(Text{*pad_named("search"), "ochre"});
  CHECK_FALSE(plan_shown(h).pigments.empty());
}

TEST_CASE("every binder can be reached, however many there are") {
  Hands h;
  for (int i = 0; i < 7; ++i) {
    session::Card card = *shelf_card(h.b, "gum_12");
    card.id = "own" + std::to_string(i);
    on_shelf(h, card);
  }
  h.tap("pigment pb28");
  std::set<std::string> seen;
  for (int turn = 0; turn < 8; ++turn) {
    for (const Pad& pad : layout(h.b).pads)
      if (name_of(pad.id).rfind("binder ", 0) == 0) seen.insert(pad.id.arg);
    if (turn < 7) h.tap("other_binders");
  }
  CHECK(seen.size() == 11);
}

TEST_CASE("ten thousand recipes are listed by the page and found by a word") {
  Hands h;
  session::Log log;
  log.session = "0ther";
  for (std::uint64_t i = 0; i < 10000; ++i) {
    session::RecipeCard recipe;
    recipe.pigments = {{i % 2 ? "pb28" : "pw6", SaidIn::spoons, 1, "teaspoon"}};
    log.lines.push_back({i, 0, h.wall - 10000 + static_cast<std::int64_t>(i), "",
                         session::LaidOut{recipe_card("r" + std::to_string(i),
                                                      "Sky " + std::to_string(i), recipe)}});
  }
  h.give(Arrived{{log}, {}, {}, {}});
  h.tap("recipes");
  CHECK(plan_shown(h).pages > 800);
  const auto listed = h.b.finder_list; // no finger and no frame makes it anew
  const Point at = layout(h.b).list->box.centre();
  h.point(Pointer::down, at);
  for (int mm = 5; mm <= 60; mm += 5) h.point(Pointer::move, {at.x, at.y - mm});
  CHECK(plan_shown(h).recipes.front().pad !=
        PadId{PlanPad::recipe, h.b.shelf[listed->cards.front()].id});
  h.point(Pointer::up, {at.x, at.y - 60});
  h.wait(0.1);
  CHECK(h.b.finder_list == listed);
  CHECK(list_of_finder(h.b) == listed);
  CHECK(plan_shown(h).recipes.size() == 10);
  h.give(Text{*pad_named("search"), "sky 4321"});
  REQUIRE(plan_shown(h).recipes.size() == 1);
  h.tap("recipe r4321");
  CHECK(h.b.plan.blend.size() == 1);
}

}
