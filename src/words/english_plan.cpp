#include "words/plan_says.hpp"

namespace words {

std::string_view english(PlanSay id) {
  using Say = PlanSay;
  switch (id) {
  case Say::plan_weigh: return "or begin, and weigh it there";
  case Say::plan_how_many: return "how many?";
  case Say::plan_binder_short: return "Binder {0} g, {1} first.";
  case Say::plan_as_last_time: return "As last time: {0} g binder to 10 g.";
  case Say::plan_not_weighed: return "how much pigment?";
  case Say::plan_begin: return "begin";
  case Say::plan_room_hours: return "{0} h ago";
  case Say::plan_room_days: return "{0} days ago";
  case Say::plan_celsius: return "{0} °C";
  case Say::plan_humidity: return "{0} %";
  case Say::plan_care_in_short:
    return "Always: wipe wet, no food tools, away from children; the supplier’s data sheet comes "
           "first.";
  case Say::plan_nothing_found: return "No pigment of that name. Under Shelf a new card makes one.";
  case Say::want_pigment: return "g of pigment";
  case Say::want_pans: return "pans";
  case Say::want_wet: return "mL wet paint";
  case Say::want_dried: return "g dried paint";
  case Say::plan_by_weight: return "by weight";
  case Say::plan_by_volume: return "by volume";
  case Say::plan_parts: return "{0} parts";
  case Say::plan_part: return "1 part";
  case Say::plan_weigh_grams: return "weigh out {0} g";
  case Say::plan_binder: return "Binder about {0} g in all: {1}.";
  case Say::plan_first: return "{0} g first";
  case Say::plan_first_spoons: return "{0} ({1} g) first";
  case Say::plan_rest_drops: return "{0}, then some {1}";
  case Say::plan_rest: return "{0}, then {1}, the last of it by the drop";
  case Say::plan_wet: return "{0} mL of wet paint: {1} × {2}, {3} pours.";
  case Say::plan_wet_no_pans: return "{0} mL of wet paint.";
  case Say::plan_extras: return "With it, as last time: {0}.";
  case Say::plan_mull: return "Mull about {0} min ({1} to {2}), some {3} passes, to no specks.";
  case Say::plan_mull_guess: return "Paint of its kind mostly wants {1} to {2} min of mulling.";
  case Say::plan_portions: return "Over the slab in {0} portions.";
  case Say::plan_short: return "Not enough {0}: {1} g left, {2} g wanted.";
  case Say::plan_again_of: return "Again: {0}.";
  case Say::plan_go_on: return "go on with {0}";
  case Say::plan_go_on_what: return "it lies on the slab";
  case Say::plan_cautions_read: return "cautions read";
  case Say::plan_cautions_to_read: return "read the cautions";
  case Say::plan_how_much: return "Tap “{0}”, or begin and weigh it at the slab.";
  case Say::plan_last_cracked: return "Last time it cracked";
  case Say::plan_last_sticky: return "Last time it stayed tacky";
  case Say::plan_last_rubs_off: return "Last time it rubbed off";
  case Say::plan_last_wont_rewet: return "Last time it would not re-wet";
  case Say::plan_last_more_drops: return "{0}: about {1} drops of {2} more (own guess).";
  case Say::plan_last_more: return "{0}: about {1} g of {2} more (own guess).";
  case Say::plan_last_enough: return "{0}; this plan differs by enough.";
  case Say::plan_last_less: return "{0}: less honey or glycerin.";
  case Say::plan_last_sweeter: return "{0}: more honey or glycerin.";
  case Say::plan_last_less_to:
    return "{0}: no more than {1} g of honey to 10 g of gum (own guess).";
  }
  return "";
}

}
