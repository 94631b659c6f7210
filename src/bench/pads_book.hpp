// The pads of the Book.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class BookPad {
  batch, // arg: batch id
  to_list,
  ranges,
  range_of, // arg: card
  note_before,
  note_after,
  set_aside, // and back
  take_up,
  make_again,
  compare,
  note,
  note_text, // a text field
  keep,      // the note, or the name
  rename,
  name_text, // a text field
  discard,
  have_back,
  discarded,  // lists what was
  by_colour,  // and by date again
  list_paper, // asks what of all that is listed
  mark,       // of that only some
  paint_list,
  swatch_card,
  keep_recipe,
  paper, // asks which of the next three
  sheet,
  labels,
  label_line, // a text field
  table,
  photos, // of the batch
  match,  // arg: the batch that its colour is held against
  trails, // of two batches, in place of their colours; and back
};

constexpr PadList list_of(BookPad) { return PadList::book; }

}
