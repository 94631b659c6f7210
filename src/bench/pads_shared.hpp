// The pads that lie on several screens.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class SharedPad {
  undo,
  leave,
  search, // a text field
  clear,  // empties it, or the field that arg names
  page_back,
  page_on,
  to_pans,
  to_plan,
  dot_photo, // of a trail; arg: its key
};

constexpr PadList list_of(SharedPad) { return PadList::shared; }

}
