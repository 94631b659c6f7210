#include "words/app_says.hpp"

namespace words {

std::string_view english(AppSay id) {
  using Say = AppSay;
  switch (id) {
  case Say::display_may_sleep: return "The desktop would not keep the display awake: {0}";
  case Say::display_kept_awake: return "a batch lies on the slab";
  case Say::option_bad_value: return "{0} cannot be “{1}”. “slabside help” shows what it can be.";
  case Say::option_missing: return "{0} is missing. “slabside help” shows what goes behind it.";
  case Say::no_such_file:
    return "“{0}” is neither a command nor a file that is there. “slabside help” names the "
           "commands.";
  case Say::pack_or_studio:
    return "“{0}” is opened as a studio of its own: give either this file or --studio, not both.";
  case Say::window_not_opened: return "No window could be opened: {0}";
  case Say::display_lost: return "The display is gone; finishing what is being saved.";
  case Say::display_lost_unsaved: return "Entries that are not saved: {0}.{1}";
  case Say::left_unsaved: return "Entries that are not saved: {0}. They should lie in “{1}”.{2}";
  case Say::picture_no_pad: return "The pad “{0}” is not there at that moment.";
  case Say::picture_not_drawn: return "No picture could be drawn: {0}";
  case Say::picture_not_written: return "The picture could not be written: {0}";
  case Say::page_description:
    return "Counts drops beside a glass slab, and knows where the paint stands.";
  case Say::page_getting_ready: return "Slabside is getting ready …";
  case Say::page_needs_script:
    return "Slabside is a program, and needs JavaScript and WebAssembly to run.";
  case Say::page_stopped:
    return "Slabside has stopped: {0} What it had saved is safe. Load this page again to go on.";
  case Say::page_no_webassembly: return "this browser has no WebAssembly.";
  }
  return "";
}

}
