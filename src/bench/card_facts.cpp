#include "bench/card_facts.hpp"

#include "bench/choices.hpp"
#include "paint/binder.hpp"
#include "paint/dropper.hpp"
#include "paint/measure.hpp"
#include "session/amounts.hpp"
#include "session/date.hpp"
#include "words/bench_says.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::Card;
using session::CardKind;

constexpr double water_g_per_mL = 0.99821; // 20 °C
constexpr double counted_drops = 20;
constexpr double scale_step_g = 0.1;

struct Range {
  double low, high;
};

Range range_of(CardKind kind, std::string_view which) {
  if (which == "g_per_mL") return {0.5, 20};
  if (which == "oil") return {1, 1000};
  if (which == "heap") return {0.01, 5};
  if (which == "cm2") return {1, 20000};
  if (which == "drops_20_g") return {0.1, 6};
  if (which == "water_g") return kind == CardKind::pan ? Range{0.05, 500} : Range{0.05, 1000};
  return {0, 100000};
}

double* part(Card& card, std::string_view which) {
  paint::Recipe& r = card.recipe;
  if (which == "gum") return &r.gum;
  if (which == "water") return &r.water;
  if (which == "honey") return &r.honey;
  if (which == "glycerin") return &r.glycerin;
  if (which == "preservative") return &r.other;
  if (which == "made_g") return &card.made_g;
  if (which == "cm2") return &card.cm2;
  if (which == "g_per_mL") return &card.pigment.g_per_mL;
  if (which == "oil") return &card.pigment.oil_g_per_100g;
  if (which == "heap") return &card.pigment.heap_g_per_mL;
  return nullptr;
}

// A figure off a label is taken to a tenth, as grades of one pigment differ (own estimate).
void set_u(Card& card, std::string_view which, double value) {
  if (which == "g_per_mL") card.pigment.g_per_mL_u = 0.03 * value;
  if (which == "oil") card.pigment.oil_u = 0.1 * value;
  if (which == "heap") card.pigment.heap_g_per_mL_u = 0.1 * value;
}

paint::Material usual(CardKind kind) {
  Card card;
  card.is_a = kind;
  card.recipe = kind == CardKind::binder     ? paint::Recipe{.gum = 1, .water = 2}
                : kind == CardKind::honey    ? paint::Recipe{.water = 1, .honey = 1}
                : kind == CardKind::glycerin ? paint::Recipe{.glycerin = 1}
                                             : paint::Recipe{.water = 1};
  return *session::material_of(card);
}

words::Result<Card> weighed_drops(Card card, double g) {
  const auto tool = paint::calibrated(card.id, {{counted_drops, g}}, scale_step_g,
                                      usual(card.tool.calibrated_with));
  if (!tool) return tl::make_unexpected(tool.error());
  card.tool.mL = tool->mL_per_drop;
  card.tool.mL_u = tool->mL_per_drop_u;
  return card;
}

words::Result<Card> filled(Card card, double water_g) {
  const auto spoon = paint::spoon_weighed(card.id, {water_g}, scale_step_g);
  if (!spoon) return tl::make_unexpected(spoon.error());
  card.tool.mL = spoon->mL;
  card.tool.mL_u = spoon->mL_u;
  return card;
}

template <class T, std::size_t n>
T next_of(const std::array<T, n>& all, T now) {
  const auto at = std::find(all.begin(), all.end(), now);
  return at == all.end() || at + 1 == all.end() ? all.front() : *(at + 1);
}

std::string lower(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return text;
}

}

std::vector<std::string_view> facts_of(CardKind kind) {
  switch (kind) {
  case CardKind::pigment: return {"g_per_mL", "oil", "heap", "made_g"};
  case CardKind::dropper: return {"drops_20_g"};
  case CardKind::spoon:
  case CardKind::pan: return {"water_g"};
  case CardKind::slab:
  case CardKind::muller: return {"cm2"};
  case CardKind::paint: return {};
  default: return {"gum", "water", "honey", "glycerin", "preservative", "made_g"};
  }
}

std::vector<std::string_view> choices_of(CardKind kind) {
  switch (kind) {
  case CardKind::pigment: return {"family"};
  case CardKind::dropper: return {"with"};
  case CardKind::spoon: return {"size"};
  case CardKind::slab:
  case CardKind::muller: return {"glass"};
  case CardKind::honey:
  case CardKind::glycerin:
  case CardKind::water:
  case CardKind::wetting_aid:
  case CardKind::other: return {"liquid"};
  default: return {};
  }
}

Fact fact_of(const Card& card, std::string_view which) {
  if (which == "drops_20_g") {
    const double g_per_mL = paint::g_per_mL(usual(card.tool.calibrated_with));
    return {card.tool.mL * counted_drops * g_per_mL, card.tool.mL_u * counted_drops * g_per_mL, 2};
  }
  if (which == "water_g")
    return {card.tool.mL * water_g_per_mL, card.tool.mL_u * water_g_per_mL, 1};
  Card copy = card;
  const double* value = part(copy, which);
  if (!value) return {};
  const double u = which == "g_per_mL" ? card.pigment.g_per_mL_u
                   : which == "oil"    ? card.pigment.oil_u
                   : which == "heap"   ? card.pigment.heap_g_per_mL_u
                                       : 0;
  return {*value, u, which == "oil" || which == "cm2" ? 0 : which == "made_g" ? 1 : 2};
}

words::Result<Card> with_fact(Card card, std::string_view which, double value) {
  const Range range = range_of(card.is_a, which);
  if (!(value >= range.low && value <= range.high))
    return words::failure(words::BenchSay::fact_out_of_range,
                          {words::fixed(range.low, 2), words::fixed(range.high, 0)});
  if (which == "drops_20_g") return weighed_drops(std::move(card), value);
  if (which == "water_g") return filled(std::move(card), value);
  if (double* at = part(card, which)) *at = value;
  set_u(card, which, value);
  return card;
}

Card with_next(Card card, std::string_view which) {
  using paint::PigmentClass;
  if (which == "family")
    card.pigment.family =
        next_of(std::array{PigmentClass::mineral, PigmentClass::fine_mineral, PigmentClass::organic,
                           PigmentClass::carbon, PigmentClass::effect, PigmentClass::extender,
                           PigmentClass::unknown},
                card.pigment.family);
  if (which == "with")
    card.tool.calibrated_with =
        next_of(std::array{CardKind::water, CardKind::binder, CardKind::honey, CardKind::glycerin},
                card.tool.calibrated_with);
  if (which == "glass") card.is_a = card.is_a == CardKind::slab ? CardKind::muller : CardKind::slab;
  if (which == "liquid")
    card.is_a = next_of(std::array{CardKind::honey, CardKind::glycerin, CardKind::water,
                                   CardKind::wetting_aid, CardKind::other},
                        card.is_a);
  if (which == "size") {
    const auto& all = paint::kitchen_measures();
    auto next = std::find_if(all.begin(), all.end(),
                             [&](const auto& m) { return std::abs(m.mL - card.tool.mL) < 1e-6; });
    next = next == all.end() || next + 1 == all.end() ? all.begin() : next + 1;
    const paint::Spoon spoon = paint::spoon_of(*next);
    card.tool.mL = spoon.mL;
    card.tool.mL_u = spoon.mL_u;
  }
  return card;
}

Card blank_card(ShelfKind kind, std::string id) {
  Card card;
  card.id = std::move(id);
  switch (kind) {
  case ShelfKind::pigment:
    card.is_a = CardKind::pigment;
    card.colour = 0x8A8178;
    card.pigment.g_per_mL = 4;
    card.pigment.g_per_mL_u = 1;
    break;
  case ShelfKind::binder:
    card.is_a = CardKind::binder;
    card.recipe = {.gum = 1, .water = 2};
    break;
  case ShelfKind::liquid:
    card.is_a = CardKind::honey;
    card.recipe = {.water = 1, .honey = 1};
    break;
  case ShelfKind::dropper:
    card.is_a = CardKind::dropper;
    card.tool = {0.05, 0.0095, CardKind::water};
    break;
  case ShelfKind::spoon:
    card.is_a = CardKind::spoon;
    card.tool = {5, 0.144, CardKind::water};
    break;
  case ShelfKind::pan:
    card.is_a = CardKind::pan;
    card.tool = {1.7, 0.2, CardKind::water};
    break;
  case ShelfKind::glass:
    card.is_a = CardKind::slab;
    card.cm2 = 900;
    break;
  }
  return card;
}

ShelfKind shelf_kind(CardKind kind) {
  switch (kind) {
  case CardKind::pigment:
  case CardKind::paint: return ShelfKind::pigment;
  case CardKind::binder: return ShelfKind::binder;
  case CardKind::dropper: return ShelfKind::dropper;
  case CardKind::spoon: return ShelfKind::spoon;
  case CardKind::pan: return ShelfKind::pan;
  case CardKind::slab:
  case CardKind::muller: return ShelfKind::glass;
  default: return ShelfKind::liquid;
  }
}

std::optional<ShelfKind> shelf_kind_named(std::string_view name) {
  constexpr std::array<std::string_view, 7> names{"pigment", "binder", "liquid", "dropper",
                                                  "spoon",   "pan",    "glass"};
  for (std::size_t i = 0; i < names.size(); ++i)
    if (names[i] == name) return static_cast<ShelfKind>(i);
  return std::nullopt;
}

std::vector<const Card*> cards_listed(const Bench& bench) {
  const ShelfState& page = bench.shelf_page;
  const std::string wanted = page.kind == ShelfKind::pigment ? lower(page.search) : "";
  std::vector<const Card*> out;
  for (const Card& card : page.away ? bench.away : bench.shelf) {
    const bool named = lower(card.name).find(wanted) != std::string::npos ||
                       lower(card.index_name).find(wanted) != std::string::npos ||
                       lower(card.lot).find(wanted) != std::string::npos;
    if (shelf_kind(card.is_a) == page.kind && named) out.push_back(&card);
  }
  return out;
}

std::optional<words::Error> fault_of_figures(const Card& card) {
  return card.is_a == CardKind::binder ? paint::fault_of_recipe(card.recipe) : std::nullopt;
}

std::optional<words::Error> fault_of(const Card& card, std::int64_t today) {
  if (card.name.empty()) return words::Error{words::BenchSay::card_needs_name, {}};
  for (const std::string& date : {card.made_on, card.keep_until})
    if (!date.empty() && !session::days_of(date))
      return words::Error{words::BenchSay::not_a_date, {date}};
  if (!card.made_on.empty() && *session::days_of(card.made_on) > today)
    return words::Error{words::BenchSay::made_in_future, {card.made_on}};
  return fault_of_figures(card);
}

}
