#include "session/card.hpp"

#include "session/lists.hpp"

namespace session {

std::string_view name_of(CardKind v) { return lists::card_kinds[v].name; }

std::optional<CardKind> card_kind_named(std::string_view s) {
  return lists::card_kinds.find(&lists::Named::name, s);
}

std::string_view name_of(SaidIn v) { return lists::said_in[v].name; }
std::optional<SaidIn> said_in_named(std::string_view s) {
  return lists::said_in.find(&lists::Named::name, s);
}
std::string_view name_of(RecipeFrom v) { return lists::recipes_from[v].name; }
std::optional<RecipeFrom> recipe_from_named(std::string_view s) {
  return lists::recipes_from.find(&lists::Named::name, s);
}

CardKind Card::kind() const {
  return std::visit(words::Overloaded{[](const LiquidCard& liquid) { return liquid.kind; },
                                      [](const PigmentCard&) { return CardKind::pigment; },
                                      [](const PaintCard&) { return CardKind::paint; },
                                      [](const DropperCard&) { return CardKind::dropper; },
                                      [](const SpoonCard&) { return CardKind::spoon; },
                                      [](const PanCard&) { return CardKind::pan; },
                                      [](const SlabCard&) { return CardKind::slab; },
                                      [](const MullerCard&) { return CardKind::muller; },
                                      [](const RecipeCard&) { return CardKind::recipe; }},
                    facts);
}

Card::Facts blank_facts(CardKind kind) {
  switch (kind) {
  case CardKind::pigment: return PigmentCard{};
  case CardKind::binder:
  case CardKind::water:
  case CardKind::honey:
  case CardKind::glycerin:
  case CardKind::wetting_aid:
  case CardKind::other: return LiquidCard{kind, {}};
  case CardKind::paint: return PaintCard{};
  case CardKind::dropper: return DropperCard{};
  case CardKind::spoon: return SpoonCard{};
  case CardKind::pan: return PanCard{};
  case CardKind::slab: return SlabCard{};
  case CardKind::muller: return MullerCard{};
  case CardKind::recipe: return RecipeCard{};
  }
  return LiquidCard{};
}

const PigmentCard& pigment_of(const Card& card) {
  static const PigmentCard none;
  if (const auto* pigment = std::get_if<PigmentCard>(&card.facts)) return *pigment;
  const auto* paint = std::get_if<PaintCard>(&card.facts);
  return paint ? paint->as_one : none;
}

const paint::Recipe& recipe_of(const Card& card) {
  static const paint::Recipe none;
  const auto* liquid = std::get_if<LiquidCard>(&card.facts);
  return liquid ? liquid->recipe : none;
}

Volume volume_of(const Card& card) {
  if (const auto* dropper = std::get_if<DropperCard>(&card.facts)) return dropper->drop;
  if (const auto* spoon = std::get_if<SpoonCard>(&card.facts)) return spoon->level;
  const auto* pan = std::get_if<PanCard>(&card.facts);
  return pan ? pan->full : Volume{};
}

bool is_liquid(CardKind kind) { return std::holds_alternative<LiquidCard>(blank_facts(kind)); }

paint::Kind paint_kind(CardKind kind) {
  switch (kind) {
  case CardKind::pigment: return paint::Kind::pigment;
  case CardKind::binder: return paint::Kind::binder;
  case CardKind::water: return paint::Kind::water;
  case CardKind::honey: return paint::Kind::honey;
  case CardKind::glycerin: return paint::Kind::glycerin;
  case CardKind::wetting_aid: return paint::Kind::wetting_aid;
  case CardKind::other:
  case CardKind::paint:
  case CardKind::dropper:
  case CardKind::spoon:
  case CardKind::pan:
  case CardKind::slab:
  case CardKind::muller:
  case CardKind::recipe: return paint::Kind::other;
  }
  return paint::Kind::other;
}

}
