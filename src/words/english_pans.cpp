#include "words/pans_says.hpp"

namespace words {

std::string_view english(PansSay id) {
  using Say = PansSay;
  switch (id) {
  case Say::pans_none:
    return "No paint lies in a jar or in pans yet. Begin one under Plan, gather it on the slab, "
           "then "
           "pour it here.";
  case Say::pans_number: return "pan {0}";
  case Say::pans_planned: return "planned: {0} × {1}";
  case Say::pans_planned_pours: return "planned: {0} × {1}, in {2} pours";
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
  case Say::pans_next: return "next layer";
  case Say::pans_in_hours: return "in {0} to {1} h";
  case Say::pans_in_days: return "in {0} to {1} days";
  case Say::pans_in_hours_to_days: return "in {0} h to {1} days";
  case Say::pans_now: return "now";
  case Say::pans_if_firm: return "if it is firm to the touch";
  case Say::pans_full: return "no room";
  case Say::pans_no_layer: return "no layer";
  case Say::pans_while_tacky: return "while it is tacky";
  case Say::pans_while_rubs: return "it needs more binder";
  case Say::pans_while_hard: return "it needs honey or glycerin";
  case Say::pans_when_firm: return "when it is firm to the touch";
  case Say::pans_first: return "first layer";
  case Say::pans_from_room: return "from the room: a weighed pan knows better";
  case Say::pans_from_guess: return "from a guessed room: read it, or weigh a pan";
  case Say::pans_from_scale: return "from what the scale said";
  case Say::pans_weigh_again: return "weighed once: weigh pan {0} again from about {1}";
  case Say::pans_weigh_now: return "weighed once: weigh pan {0} again now";
  case Say::pans_ask: return "what became of it?";
  case Say::pans_fill_quarter: return "about a quarter full when dry";
  case Say::pans_fill_third: return "about a third full when dry";
  case Say::pans_fill_half: return "about half full when dry";
  case Say::pans_fill_two_thirds: return "about two thirds full when dry";
  case Say::pans_fill_three_quarters: return "about three quarters full when dry";
  case Say::pans_fill_full: return "about full when dry";
  case Say::pans_weighings: return "weighed {0} times";
  case Say::pans_drying: return "drying";
  case Say::pans_still_drying: return "still drying";
  case Say::pans_early:
    return "Too early to tell: by the room this layer is not dry yet. “{0}” is kept.";
  case Say::pans_layer_of: return "layer {0} of about {1}";
  case Say::pans_layer: return "layer {0}";
  case Say::pans_old_hours: return "{0} h old";
  case Say::pans_old_days: return "{0} days old";
  case Say::pans_old_day: return "1 day old";
  case Say::pans_in_jar: return "{0} mL left to pour";
  case Say::pans_left_little: return "too little left for a layer";
  case Say::pans_share_full: return "{0} % full when dry";
  case Say::pans_share_dry: return "fills {0} %";
  case Say::pans_share: return "{0} %";
  case Say::pans_pour_layer: return "pour layer {0}";
  case Say::pans_into_one: return "into 1 pan";
  case Say::pans_into: return "into {0} pans";
  case Say::pans_only: return "only pan {0}";
  case Say::pans_add: return "pour one more";
  case Say::pans_add_first: return "pour one";
  case Say::pans_no_pan_card: return "no pan on the shelf";
  case Say::pans_more_batches: return "{0} more batches";
  case Say::pans_one_more_batch: return "1 more batch";
  case Say::pans_can_go_on: return "layer {0} can go on";
  case Say::pans_later: return "layer {0} {1}";
  case Say::pans_look: return "look: {0} days dry";
  case Say::pans_look_soon: return "look: 1 day dry";
  case Say::pans_waits_on_slab: return "{0} mL on the slab";
  case Say::pans_waits_in_jar: return "{0} mL in the jar";
  case Say::pans_beside: return "+{0}";
  case Say::pans_beside_heard: return "and {0} more";
  case Say::pans_dotted: return "Dotted: as poured, and when dry.";
  case Say::pan_dries: return "pan {0} dries";
  case Say::pan_is_full: return "pan {0}: no further layer";
  case Say::pan_water: return "water left in pan {0}";
  case Say::pans_firm_since: return "likely firm since {0}";
  case Say::pans_maybe_firm: return "firm? touch it";
  case Say::pans_curve_now: return "now";
  case Say::pans_deep: return "Poured {0} mm deep at most.";
  case Say::pans_monday: return "Mon";
  case Say::pans_tuesday: return "Tue";
  case Say::pans_wednesday: return "Wed";
  case Say::pans_thursday: return "Thu";
  case Say::pans_friday: return "Fri";
  case Say::pans_saturday: return "Sat";
  case Say::pans_sunday: return "Sun";
  case Say::pans_day: return "day {0}";
  case Say::crack_causes: return "Most likely first (common practice):";
  case Say::crack_deep: return "A deep layer: pour it thinner.";
  case Say::crack_deep_mm: return "A layer {0} mm deep: pour it thinner.";
  case Say::crack_little_gum: return "Too little gum: more binder.";
  case Say::crack_much_gum: return "Much gum: less binder.";
  case Say::crack_hard: return "Too little honey or glycerin.";
  case Say::crack_fast: return "Dried too fast: cover it loosely.";
  case Say::crack_seen: return "{0} (so here)";
  case Say::remedy_good: return "Nothing to do: make it so again.";
  case Say::remedy_full: return "No more layers: let it dry through.";
  case Say::remedy_sunken: return "Pour one more layer when it is firm.";
  case Say::remedy_sunken_no_paint:
    return "There is not enough paint for another layer: make more of it, or leave it as it is.";
  case Say::remedy_sticky: return "Wait for drier air; less honey or glycerin next time.";
  case Say::remedy_rubs_off: return "Gum was short: more binder and less water next time.";
  case Say::remedy_wont_rewet:
    return "Leave a drop of water on it for a minute; a little honey next time.";
  case Say::remedy_mould: return "Throw it away, wash the pans, and look at the binder.";
  }
  return "";
}

}
