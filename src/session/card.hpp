// A thing of the shelf, as a card says it.
#pragma once

#include "paint/material.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace session {

enum class CardKind {
  pigment,
  binder,
  water,
  honey,
  glycerin,
  wetting_aid,
  other,
  paint, // of an earlier batch, wet or dried, as a material
  dropper,
  spoon,
  pan,
  slab,
  muller,
  recipe // of a paint
};

// What a card says, by its kind.
struct PigmentCard {
  std::string index_name;   // Colour Index name, may be empty
  std::uint32_t colour = 0; // 0xRRGGBB of the heap on screen
  paint::Pigment pigment;
  std::vector<std::string> cautions = {}; // words of paint::Caution, as its maker chose them
  bool operator==(const PigmentCard&) const = default;
};
struct PaintCard {
  PigmentCard as_one;   // as if its pigments were one
  paint::Parts made_of; // g of each
  bool operator==(const PaintCard&) const = default;
};
struct LiquidCard {
  CardKind kind = CardKind::other; // binder, water, honey, glycerin, wetting_aid or other
  paint::Recipe recipe;
  bool operator==(const LiquidCard&) const = default;
};
struct Volume {
  double mL = 0;   // of one drop, the level spoon, the full pan
  double mL_u = 0; // its standard uncertainty
  bool operator==(const Volume&) const = default;
};
struct DropperCard {
  Volume drop;
  CardKind calibrated_with = CardKind::water;
  bool operator==(const DropperCard&) const = default;
};
struct SpoonCard {
  Volume level;
  bool operator==(const SpoonCard&) const = default;
};
struct PanCard {
  Volume full;
  double depth_mm = 0; // inside, to the brim; 0: not known
  bool operator==(const PanCard&) const = default;
};
struct SlabCard {
  double cm2 = 0; // its face, as older files say: the rate of drying is learnt, and needs none
  bool operator==(const SlabCard&) const = default;
};
struct MullerCard {
  double cm2 = 0; // its foot, likewise
  bool operator==(const MullerCard&) const = default;
};

// An amount as its maker says it. Spoons and drops name their tool, parts are by weight.
enum class SaidIn { parts, g, drops, spoons };
struct Said {
  std::string of; // card
  SaidIn in = SaidIn::g;
  double amount = 0;
  std::string with = {}; // spoon or dropper
  bool operator==(const Said&) const = default;
};
enum class RecipeFrom { own_head, old_notes, batch };
struct RecipeCard {
  std::vector<Said> pigments;
  std::vector<Said> liquids; // binder and extras, to the pigments as they stand above, or
  double per_g = 0;          // to so many g of pigment; 0: not so
  double per_spoons = 0;     // to so many spoons of powder; 0: not so
  std::string per_with = {}; // that spoon
  RecipeFrom from = RecipeFrom::own_head;
  std::string batch = {}; // that it was kept from
  bool mine = false;      // it and its amounts are handed on only when asked for
  std::string note = {};  // what else its maker wrote of it
  bool operator==(const RecipeCard&) const = default;
};

// A thing of the shelf as it was when a session first used it.
struct Card {
  using Facts = std::variant<LiquidCard, PigmentCard, PaintCard, DropperCard, SpoonCard, PanCard,
                             SlabCard, MullerCard, RecipeCard>;
  std::string id;
  std::string name;
  Facts facts;
  std::string lot = {};        // jar or lot number, may be empty
  std::string made_on = {};    // what was made here: "2026-11-25", may be empty
  std::string keep_until = {}; // likewise
  double made_g = 0;           // how much of it; 0: not known
  bool operator==(const Card&) const = default;

  CardKind kind() const;
};
Card::Facts blank_facts(CardKind kind);

// Of a card that has it; else one that says nothing.
const PigmentCard& pigment_of(const Card& card);  // pigment, paint
const paint::Recipe& recipe_of(const Card& card); // liquids
Volume volume_of(const Card& card);               // dropper, spoon, pan

// The word in files.
std::string_view name_of(CardKind);
std::optional<CardKind> card_kind_named(std::string_view);
std::string_view name_of(SaidIn);
std::optional<SaidIn> said_in_named(std::string_view);
std::string_view name_of(RecipeFrom);
std::optional<RecipeFrom> recipe_from_named(std::string_view);

bool is_liquid(CardKind kind);
paint::Kind paint_kind(CardKind kind);

}
