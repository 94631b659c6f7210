// What one step knows the next one uses: jars, recipes and earlier batches in Plan, and Plan at the
// slab.
#include "bench/again.hpp"
#include "bench/choices.hpp"
#include "bench/measures.hpp"
#include "bench/recipes.hpp"
#include "planned.hpp"
#include "words/bench_says.hpp"

#include <cmath>

namespace handed_on_test {

using namespace bench;
using doctest::Approx;
using namespace hands;
using session::SaidIn;

namespace {

void on_shelf(Hands& h, std::vector<session::Card> cards) {
  session::Log log;
  log.session = "0ther" + cards.front().id;
  for (session::Card& card : cards)
    log.lines.push_back(
        {log.lines.size(), 0, h.wall - 1000, "", session::LaidOut{std::move(card)}});
  h.give(Arrived{{log}, {}, {}, {}});
}

session::Card jar(Hands& h, std::string id, std::string day, double g) {
  session::Card card = *shelf_card(h.b, "gum_12");
  card.id = std::move(id);
  card.made_on = std::move(day);
  card.lot = "jar " + card.id;
  card.made_g = g;
  return card;
}

session::Card recipe_of_blue(double binder, SaidIn in, const std::string& with) {
  session::Card card;
  card.id = "r";
  card.name = "Quay blue";
  session::RecipeCard recipe;
  recipe.pigments = {{"pb28", SaidIn::g, 10}};
  recipe.liquids = {{"gum_12", in, binder, with}};
  card.facts = recipe;
  return card;
}

void use(Hands& h, const session::Card& recipe) {
  on_shelf(h, {recipe});
  for (const std::string& pad : {std::string("recipes"), "recipe " + recipe.id}) h.tap(pad);
}

void add_weighed(Hands& h, const std::string& card, const std::string& g) {
  for (const std::string& pad :
       {std::string("another"), std::string("amount weigh"), "add " + card})
    h.tap(pad);
  h.type(g);
}

std::vector<std::string> binder_pads(Hands& h) {
  std::vector<std::string> out;
  for (const Pad& pad : layout(h.b).pads)
    if (name_of(pad.id).rfind("binder ", 0) == 0) out.push_back(pad.id.arg);
  return out;
}

}

TEST_CASE(
    "the maker's own jar comes before the catalogue's binders, and is meant until another is") {
  Hands h;
  CHECK(h.b.plan.binder == "gum_12");
  on_shelf(h, {jar(h, "zz_old", "2026-11-02", 80), jar(h, "aa_new", "2026-11-20", 120)});
  CHECK(h.b.plan.binder == "aa_new");
  h.tap("pigment pb28");
  CHECK(binder_pads(h)[0] == "aa_new");
  CHECK(binder_pads(h)[1] == "zz_old");
  h.tap("binder zz_old");
  h.tap("weigh");
  h.type("12");
  CHECK(h.b.plan.binder == "zz_old");
  h.tap("begin");
  add_weighed(h, "zz_old", "5");
  h.tap("plan");
  CHECK(h.b.plan.binder == "zz_old"); // the last used
}

TEST_CASE("a binder chosen by hand stays when the pigment is swapped, until the batch is begun") {
  Hands h;
  for (const char* pad : {"pigment pb28", "binder gum_12_honey"}) h.tap(pad);
  h.tap("pigment pb28");
  h.tap("pigment pb29");
  CHECK(h.b.plan.binder == "gum_12_honey");
  h.tap("begin");
  CHECK_FALSE(h.b.plan.binder_chosen);
}

TEST_CASE("a binder chosen by hand and put away since is asked for, and nothing is begun without") {
  Hands h;
  for (const char* pad : {"pigment pb28", "binder gum_12_honey"}) h.tap(pad);
  for (const char* pad : {"shelf", "kind_of binder", "card gum_12_honey", "put_away"}) h.tap(pad);
  REQUIRE_FALSE(shelf_card(h.b, "gum_12_honey"));
  h.tap("plan");
  CHECK(missing_for_begin(h.b) == words::BenchSay::plan_choose_binder);
  h.tap("binder gum_12");
  CHECK_FALSE(missing_for_begin(h.b));
}

TEST_CASE("a binder that was offered and put away since gives way to another") {
  Hands h;
  h.tap("pigment pb28");
  const std::string offered = h.b.plan.binder;
  for (const std::string& pad : {std::string("shelf"), std::string("kind_of binder"),
                                 "card " + offered, std::string("put_away"), std::string("plan")})
    h.tap(pad);
  CHECK(h.b.plan.binder != offered);
  CHECK(shelf_card(h.b, h.b.plan.binder));
  CHECK_FALSE(h.b.plan.blend.empty());
}

TEST_CASE("a jar of which nothing is left is not meant") {
  Hands h;
  on_shelf(h, {jar(h, "full", "2026-11-02", 80), jar(h, "gone", "2026-11-20", 4)});
  h.tap("pigment pb28");
  h.tap("weigh");
  h.type("12");
  CHECK(h.b.plan.binder == "gone");
  h.tap("begin");
  add_weighed(h, "gone", "4");
  h.tap("plan");
  CHECK(h.b.plan.binder == "full");
}

TEST_CASE("binders of one name are told apart by their jar, else by whose they are") {
  Hands h;
  session::Card bare = jar(h, "bare", "", 0);
  bare.lot = "";
  on_shelf(h, {jar(h, "own", "2026-11-20", 120), bare});
  h.tap("pigment pb28");
  using Row = PlanView::Row;
  for (const Row& row : plan_shown(h).binders) {
    CAPTURE(row.pad.arg);
    CHECK((row.whose == Row::told) == (row.name != shelf_card(h.b, "gum_12")->name));
    if (row.pad.arg == "own") CHECK(row.index_name == "jar own");
    if (row.pad.arg == "bare") CHECK(row.whose == Row::own);
    if (row.pad.arg == "gum_12") CHECK(row.whose == Row::ships);
  }
}

TEST_CASE("Plan says one ratio, and what follows in spoons and drops is what stands in grams") {
  for (const char* grams : {"6", "9", "14", "21"}) {
    CAPTURE(grams);
    Hands h;
    h.tap("pigment pb29");
    h.tap("weigh");
    h.type(grams);
    const PlanView plan = plan_shown(h);
    const Planned p = planned_now(h);
    REQUIRE(plan.range);
    CHECK(plan.range->g == Approx(10 * p.binder_g / p.pigment_g));
    CHECK(plan.range->low_g < plan.range->g);
    const auto rest = std::find_if(plan.lines.begin(), plan.lines.end(), [](const auto& line) {
      return line.why == PlanView::Step::rest;
    });
    REQUIRE(rest != plan.lines.end());
    REQUIRE_FALSE(rest->scoops.empty());
    const Measures of = measures_of(h.b, *shelf_card(h.b, "gum_12"));
    double mL = 0;
    for (const ScoopView& scoop : rest->scoops)
      mL += scoop.count * (scoop.drops ? of.drop_mL : of.spoon_mL);
    CHECK(rest->g == Approx(mL * of.g_per_mL));
    CHECK(rest->g == Approx(p.rest_g).epsilon(0.1));
    const double first_g = !is_nothing(p.first_helping.amount)
                               ? mL_of(p.first_helping.amount, of) * of.g_per_mL
                               : (p.first_helping.low_g + p.first_helping.high_g) / 2;
    CHECK(first_g + p.rest_g == Approx(p.binder_g));
  }
}

TEST_CASE("a recipe of little binder bounds the first helping, in Plan and at the slab") {
  Hands h;
  use(h, recipe_of_blue(0.25, SaidIn::spoons, "teaspoon"));
  const Planned p = planned_now(h);
  CHECK(p.by_recipe);
  CHECK(p.first_helping.low_g == Approx(0.5 * p.binder_g));
  CHECK(p.first_helping.high_g == Approx(0.7 * p.binder_g));
  CHECK_FALSE(plan_shown(h).range); // the recipe's ratio stands alone
  h.tap("begin");
  const SlabView slab = h.slab();
  CHECK(slab.advice.kind == Advice::first_helping);
  CHECK(slab.advice.low_g == Approx(p.first_helping.low_g).epsilon(0.01));
  CHECK(slab.advice.high_g == Approx(p.first_helping.high_g).epsilon(0.01));
  REQUIRE(slab.by_recipe_g);
  CHECK(*slab.by_recipe_g == Approx(p.binder_g));
  CHECK_FALSE(slab.last_time_g);
}

TEST_CASE("another pigment in the paint, and the recipe's binder is no longer spoken of") {
  Hands h;
  use(h, recipe_of_blue(0.25, SaidIn::spoons, "teaspoon"));
  h.choose("pb29");
  h.tap("begin");
  CHECK_FALSE(h.slab().by_recipe_g);
}

TEST_CASE("a recipe of much binder is no reason to flood the powder") {
  Hands h;
  use(h, recipe_of_blue(60, SaidIn::g, ""));
  Hands other;
  other.tap("pigment pb28");
  other.tap("weigh");
  other.type("10");
  CHECK(planned_now(h).first_helping.high_g == Approx(planned_now(other).first_helping.high_g));
}

TEST_CASE("made again, or by the recipe that was kept of it: one first helping") {
  for (const char* first : {"1.2", "4.4"}) {
    CAPTURE(first);
    Hands h;
    h.begin();
    add_weighed(h, "gum_12", first);
    h.tap("pass");
    h.tap("felt too_sticky");
    add_weighed(h, "gum_12", "1.8");
    for (int i = 0; i < 2; ++i) h.tap("pass");
    h.tap("felt right");
    for (const char* pad : {"gather", "close", "keep_as_recipe"}) h.tap(pad);
    const std::string made = h.b.batches.back();
    h.tap("keep_as_recipe"); // plans by it
    const Planned by_recipe = planned_now(h);
    CHECK(by_recipe.by_recipe);
    make_again(h.b, made, h.now());
    const Planned again = planned_now(h);
    CHECK_FALSE(again.by_recipe);
    CHECK(by_recipe.binder_g == Approx(again.binder_g).epsilon(0.01));
    CHECK(by_recipe.first_helping.low_g == Approx(again.first_helping.low_g).epsilon(0.01));
    CHECK(by_recipe.first_helping.high_g == Approx(again.first_helping.high_g).epsilon(0.01));
    use_recipe(h.b, recipe_of_batch(h.b, made), h.now());
    h.tap("begin");
    CHECK(h.slab().advice.high_g == Approx(by_recipe.first_helping.high_g).epsilon(0.02));
  }
}

TEST_CASE("the slab says in how many portions it was planned, and no more once it is gathered") {
  for (const bool recipe : {false, true}) {
    CAPTURE(recipe);
    Hands h;
    if (recipe)
      use(h, recipe_of_blue(6, SaidIn::g, ""));
    else
      h.tap("pigment pb28");
    while (h.b.plan.want != Want::pigment_g) h.tap("want");
    h.tap("weigh");
    h.type("60");
    const int portions = planned_now(h).portions;
    CHECK(portions > 1);
    h.tap("begin");
    CHECK(h.slab().portions == portions);
    add_weighed(h, "gum_12", "30");
    CHECK(h.slab().portions == portions);
    for (const char* pad : {"pass", "pass"}) h.tap(pad);
    h.wait(300);
    for (const char* pad : {"felt right", "pass", "dot", "specks none"}) h.tap(pad);
    CHECK(h.slab().portions == portions); // all of them are to be so
    h.tap("gather");
    CHECK(h.slab().portions == 1);
  }
  Hands little;
  little.begin();
  CHECK(little.slab().portions == 1);
}

TEST_CASE("made again, what was put away is named, and no other binder's weight is taken") {
  Hands h;
  h.begin();
  for (const char* id : {"gum_12", "honey_11"}) {
    h.tap("another");
    h.tap("amount weigh");
    h.tap(std::string("add ") + id);
    h.type(id == std::string("gum_12") ? "5" : "0.4");
  }
  for (const char* pad : {"pass", "pass", "pass", "gather", "close"}) h.tap(pad);
  std::string gone;
  for (const char* id : {"gum_12", "honey_11"}) {
    const auto at = std::find_if(h.b.shelf.begin(), h.b.shelf.end(),
                                 [&](const session::Card& card) { return card.id == id; });
    REQUIRE(at != h.b.shelf.end());
    gone += (gone.empty() ? "" : ", ") + at->name;
    h.b.shelf.erase(at);
  }
  make_again(h.b, h.b.batches.back(), h.now());
  REQUIRE(h.b.notice.error);
  CHECK(*h.b.notice.error == words::Error{words::BenchSay::not_on_shelf, {gone, "4"}});
  CHECK_FALSE(h.b.plan.as_made);
  CHECK(h.b.plan.blend.size() == 1);
}

TEST_CASE("a plan of more than a line can say is refused, and nothing is begun") {
  Hands h;
  h.begin();
  add_weighed(h, "gum_12", "24");
  for (const char* pad : {"pass", "pass", "pass", "gather", "close"}) h.tap(pad);
  make_again(h.b, h.b.batches.back(), h.now());
  h.b.plan.want = Want::pigment_g;
  h.b.plan.wanted = 4000; // of which its binder would be 8000 g
  const std::size_t lines = h.lines.size();
  h.tap("begin");
  REQUIRE(h.b.notice.error);
  CHECK(h.b.notice.error->what == words::BenchSay::amount_cannot_be);
  CHECK(h.lines.size() == lines);
}

}
