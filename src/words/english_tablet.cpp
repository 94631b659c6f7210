#include "words/tablet_says.hpp"

namespace words {

std::string_view english(TabletSay id) {
  using Say = TabletSay;
  switch (id) {
  case Say::tablet_keys: return "Tap what a key or pedal should do, then press it";
  case Say::tablet_size: return "this display is taken for {0} × {1} mm";
  case Say::tablet_small:
    return "this display is taken for {0} × {1} mm, too small: all is drawn at {2} % of its size";
  case Say::card_hold_upright: return "hold a bank card upright here";
  case Say::card_fit_across: return "until it covers this from left to right";
  case Say::card_hold: return "hold a bank card here";
  case Say::card_fit: return "until it covers this, no more and no less";
  case Say::card_smaller: return "smaller";
  case Say::card_larger: return "larger";
  case Say::card_much_smaller: return "much smaller";
  case Say::card_much_larger: return "much larger";
  case Say::hand_left: return "hand that taps: left";
  case Say::hand_right: return "hand that taps: right";
  case Say::motion_on: return "smooth motion: on";
  case Say::motion_off: return "smooth motion: off";
  case Say::full_screen_on: return "full screen: on";
  case Say::full_screen_off: return "full screen: off";
  case Say::language: return "language: {0}";
  case Say::key_binder: return "binder";
  case Say::key_water: return "water";
  case Say::key_honey: return "honey";
  case Say::key_undo: return "undo";
  case Say::key_pass: return "pass, scrape";
  case Say::key_none: return "no key";
  case Say::key_press_now: return "press the key now";
  case Say::wipe_glass: return "wipe the glass";
  case Say::others: return "other studios";
  case Say::others_back: return "keys and pedals";
  case Say::told_title: return "What studios tell each other";
  case Say::told_about:
    return "What your feel notes have taught, as one small file for another studio: no batches, no "
           "recipes, no names. Put a friend’s file into the same folder.";
  case Say::told_about_by_hand:
    return "What your feel notes have taught, as one small file for another studio: no batches, no "
           "recipes, no names. A friend’s file is picked from this tablet.";
  case Say::told_folder: return "Folder: {0}";
  case Say::told_by_hand: return "Files that are saved, handed on and picked";
  case Say::told_written: return "Written: {0}";
  case Say::told_saved: return "Saved as {0}, where the browser saves files";
  case Say::told_preparing: return "Putting together what your notes have taught …";
  case Say::told_none: return "No friend’s file lies in that folder.";
  case Say::told_found:
    return "“{0}” of {1}: {2}, from {3}. Begin from it? Your own notes outweigh it as they come.";
  case Say::told_counts: return "A friend’s file is used: {0}, from {1}.";
  case Say::told_is_kept: return "A friend’s file is kept: {0}, from {1}.";
  case Say::told_doubted:
    return "It counts for nothing as long as your own notes speak against it, as they do now.";
  case Say::told_pigment: return "1 pigment";
  case Say::told_pigments: return "{0} pigments";
  case Say::told_batch: return "1 batch";
  case Say::told_batches: return "{0} batches";
  case Say::pad_tell: return "write what this studio has learnt";
  case Say::pad_find_told: return "use a friend’s file";
  case Say::pad_take_told: return "yes, use it";
  case Say::pad_leave_told: return "no";
  case Say::pad_forget_told: return "put the friend’s file away";
  }
  return "";
}

}
