// What is said of photos in the window.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class PhotosSay {
  title, // 0: batch
  to_batch,
  to_all,
  none,
  none_picks,
  hint,
  add,
  add_picks,
  folder, // a text field
  look,
  looking,
  folder_empty,      // 0: folder
  folder_none,       // 0: folder
  folder_unread,     // 0: folder, 1: the system's reason
  folder_count,      // 0: how many
  folder_count_most, // 0: listed, 1: there
  of_what,
  of_what_one_more,
  of_what_more, // 0: how many
  leave_out,
  of_swatch,
  of_dot,
  of_pan,
  of_slab,
  reading,
  not_kept,
  read,
  read_again,
  larger,
  smaller,
  move_paint,
  move_paper,
  take_away,
  unsay, // of specks
  paint,
  paper,
  paint_at_fault,
  paper_at_fault,
  see_through,
  how_to_read,
  no_swatch,
  two_swatches,
  colour, // 0: L*, 1: its doubt, and so on of a* and b*
  what_next,
  colour_means,
  untold, // 0: a sentence of words/colour_says.hpp
  of_none,
  no_batch,
  is_folder,  // 0: file
  of_picture, // 0: file, 1: a sentence
  pad,        // on the page of a batch
  pad_first,
  many,          // 0: how many
  specks_seen,   // 0: a word
  specks_judged, // likewise, of the hand
  specks_not_counted,
  specks_ask,
  specks_teach,
  cannot_keep,
  gone,    // 0: file, within the studio
  changed, // likewise
  gone_short,
  not_shown_short,
  browser_failed, // 0: the browser's own words
  browser_full,
};

constexpr Table table_of(PhotosSay) { return Table::photos; }

std::string_view english(PhotosSay id);

}
