#include "bench/recipes.hpp"

#include "bench/act.hpp"
#include "bench/advice.hpp"
#include "bench/choices.hpp"
#include "bench/materials.hpp"
#include "bench/planning.hpp"
#include "bench/record.hpp"
#include "bench/shelf.hpp"
#include "paint/catalogue.hpp"
#include "paint/heap.hpp"
#include "paint/measure.hpp"
#include "session/amounts.hpp"
#include "words/bench_says.hpp"
#include "words/letter_case.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::Card;
using session::CardKind;
using session::RecipeCard;
using session::Said;
using session::SaidIn;

// A pigment as it lies in a spoon, by a guess where nobody weighed one.
std::optional<paint::Material> as_measured(const Card& card) {
  auto material = session::material_of(card);
  if (!material) return std::nullopt;
  if (card.kind() == CardKind::pigment) material->pigment = paint::with_heap(material->pigment);
  return *material;
}

words::Result<paint::Amount> measured(const Bench& bench, const Said& said, const Card& of) {
  const auto material = as_measured(of);
  const Card* tool = shelf_card(bench, said.with);
  if (said.in == SaidIn::parts || said.in == SaidIn::g) return paint::exact(said.amount);
  if (!material || !tool) return words::failure(words::PaintSay::nothing_counted);
  return said.in == SaidIn::drops
             ? paint::grams_of_drops(said.amount, session::dropper_of(*tool), *material)
             : paint::grams_of_spoons(said.amount, session::spoon_of(*tool), *material);
}

std::string first_spoon(const Bench& bench) {
  const auto spoons = shelf_of(bench, CardKind::spoon);
  return spoons.empty() ? "" : spoons.front()->id;
}

// To a hundredth: what a hand measures, and no trace of a sum's last bit.
double round_said(double amount) { return std::max(0.01, std::round(100 * amount) / 100); }

}

std::optional<SaidGrams> grams_said(const Bench& bench, const BlendPart& part) {
  const Card* card = shelf_card(bench, part.card);
  if (!card || part.in == SaidIn::parts) return std::nullopt;
  const auto g = measured(bench, {part.card, part.in, part.parts, part.with}, *card);
  if (!g) return std::nullopt;
  const bool by_spoon = part.in == SaidIn::spoons && card->kind() == CardKind::pigment;
  return SaidGrams{*g, by_spoon && paint::heap_of(pigment_of(*card).pigment).guess};
}

words::Result<double> say_amount(Bench& bench, const std::string& card, double amount) {
  if (!(amount > 0 && amount <= 1000)) return words::failure(words::BenchSay::parts_out_of_range);
  PlanState& plan = bench.plan;
  for (BlendPart& part : plan.blend) {
    if (part.card != card) continue;
    part.parts = amount;
    if (part.in != SaidIn::parts && plan.wanted <= 0) plan.want = Want::as_it_stands;
  }
  return amount;
}

void say_in(Bench& bench, SaidIn in) {
  PlanState& plan = bench.plan;
  const auto comes_to = planned(bench);
  const bool known = comes_to && *comes_to,
             made = plan.as_made && plan.as_made->blend == plan.blend;
  double least = 0;
  for (const BlendPart& part : plan.blend)
    if (known)
      for (const PlannedPigment& p : (*comes_to)->pigments)
        if (p.card == part.card) least = least > 0 ? std::min(least, p.grams) : p.grams;
  for (BlendPart& part : plan.blend) {
    part.in = in;
    if (in == SaidIn::spoons && !shelf_card(bench, part.with)) part.with = first_spoon(bench);
    if (!known) continue;
    const auto weighed = std::find_if((*comes_to)->pigments.begin(), (*comes_to)->pigments.end(),
                                      [&](const auto& p) { return p.card == part.card; });
    if (weighed == (*comes_to)->pigments.end()) continue;
    BlendPart one = part;
    one.parts = 1;
    const auto each = grams_said(bench, one);
    if (!each && in != SaidIn::parts) continue; // no spoon that would measure it
    part.parts = round_said(weighed->grams / (each ? each->g.value : least));
  }
  plan.said_in = in;
  plan.by_volume = false;
  if (made) plan.as_made->blend = plan.blend;
  if (in == SaidIn::parts && plan.want == Want::as_it_stands) {
    plan.want = Want::pigment_g;
    plan.wanted = known ? round_said((*comes_to)->pigment_g) : 0;
  }
  if (in != SaidIn::parts && plan.wanted <= 0 && plan.want == Want::pigment_g)
    plan.want = Want::as_it_stands;
}

void next_spoon(Bench& bench, const std::string& card) {
  const auto spoons = shelf_of(bench, CardKind::spoon);
  if (spoons.empty()) return;
  for (BlendPart& part : bench.plan.blend) {
    if (part.card != card) continue;
    const auto now = std::find_if(spoons.begin(), spoons.end(),
                                  [&](const Card* spoon) { return spoon->id == part.with; });
    part.with =
        now == spoons.end() || now + 1 == spoons.end() ? spoons.front()->id : (*(now + 1))->id;
  }
}

std::vector<paint::Scoop> scoops_for(const Bench& bench, const Card& of) {
  constexpr double least_mL = 2, most_mL = 7;
  constexpr std::size_t most_spoons = 4;
  std::vector<paint::Scoop> out;
  const auto material = as_measured(of);
  if (!material) return out;
  for (const Card* spoon : shelf_of(bench, CardKind::spoon)) {
    const auto g = paint::grams_of_spoons(1, session::spoon_of(*spoon), *material);
    const double mL = volume_of(*spoon).mL;
    if (g && g->value > 0 && out.size() < most_spoons)
      out.push_back({spoon->id, *g, false, mL >= least_mL && mL <= most_mL});
  }
  if (!session::is_liquid(of.kind())) return out;
  const Card* dropper = shelf_card(bench, tool_for(bench, of, session::Unit::drops));
  if (!dropper) return out;
  const auto g = paint::grams_of_drops(1, session::dropper_of(*dropper), *material);
  if (g && g->value > 0) out.push_back({dropper->id, *g, true});
  return out;
}

std::optional<paint::ScoopSet> scooped(const Bench& bench, const Card& of, double g,
                                       double near_g) {
  const auto set = paint::best_scoops(g, near_g, scoops_for(bench, of));
  if (!set || set->of.empty()) return std::nullopt;
  return *set;
}

namespace {

const RecipeCard* recipe_on(const Card& card) { return std::get_if<RecipeCard>(&card.facts); }

std::vector<std::string> cards_of(const RecipeCard& recipe) {
  std::vector<std::string> cards;
  for (const Said& said : recipe.pigments) cards.push_back(said.of);
  std::sort(cards.begin(), cards.end());
  return cards;
}

// g of pigment that the liquids are said to.
double basis_g(const Bench& bench, const RecipeCard& recipe) {
  if (recipe.per_g > 0) return recipe.per_g;
  double g = 0, spoonful_mL = 0;
  for (const Said& said : recipe.pigments) {
    const Card* card = shelf_card(bench, said.of);
    const auto one = card ? measured(bench, said, *card) : words::Result<paint::Amount>{};
    if (!card || !one) return 0;
    g += one->value;
    spoonful_mL += one->value / paint::heap_of(pigment_of(*card).pigment).g_per_mL;
  }
  if (!(recipe.per_spoons > 0)) return g;
  const Card* spoon = shelf_card(bench, recipe.per_with);
  return spoon && spoonful_mL > 0 ? recipe.per_spoons * volume_of(*spoon).mL * g / spoonful_mL : 0;
}

std::string called(const Bench& bench, const std::string& id) {
  const Card* card = card_anywhere(bench, id);
  return card ? card->name : id;
}

// Names of those that are not on the shelf, or whose spoon or dropper is not.
std::vector<std::string> liquids_gone(const Bench& bench, const RecipeCard& recipe) {
  std::vector<std::string> gone;
  for (const Said& said : recipe.liquids) {
    const Card* card = shelf_card(bench, said.of);
    if (!card || !measured(bench, said, *card)) gone.push_back(called(bench, said.of));
  }
  return gone;
}

void take_liquids(Bench& bench, const RecipeCard& recipe) {
  PlanState& plan = bench.plan;
  const double basis = basis_g(bench, recipe);
  if (!(basis > 0)) return;
  AsMade made;
  made.by_recipe = true;
  for (const Said& said : recipe.liquids) {
    const Card* card = shelf_card(bench, said.of);
    const auto g = card ? measured(bench, said, *card) : words::Result<paint::Amount>{};
    if (!card || !g || !session::is_liquid(card->kind())) continue;
    if (card->kind() == CardKind::binder && made.binder.empty()) {
      plan.binder = made.binder = card->id;
      made.binder_g = g->value / basis;
    } else {
      made.extras.emplace_back(card->id, g->value / basis);
    }
  }
  made.blend = plan.blend;
  if (const Folded batch = fold_of(bench, recipe.batch)) made.first = took_first(*batch);
  if (made.binder_g > 0) plan.as_made = made;
}

}

bool recipe_goes_by(const Bench& bench, const Card& card, const std::string& text) {
  if (paint::goes_by(card.id, card.name, "", text)) return true;
  const auto& pigments = recipe_on(card)->pigments;
  return std::any_of(pigments.begin(), pigments.end(), [&](const Said& said) {
    const Card* pigment = shelf_card(bench, said.of);
    return pigment &&
           paint::goes_by(pigment->id, pigment->name, pigment_of(*pigment).index_name, text);
  });
}

std::vector<const Card*> recipes_found(const Bench& bench) {
  std::vector<const Card*> out = shelf_of(bench, CardKind::recipe);
  std::erase_if(out, [&](const Card* card) {
    return !bench.plan.search.empty() && !recipe_goes_by(bench, *card, bench.plan.search);
  });
  std::stable_sort(out.begin(), out.end(), [](const Card* a, const Card* b) {
    return words::searchable(a->name) < words::searchable(b->name);
  });
  return out;
}

std::string recipe_followed(const Bench& bench) {
  const Card* card = shelf_card(bench, bench.plan.recipe);
  const RecipeCard* recipe = card ? recipe_on(*card) : nullptr;
  if (!recipe) return "";
  std::vector<std::string> cards;
  for (const BlendPart& part : bench.plan.blend) cards.push_back(part.card);
  std::sort(cards.begin(), cards.end());
  return cards == cards_of(*recipe) ? card->id : "";
}

void use_recipe(Bench& bench, const std::string& id, const Now& now) {
  const Card* card = shelf_card(bench, id);
  const RecipeCard* found = card ? recipe_on(*card) : nullptr;
  if (!found) return;
  const RecipeCard recipe = *found;
  PlanState& plan = bench.plan;
  clear_plan(plan);
  plan.recipe = id;
  std::vector<std::string> gone;
  for (const Said& said : recipe.pigments)
    if (shelf_card(bench, said.of) && plan.blend.size() < most_pigments)
      plan.blend.push_back({said.of, said.amount, said.in, said.with});
    else
      gone.push_back(called(bench, said.of));
  if (!recipe.pigments.empty()) plan.said_in = recipe.pigments.front().in;
  const bool whole = gone.empty();
  if (whole && plan.said_in != SaidIn::parts) plan.want = Want::as_it_stands;
  if (whole) take_liquids(bench, recipe);
  for (const std::string& liquid : liquids_gone(bench, recipe)) gone.push_back(liquid);
  plan.name = proposed_name(bench, card->name);
  say_left_out(bench, gone, now);
}

std::string recipe_of_batch(const Bench& bench, const std::string& batch) {
  for (const Card* card : shelf_of(bench, CardKind::recipe))
    if (!batch.empty() && recipe_on(*card)->batch == batch) return card->id;
  return "";
}

namespace {

// As it was measured, where that was by one spoon alone; else in grams.
Said as_measured(const session::Total& total) {
  if (total.spoons.size() == 1 && total.drops <= 0 && total.weighed_g <= 0)
    return {total.card.id, SaidIn::spoons, total.spoons.begin()->second,
            total.spoons.begin()->first};
  return {total.card.id, SaidIn::g, round_said(total.grams.value)};
}

RecipeCard recipe_from(const session::Batch& batch) {
  constexpr double per_g = 10;
  RecipeCard recipe;
  recipe.from = session::RecipeFrom::batch;
  recipe.batch = batch.id;
  double pigment_g = 0;
  for (const session::Total& total : batch.totals) {
    if (total.card.kind() != CardKind::pigment || !(total.grams.value > 0)) continue;
    recipe.pigments.push_back(as_measured(total));
    pigment_g += total.grams.value;
  }
  for (const session::Total& total : batch.totals)
    if (session::is_liquid(total.card.kind()) && total.grams.value > 0 && pigment_g > 0)
      recipe.liquids.push_back(
          {total.card.id, SaidIn::g, round_said(per_g * total.grams.value / pigment_g)});
  if (!recipe.liquids.empty()) recipe.per_g = per_g;
  return recipe;
}

// The plan's liquids are those of the batch made again, or of the recipe that it was filled from.
bool takes_as_made(const PlanState& plan) {
  return plan.as_made && plan.as_made->blend == plan.blend && plan.as_made->binder == plan.binder;
}

// A recipe of the shelf that says the same as the plan's, by another name only where that was not
// typed; null: none.
const Card* kept_alike(const Bench& bench, const std::string& name, const RecipeCard& recipe) {
  const PlanState& plan = bench.plan;
  for (const Card* card : shelf_of(bench, CardKind::recipe)) {
    const RecipeCard& kept = *recipe_on(*card);
    const bool filled_from =
        card->id == plan.recipe && takes_as_made(plan) && plan.as_made->by_recipe;
    const bool same_liquids = kept.liquids == recipe.liquids && kept.per_g == recipe.per_g &&
                              kept.per_spoons == recipe.per_spoons;
    if (kept.pigments == recipe.pigments && (filled_from || same_liquids) &&
        (card->name == name || !plan.name_typed))
      return card;
  }
  return nullptr;
}

std::string keep(Bench& bench, std::string name, RecipeCard recipe, const Now& now,
                 Effects& effects) {
  Card card;
  card.id = fresh_id(now);
  card.name = std::move(name);
  card.facts = std::move(recipe);
  record(bench, "", session::LaidOut{card}, now, effects);
  restock(bench);
  return card.id;
}

}

void keep_recipe_of(Bench& bench, const std::string& id, const Now& now, Effects& effects) {
  if (!recipe_of_batch(bench, id).empty()) return;
  const Folded batch = fold_of(bench, id);
  if (!batch) return;
  RecipeCard recipe = recipe_from(*batch);
  if (recipe.pigments.empty()) return say_error(bench, {words::BenchSay::recipe_empty, {}}, now);
  keep(bench, batch->name, std::move(recipe), now, effects);
}

void keep_recipe_of_plan(Bench& bench, const Now& now, Effects& effects) {
  constexpr double per_g = 10;
  PlanState& plan = bench.plan;
  if (plan.blend.empty()) return;
  RecipeCard recipe;
  for (const BlendPart& part : plan.blend)
    recipe.pigments.push_back(
        {part.card, part.in, part.parts, part.in == SaidIn::spoons ? part.with : ""});
  if (takes_as_made(plan)) {
    recipe.per_g = per_g;
    recipe.liquids.push_back({plan.binder, SaidIn::g, round_said(per_g * plan.as_made->binder_g)});
    for (const auto& [card, g] : plan.as_made->extras)
      recipe.liquids.push_back({card, SaidIn::g, round_said(per_g * g)});
  } else if (shelf_card(bench, plan.binder)) {
    recipe.liquids.push_back({plan.binder, SaidIn::parts, 0}); // as much as it wants
  }
  const std::string name = plan.name.empty() ? name_of_blend(bench) : plan.name;
  if (const Card* kept = kept_alike(bench, name, recipe)) {
    plan.recipe = kept->id;
    return say_error(bench, {words::BenchSay::recipe_there, {kept->name}}, now);
  }
  plan.recipe = keep(bench, name, std::move(recipe), now, effects);
}

}
