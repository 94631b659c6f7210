#include "bench/card_facts.hpp"

#include "bench/card_dropper.hpp"
#include "bench/choices.hpp"
#include "paint/measure.hpp"
#include "paint/water.hpp"
#include "session/amounts.hpp"
#include "words/bench_says.hpp"
#include "words/letter_case.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::Card;
using session::CardKind;

struct Figure {
  double value = 0, u = 0;
};

template <double paint::Pigment::*value, double paint::Pigment::*u>
Figure of_pigment(const Card& card) {
  const paint::Pigment& pigment = session::pigment_of(card).pigment;
  return {pigment.*value, pigment.*u};
}

// A figure off a label is taken to a tenth, a density to 3 %, as grades of one pigment differ (own
// estimate).
template <double paint::Pigment::*value, double paint::Pigment::*u, int percent>
words::Result<Card> with_pigment(Card card, double typed) {
  if (auto* at = std::get_if<session::PigmentCard>(&card.facts)) {
    at->pigment.*value = typed;
    at->pigment.*u = percent * typed / 100;
  }
  return card;
}

template <double paint::Recipe::*part>
Figure of_recipe(const Card& card) {
  return {session::recipe_of(card).*part, 0};
}

template <double paint::Recipe::*part>
words::Result<Card> with_recipe(Card card, double typed) {
  if (auto* at = std::get_if<session::LiquidCard>(&card.facts)) at->recipe.*part = typed;
  return card;
}

Figure made_of(const Card& card) { return {card.made_g, 0}; }

words::Result<Card> with_made(Card card, double typed) {
  card.made_g = typed;
  return card;
}

Figure weight_of_drops(const Card& card) {
  const DropsWeight weight = weight_of_twenty(card);
  return {weight.value, weight.u};
}

Figure weight_of_water(const Card& card) {
  const session::Volume volume = session::volume_of(card);
  return {volume.mL * paint::water_g_per_mL, volume.mL_u * paint::water_g_per_mL};
}

words::Result<Card> with_weighed_water(Card card, double water_g) {
  const auto measure = paint::spoon_weighed(card.id, {water_g}, paint::scale_step_g);
  if (!measure) return tl::make_unexpected(measure.error());
  const session::Volume volume{measure->mL, measure->mL_u};
  if (auto* spoon = std::get_if<session::SpoonCard>(&card.facts)) spoon->level = volume;
  if (auto* pan = std::get_if<session::PanCard>(&card.facts)) pan->full = volume;
  return card;
}

Figure depth_of(const Card& card) {
  const auto* pan = std::get_if<session::PanCard>(&card.facts);
  return {pan ? pan->depth_mm : 0, 0};
}

// A pan that is as wide as a coin or as a plate: a slip of the finger, or of the other figure (own
// estimate).
words::Result<Card> with_depth(Card card, double mm) {
  constexpr double least_cm2 = 0.5, most_cm2 = 100;
  auto* pan = std::get_if<session::PanCard>(&card.facts);
  if (!pan) return card;
  const double cm2 = pan->full.mL / mm * 10;
  if (cm2 < least_cm2 || cm2 > most_cm2)
    return words::failure(
        words::BenchSay::pan_depth_unlikely,
        {words::Number(mm, 1), words::Number(pan->full.mL, 1), words::Number(cm2, 1)});
  pan->depth_mm = mm;
  return card;
}

enum class FactKind {
  g_per_mL,
  oil,
  heap,
  gum,
  water,
  honey,
  glycerin,
  alcohol,
  preservative,
  made_g,
  drops,
  water_in_spoon,
  water_in_pan,
  pan_depth
};

struct FactRow {
  std::string_view name; // of its pad
  double low, high;      // what may be typed
  int decimals;
  words::Sentence say, zero; // what it is; what stands there for 0
  Figure (*of)(const Card&);
  words::Result<Card> (*with)(Card, double);
};

using paint::Pigment;
using paint::Recipe;
using Say = words::BenchSay;

constexpr double most_g = 100000;
constexpr words::EnumTable<FactKind, FactRow> fact_rows{{
    {FactKind::g_per_mL,
     {"g_per_mL", 0.5, 20, 2, Say::fact_g_per_mL, Say::fact_unknown,
      of_pigment<&Pigment::g_per_mL, &Pigment::g_per_mL_u>,
      with_pigment<&Pigment::g_per_mL, &Pigment::g_per_mL_u, 3>}},
    {FactKind::oil,
     {"oil", 1, 1000, 0, Say::fact_oil, Say::fact_unknown,
      of_pigment<&Pigment::oil_g_per_100g, &Pigment::oil_u>,
      with_pigment<&Pigment::oil_g_per_100g, &Pigment::oil_u, 10>}},
    {FactKind::heap,
     {"heap", 0.01, 5, 2, Say::fact_heap, Say::fact_unknown,
      of_pigment<&Pigment::heap_g_per_mL, &Pigment::heap_g_per_mL_u>,
      with_pigment<&Pigment::heap_g_per_mL, &Pigment::heap_g_per_mL_u, 10>}},
    {FactKind::gum,
     {"gum", 0, most_g, 2, Say::fact_gum, words::SessionSay::amount_none, of_recipe<&Recipe::gum>,
      with_recipe<&Recipe::gum>}},
    {FactKind::water,
     {"water", 0, most_g, 2, Say::fact_water, words::SessionSay::amount_none,
      of_recipe<&Recipe::water>, with_recipe<&Recipe::water>}},
    {FactKind::honey,
     {"honey", 0, most_g, 2, Say::fact_honey, words::SessionSay::amount_none,
      of_recipe<&Recipe::honey>, with_recipe<&Recipe::honey>}},
    {FactKind::glycerin,
     {"glycerin", 0, most_g, 2, Say::fact_glycerin, words::SessionSay::amount_none,
      of_recipe<&Recipe::glycerin>, with_recipe<&Recipe::glycerin>}},
    {FactKind::alcohol,
     {"alcohol", 0, most_g, 2, Say::fact_alcohol, words::SessionSay::amount_none,
      of_recipe<&Recipe::alcohol>, with_recipe<&Recipe::alcohol>}},
    {FactKind::preservative,
     {"preservative", 0, most_g, 2, Say::fact_preservative, words::SessionSay::amount_none,
      of_recipe<&Recipe::other>, with_recipe<&Recipe::other>}},
    {FactKind::made_g,
     {"made_g", 0, most_g, 1, Say::fact_made_g, Say::fact_unknown, made_of, with_made}},
    {FactKind::drops,
     {"drops_20_g", 0.1, 6, 2, Say::fact_drops, Say::fact_unknown, weight_of_drops,
      with_weighed_drops}},
    {FactKind::water_in_spoon,
     {"water_g", 0.05, 1000, 1, Say::fact_water_full, Say::fact_unknown, weight_of_water,
      with_weighed_water}},
    {FactKind::water_in_pan,
     {"water_g", 0.05, 500, 1, Say::fact_water_full, Say::fact_unknown, weight_of_water,
      with_weighed_water}},
    {FactKind::pan_depth,
     {"depth_mm", 1, 200, 1, Say::fact_depth_mm, Say::fact_unknown, depth_of, with_depth}},
}};

constexpr words::EnumTable<ChoiceKind, ChoiceRow> choice_rows{
    {{ChoiceKind::family, {"family", Say::choice_class}},
     {ChoiceKind::with, {"with", Say::choice_with}},
     {ChoiceKind::size, {"size", Say::choice_size}},
     {ChoiceKind::liquid, {"liquid", Say::choice_is_a}},
     {ChoiceKind::glass, {"glass", Say::choice_is_a}},
     {ChoiceKind::cautions, {"cautions", Say::card_cautions_what}},
     {ChoiceKind::mine, {"mine", Say::choice_mine}},
     {ChoiceKind::from, {"from", Say::choice_from}}}};

// What a card of each kind can be asked and told.
struct Form {
  ShelfKind shelf;
  std::vector<FactKind> facts;
  std::vector<ChoiceKind> choices;
};

Form form_of(CardKind kind) {
  using F = FactKind;
  std::vector<F> recipe{F::gum, F::water, F::honey, F::glycerin, F::preservative, F::made_g};
  switch (kind) {
  case CardKind::pigment:
    return {ShelfKind::pigment,
            {F::g_per_mL, F::oil, F::heap},
            {ChoiceKind::family, ChoiceKind::cautions}};
  case CardKind::paint: return {ShelfKind::pigment, {}, {}};
  case CardKind::binder: return {ShelfKind::binder, recipe, {}};
  case CardKind::water:
  case CardKind::honey:
  case CardKind::glycerin:
  case CardKind::wetting_aid:
  case CardKind::other:
    recipe.insert(recipe.end() - 2, F::alcohol);
    return {ShelfKind::liquid, recipe, {ChoiceKind::liquid}};
  case CardKind::dropper: return {ShelfKind::dropper, {F::drops}, {ChoiceKind::with}};
  case CardKind::spoon: return {ShelfKind::spoon, {F::water_in_spoon}, {ChoiceKind::size}};
  case CardKind::pan: return {ShelfKind::pan, {F::water_in_pan, F::pan_depth}, {}};
  case CardKind::slab: return {ShelfKind::glass, {}, {ChoiceKind::glass}};
  case CardKind::muller: return {ShelfKind::glass, {}, {ChoiceKind::glass}};
  case CardKind::recipe: return {ShelfKind::recipe, {}, {ChoiceKind::mine, ChoiceKind::from}};
  }
  return {ShelfKind::liquid, {}, {}};
}

const FactRow* row_of(CardKind kind, std::string_view which) {
  for (const FactKind fact : form_of(kind).facts)
    if (fact_rows[fact].name == which) return &fact_rows[fact];
  return nullptr;
}

template <class T, std::size_t n>
T next_in(const std::array<T, n>& all, T now) {
  const auto at = std::find(all.begin(), all.end(), now);
  return at == all.end() || at + 1 == all.end() ? all.front() : *(at + 1);
}

}

std::vector<std::string_view> facts_of(CardKind kind) {
  std::vector<std::string_view> out;
  for (const FactKind fact : form_of(kind).facts) out.push_back(fact_rows[fact].name);
  return out;
}

std::vector<ChoiceKind> choices_of(CardKind kind) { return form_of(kind).choices; }
const ChoiceRow& row_of(ChoiceKind choice) { return choice_rows[choice]; }
std::optional<ChoiceKind> choice_named(std::string_view name) {
  return choice_rows.find(&ChoiceRow::name, name);
}
ShelfKind shelf_kind(CardKind kind) { return form_of(kind).shelf; }

Fact fact_of(const Card& card, std::string_view which) {
  const FactRow* row = row_of(card.kind(), which);
  if (!row) return {};
  const Figure figure = row->of(card);
  return {figure.value, figure.u, row->decimals, row->say, row->zero};
}

words::Sentence say_of_fact(std::string_view which) {
  const auto fact = fact_rows.find(&FactRow::name, which);
  return fact ? fact_rows[*fact].say : words::Sentence{};
}

words::Result<Card> with_fact(Card card, std::string_view which, double value) {
  const FactRow* row = row_of(card.kind(), which);
  if (!row) return card;
  if (!(value >= row->low && value <= row->high))
    return words::failure(Say::fact_out_of_range,
                          {words::Number(row->low, 2), words::Number(row->high, 0)});
  return row->with(std::move(card), value);
}

namespace {

Card next_family(Card card) {
  if (auto* at = std::get_if<session::PigmentCard>(&card.facts))
    at->pigment.family = words::next_of(at->pigment.family);
  return card;
}

Card next_size(Card card) {
  auto* at = std::get_if<session::SpoonCard>(&card.facts);
  if (!at) return card;
  const auto& all = paint::kitchen_measures();
  auto next = std::find_if(all.begin(), all.end(),
                           [&](const auto& m) { return std::abs(m.mL - at->level.mL) < 1e-6; });
  next = next == all.end() || next + 1 == all.end() ? all.begin() : next + 1;
  const paint::Spoon spoon = paint::spoon_of(*next);
  at->level = {spoon.mL, spoon.mL_u};
  return card;
}

Card next_liquid(Card card) {
  if (auto* at = std::get_if<session::LiquidCard>(&card.facts))
    at->kind = next_in(std::array{CardKind::honey, CardKind::glycerin, CardKind::water,
                                  CardKind::wetting_aid, CardKind::other},
                       at->kind);
  return card;
}

Card turned_mine(Card card) {
  if (auto* at = std::get_if<session::RecipeCard>(&card.facts)) at->mine = !at->mine;
  return card;
}

// What was kept from a batch stays so.
Card next_from(Card card) {
  using session::RecipeFrom;
  if (auto* at = std::get_if<session::RecipeCard>(&card.facts))
    if (at->from != RecipeFrom::batch)
      at->from = at->from == RecipeFrom::own_head ? RecipeFrom::old_notes : RecipeFrom::own_head;
  return card;
}

Card other_glass(Card card) {
  if (const auto* slab = std::get_if<session::SlabCard>(&card.facts))
    card.facts = session::MullerCard{slab->cm2};
  else if (const auto* muller = std::get_if<session::MullerCard>(&card.facts))
    card.facts = session::SlabCard{muller->cm2};
  return card;
}

}

Card with_next(Card card, ChoiceKind choice) {
  switch (choice) {
  case ChoiceKind::family: return next_family(std::move(card));
  case ChoiceKind::with: return with_next_liquid(std::move(card));
  case ChoiceKind::size: return next_size(std::move(card));
  case ChoiceKind::liquid: return next_liquid(std::move(card));
  case ChoiceKind::glass: return other_glass(std::move(card));
  case ChoiceKind::cautions: return card; // these open
  case ChoiceKind::mine: return turned_mine(std::move(card));
  case ChoiceKind::from: return next_from(std::move(card));
  }
  return card;
}

namespace {

Card::Facts blank(ShelfKind kind) {
  switch (kind) {
  case ShelfKind::pigment:
    return session::PigmentCard{"", 0x8A8178, {.g_per_mL = 4, .g_per_mL_u = 1}};
  case ShelfKind::binder: return session::LiquidCard{CardKind::binder, {.gum = 1, .water = 2}};
  case ShelfKind::liquid: return session::LiquidCard{CardKind::other, {}};
  case ShelfKind::dropper: return session::DropperCard{{0.05, 0.0095}, CardKind::water};
  case ShelfKind::spoon: return session::SpoonCard{{5, 0.144}};
  case ShelfKind::pan: return session::PanCard{{1.7, 0.2}};
  case ShelfKind::glass: return session::SlabCard{};
  case ShelfKind::recipe: return session::RecipeCard{};
  }
  return session::LiquidCard{};
}

}

Card blank_card(ShelfKind kind, std::string id) {
  Card card;
  card.id = std::move(id);
  card.facts = blank(kind);
  return card;
}

}
