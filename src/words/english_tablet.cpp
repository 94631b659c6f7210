#include "words/tablet_says.hpp"

namespace words {

std::string_view english(TabletSay id) {
  using Say = TabletSay;
  switch (id) {
  case Say::tablet_keys: return "Tap what a key or pedal should do, then press it";
  case Say::tablet_size: return "this display is taken for {0} × {1} mm";
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
  case Say::key_binder: return "binder";
  case Say::key_water: return "water";
  case Say::key_honey: return "honey";
  case Say::key_undo: return "undo";
  case Say::key_pass: return "pass, scrape";
  case Say::key_none: return "no key";
  case Say::key_press_now: return "press the key now";
  case Say::wipe_glass: return "wipe the glass";
  }
  return "";
}

}
