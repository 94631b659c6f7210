// What is said of this tablet and the strip.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class TabletSay {
  tablet_keys,
  tablet_size,
  tablet_small, // 0, 1: mm, 2: per cent
  card_hold,
  card_fit,
  card_hold_upright,
  card_fit_across,
  card_smaller,
  card_larger,
  card_much_smaller,
  card_much_larger,
  hand_left,
  hand_right,
  motion_on,
  motion_off,
  full_screen_on,
  full_screen_off,
  language, // 0: its own name
  key_binder,
  key_water,
  key_honey,
  key_undo,
  key_pass,
  key_none,
  key_press_now,
  wipe_glass,
  // what studios tell each other
  others,
  others_back,
  told_title,
  told_about,
  told_about_by_hand,
  told_folder, // 0: path
  told_by_hand,
  told_written, // 0: path
  told_saved,   // 0: name
  told_preparing,
  told_none,
  told_found,   // 0: file, 1: date, 2: pigments, 3: batches
  told_counts,  // 0: pigments, 1: batches
  told_is_kept, // likewise
  told_doubted,
  told_pigment,
  told_pigments, // 0: how many, and so on
  told_batch,
  told_batches,
  pad_tell,
  pad_find_told,
  pad_take_told,
  pad_leave_told,
  pad_forget_told,
};

constexpr Table table_of(TabletSay) { return Table::tablet; }

std::string_view english(TabletSay id);

}
