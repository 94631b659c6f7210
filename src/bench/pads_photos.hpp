// The pads of a batch's photos.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class PhotosPad {
  photo, // arg: its SHA-256
  add,
  folder_text, // a text field
  look,        // into the folder that is written there
  choose,      // arg: a file's name
  of,          // arg: swatch, dot, pan, slab
  region,      // arg: paint, paper
  larger,
  smaller,
  read,
  take_away,
  specks, // arg: many, few, none
  unsay,  // what was said of the specks
};

constexpr PadList list_of(PhotosPad) { return PadList::photos; }

}
