// The pads of Shelf.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class ShelfPad {
  kind_of, // arg: pigment, binder, liquid, dropper, spoon, pan, glass
  card,    // arg: card
  new_card,
  kept_away, // those put away, and back
  put_away,
  bring_back,
  fact,   // a number of the card; arg: which
  says,   // a text field of the card; arg: name, lot, made_on, keep_until
  choice, // what the card turns over at each tap; arg: which
  card_done,
  caution, // arg: its word; chosen, or not
  more_cautions,
  cautions_chosen, // back to the card
};

constexpr PadList list_of(ShelfPad) { return PadList::shelf; }

}
