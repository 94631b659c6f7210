// The pads of what is wanted seldom: where paint lies, and lines that were wrong.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class MorePad {
  weigh_paint,
  to_jar, // arg: half, all
  from_jar,
  spilt,
  other_paint,
  paint_of, // arg: batch
  lines,    // what was done, to be corrected
  earlier,  // of them
  line,     // arg: SESSION N
  other_amount,
  five_earlier, // five minutes
  take_back,
  found, // arg: wet, dry
};

constexpr PadList list_of(MorePad) { return PadList::more; }

}
