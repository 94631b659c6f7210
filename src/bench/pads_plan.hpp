// The pads of Plan.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class PlanPad {
  pigment, // arg: card
  binder,  // arg: card
  weigh,
  celsius,
  humidity,
  parts,     // arg: card
  by_volume, // else by weight
  want,      // what the number says
  pan_size,
  cautions, // open
  cautions_read,
  name, // a text field
  begin,
  go_on, // with the batch that was left open; arg: batch
};

constexpr PadList list_of(PlanPad) { return PadList::plan; }

}
