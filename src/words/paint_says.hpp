// What is said of paint: amounts, materials, air, the catalogue and what is learnt.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class PaintSay {
  // errors of amounts and rooms
  not_a_number,
  negative_amount,
  amount_too_large,
  humidity_out_of_range,
  temperature_out_of_range,
  unknown_name,
  empty_recipe,
  measure_not_positive,
  density_not_known,
  powder_not_weighed,
  // droppers, bottles and binders
  drop_out_of_range,
  nothing_counted,
  bottle_gained,
  weighing_contradicts,
  weighing_contradicts_both, // 0: g there, 1: with what stayed on the tools, 2: weighed
  bottle_contradicts,        // g: 0 by the count, 1 by its weight
  strength_out_of_reach,
  more_water_than_there_is, // g: 0 said to be gone, 1 there
  not_a_share,
  recipe_honey,
  recipe_glycerin,
  recipe_water,
  // air, drying and what a bench teaches
  humidity_above_held, // 0: %
  nothing_to_dry,
  volume_too_small, // 0: mL, 1: g of water
  time_below_zero,  // 0: s
  time_too_long,
  nothing_lost,
  nothing_there,
  not_only_water,
  uncertainty_not_positive,
  bench_rate_unusable,
  // the dry film, pans, mulling and digits
  oil_absorption_not_known,
  no_pigment_there,
  no_gum_there,
  tack_mark_unusable,
  tack_dries,
  tack_may_stay,
  tack_stays,
  wet_less_than_dry,   // 0: mL wet, 1: mL dry
  layers_out_of_range, // 0: layers
  fill_out_of_reach,   // 0: %
  weigh_ins_too_few,
  weigh_ins_out_of_order,
  weigh_ins_say_nothing,
  limits_out_of_order,
  rate_unusable,
  target_below_floor, // 0: target, 1: floor
  digits_out_of_range,
  uncertainty_too_small,
  step_too_small,
  // the pigment catalogue
  catalogue_not_json,
  catalogue_no_pigments,
  catalogue_field,
  catalogue_number,
  catalogue_unknown_word,
  catalogue_twice,
  // what is learnt from notes
  learn_out_of_range, // 0: where, 1: field, 2: least, 3: most
  learn_not_there,    // 0: where, 1: field
  learn_no_pigment,   // 0: where
  learn_not_json,
  learn_field,    // 0: field
  told_too_large, // 0: bytes
  told_not_json,
  told_format,
  told_version, // 0: which
  told_field,   // 0: field
  told_of_nothing,
  told_out_of_range,         // 0: field
  told_unknown_pigment,      // 0: name
  told_implausible,          // 0: name, 1 and 2: mL to 1 mL, told and usual
  told_implausible_offset,   // 0: how many times
  told_implausible_strength, // 0 and 1: how many times, told and usual
  told_certain_strength,
  told_no_hand,
  told_twice, // 0: name
  told_row,   // 0: which, 1: numbers that it has
  told_not_positive,
  learn_separated,
  learn_no_convergence,
  learn_no_peak,
  // what to be careful about with one pigment: at most 70 characters, read at arm's length
  caution_dust,
  caution_cobalt,
  caution_cadmium,
  caution_nickel,
  caution_chromium,
  caution_manganese,
  caution_no_drain,
  caution_silica,
  caution_fine_black,
  caution_nano,
  caution_combustible,
  caution_no_acid_sulfide,
  caution_no_acid_cyanide,
  caution_borate,
  caution_sensitiser,
  caution_no_heat,
  caution_titanium,
  caution_lead,
  caution_mercury,
  caution_arsenic,
  caution_copper,
  caution_cancer,
  caution_not_known,
  caution_flakes,
  // what holds for every batch, shown before one opens
  care_mask,
  care_no_food_tools,
  care_children,
  care_gloves,
  care_wipe_wet,
  care_sheet_first,
  care_no_draught,
  // amounts
  amount_grams,
  told_field_twice, // 0: field
};

constexpr Table table_of(PaintSay) { return Table::paint; }

std::string_view english(PaintSay id);

}
