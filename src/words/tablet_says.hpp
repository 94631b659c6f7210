// What is said of this tablet and the strip.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class TabletSay {
  tablet_keys,
  tablet_size,
  card_hold,
  card_fit,
  card_smaller,
  card_larger,
  card_much_smaller,
  card_much_larger,
  hand_left,
  hand_right,
  motion_on,
  motion_off,
  key_binder,
  key_water,
  key_honey,
  key_undo,
  key_pass,
  key_none,
  key_press_now,
  wipe_glass,
};

constexpr Table table_of(TabletSay) { return Table::tablet; }

std::string_view english(TabletSay id);

}
