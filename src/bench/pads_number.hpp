// The pads of a number.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class NumberPad {
  digit, // arg: 0 ... 9
  point,
  erase,
  enter,
};

constexpr PadList list_of(NumberPad) { return PadList::number; }

}
