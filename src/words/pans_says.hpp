// What is said of Pans.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class PansSay {
  pans_none,
  pans_new,
  pans_number,
  pans_fill_new,
  pans_fill_planned,
  pans_planned,
  pans_planned_pours,
  pans_fill_one,
  pans_pour_all,
  pans_pour_one,
  pans_pour_into,
  pans_pour_none,
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
  pans_older,
  pans_newer,
  pans_next,
  pans_in_hours,
  pans_in_days,
  pans_now,
  pans_if_firm,
  pans_full,
  pans_when_firm,
  pans_first,
  pans_tap_one,
  pans_from_room,
  pans_from_guess,
  pans_from_scale,
  pans_weigh_again,
  pans_ask,
  pans_left,
  pans_will_fill,
  pans_weighings,
  pans_drying,
  pans_still_drying,
  pans_early,
  remedy_good,
  remedy_full,
  remedy_sunken,
  remedy_cracked,
  remedy_sticky,
  remedy_rubs_off,
  remedy_wont_rewet,
  remedy_mould,
};

constexpr Table table_of(PansSay) { return Table::pans; }

std::string_view english(PansSay id);

}
