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
  later,
  run,  // arg: SESSION N of its last; drops of one material, to be looked at one by one
  line, // arg: SESSION N
  other_amount,
  other_material,
  it_was,         // arg: card
  materials,      // that no pad stands for
  more_materials, // the next page of them
  choose_pads,    // which of them shall have one
  on_pad,         // arg: card; and off it
  five_earlier,   // five minutes
  take_back,
  it_is,     // a weighing that was doubted is as it was typed
  was_meant, // arg: g; what was meant instead
  found,     // arg: wet, dry
  room,      // arg while its number is asked for: humidity; else its degrees
};

constexpr PadList list_of(MorePad) { return PadList::more; }

}
