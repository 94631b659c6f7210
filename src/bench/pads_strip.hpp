// The pads of the strip, for clean hands.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class StripPad {
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

constexpr PadList list_of(StripPad) { return PadList::strip; }

}
