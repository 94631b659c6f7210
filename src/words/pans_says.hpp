// What is said of Pans.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class PansSay {
  pans_none,
  pans_number,
  pans_planned,
  pans_planned_pours,
  pans_pour_wait,
  pans_grams,
  pans_weigh,
  pans_size,
  pans_judge,
  pans_judge_what,
  pans_pour,
  pans_pour_what,
  pans_all_meant,
  pans_more,
  pans_next,
  pans_in_hours,
  pans_in_days,
  pans_in_hours_to_days,
  pans_now,
  pans_if_firm,
  pans_full,
  pans_when_firm,
  pans_first,
  pans_from_room,
  pans_from_guess,
  pans_from_scale,
  pans_weigh_again, // 0: which, 1: from when
  pans_weigh_now,
  pans_ask,
  pans_fill_quarter,
  pans_fill_third,
  pans_fill_half,
  pans_fill_two_thirds,
  pans_fill_three_quarters,
  pans_fill_full,
  pans_weighings,
  pans_drying,
  pans_still_drying,
  pans_early,
  pans_layer_of,
  pans_layer,
  pans_old_hours,
  pans_old_days,
  pans_old_day,
  pans_in_jar,
  pans_share_full, // 0: per cent
  pans_share,
  pans_pour_layer,
  pans_into_one,
  pans_into,
  pans_only,
  pans_add,
  pans_no_pan_card,
  pans_more_batches,
  pans_one_more_batch,
  pans_can_go_on,
  pans_later, // 1: in how many hours or days
  pans_look,
  pans_look_soon,
  pans_waits_in_jar,
  pans_beside, // 0: so many that are not drawn
  pans_dotted,
  pan_dries,
  pan_is_full,
  pan_water,
  pans_firm_since,
  pans_maybe_firm,
  pans_curve_now,
  pans_deep,
  pans_monday,
  pans_tuesday,
  pans_wednesday,
  pans_thursday,
  pans_friday,
  pans_saturday,
  pans_sunday,
  pans_day,
  crack_causes,
  crack_deep,
  crack_deep_mm,
  crack_little_gum,
  crack_much_gum,
  crack_hard,
  crack_fast,
  crack_seen,
  remedy_good,
  remedy_full,
  remedy_sunken,
  remedy_sticky,
  remedy_rubs_off,
  remedy_wont_rewet,
  remedy_mould,
};

constexpr Table table_of(PansSay) { return Table::pans; }

std::string_view english(PansSay id);

}
