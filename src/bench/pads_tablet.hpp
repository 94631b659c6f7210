// The pads of this tablet.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class TabletPad {
  hand,
  motion,
  card_smaller,
  card_larger, // arg of both: "" a little, "much"
  bind,        // arg: the name of a pad in keys.hpp
};

constexpr PadList list_of(TabletPad) { return PadList::tablet; }

}
