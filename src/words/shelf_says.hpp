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
  shelf_no_new,
  shelf_bring_back,
  shelf_done,
  shelf_none,
  shelf_none_found,
  shelf_none_away,
  shelf_choose,
  shelf_tick,
  shelf_ticked, // 0: so many
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
  card_from_sources,
  card_from_density,
  card_from_oil,
  card_from_none,
  card_cautions, // 0: how many are chosen
  card_cautions_none,
  card_cautions_more,
  card_cautions_done,
  card_density_from, // 0: source
  card_oil_from,     // 0: source
  card_guess,
  card_guess_beside, // 0: source
  card_left,
  card_of_drops,
  card_of_water,
  card_keep_note,
  card_sheet,
  card_alcohol,
  card_soft_honey,
  card_soft_glycerin,
  card_soft_none,
  card_soft_damp,
  card_soft_both,
  card_soft_gum,
  card_soft_guess,
  card_soft_class,
  card_soft_own,
  card_soft_last,
  shelf_others, // 0: how many
  shelf_mine,   // 0: how many
  card_grams,   // 0: grams
  card_low,     // 0: grams
  card_used_up,
  card_make,
  card_change,
  card_jars,
  card_make_binder,
  card_strength,
  card_label,
  card_label_writing,
  card_label_written,
  card_label_printed,
  card_label_saved,
  shelf_no_recipe_found,
  card_tick,
  card_colour,
  card_to,
  card_figures, // 0: density; 1: oil
  card_density, // 0: density
  card_wants_what,
  card_wants, // 0: binder
  card_mull,  // 0: minutes
  card_mulling_one,
  card_mulling, // 0: passes
  card_mulling_guess,
  card_left_what,
  card_batches_more, // 0: batches
  card_no_batch_more,
  card_weeks, // 0: weeks
  card_not_counted,
  card_enter_jar,
  card_price,
  card_no_price,
  jar_grams, // 0: grams
  jar_grams_none,
  jar_grams_what,
  jar_price_none,
  jar_gift,
  jar_price_what,
  jar_in,
  jar_back,
  jar_weigh,
  jar_said,       // 0: date; 1: grams
  jar_said_price, // 0: date; 1: grams; 2: price
  jar_said_gift,  // 0: date; 1: grams
  jar_said_lot,   // 0: what was said; 1: lot
  jar_weighed,    // 0: date; 1: grams
  jar_note,
  jar_none,
  recipe_mine,
  recipe_not_mine,
  recipe_own_head,
  recipe_old_notes,
  recipe_from_batch,
  recipe_plan,
  recipe_parts, // 0: how many
  recipe_part,
  recipe_gone,
  recipe_to_grams,  // 0: grams
  recipe_to_spoons, // 0: spoons
  recipe_to_all,
  recipe_no_liquids,
  recipe_as_wanted,
  recipe_wanted_how,
  recipe_more,    // 0: lines
  recipe_kept_of, // 0: batch
  recipe_of_notes,
  recipe_of_head,
  recipe_is_mine,
  recipe_is_shared,
  recipe_none_made,
  shelf_no_recipe,
  card_from_swatch, // 0: batch
  card_as_swatch,
  card_as_catalogue,
  // What a figure of the catalogue rests on, in the words that stand there.
  from_gettens_table,
  from_gettens_page,
  from_church,
  from_polymers,
  from_museum,
  from_article,
  from_bone_black,
  from_cadmium,
  from_coatings,
  from_both_tables,
  from_linseed,
  from_linseed_red,
  from_linseed_pozzuoli,
  from_standard,
  from_supplier,
  from_supplier_and_example,
  from_supplier_and_kin,
  from_supplier_mica,
  from_there, // 0: source, 1: figure
  from_range, // 0, 1: figures
  from_least, // 0: figure
  recipe_row, // 0: how many batches were made by it
  recipe_row_one,
};

constexpr Table table_of(ShelfSay) { return Table::shelf; }

std::string_view english(ShelfSay id);

}
