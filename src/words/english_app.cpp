#include "words/app_says.hpp"

namespace words {

std::string_view english(AppSay id) {
  using Say = AppSay;
  switch (id) {
  case Say::display_may_sleep: return "The desktop would not keep the display awake: {0}";
  case Say::display_kept_awake: return "a batch lies on the slab";
  case Say::option_bad_value: return "{0} cannot be “{1}”. Possible: {2}.";
  case Say::option_pixels: return "width x height in pixels, each 1 to 16384, as 1280x800";
  case Say::option_mm: return "width x height in mm, each 20 to 5000, as 218x136";
  case Say::option_hand: return "left or right";
  case Say::option_fault: return "a fault of the disk, as fail-write:3:EIO";
  case Say::option_moment: return "a moment, as 2026-11-25T15:32:00+01:00";
  case Say::wrong_tap: return "--taps, pad {0}: {1}";
  case Say::option_missing: return "{0} is missing. “slabside help” shows what goes behind it.";
  case Say::no_such_file:
    return "“{0}” is neither a command nor a file that is there. “slabside help” names the "
           "commands.";
  case Say::pack_or_studio:
    return "“{0}” is opened as a studio of its own: give either this file or --studio, not both.";
  case Say::window_not_opened: return "No window could be opened: {0}";
  case Say::window_wrong_library:
    return "this GLFW is not for X11: install Debian's libglfw3, not libglfw3-wayland";
  case Say::left_photo:
    return "A photo or a page was not finished when the window closed: keep or write it again.";
  case Say::display_lost: return "The display is gone; finishing what is being saved.";
  case Say::display_lost_unsaved: return "Entries that are not saved: {0}.{1}";
  case Say::left_unsaved: return "Entries that are not saved: {0}. They should lie in “{1}”.{2}";
  case Say::picture_size:
    return "On a display of {0}x{1} mm a picture can be drawn from --size {2}x{3} to {4}x{5}. For "
           "another size say --mm too.";
  case Say::picture_not_drawn: return "No picture could be drawn: {0}";
  case Say::page_description:
    return "Counts drops beside a glass slab, and knows where the paint stands.";
  case Say::page_getting_ready: return "Slabside is getting ready …";
  case Say::page_needs_script:
    return "Slabside is a program, and needs JavaScript and WebAssembly to run.";
  case Say::page_stopped:
    return "Slabside has stopped: {0} What it had saved is safe. Load this page again to go on.";
  case Say::page_no_webassembly: return "this browser has no WebAssembly.";
  case Say::page_start_again: return "Start again from what is saved";
  case Say::page_other_tab:
    return "Slabside is open in another tab or window of this browser, and only one at a time "
           "counts. Go on there; when that one is closed, it goes on here.";
  case Say::page_go_on_here: return "Go on here";
  case Say::page_goes_on_elsewhere:
    return "Slabside goes on in another tab or window of this browser. What was saved here is "
           "there too.";
  case Say::page_keeping: return "batches in and out, and where they are kept";
  case Say::page_keeping_new:
    return "a new version waits: batches in and out, and where they are kept";
  case Say::page_keeping_title: return "What this tablet keeps";
  case Say::page_done: return "Done";
  case Say::kept_promised: return "This browser has promised to keep what is written here.";
  case Say::kept_not_promised:
    return "This browser has not promised to keep what is written here: it may clear it when space "
           "runs out, or after weeks without a visit. Put this page on the home screen, and hand "
           "on a pack now and then.";
  case Say::kept_not_answered:
    return "This browser was asked to keep what is written here, and has not answered yet. Until "
           "then, hand on a pack now and then.";
  case Say::kept_private:
    return "This is a private window: when it is closed, all that is written here is gone. Hand on "
           "a pack before, or open this page in a usual window.";
  case Say::kept_private_perhaps:
    return "If this is a private window, all of it is gone when the window is closed.";
  case Say::kept_nothing:
    return "This browser keeps nothing of this page. What is tapped counts until the page is "
           "closed, and is gone then. Open it in a usual window, or in another browser.";
  case Say::pack_hand_on: return "Hand on all batches as one pack";
  case Say::pack_handed_on:
    return "The pack “{1}” holds all that is saved here, files: {0}. “slabside unpack” makes a "
           "studio of it on a computer, and this page takes it in on another tablet.";
  case Say::pack_empty: return "There is nothing to hand on yet.";
  case Say::pack_too_long:
    return "There is more here than this page can put into one pack: at most {0} files and {1} "
           "GiB.";
  case Say::pack_take_in: return "Take in a pack";
  case Say::pack_taken_in:
    return "The pack is here. Files that are new: {0}, that became longer: {1}, that were here: "
           "{2}. Whatever is in both counts once.";
  case Say::pack_stayed:
    return "These tell something else in the pack than here, and stayed as they are here: {0}";
  case Say::pack_not_taken:
    return "“{0}” was not taken in, and nothing of it was kept: {1}. Fetch it once more, or ask "
           "whoever made it to pack the studio again.";
  case Say::pack_no_room:
    return "“{0}” was not taken in, as there is no room left for it here, and nothing of it was "
           "kept. Make some room on this tablet, and take it in once more.";
  case Say::pack_not_read: return "this browser could not do it: {0}";
  case Say::pack_wrong_sum: return "its bytes are not those that were packed";
  case Say::pack_ends_early: return "it ends too early";
  case Say::copy_choose: return "Keep a second copy in a folder";
  case Say::copy_make: return "Bring the copy in “{0}” up to date";
  case Say::copy_made:
    return "The copy in “{0}” holds all that is saved here, files: {1}. It is brought up to date "
           "after each batch; “slabside --studio” opens the folder on a computer.";
  case Say::copy_stayed:
    return "These tell something else in the folder than here, and stayed as they are there: {0}";
  case Say::copy_not_made:
    return "The copy in “{0}” is not up to date: {1}. Bring it up to date once more, or choose "
           "the folder again.";
  case Say::copy_not_allowed:
    return "The copy in “{0}” is not up to date: this browser writes there only when it was "
           "allowed to once more. Bring it up to date by the button.";
  case Say::store_emptied: return "this browser's store was emptied";
  case Say::store_put_back:
    return "This browser's store was emptied while this page was open. All sessions that this page "
           "had read are saved again: {0}. It does not hold photos; files that are lost: {1}. Hand "
           "on a pack now, and before anybody clears this browser's data again.";
  case Say::store_not_put_back:
    return "This browser's store was emptied while this page was open, and does not take back what "
           "it had: {0}. This page still holds all sessions that it has read: hand on a pack "
           "before it is closed.";
  case Say::pack_lacks:
    return "Files that were lost when this browser's store was emptied are not in it: {0}.";
  case Say::version_waits: return "A new version of this page is here.";
  case Say::version_take: return "Change to it now";
  case Say::version_after_batch:
    return "It can be had once no batch is open: nothing changes in the middle of one.";
  case Say::pad_this_tablet: return "this tablet";
  case Say::pad_sound_on: return "sound, on";
  case Say::pad_sound_off: return "sound, off";
  case Say::pad_by_night: return "darker, for the night";
  case Say::pad_by_day: return "lighter, for the day";
  case Say::pad_page_back: return "page back";
  case Say::pad_page_on: return "next page";
  case Say::pad_clear: return "empty this field";
  case Say::pad_dot_photo: return "photo of a dot, {0}";
  case Say::pad_erase: return "erase the last digit";
  case Say::pad_pan: return "pan {0}";
  case Say::pad_less: return "less";
  case Say::pad_more: return "more";
  case Say::pad_hue: return "hue {0}";
  case Say::pad_shade: return "shade {0}";
  }
  return "";
}

}
