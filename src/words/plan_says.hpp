// What is said of Plan.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class PlanSay {
  plan_weigh,
  plan_how_many,
  plan_binder_short,
  plan_as_last_time,
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
  plan_weigh_grams,
  plan_binder,
  plan_first,
  plan_first_spoons,
  plan_rest_drops,
  plan_rest,
  plan_wet,
  plan_wet_no_pans,
  plan_portions,
  plan_extras,
  plan_mull,
  plan_mull_guess,
  plan_short,
  plan_again_of,
  plan_go_on,
  plan_go_on_what,
  plan_cautions_read,
  plan_cautions_to_read,
  plan_how_much,
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
};

constexpr Table table_of(PlanSay) { return Table::plan; }

std::string_view english(PlanSay id);

}
