// What is said of Today.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class TodaySay {
  on_slab,
  in_jar,
  layer,
  layer_late,
  left_over,
  left_over_later, // 1: in how many hours or days
  weigh_pan,       // 0: its number, 1: since when
  verdict,
  verdict_one,
  verdict_late, // 0: so many days
  use_within,
  use_within_one,
  use_today,
  use_past,
  low_one_more,
  low_short,
  low_none,
  left,
  of_jar,
  again,
  again_which,
  again_none,
  again_made,
  new_paint,
  new_paint_what,
  reading,
  nothing_waits,
  nothing_waits_what,
  first_paint,
  first_paint_what,
  i_have,
  i_have_what,
  binder,
  binder_what,
  bank_card,
  bank_card_what,
  bank_card_takes,
  any_time,
  a_day,
  making_runs, // 0: step; 1: until when
  making_next, // 0: step
  making_late, // likewise
  making_done,
  here_alone,
  here_alone_days, // 0: so many days
  hand_left,
  hand_left_what,
  hand_right,
  hand_right_what,
};

constexpr Table table_of(TodaySay) { return Table::today; }

std::string_view english(TodaySay id);

}
