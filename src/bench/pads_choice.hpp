// The pads among which a panel over the trail lets one choose.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class ChoicePad {
  amount,  // arg: "1 drop", "5 drops", "1/4 tsp", ..., "weigh"
  dropper, // another one, for the next drops
  bottle_of,
  lost_count,   // arg: card
  keep_dropper, // what a bottle said of it, on its card
  specks,       // arg: many, few, none
  trouble_is,   // arg: wont_wet, gelling, gummy, gritty, foams, separates, smells
};

constexpr PadList list_of(ChoicePad) { return PadList::choice; }

}
