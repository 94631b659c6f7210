// The pads of Pans.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class PansPad {
  pan,     // arg: its number; chooses it
  new_pan, // pours one more
  pour_all,
  pour_pan, // into the chosen one
  pour_g,   // how much the pan poured last took
  weigh_pan,
  pan_card, // another size
  judge,    // from pouring to judging, and back
  became,   // arg: good ... mould
  all_pans, // are meant, not one
  more_pans,
  batch,        // arg: another one
  more_batches, // the next others
  room,         // as on Slab
};

constexpr PadList list_of(PansPad) { return PadList::pans; }

}
