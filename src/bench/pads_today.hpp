// The pads of Today.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class TodayPad {
  due,   // arg: what waits and of which batch or card, see name_of(Due)
  again, // arg: batch
  new_paint,
  have, // the pigments of the shelf
  binder,
  bank_card,
  hand, // arg: left, right
};

constexpr PadList list_of(TodayPad) { return PadList::today; }

}
