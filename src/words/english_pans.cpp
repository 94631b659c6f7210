#include "words/pans_says.hpp"

namespace words {

std::string_view english(PansSay id) {
  using Say = PansSay;
  switch (id) {
  case Say::pans_none:
    return "No paint lies in a jar or in pans yet. Gather it on the slab, then pour it here.";
  case Say::pans_new: return "new pan";
  case Say::pans_number: return "pan {0}";
  case Say::pans_fill_new: return "fill {0} pans";
  case Say::pans_fill_planned: return "fill the {0} pans";
  case Say::pans_planned: return "planned: {0} × {1}";
  case Say::pans_planned_pours: return "planned: {0} × {1}, in {2} pours";
  case Say::pans_fill_one: return "fill a pan";
  case Say::pans_pour_all: return "pour into all {0}";
  case Say::pans_pour_one: return "pour into the one with room";
  case Say::pans_pour_into: return "pour into pan {0}";
  case Say::pans_pour_none: return "all pans are full";
  case Say::pans_pour_wait: return "wait: still wet";
  case Say::pans_grams: return "in grams";
  case Say::pans_weigh: return "weigh";
  case Say::pans_size: return "{0} mL";
  case Say::pans_judge: return "judge";
  case Say::pans_judge_what: return "what became of it";
  case Say::pans_pour: return "pour";
  case Say::pans_pour_what: return "another layer";
  case Say::pans_all_meant: return "all pans";
  case Say::pans_more: return "more pans";
  case Say::pans_older: return "older batch";
  case Say::pans_newer: return "newer batch";
  case Say::pans_next: return "next layer";
  case Say::pans_in_hours: return "in {0} to {1} h";
  case Say::pans_in_days: return "in {0} to {1} days";
  case Say::pans_now: return "now";
  case Say::pans_if_firm: return "if it is firm to the touch";
  case Say::pans_full: return "full";
  case Say::pans_when_firm: return "when it is firm to the touch";
  case Say::pans_first: return "first layer";
  case Say::pans_tap_one: return "fill them, or a new one";
  case Say::pans_from_room: return "from the room: a weighed pan knows better";
  case Say::pans_from_guess: return "from a guessed room: read it, or weigh a pan";
  case Say::pans_from_scale: return "from what the scale said";
  case Say::pans_weigh_again: return "weighed once: weigh it again in some hours";
  case Say::pans_ask: return "what became of it?";
  case Say::pans_left: return "{0} mL to pour";
  case Say::pans_will_fill: return "{0} to {1} % full when dry";
  case Say::pans_weighings: return "weighed {0} times";
  case Say::pans_drying: return "drying";
  case Say::pans_still_drying: return "still drying";
  case Say::pans_early:
    return "Too early to tell: by the room this layer is not dry yet. “{0}” is kept.";
  case Say::remedy_good: return "Nothing to do: make it so again.";
  case Say::remedy_full: return "No more layers: let it dry through.";
  case Say::remedy_sunken: return "Pour one more layer when it is firm.";
  case Say::remedy_cracked:
    return "A drop of glycerin or honey more next time, and thinner layers.";
  case Say::remedy_sticky: return "Wait for drier air; less honey or glycerin next time.";
  case Say::remedy_rubs_off: return "Gum was short: more binder and less water next time.";
  case Say::remedy_wont_rewet:
    return "Leave a drop of water on it for a minute; a little honey next time.";
  case Say::remedy_mould: return "Throw it away, wash the pans, and look at the binder.";
  }
  return "";
}

}
