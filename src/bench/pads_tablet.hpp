// The pads of this tablet.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class TabletPad {
  hand,
  motion,
  full_screen, // where the window has the choice
  language,    // the next of those offered
  card_smaller,
  card_larger, // arg of both: "" a little, "much"
  bind,        // arg: the name of a pad in keys.hpp
  others,      // what studios tell each other, and back to the keys
  tell,
  find_told,
  take_told, // what was found
  leave_told,
  forget_told, // what counts
};

constexpr PadList list_of(TabletPad) { return PadList::tablet; }

}
