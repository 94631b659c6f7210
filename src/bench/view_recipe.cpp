#include "bench/choices.hpp"
#include "bench/plan_lines.hpp"
#include "bench/recipes.hpp"
#include "bench/view_parts.hpp"
#include "paint/digits.hpp"

#include <algorithm>

namespace bench {

namespace {

// One that is put away or unknown is named all the same, so that it can be brought back.
RecipeView::Part line_said(const Bench& bench, const session::Said& said) {
  RecipeView::Part line;
  const session::Card* card = shelf_card(bench, said.of);
  line.gone = !card;
  if (!card) card = card_anywhere(bench, said.of);
  line.name = card ? card->name : said.of;
  line.kind = card ? card->kind() : session::CardKind::other;
  if (card) line.colour = pigment_of(*card).colour;
  line.in = said.in;
  line.amount = said.amount;
  if (said.in == session::SaidIn::spoons || said.in == session::SaidIn::drops)
    line.scoop = scoop_view(bench, said.with, said.in == session::SaidIn::drops, said.amount);
  if (const auto g = grams_said(bench, {said.of, said.amount, said.in, said.with})) {
    line.g = g->g.value;
    line.u = paint::uncertainty(g->g);
    line.guess = g->guess;
  }
  return line;
}

}

RecipeView recipe_view(const Bench& bench, const session::Card& card) {
  RecipeView v;
  const auto& recipe = std::get<session::RecipeCard>(card.facts);
  for (const session::Said& said : recipe.pigments) v.pigments.push_back(line_said(bench, said));
  for (const session::Said& said : recipe.liquids) v.liquids.push_back(line_said(bench, said));
  v.per_g = recipe.per_g;
  if (recipe.per_spoons > 0) v.per = scoop_view(bench, recipe.per_with, false, recipe.per_spoons);
  v.from = recipe.from;
  v.batch = name_of_batch(bench, recipe.batch);
  v.mine = recipe.mine;
  v.note = recipe.note;
  return v;
}

}
