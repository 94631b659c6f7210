// What is said of binder: how it is made, and how strong a jar of it is.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class MakingSay {
  step_gum,
  step_steep,
  step_strain,
  step_honey,
  step_glycerin,
  step_preserve,
  step_jar,
  gum_how,
  steep_how,
  steep_until, // 0: time
  strain_how,
  sweet_how,      // 0: g
  syrup_holds,    // 0: g of honey
  sweet_both_how, // g: 0 of honey, 1 of glycerin
  preserve_how,
  jar_how,
  takes_day,
  takes_min, // 0: minutes
  hours_to_go,
  minutes_to_go,
  time_is_up,
  smell_it,
  recipe_other,
  in_grams,
  in_spoons,
  in_drops,
  gum_dust,
  gum,
  powder_mask,
  gum_guess, // 0: g; 1: g by which it may be off
  gum_left,  // 0: g
  water,
  water_warm,
  honey,
  glycerin,
  to_gum, // 0: parts to 1 of gum
  preservative,
  preservative_how,
  none_yet,
  grams,         // 0: g
  makes,         // 0: g
  holds,         // 0: g
  batches,       // 0: batches
  costs,         // 0: price
  part_gum,      // 0: parts
  part_water,    // 0: parts
  part_honey,    // 0: parts
  part_glycerin, // 0: parts
  made_on,       // 0: date
  label_until,   // 0: date
  label_dose,    // 0: how much
  label_no_dose,
  throw_away,
  keeps_preserved,
  keeps_cold,
  keep_preserved,
  keep_cold,
  keep_preserved_what,
  keep_cold_what,
  dose_what,
  jar_weigh,
  take_back,
  give_up,
  other_making, // 0: how many
  onto_shelf,
  ask_gum,
  ask_gum_spoons, // 0: spoon
  ask_dose,
  ask_dose_g,
  ask_jar,
  ask_empty,
  ask_bottle,
  gone,
  ratio,    // 0: parts of water to 1 of gum
  strength, // 0: g of dry gum in 100 g
  counted,  // 0: g
  not_counted,
  weighed,      // 0: g
  weighed_less, // 0: g
  weighed_more, // 0: g
  weighed_alike,
  empty_what,
  bottle_weigh,
  bottle_what,
  dried,
  dried_now, // 0: g of dry gum in 100 g
  used,
  used_now, // 0: g
  percent,  // 0: g of dry gum in 100 g
  now_what,
  wanted_what,
  weaker,
  stronger,
  put_water, // 0: g
  put_gum,   // 0: g
  put_nothing,
  water_how,
  strong_gum_how,
  becomes, // 0: parts of water to 1 of gum; 1: g
  is_in,
};

constexpr Table table_of(MakingSay) { return Table::making; }

std::string_view english(MakingSay id);

}
