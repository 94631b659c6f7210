// What is said of the program itself.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class AppSay {
  display_may_sleep,
  display_kept_awake,
  option_bad_value,
  option_missing,
  window_not_opened,
  display_lost,
  display_lost_unsaved,
  left_unsaved,
  picture_no_pad,
  picture_not_drawn,
  picture_not_written,
  // what stands in the browser's page before the program does, and after it
  page_description,
  page_getting_ready,
  page_needs_script,
  page_stopped,        // 0: why, a sentence
  page_no_webassembly, // 0 of page_stopped
  // a file to be opened
  no_such_file,   // 0: what was given
  pack_or_studio, // 0: what was given
};

constexpr Table table_of(AppSay) { return Table::app; }

std::string_view english(AppSay id);

}
