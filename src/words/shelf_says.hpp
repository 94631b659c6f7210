// What is said of Shelf.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class ShelfSay {
  shelf_new,
  shelf_away,
  shelf_here,
  shelf_put_away,
  shelf_bring_back,
  shelf_done,
  shelf_none,
  shelf_choose,
  family_mineral,
  family_fine_mineral,
  family_organic,
  family_carbon,
  family_effect,
  family_extender,
  family_unknown,
  with_binder,
  liquid_honey,
  liquid_glycerin,
  liquid_water,
  liquid_aid,
  liquid_other,
  glass_slab,
  glass_muller,
  size_mL,
  card_ships,
  card_confidence_low,
  card_confidence_medium,
  card_confidence_high,
  card_cautions, // 0: how many are chosen
  card_cautions_none,
  card_cautions_more,
  card_cautions_done,
  card_density_from, // 0: source
  card_oil_from,     // 0: source
  card_guess,
  card_left,
  card_of_drops,
  card_of_water,
  card_keep_note,
  card_sheet,
  recipe_mine,
  recipe_not_mine,
  recipe_own_head,
  recipe_old_notes,
  recipe_from_batch,
};

constexpr Table table_of(ShelfSay) { return Table::shelf; }

std::string_view english(ShelfSay id);

}
