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
  others,          // the catalogue's, and back to the maker's own
  tick,            // it is the maker's own
  own,             // arg: card; the same in the list, and again it is not
  own_done,
  make,     // a paint of it
  change,   // its figures
  batch_of, // arg: batch
  chart,    // of colours
  hue,      // arg: its place in the chart
  shade,    // arg: likewise
  jars,     // of it: bought and weighed
  jar_g,
  jar_price,
  jar_says, // a text field; arg: currency, lot, on
  jar_in,   // entered
  jar_back, // the last entry is taken back
  left_g,   // weighed
  to_card,  // from its jars or the chart
  make_binder,
  strength,     // of a jar of binder
  binder_label, // on paper
  as_swatch,    // the card takes the colour of its own paint
  as_catalogue, // and that of the catalogue again
};

constexpr PadList list_of(ShelfPad) { return PadList::shelf; }

}
