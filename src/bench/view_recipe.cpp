#include "bench/choices.hpp"
#include "bench/plan_lines.hpp"
#include "bench/recipes.hpp"
#include "bench/view_parts.hpp"
#include "paint/digits.hpp"

#include <algorithm>
#include <cmath>

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

void times(RecipeView::Part& line, double k) {
  line.amount *= k;
  line.scoop.count *= k;
  line.g *= k;
  line.u *= k;
}

// A hand can measure it: whole drops, quarters of a spoon, any weight.
bool can_be_measured(const RecipeView::Part& line, double k) {
  if (line.in == session::SaidIn::parts) return line.amount <= 0;
  if (line.in == session::SaidIn::g) return true;
  const double count = k * line.scoop.count * (line.in == session::SaidIn::spoons ? 4 : 1);
  return std::abs(count - std::round(count)) < 0.01;
}

// Whoever reads down a card takes all of it for one weight: the liquids go to all of the pigment,
// else the pigments are as much as the liquids go to.
void to_one_weight(RecipeView& v) {
  double all_g = 0;
  for (const RecipeView::Part& line : v.pigments) {
    if (line.in != session::SaidIn::g) return;
    all_g += line.amount;
  }
  if (!(v.per_g > 0) || !(all_g > 0)) return;
  const double k = all_g / v.per_g;
  const bool measured =
      std::all_of(v.liquids.begin(), v.liquids.end(),
                  [&](const RecipeView::Part& line) { return can_be_measured(line, k); });
  for (RecipeView::Part& line : measured ? v.liquids : v.pigments)
    times(line, measured ? k : 1 / k);
  if (measured) v.per_g = all_g;
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
  to_one_weight(v);
  return v;
}

}
