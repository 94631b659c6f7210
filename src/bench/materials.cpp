#include "bench/materials.hpp"

#include "paint/measure.hpp"
#include "session/amounts.hpp"

#include <algorithm>
#include <utility>

namespace bench {

namespace {

using session::Card;
using session::CardKind;

constexpr std::array order{CardKind::binder,      CardKind::water,   CardKind::honey,
                           CardKind::glycerin,    CardKind::pigment, CardKind::paint,
                           CardKind::wetting_aid, CardKind::other};

std::size_t place_of(const Card& card) {
  return static_cast<std::size_t>(std::find(order.begin(), order.end(), card.is_a) - order.begin());
}

bool is_solid(const Card& card) {
  return card.is_a == CardKind::pigment || card.is_a == CardKind::paint;
}

bool used(const Bench& bench, const Card& card) {
  if (!bench.folded) return false;
  return std::any_of(bench.folded->totals.begin(), bench.folded->totals.end(),
                     [&](const session::Total& t) { return t.card.id == card.id; });
}

}

std::vector<Card> materials_of(const Bench& bench) {
  std::vector<Card> cards;
  if (!bench.folded) return cards;
  for (const auto& [id, card] : bench.folded->cards)
    if (place_of(card) < order.size()) cards.push_back(card);
  // A log may name only what it used; whatever else a slab always has comes from the shelf.
  for (const Card& card : bench.shelf) {
    const auto same_kind = [&](const Card& c) { return c.is_a == card.is_a; };
    const bool always = session::is_liquid(card.is_a) && card.is_a != CardKind::binder;
    if (always && std::none_of(cards.begin(), cards.end(), same_kind)) cards.push_back(card);
  }
  std::stable_sort(cards.begin(), cards.end(),
                   [](const Card& a, const Card& b) { return place_of(a) < place_of(b); });
  return cards;
}

std::vector<Card> pigments_of(const Bench& bench) {
  std::vector<Card> cards = materials_of(bench);
  std::erase_if(cards, [](const Card& c) { return !is_solid(c); });
  return cards;
}

std::vector<PadId> material_pads(const Bench& bench) {
  const bool several = pigments_of(bench).size() > 1;
  std::vector<PadId> pads;
  bool asked = false;
  for (const Card& card : materials_of(bench)) {
    if (!is_solid(card) || !several)
      pads.push_back({PadKind::add, card.id});
    else if (!std::exchange(asked, true))
      pads.push_back({PadKind::pigments, ""});
  }
  if (pads.size() > most_materials) pads.resize(most_materials);
  return pads;
}

std::vector<Card> bottles_of(const Bench& bench) {
  std::vector<Card> cards = materials_of(bench);
  std::erase_if(cards, [](const Card& c) { return !session::is_liquid(c.is_a); });
  std::stable_sort(cards.begin(), cards.end(),
                   [&](const Card& a, const Card& b) { return used(bench, a) && !used(bench, b); });
  if (cards.size() > most_bottles) cards.resize(most_bottles);
  return cards;
}

std::optional<Card> card_of(const Bench& bench, const std::string& id) {
  if (bench.folded) {
    const auto known = bench.folded->cards.find(id);
    if (known != bench.folded->cards.end()) return known->second;
  }
  for (const Card& card : bench.shelf)
    if (card.id == id) return card;
  return std::nullopt;
}

std::optional<Amount> amount_named(std::string_view name) {
  using session::Unit;
  constexpr std::array<Amount, 8> amounts{{{Unit::drops, 1},
                                           {Unit::drops, 2},
                                           {Unit::drops, 5},
                                           {Unit::drops, 10},
                                           {Unit::spoons, 0.25},
                                           {Unit::spoons, 0.5},
                                           {Unit::spoons, 1},
                                           {Unit::g, 0}}};
  for (std::size_t i = 0; i < amount_names.size(); ++i)
    if (amount_names[i] == name) return amounts[i];
  return std::nullopt;
}

Amount next_amount(const Bench& bench, const Card& card) {
  return is_solid(card) ? Amount{session::Unit::g, 0} : bench.amount;
}

std::string tool_for(const Bench& bench, session::Unit unit) {
  if (unit == session::Unit::g) return "";
  const CardKind wanted = unit == session::Unit::drops ? CardKind::dropper : CardKind::spoon;
  if (bench.folded)
    for (const auto& [id, card] : bench.folded->cards)
      if (card.is_a == wanted) return id;
  for (const Card& card : bench.shelf)
    if (card.is_a == wanted) return card.id;
  return "";
}

std::optional<double> mL_of(const Bench& bench, const Card& card, const Amount& amount) {
  const auto tool = card_of(bench, tool_for(bench, amount.unit));
  const auto material = session::material_of(card);
  if (!tool || !material || !session::is_liquid(card.is_a)) return std::nullopt;
  const paint::Dropper dropper{tool->id, tool->tool.mL, tool->tool.mL_u,
                               session::paint_kind(tool->tool.calibrated_with)};
  const auto grams = amount.unit == session::Unit::drops
                         ? paint::grams_of_drops(amount.count, dropper, *material)
                         : paint::grams_of_spoons(
                               amount.count, {tool->id, tool->tool.mL, tool->tool.mL_u}, *material);
  if (!grams) return std::nullopt;
  return grams->value * paint::mL_per_g(material->parts);
}

}
