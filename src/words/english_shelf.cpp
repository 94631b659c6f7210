#include "words/shelf_says.hpp"

namespace words {

std::string_view english(ShelfSay id) {
  using Say = ShelfSay;
  switch (id) {
  case Say::shelf_new: return "new card";
  case Say::shelf_away: return "put away ({0})";
  case Say::shelf_here: return "on the shelf";
  case Say::shelf_put_away: return "put away";
  case Say::shelf_no_new: return "discard the new card";
  case Say::shelf_bring_back: return "back on the shelf";
  case Say::shelf_done: return "done";
  case Say::shelf_none: return "Nothing here yet. Tap “new card” to write the first.";
  case Say::shelf_none_found: return "Nothing is called that. Tap “new card” to write one.";
  case Say::shelf_none_away: return "Nothing is put away. A card goes here by its pad “put away”.";
  case Say::shelf_choose:
    return "Tap a card to see or change it. Nothing has to be filled in before the first batch.";
  case Say::shelf_tick:
    return "Tap what you have: it lies on your own shelf, and Plan offers it first. Tapped again, "
           "it "
           "is off. How much of it there is can wait.";
  case Say::shelf_ticked: return "{0} ticked";
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
  case Say::card_ships: return "Starting values: replace them with your own.";
  case Say::card_from_sources: return "Density and oil absorption are from sources.";
  case Say::card_from_density: return "Density is from a source, oil absorption a guess.";
  case Say::card_from_oil: return "Density is a guess, oil absorption from a source.";
  case Say::card_from_none: return "Density and oil absorption are guesses.";
  case Say::card_cautions: return "{0} chosen";
  case Say::card_cautions_none: return "not known";
  case Say::card_cautions_more: return "more cautions";
  case Say::card_cautions_done: return "back to the card";
  case Say::card_density_from: return "Density: {0}.";
  case Say::card_oil_from: return "Oil absorption: {0}.";
  case Say::card_guess: return "a guess";
  case Say::card_guess_beside: return "a guess; {0}";
  case Say::card_left: return "{0} g left.";
  case Say::card_of_drops: return "Drop 20 drops onto the scale and enter what they weigh.";
  case Say::card_of_water:
    return "Fill it with water to the brim once and enter what the water weighs.";
  case Say::card_keep_note:
    return "A jar that hisses, smells or grows fur is thrown away, whatever the date says.";
  case Say::card_alcohol:
    return "Alcohol burns: no flame, fresh air, keep it closed. The supplier’s safety data sheet "
           "decides.";
  case Say::card_sheet: return "The supplier’s safety data sheet decides.";
  case Say::card_soft_honey: return "In this air, to 10 g of gum: honey {0} to {1} g";
  case Say::card_soft_glycerin:
    return "In this air honey alone stays hard; to 10 g of gum: glycerin {0} to {1} g";
  case Say::card_soft_damp: return "In air so damp no paint dries";
  case Say::card_soft_none: return "In air so dry neither honey nor glycerin keeps it soft";
  case Say::card_soft_both:
    return "In this air, to 10 g of gum: honey {0} to {1} g, or glycerin {2} to {3} g";
  case Say::card_soft_gum: return "{0}. Dry gum to 10 g of pigment: {1} to {2} g";
  case Say::card_soft_guess: return "{0}; our own guess.";
  case Say::card_soft_class: return "{0}; our own guess, and {1} of your verdicts on its class.";
  case Say::card_soft_own: return "{0}; our own guess, and {1} of your verdicts on it.";
  case Say::card_soft_last: return "{0} Last: {1}.";
  case Say::shelf_others: return "the others ({0})";
  case Say::shelf_mine: return "mine ({0})";
  case Say::card_grams: return "{0} g";
  case Say::card_low: return "{0} g, low";
  case Say::card_used_up: return "used up?";
  case Say::card_make: return "make a paint";
  case Say::card_change: return "change the card";
  case Say::card_jars: return "jars";
  case Say::card_make_binder: return "make it";
  case Say::card_label: return "label on paper";
  case Say::card_label_writing: return "being written …";
  case Say::card_label_written: return "label is in “paper”";
  case Say::card_label_printed: return "label went to print";
  case Say::card_label_saved: return "label is saved";
  case Say::shelf_no_recipe_found:
    return "No recipe bears that. Try its name, or one of its pigments.";
  case Say::card_strength: return "weigh, thin";
  case Say::card_tick: return "this is mine";
  case Say::card_colour: return "colour";
  case Say::card_to: return "back to the card";
  case Say::card_figures: return "{0} g to 1 mL, oil absorption {1} g to 100 g";
  case Say::card_density: return "{0} g to 1 mL";
  case Say::card_wants_what: return "wants";
  case Say::card_wants: return "{0} to 10 g";
  case Say::card_mull: return "{0} min";
  case Say::card_mulling_one: return "mulling, 1 pass";
  case Say::card_mulling: return "mulling, {0} passes";
  case Say::card_mulling_guess: return "mulling, as its kind";
  case Say::card_left_what: return "left";
  case Say::card_batches_more: return "left: {0} more batches";
  case Say::card_no_batch_more: return "less than a batch takes";
  case Say::card_weeks: return "left: about {0} weeks";
  case Say::card_not_counted: return "not counted";
  case Say::card_enter_jar: return "enter it under jars";
  case Say::card_price: return "a gram";
  case Say::card_no_price: return "no price yet";
  case Say::jar_grams: return "{0} g";
  case Say::jar_grams_none: return "how many g?";
  case Say::jar_grams_what: return "in the jar";
  case Say::jar_price_none: return "not said";
  case Say::jar_gift: return "a gift";
  case Say::jar_price_what: return "price of the jar";
  case Say::jar_in: return "onto the shelf";
  case Say::jar_back: return "undo the last entry";
  case Say::jar_weigh: return "weigh what is left";
  case Say::jar_said: return "{0}: {1} g";
  case Say::jar_said_price: return "{0}: {1} g for {2}";
  case Say::jar_said_gift: return "{0}: {1} g, a gift";
  case Say::jar_said_lot: return "{0}, {1}";
  case Say::jar_weighed: return "{0}: weighed, {1} g";
  case Say::jar_note:
    return "What batches take goes off by itself. Where that has gone wrong, weigh what is left.";
  case Say::jar_none: return "No jar is entered yet.";
  case Say::recipe_mine: return "mine: no amounts";
  case Say::recipe_not_mine: return "all of it";
  case Say::recipe_own_head: return "own head";
  case Say::recipe_old_notes: return "old notes";
  case Say::recipe_from_batch: return "a batch";
  case Say::recipe_plan: return "plan it";
  case Say::recipe_parts: return "{0} parts";
  case Say::recipe_part: return "1 part";
  case Say::recipe_gone: return "not on the shelf";
  case Say::recipe_to_grams: return "to {0} g of pigment";
  case Say::recipe_to_spoons: return "to {0} of powder";
  case Say::recipe_to_all: return "to all of the pigment";
  case Say::recipe_no_liquids: return "No binder is said: Plan asks for it.";
  case Say::recipe_as_wanted: return "as it wants";
  case Say::recipe_wanted_how: return "as much as Plan works out";
  case Say::recipe_more: return "and {0} more";
  case Say::recipe_kept_of: return "Kept from {0}.";
  case Say::recipe_of_notes: return "From old notes.";
  case Say::recipe_of_head: return "Out of your own head.";
  case Say::recipe_is_mine:
    return "Mine: no amount of it stands on labels or in shared files unless you ask for it.";
  case Say::recipe_is_shared: return "Its amounts go into shared files. Tap “all of it” for mine.";
  case Say::recipe_none_made: return "No batch was made by it yet.";
  case Say::shelf_no_recipe:
    return "No recipe yet. Say a paint under Plan, or open a good batch in the Book, and tap “keep "
           "as recipe”.";
  case Say::card_from_swatch: return "Colour from swatch of {0}";
  case Say::card_as_swatch: return "colour of its swatch";
  case Say::card_as_catalogue: return "colour as listed";
  case Say::from_gettens_table:
    return "Gettens & Stout 1942, Painting Materials, table of properties";
  case Say::from_gettens_page: return "Gettens & Stout 1942, p. 149";
  case Say::from_church: return "Church 1901, to grind it in oil";
  case Say::from_polymers: return "Encyclopedic Dictionary of Polymers";
  case Say::from_museum: return "CAMEO materials encyclopaedia, Museum of Fine Arts Boston";
  case Say::from_article: return "encyclopaedia article";
  case Say::from_bone_black: return "data sheet of a bone black maker";
  case Say::from_cadmium: return "technical information of a cadmium pigment maker";
  case Say::from_coatings: return "public table of coatings pigments";
  case Say::from_both_tables: return "tables for linseed oil paint and of coatings pigments";
  case Say::from_linseed: return "table for linseed oil paint, after data sheets";
  case Say::from_linseed_red: return "table for linseed oil paint, after data sheets, English red";
  case Say::from_linseed_pozzuoli:
    return "table for linseed oil paint, after data sheets, Pozzuoli";
  case Say::from_standard: return "standard sheet after ISO 1248";
  case Say::from_supplier: return "supplier data sheet";
  case Say::from_supplier_and_example: return "supplier data sheet and a worked CPVC example";
  case Say::from_supplier_and_kin: return "supplier data sheet, and PB28 as its kin";
  case Say::from_supplier_mica: return "supplier data sheet, plain mica";
  case Say::from_there: return "{0} (there {1})";
  case Say::from_range: return "{0} to {1}";
  case Say::from_least: return "{0} and more";
  case Say::recipe_row: return "{0} batches";
  case Say::recipe_row_one: return "1 batch";
  }
  return "";
}

}
