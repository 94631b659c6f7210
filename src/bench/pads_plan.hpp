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
  go_on,           // with the batch that was left open; arg: batch
  another_pigment, // opens the finder
  recipes,         // likewise, of recipes
  recipe,          // arg: card
  all_others,      // the catalogue too, and back
  say_in,          // arg: spoons, g, parts
  spoon,           // another one; arg: card of the pigment
  other_binders,
  fewer,
  more,
  keep_recipe,
};

constexpr PadList list_of(PlanPad) { return PadList::plan; }

}
