#include "screens/views_recipes.hpp"

#include "bench/choices.hpp"
#include "bench/pads_plan.hpp"
#include "screens/views_slab.hpp"
#include "words/bench_says.hpp"

namespace views {

using namespace bench;

std::vector<PlanView::Step> lines() {
  using Step = PlanView::Step;
  const std::string blue = "Cerulean blue (chromium)", gum = "Gum 1 : 2, glycerin";
  return {
      {Step::measure,
       session::CardKind::pigment,
       blue,
       0x2266AA,
       {{1, false, "tablespoon", 15}, {2.75, false, "teaspoon", 5}},
       0,
       123.4,
       49.4,
       true},
      {Step::measure, session::CardKind::pigment, "Quinacridone magenta", 0xAA2266, {}, 0, 12.4},
      {Step::first_helping,
       session::CardKind::binder,
       gum,
       0,
       {{9.75, false, "teaspoon", 5}},
       41.5,
       58.5},
      {Step::rest, session::CardKind::binder, gum, 0, {{11.25, false, "teaspoon", 5}}, 0, 47},
      {Step::extra, session::CardKind::honey, "Honey 1 : 1", 0, {{28, true, "", 0}}, 0, 1.25},
      {Step::extra, session::CardKind::wetting_aid, "Ox gall", 0, {{4, true, "", 0}}, 0, 0.2}};
}

// Three pigments, binder and extras, each as it may be said.
session::RecipeCard spoken_recipe() {
  using session::SaidIn;
  session::RecipeCard recipe;
  recipe.pigments = {{"pb36", SaidIn::spoons, 2.75, "teaspoon"},
                     {"pv19", SaidIn::g, 12.4},
                     {"pr108", SaidIn::parts, 0.25}};
  recipe.liquids = {{"gum_12_glycerin", SaidIn::spoons, 9.75, "teaspoon"},
                    {"honey_11", SaidIn::drops, 28, "dropper"},
                    {"ox_gall", SaidIn::g, 0.2}};
  recipe.per_g = 10;
  recipe.note = "A little more of the white in summer, and let it rest for a night";
  return recipe;
}

void add_recipes(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  for (int i = 0; i < 12; ++i) {
    session::RecipeCard recipe;
    recipe.pigments = {{"pb36", session::SaidIn::spoons, 1, "teaspoon"},
                       {"pv19", session::SaidIn::spoons, 0.25, "teaspoon"}};
    recipe.mine = i % 2 == 0;
    session::Card card;
    card.id = "r" + std::to_string(i);
    card.name = "Evening over the weir, " + std::to_string(i);
    card.facts = recipe;
    b.shelf.push_back(card);
    b.own.insert(card.id);
  }
  b.own.insert("pb36");
  for (session::Card& card : b.shelf)
    if (card.id == "pb36" || card.id == "gum_12_glycerin") card.made_g = 3.5;
  b.plan.finding = Finding::recipe;
  out.push_back({"plan, recipes" + on, mm, view(b, {})});
  b.plan.finding = Finding::pigment;
  out.push_back({"plan, own pigments" + on, mm, view(b, {})});
  for (const char* id : {"pb36", "pv19", "pr108"}) {
    b.plan.blend.push_back({id, 2.75, session::SaidIn::spoons, "teaspoon"});
    b.plan.said_in = session::SaidIn::spoons;
    b.plan.finding = Finding::nothing;
    b.plan.name = "Evening over the weir, 3";
    for (const Want want : {Want::as_it_stands, Want::all_left, Want::pans}) {
      b.plan.want = want;
      b.plan.wanted = want == Want::pans ? 24 : 0;
      b.plan.pan = "half_pan";
      out.push_back({"plan, in spoons" + on, mm, view(b, {})});
    }
  }
  session::Card binder = *shelf_card(b, "gum_12_glycerin");
  binder.id = "own";
  binder.lot = "jar 12";
  b.own.insert(binder.id);
  b.shelf.push_back(binder);
  out.push_back({"plan, many binders" + on, mm, view(b, {})});
  Bench kept = b;
  kept.plan.blend.resize(1);
  kept.notice.error = words::Error{words::BenchSay::recipe_there, {"Evening over the weir"}};
  out.push_back({"plan, recipe kept already" + on, mm, view(kept, {})});
  b.plan.finding = Finding::pigment;
  out.push_back({"plan, another pigment" + on, mm, view(b, {})});
  b.plan.finding = Finding::nothing;
  b.number = NumberEntry{{PlanPad::parts, "pb36"}, "", {}};
  out.push_back({"plan, how many spoons" + on, mm, view(b, {})});
  b.number.reset();
  b.screen = Screen::shelf;
  b.shelf_page.kind = ShelfKind::recipe;
  const auto keep = [&](const std::string& what, const session::RecipeCard& recipe) {
    b.shelf_page.card = *shelf_card(b, "r3");
    b.shelf_page.card->facts = recipe;
    out.push_back({"shelf, " + what + on, mm, view(b, {})});
  };
  keep("recipe", spoken_recipe());
  session::RecipeCard many = spoken_recipe();
  for (int i = 0; i < 6; ++i) many.pigments.push_back({"pr108", session::SaidIn::parts, 2.25});
  many.pigments[1].of = "sold out";
  many.from = session::RecipeFrom::old_notes;
  many.mine = true;
  keep("recipe of many", many);
  session::RecipeCard wanted = spoken_recipe();
  wanted.liquids = {{"gum_12_glycerin", session::SaidIn::parts, 0}};
  wanted.per_g = 0;
  keep("recipe whose binder is not measured", wanted);
  keep("recipe without binder", std::get<session::RecipeCard>(shelf_card(b, "r3")->facts));
  for (int i = 0; i < 3; ++i)
    b.index.made_by["r3"].insert({1795617120000 + i, "b" + std::to_string(i)});
  keep("recipe that was made", spoken_recipe());
  auto& shown = std::get<ShelfView>(out.back().view.screen);
  for (auto& batch : shown.recipe->made) {
    batch.name = "Evening over the weir, 3";
    batch.became = session::Became::wont_rewet;
  }
  shown.recipe->batch = "Cerulean blue (chromium), 3";
  b.shelf_page = {};
  b.shelf_page.kind = ShelfKind::recipe;
  std::erase_if(b.shelf, [](const auto& card) { return card.kind() == session::CardKind::recipe; });
  out.push_back({"shelf, no recipe" + on, mm, view(b, {})});
}

}
