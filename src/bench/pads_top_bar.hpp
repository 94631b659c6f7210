// The pads of the top bar, for clean hands.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class TopBarPad {
  today,
  shelf,
  plan,
  slab,
  pans,
  book,
  tablet,
  sound,
  night,
  wipe,
  unlock,
};

constexpr PadList list_of(TopBarPad) { return PadList::top_bar; }

}
