#include "screens/views_recipes.hpp"

#include "bench/choices.hpp"
#include "bench/pads_plan.hpp"
#include "screens/views_slab.hpp"

namespace views {

using namespace bench;

std::vector<PlanView::Line> lines() {
  using Line = PlanView::Line;
  const std::string blue = "Cerulean blue (chromium)", gum = "Gum 1 : 2, glycerin";
  return {
      {Line::measure,
       session::CardKind::pigment,
       blue,
       0x2266AA,
       {{1, false, "tablespoon", 15}, {2.75, false, "teaspoon", 5}},
       0,
       123.4,
       49.4,
       true},
      {Line::measure, session::CardKind::pigment, "Quinacridone magenta", 0xAA2266, {}, 0, 12.4},
      {Line::first_helping,
       session::CardKind::binder,
       gum,
       0,
       {{9.75, false, "teaspoon", 5}},
       41.5,
       58.5},
      {Line::rest, session::CardKind::binder, gum, 0, {{11.25, false, "teaspoon", 5}}, 0, 47},
      {Line::extra, session::CardKind::honey, "Honey 1 : 1", 0, {{28, true, "", 0}}, 0, 1.25},
      {Line::extra, session::CardKind::wetting_aid, "Ox gall", 0, {{4, true, "", 0}}, 0, 0.2}};
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
  b.plan.finding = Finding::pigment;
  out.push_back({"plan, another pigment" + on, mm, view(b, {})});
  b.plan.finding = Finding::nothing;
  b.number = NumberEntry{{PlanPad::parts, "pb36"}, "", {}};
  out.push_back({"plan, how many spoons" + on, mm, view(b, {})});
  b.number.reset();
  b.screen = Screen::shelf;
  b.shelf_page.kind = ShelfKind::recipe;
  b.shelf_page.card = *shelf_card(b, "r3");
  out.push_back({"shelf, recipe" + on, mm, view(b, {})});
}

}
