// The pads of Slab, for wet hands.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class SlabPad {
  add,      // arg: card
  pigments, // where there are several
  another,
  more,
  bottle,
  pass,
  gather,
  back_on_slab,
  close,
  dot,
  trouble,
  felt, // arg: wont_move ... too_runny
};

constexpr PadList list_of(SlabPad) { return PadList::slab; }

}
