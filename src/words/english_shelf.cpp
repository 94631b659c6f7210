#include "words/shelf_says.hpp"

namespace words {

std::string_view english(ShelfSay id) {
  using Say = ShelfSay;
  switch (id) {
  case Say::shelf_new: return "new card";
  case Say::shelf_away: return "put away ({0})";
  case Say::shelf_here: return "on the shelf";
  case Say::shelf_put_away: return "put away";
  case Say::shelf_bring_back: return "back on the shelf";
  case Say::shelf_done: return "done";
  case Say::shelf_none: return "Nothing here.";
  case Say::shelf_choose:
    return "Tap a card to see or change it. Nothing has to be filled in before the first batch.";
  case Say::family_mineral: return "mineral";
  case Say::family_fine_mineral: return "fine mineral";
  case Say::family_organic: return "organic";
  case Say::family_carbon: return "carbon";
  case Say::family_effect: return "effect";
  case Say::family_extender: return "extender";
  case Say::family_unknown: return "class not known";
  case Say::with_binder: return "binder";
  case Say::liquid_honey: return "honey";
  case Say::liquid_glycerin: return "glycerin";
  case Say::liquid_water: return "water";
  case Say::liquid_aid: return "wetting aid";
  case Say::liquid_other: return "another liquid";
  case Say::glass_slab: return "slab";
  case Say::glass_muller: return "muller";
  case Say::size_mL: return "{0} mL";
  case Say::card_ships: return "As it ships: marked guesses, until you replace them.";
  case Say::card_confidence_low: return "Confidence low.";
  case Say::card_confidence_medium: return "Confidence fair.";
  case Say::card_confidence_high: return "Confidence good.";
  case Say::card_cautions: return "{0} chosen";
  case Say::card_cautions_none: return "not known";
  case Say::card_cautions_more: return "more cautions";
  case Say::card_cautions_done: return "back to the card";
  case Say::card_density_from: return "Density: {0}.";
  case Say::card_oil_from: return "Oil absorption: {0}.";
  case Say::card_guess: return "a guess";
  case Say::card_left: return "{0} g left.";
  case Say::card_of_drops: return "Drop 20 drops onto the scale and enter what they weigh.";
  case Say::card_of_water:
    return "Fill it with water to the brim once and enter what the water weighs.";
  case Say::card_keep_note:
    return "A jar that hisses, smells or grows fur is thrown away, whatever the date says.";
  case Say::card_sheet: return "The supplier’s safety data sheet decides.";
  case Say::recipe_mine: return "mine: no amounts";
  case Say::recipe_not_mine: return "all of it";
  case Say::recipe_own_head: return "own head";
  case Say::recipe_old_notes: return "old notes";
  case Say::recipe_from_batch: return "a batch";
  }
  return "";
}

}
