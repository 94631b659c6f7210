// What is said of Plan.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class PlanSay {
  plan_how_many,
  plan_not_weighed,
  plan_begin,
  plan_celsius,
  plan_room_hours,
  plan_room_days,
  plan_humidity,
  plan_care_in_short,
  plan_nothing_found,
  want_pigment,
  want_pans,
  want_wet,
  want_dried,
  plan_by_weight,
  plan_by_volume,
  plan_parts,
  plan_part,
  plan_binder,
  plan_first,
  plan_first_spoons,
  plan_rest_drops,
  plan_rest,
  plan_mull_one,
  plan_mull,
  plan_gum_short,
  plan_short,
  plan_again_of,
  plan_go_on,
  plan_go_on_what,
  plan_cautions_read,
  plan_cautions_to_read,
  plan_how_much,
  plan_costs,      // 0: money
  plan_costs_pans, // 0: money; 1: of a pan
  plan_costs_part, // 0: money; 1: names
  plan_last_cracked,
  plan_last_sticky,
  plan_last_rubs_off,
  plan_last_wont_rewet,
  plan_last_more_drops,
  plan_last_more,
  plan_last_enough,
  plan_last_less,
  plan_last_sweeter,
  plan_last_less_to,
  plan_tablespoons,
  plan_named_spoons,
  plan_by_the_drop,
  plan_and_drops, // 0: spoons
  plan_grams_guess,
  plan_grams_about,
  plan_weigh_out,
  plan_spoon_out,
  plan_first_helping,
  plan_then,
  plan_by_recipe,
  plan_as_last,
  plan_by_feel,
  plan_minutes,
  plan_from_to,
  plan_in_portions,
  plan_of_mulling,
  plan_layers,
  plan_pans_of,
  plan_ratio,
  plan_ratio_what,
  plan_ratio_last,
  plan_mL,
  plan_wet_paint,
  plan_recipe,
  want_as_it_stands,
  want_all_left,
  plan_left,
  plan_name_and_left,
  plan_leave,
  plan_pigments,
  plan_another_pigment,
  plan_recipes,
  plan_own_alone,
  plan_all_others,
  plan_other_binders,
  plan_binder_own,
  plan_binder_ships,
  plan_keep_recipe,
  plan_recipe_kept,
  plan_in_spoons,
  plan_in_grams,
  plan_in_parts,
  plan_what,
  plan_which_binder,
  plan_how_much_title,
  plan_no_recipe,
};

constexpr Table table_of(PlanSay) { return Table::plan; }

std::string_view english(PlanSay id);

}
