// What is said of the program itself.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class AppSay {
  display_may_sleep,
  display_kept_awake,
  option_bad_value, // 0: option, 1: what was given, 2: what it is
  option_pixels,
  option_mm,
  option_hand,
  option_fault,
  option_moment,
  wrong_tap, // 0: which of --taps, 1: why
  option_missing,
  window_not_opened,
  window_wrong_library, // GLFW's version follows
  left_photo,
  display_lost,
  display_lost_unsaved,
  left_unsaved,
  picture_size, // 0 and 1: mm, 2 and 3: least pixels, 4 and 5: most
  picture_not_drawn,
  // what stands in the browser's page before the program does, and after it
  page_description,
  page_getting_ready,
  page_needs_script,
  page_stopped,        // 0: why, a sentence
  page_no_webassembly, // 0 of page_stopped
  page_start_again,
  page_other_tab,
  page_go_on_here,
  page_goes_on_elsewhere,
  // on this tablet's screen in a browser, where what is kept is looked after
  page_keeping,
  page_keeping_new, // where a new version waits
  page_keeping_title,
  page_done,
  kept_promised,
  kept_not_promised,
  kept_not_answered,
  kept_private,
  kept_private_perhaps,
  kept_nothing,
  pack_hand_on,
  pack_handed_on, // 0: files, 1: name of the pack
  pack_empty,
  pack_too_long, // 0: files, 1: GiB at most
  pack_take_in,
  pack_taken_in,  // 0: files that are new, 1: that became longer, 2: that were here
  pack_stayed,    // 0: names of files
  pack_not_taken, // 0: name of the pack, 1: why
  pack_not_read,  // 0: the browser's own words
  pack_no_room,   // 0: name of the pack
  pack_wrong_sum,
  pack_ends_early,
  copy_choose,
  copy_make,        // 0: folder
  copy_made,        // 0: folder, 1: files
  copy_stayed,      // 0: names of files
  copy_not_made,    // 0: folder, 1: the browser's own words
  copy_not_allowed, // 0: folder
  store_emptied,
  store_put_back,     // 0: sessions, 1: files that are lost
  store_not_put_back, // 0: the browser's own words
  pack_lacks,         // 0: files
  version_waits,
  version_take,
  version_after_batch,
  // pads that bear a sign and no words, for who hears them
  pad_this_tablet,
  pad_sound_on,
  pad_sound_off,
  pad_by_night,
  pad_by_day,
  pad_page_back,
  pad_page_on,
  pad_clear,
  pad_dot_photo, // 0: which
  pad_erase,
  pad_pan, // 0: number
  pad_less,
  pad_more,
  pad_hue,   // 0: its place in the chart
  pad_shade, // 0: likewise
  // a file to be opened
  no_such_file,   // 0: what was given
  pack_or_studio, // 0: what was given
};

constexpr Table table_of(AppSay) { return Table::app; }

std::string_view english(AppSay id);

}
