#include "words/today_says.hpp"

namespace words {

std::string_view english(TodaySay id) {
  using Say = TodaySay;
  switch (id) {
  case Say::on_slab: return "on the slab since {0}";
  case Say::in_jar: return "in the jar since {0}: pour it";
  case Say::layer: return "the next layer can go on, if firm";
  case Say::layer_late: return "open for {0} days: look at the pans first";
  case Say::left_over: return "{0} mL left in the jar: pour it";
  case Say::left_over_later: return "{0} mL left: pour it {1}";
  case Say::weigh_pan: return "weigh pan {0} again, since {1}";
  case Say::verdict: return "day {0}: how are the pans?";
  case Say::verdict_one: return "day 1: how are the pans?";
  case Say::verdict_late: return "due {0} days ago: how are they?";
  case Say::use_within: return "use within {0} days";
  case Say::use_within_one: return "use within 1 day";
  case Say::use_today: return "use today: its last day";
  case Say::use_past: return "past its day: smell it";
  case Say::low_one_more: return "enough for one more batch";
  case Say::low_short: return "too little for a batch like the last";
  case Say::low_none: return "used up, as weighed";
  case Say::left: return "{0} left";
  case Say::of_jar: return "of {0}";
  case Say::again: return "make again";
  case Say::again_which: return "last good ones";
  case Say::again_none: return "Paints that you judge good will lie here, ready to be made again.";
  case Say::again_made: return "{0}";
  case Say::new_paint: return "new paint";
  case Say::new_paint_what: return "any pigment, any binder";
  case Say::reading: return "The studio is being read.";
  case Say::nothing_waits: return "Nothing waits.";
  case Say::nothing_waits_what:
    return "Here comes what lies on the slab or in a jar, pans to pour on or to look at, and what "
           "runs low.";
  case Say::first_paint: return "make the first paint";
  case Say::first_paint_what: return "choose a pigment, weigh it, begin";
  case Say::i_have: return "what I have";
  case Say::i_have_what: return "tick your pigments off a list";
  case Say::binder: return "make binder";
  case Say::binder_what: return "gum, water, honey, step by step";
  case Say::bank_card: return "a bank card on the glass";
  case Say::bank_card_what: return "so that every pad has its true size";
  case Say::bank_card_takes: return "1 minute";
  case Say::any_time: return "any time";
  case Say::a_day: return "1 day";
  case Say::making_runs: return "{0}, until {1}";
  case Say::making_next: return "next: {0}";
  case Say::making_late: return "smell it, then: {0}";
  case Say::making_done: return "done: onto the shelf with it";
  case Say::here_alone: return "on this tablet alone";
  case Say::here_alone_days: return "for {0} days: hand on a pack";
  case Say::hand_left: return "drops left";
  case Say::hand_left_what: return "left hand taps";
  case Say::hand_right: return "drops right";
  case Say::hand_right_what: return "right hand taps";
  }
  return "";
}

}
