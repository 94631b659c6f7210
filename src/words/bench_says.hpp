// What is said of the bench: what is missing, what cannot be entered.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class BenchSay {
  plan_still_reading,
  plan_choose_pigment,
  plan_choose_binder,
  plan_needs_name,
  text_shortened,
  tablet_unreadable,
  saved_lines_gone,
  display_small,
  stage_wetting_out,
  stage_mulling,
  nothing_to_feel,
  pan_too_heavy,
  pan_holds_less,
  pan_depth_unlikely,
  pans_still_wet,
  card_stays_own, // 0: name
  pans_no_more,
  pans_left_none,
  told_nothing,
  told_reading,
  told_counts_already, // 0: file
  added_elsewhere,
  discarded_elsewhere,
  powder_is_weighed,
  bottle_of_liquid,
  nothing_wanted,
  amount_cannot_be,
  pans_not_whole,
  pans_too_many,       // 0: so many, 1: at most
  drops_doubted,       // g: 0 by the card, 1 as typed
  left_doubted,        // g: 0 by count, 1 as typed
  more_than_left,      // likewise
  far_too_much,        // 0: typed, 1: of pigment there
  past_the_plan,       // g: 0 planned, 1 with what was typed
  past_what_counts,    // 0: g that are counted, 1: with this
  so_many_portions,    // 0: over the slab
  pigment_left_out,    // 0: names
  jar_holds_more,      // g: 0 that went in, 1 typed
  dose_doubted,        // g: 0 of preservative, 1 of binder
  pan_heavier,         // g: 0 before, 1 now
  pan_lighter,         // g: 0 of powder in it, 1 typed
  spilt_more,          // g: 0 there, 1 typed
  spilt_more_than_all, // g: 0 that went in, 1 typed
  nothing_typed,
  question_closed,
  none_went_in,
  weighs_nothing,
  paint_weighs_nothing,
  grams_tiny, // 0: g as typed
  parts_out_of_range,
  not_on_shelf,
  paint_not_planned,
  recipe_empty,
  recipe_there, // 0: name
  spoon_gone,
  nothing_left,
  blend_full,
  fact_out_of_range,
  card_needs_name,
  not_a_date, // 0: what was typed, 1: one as it is typed
  made_in_future,
  kept_before_made, // 0: keep until, 1: made on
  bought_in_future,
  jar_needs_g,
  usual_currency,
  jar_needs_currency,
  making_no_recipe,
  making_nameless,
  making_jar, // 0: which
  making_no_spoon,
  making_gum_first,
  making_step_twice,
  making_not_in_jar,
  strength_weigh_first,
  strength_as_it_is,
  bottle_below_empty, // 0: the empty bottle, g
  // cards that every shelf begins with
  ships_gum_12,
  ships_gum_12_honey,
  ships_gum_12_glycerin,
  ships_gum_13,
  ships_water,
  ships_honey_11,
  ships_glycerin,
  ships_ox_gall,
  ships_alcohol_70,
  ships_gum_arabic,
  ships_dropper,
  ships_teaspoon,
  ships_half_pan,
  ships_full_pan,
  tab_today,
  tab_shelf,
  tab_plan,
  tab_slab,
  tab_pans,
  tab_book,
  fact_g_per_mL,
  fact_unknown,
  fact_oil,
  fact_heap,
  fact_gum,
  fact_water,
  fact_honey,
  fact_glycerin,
  fact_alcohol,
  fact_preservative,
  fact_made_g,
  fact_drops,
  fact_water_full,
  fact_depth_mm,
  choice_class,
  choice_with,
  choice_size,
  choice_is_a,
  choice_mine,
  choice_from,
  card_cautions_what,
  shelf_pigment,
  shelf_binder,
  shelf_liquid,
  shelf_dropper,
  shelf_spoon,
  shelf_pan,
  shelf_glass,
  shelf_recipe,
  line_taken_back,
};

constexpr Table table_of(BenchSay) { return Table::bench; }

std::string_view english(BenchSay id);

}
