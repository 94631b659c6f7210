#include "words/plan_says.hpp"

namespace words {

std::string_view english(PlanSay id) {
  using Say = PlanSay;
  switch (id) {
  case Say::plan_how_many: return "how many?";
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
  case Say::want_pigment: return "in g of pigment";
  case Say::want_pans: return "in pans";
  case Say::want_wet: return "in mL of wet paint";
  case Say::want_dried: return "in g of dried paint";
  case Say::plan_by_weight: return "by weight";
  case Say::plan_by_volume: return "by volume";
  case Say::plan_parts: return "{0} parts";
  case Say::plan_part: return "1 part";
  case Say::plan_binder: return "Binder about {0} g in all: {1}.";
  case Say::plan_first: return "{0} g first";
  case Say::plan_first_spoons: return "{0} ({1} g) first";
  case Say::plan_rest_drops: return "{0}, then some {1}";
  case Say::plan_rest: return "{0}, then {1}, the last of it by the drop";
  case Say::plan_mull_one: return "Mull about {0} min ({1} to {2}), one pass, to no specks.";
  case Say::plan_mull: return "Mull about {0} min ({1} to {2}), some {3} passes, to no specks.";
  case Say::plan_mull_each_one:
    return "Mull each portion about {0} min ({1} to {2}), one pass, to no specks.";
  case Say::plan_mull_each:
    return "Mull each portion about {0} min ({1} to {2}), some {3} passes, to no specks.";
  case Say::plan_gum_short:
    return "So much of this binder brings too little gum: take a stronger one, or put in more and "
           "mull it wide.";
  case Say::plan_short: return "Not enough {0}: {1} g left, {2} g wanted.";
  case Say::plan_past_day: return "{0} is past its day: smell it first.";
  case Say::plan_again_of: return "Again: {0}.";
  case Say::plan_go_on: return "go on with {0}";
  case Say::plan_go_on_what: return "it lies on the slab";
  case Say::plan_cautions_read: return "cautions read";
  case Say::plan_cautions_to_read: return "read the cautions";
  case Say::plan_how_much: return "Tap “{0}”, or begin and weigh it at the slab.";
  case Say::plan_costs_pans: return "{0}, {1} a pan";
  case Say::plan_costs: return "It costs {0}.";
  case Say::plan_costs_part: return "It costs {0}; without {1}, whose price is not known.";
  case Say::plan_last_cracked: return "Last time it cracked";
  case Say::plan_last_sticky: return "Last time it stayed tacky";
  case Say::plan_last_rubs_off: return "Last time it rubbed off";
  case Say::plan_last_wont_rewet: return "Last time it would not re-wet";
  case Say::plan_once_cracked: return "An earlier one cracked";
  case Say::plan_once_sticky: return "An earlier one stayed tacky";
  case Say::plan_once_rubs_off: return "An earlier one rubbed off";
  case Say::plan_once_wont_rewet: return "An earlier one would not re-wet";
  case Say::plan_last_grains:
    return "Last time grains stayed: grind the powder dry first, mask on.";
  case Say::plan_last_specks: return "Last time specks stayed: mull less of it at once.";
  case Say::plan_last_more_drops: return "{0}: about {1} drops of {2} more (own guess).";
  case Say::plan_last_more: return "{0}: about {1} g of {2} more (own guess).";
  case Say::plan_last_in_plan_drops:
    return "{0}: about {1} drops of {2} more are in this plan (own guess).";
  case Say::plan_last_in_plan: return "{0}: about {1} g of {2} more is in this plan (own guess).";
  case Say::plan_last_less_in_plan:
    return "{0}: this plan has less honey or glycerin than then (own guess).";
  case Say::plan_last_enough: return "{0}; this plan differs by enough.";
  case Say::plan_last_less: return "{0}: less honey or glycerin.";
  case Say::plan_last_sweeter: return "{0}: more honey or glycerin.";
  case Say::plan_last_less_to:
    return "{0}: no more than {1} g of honey to 10 g of gum (own guess).";
  case Say::plan_tablespoons: return "{0} tbsp";
  case Say::plan_named_spoons: return "{0} {1}";
  case Say::plan_and_drops: return "{0}, then drops";
  case Say::plan_by_the_drop: return "drop by drop";
  case Say::plan_bit_by_bit: return "a little at a time";
  case Say::plan_grams_guess: return "a guess: {0} ± {1}";
  case Say::plan_grams_about: return "{0} ± {1}";
  case Say::plan_weigh_out: return "weigh out";
  case Say::plan_spoon_out: return "spoon out";
  case Say::plan_first_helping: return "first helping";
  case Say::plan_then: return "then";
  case Say::plan_by_recipe: return "by the recipe";
  case Say::plan_as_last: return "as last time";
  case Say::plan_more_this_time: return "this time";
  case Say::plan_by_feel: return "by feel";
  case Say::plan_minutes: return "{0} min";
  case Say::plan_from_to: return "{0} to {1}";
  case Say::plan_in_portions: return "each of {0} portions";
  case Say::plan_of_mulling: return "of mulling";
  case Say::plan_layers: return "{0} layers";
  case Say::plan_one_layer: return "1 layer";
  case Say::plan_pans_of: return "{0} × {1}";
  case Say::plan_ratio: return "{0} g";
  case Say::plan_ratio_what: return "binder to 10 g";
  case Say::plan_ratio_last: return "binder to 10 g, as last time";
  case Say::plan_mL: return "{0} mL";
  case Say::plan_wet_paint: return "of wet paint";
  case Say::plan_recipe: return "By the recipe {0}.";
  case Say::want_as_it_stands: return "as it stands";
  case Say::want_all_left: return "all that is left";
  case Say::plan_left: return "{0} g left";
  case Say::plan_name_and_left: return "{0}, {1}";
  case Say::plan_leave: return "done";
  case Say::plan_pigments: return "pigments";
  case Say::plan_another_pigment: return "another pigment";
  case Say::plan_recipes: return "recipes";
  case Say::plan_own_alone: return "mine alone";
  case Say::plan_all_others: return "all the others";
  case Say::plan_other_binders: return "other binders";
  case Say::plan_binder_own: return "your own";
  case Say::plan_binder_ships: return "catalogue";
  case Say::plan_keep_recipe: return "keep as recipe";
  case Say::plan_recipe_kept: return "a recipe";
  case Say::plan_in_spoons: return "spoons";
  case Say::plan_in_grams: return "grams";
  case Say::plan_in_parts: return "parts";
  case Say::plan_what: return "what";
  case Say::plan_which_binder: return "binder";
  case Say::plan_how_much_title: return "how much";
  case Say::plan_no_recipe:
    return "No recipe of that name. A plan or a batch is kept as one by “keep as recipe”.";
  }
  return "";
}

}
