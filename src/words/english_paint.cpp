#include "words/paint_says.hpp"

namespace words {

std::string_view english(PaintSay id) {
  using Say = PaintSay;
  switch (id) {
  case Say::not_a_number: return "“{0}” is not a number: type digits, with a point or a comma.";
  case Say::negative_amount: return "An amount cannot be below zero: {0}.";
  case Say::amount_too_large: return "{0} is too much for one amount: at most {1}.";
  case Say::humidity_out_of_range: return "Humidity lies between 0 and 100 %: {0} does not.";
  case Say::temperature_out_of_range: return "Between {1} and {2} °C, please: {0} is outside.";
  case Say::unknown_name: return "“{0}” is not a name this program knows.";
  case Say::empty_recipe: return "Nothing is in it yet: give at least one of its figures.";
  case Say::measure_not_positive: return "A measure must hold more than nothing: {0} does not.";
  case Say::density_not_known: return "Its density is not known: weigh it instead.";
  case Say::powder_not_weighed:
    return "Weigh one spoon of this powder first: powders pack differently.";
  case Say::drop_out_of_range: return "No dropper gives drops of such a size.";
  case Say::nothing_counted: return "Nothing was counted here that could weigh so much.";
  case Say::bottle_gained:
    return "The bottle weighs {0} g more than before: was it filled, or is it a slip?";
  case Say::weighing_contradicts:
    return "By what was recorded it should weigh {0} g, it weighs {1} g: is an entry missing?";
  case Say::weighing_contradicts_both:
    return "By what was recorded {0} g are there, {1} g with what is on the glass; it weighs {2} "
           "g: "
           "is an entry missing?";
  case Say::bottle_contradicts:
    return "By the count {0} g came out of the bottle, by this weight {1} g: is it a slip?";
  case Say::strength_out_of_reach: return "{0} % gum cannot be had that way.";
  case Say::more_water_than_there_is:
    return "{0} g of water cannot have left it: there were {1} g. Weigh again, and the empty "
           "bottle.";
  case Say::not_a_share: return "A share lies between 0 and 1: {0} does not.";
  case Say::recipe_honey:
    return "Honey {0} g to gum {1} g: at most {2} times the gum. Change one of the two.";
  case Say::recipe_glycerin:
    return "Glycerin {0} g to gum {1} g: at most {2} times the gum. Change one of the two.";
  case Say::recipe_water:
    return "Water {0} g to gum {1} g: at most {2} times the gum. Change one of the two.";
  case Say::humidity_above_held:
    return "What paint holds is known up to 98 % humidity: {0} % is more.";
  case Say::nothing_to_dry: return "Nothing is here that could dry.";
  case Say::volume_too_small: return "{0} mL cannot hold {1} g of water.";
  case Say::time_below_zero: return "A time cannot be below zero: {0} s.";
  case Say::time_too_long: return "That is more than 300 years: enter a shorter time.";
  case Say::nothing_lost: return "A weighing teaches only where water has left.";
  case Say::nothing_there: return "There is no paint there.";
  case Say::not_only_water: return "Paint is as it was only if nothing but water went in since.";
  case Say::uncertainty_not_positive: return "No weighing is exact: {0} cannot be its uncertainty.";
  case Say::bench_rate_unusable:
    return "That makes a bench twenty times as fast or slow as others: please weigh again.";
  case Say::oil_absorption_not_known: return "Its oil absorption is not known.";
  case Say::no_pigment_there: return "There is no pigment in it.";
  case Say::no_gum_there: return "There is no gum in it.";
  case Say::tack_mark_unusable: return "What was learnt about tacky paint makes no sense.";
  case Say::tack_dries:
    return "it should dry without staying tacky in this room, by our own estimate";
  case Say::tack_may_stay: return "it may stay tacky in this room, by our own estimate";
  case Say::tack_stays: return "it will likely stay tacky in this room, by our own estimate";
  case Say::wet_less_than_dry: return "{0} mL of wet paint cannot leave {1} mL of dry paint.";
  case Say::layers_out_of_range: return "A pan takes 0 to 100 layers: {0} is outside.";
  case Say::fill_out_of_reach: return "No number of layers fills a pan to {0} % with this paint.";
  case Say::weigh_ins_too_few: return "It takes the weight when poured and at least one later.";
  case Say::weigh_ins_out_of_order:
    return "Weighings start when the pan is poured, and go on in order of time.";
  case Say::weigh_ins_say_nothing: return "Too little water is gone to tell, or almost all of it.";
  case Say::limits_out_of_order: return "A reading lies between its limits, and they apart.";
  case Say::rate_unusable: return "What was learnt about mulling makes no sense.";
  case Say::target_below_floor: return "Mulling ends at {1}: {0} is out of its reach.";
  case Say::digits_out_of_range: return "An uncertainty is written with 1 or 2 digits, not {0}.";
  case Say::uncertainty_too_small: return "That uncertainty is too small to be written.";
  case Say::step_too_small: return "One drop does not move that number: too much pigment.";
  case Say::catalogue_not_json:
    return "The pigment catalogue is not readable: it is not valid JSON.";
  case Say::catalogue_no_pigments: return "The pigment catalogue holds no list named “pigments”.";
  case Say::catalogue_field:
    return "Pigment catalogue, {0}: “{1}” is missing, empty or of the wrong kind.";
  case Say::catalogue_number: return "Pigment catalogue, {0}: “{1}” must rise within {2} to {3}.";
  case Say::catalogue_unknown_word: return "Pigment catalogue, {0}: “{1}” does not know “{2}”.";
  case Say::catalogue_twice: return "Pigment catalogue, {0}: “{1}” was there before.";
  case Say::learn_out_of_range:
    return "The range cannot be learnt: {0}, “{1}” must lie within {2} to {3}.";
  case Say::learn_not_there:
    return "The range cannot be learnt: {0}, “{1}” points to something that is not in the list.";
  case Say::learn_no_pigment: return "The range cannot be learnt: {0} has no pigment in it.";
  case Say::learn_not_json:
    return "What the range is learnt from cannot be read: it was cut off or damaged.";
  case Say::learn_field:
    return "What the range is learnt from cannot be read: “{0}” is missing or of the wrong kind.";
  case Say::told_too_large: return "What another studio told has at most {0} bytes; this is more.";
  case Say::told_not_json:
    return "This is not what another studio tells: it cannot be read at all.";
  case Say::told_field_twice:
    return "What the other studio tells has “{0}” twice, and nobody can know which is meant.";
  case Say::told_format: return "This is a file, but not what another studio tells.";
  case Say::told_version:
    return "What the other studio tells is of version {0}: this program reads version 1.";
  case Say::told_field: return "What the other studio tells lacks “{0}”, or it is no such thing.";
  case Say::told_of_nothing: return "It rests on no batch: there is nothing to begin from.";
  case Say::told_out_of_range: return "What the other studio tells has “{0}” out of range.";
  case Say::told_unknown_pigment:
    return "The other studio tells of “{0}”, a pigment that this program does not know.";
  case Say::told_implausible:
    return "It says that {0} wants {1} mL of liquid to 1 mL of pigment, where about {2} mL are "
           "usual: something is wrong with it.";
  case Say::told_implausible_offset:
    return "It says that all pigments want {0} times the liquid that is usual: something is wrong "
           "with it.";
  case Say::told_implausible_strength:
    return "It says that paint in gum 1:1 wants {0} times the liquid that it wants in gum 1:2, "
           "where about {1} times are usual: something is wrong with it.";
  case Say::told_certain_strength:
    return "It says for certain how much more liquid stronger gum makes paint want, and nobody "
           "knows that so well: something is wrong with it.";
  case Say::told_no_hand:
    return "No hand tells paint apart as it says: something is wrong with it.";
  case Say::told_twice: return "The other studio tells of “{0}” twice.";
  case Say::told_row: return "Row {0} of “covariance” has to have {1} numbers.";
  case Say::told_not_positive:
    return "“covariance” is none: some of it would be known better than exactly.";
  case Say::learn_separated:
    return "These notes leave a limit of the range open: it rests on the first guess until more "
           "batches "
           "are felt.";
  case Say::learn_no_convergence:
    return "The range could not be learnt from these notes; the one before stays in use.";
  case Say::learn_no_peak:
    return "These notes contradict each other, so nothing was learnt from them; the range before "
           "stays "
           "in use.";
  case Say::caution_dust: return "Dry powder: dust mask on (FFP2, N95 or better) until it is wet.";
  case Say::caution_cobalt: return "Cobalt: gloves on, breathe no dust.";
  case Say::caution_cadmium: return "Cadmium: gloves, never sand it; cancer if breathed (IARC 1).";
  case Say::caution_nickel: return "Nickel: gloves on, keep it off the skin.";
  case Say::caution_chromium:
    return "Chromium: wear gloves; ask whether it is free of chromium(VI).";
  case Say::caution_manganese: return "Manganese: years of its dust do harm.";
  case Say::caution_no_drain: return "Keep its rinse water out of the drain.";
  case Say::caution_silica: return "May hold quartz: wipe up wet; cancer if breathed (IARC 1).";
  case Say::caution_fine_black: return "Very fine: breathed, it may cause cancer (IARC 2B).";
  case Say::caution_nano: return "Very fine, stays in the air: wet it slowly.";
  case Say::caution_combustible:
    return "A cloud of this powder can catch fire: no flame, no sparks.";
  case Say::caution_no_acid_sulfide:
    return "No vinegar or other acid: it gives off poisonous hydrogen sulfide.";
  case Say::caution_no_acid_cyanide:
    return "No acid, no strong heat: it can give off hydrogen cyanide.";
  case Say::caution_borate: return "May hold borate: look for it in the safety data sheet.";
  case Say::caution_sensitiser: return "Can set off an allergy: off the skin.";
  case Say::caution_no_heat: return "Do not heat it above 200 °C.";
  case Say::caution_titanium:
    return "Titanium dioxide: breathed, its dust may cause cancer (IARC 2B).";
  case Say::caution_lead:
    return "Lead: gloves, no dust, wash hands. It stays in the body (IARC 2A).";
  case Say::caution_mercury:
    return "Mercury: gloves, no dust, never heat it. It stays in the body.";
  case Say::caution_arsenic:
    return "Arsenic: gloves, no dust at all. Poison, and causes cancer (IARC 1).";
  case Say::caution_copper: return "Copper: gloves, no dust, none swallowed.";
  case Say::caution_cancer:
    return "Can cause cancer: gloves, no dust, its safety data sheet at hand.";
  case Say::caution_not_known: return "Not known: treat as toxic. Gloves on, breathe no dust.";
  case Say::caution_flakes: return "Stir it in: a muller breaks its flakes.";
  case Say::care_mask: return "While powder is dry: mask on (FFP2, N95 or better).";
  case Say::care_no_food_tools: return "No kitchen tools, no food at the bench, no licked brushes.";
  case Say::care_children: return "Keep powder, binder and paint out of reach of children.";
  case Say::care_gloves: return "Gloves for every metal, and for a pigment nobody knows.";
  case Say::care_wipe_wet: return "Wipe up wet. Never sweep or blow dry powder.";
  case Say::care_sheet_first: return "The supplier’s safety data sheet and local rules come first.";
  case Say::care_no_draught: return "No draught over powder: air the room before and after.";
  case Say::amount_grams: return "{0} g";
  }
  return "";
}

}
