// What is said of Slab and what opens in its middle.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class SlabSay {
  wiping_hold,
  pad_bottle,
  pad_undo,
  pad_gather,
  pad_gather_what,
  pad_back,
  pad_close,
  pad_close_what,
  pad_trouble,
  pad_leave,
  pad_enter,
  pad_erase,
  pad_lost_count,
  undo_nothing,
  undo_question,
  undo_unsaved,
  undo_gives_back,
  stage_wet_out,
  stage_with_knife,
  ratio_none,
  no_batch,
  to_plan,
  pour_into_pans,
  dried_off,
  dried_off_by_guess,
  pad_room,
  dust_mask,
  no_flame,
  left_out_why,
  last_left_out, // 0: how many, 1: why the last one is
  jar_and_glass,
  jar_holds,
  dropper_by_bottle,
  dropper_right,
  pad_keep_dropper,
  pad_keep_dropper_what,
  trail_gathered,
  trail_last_time,
  last_time,
  planned_in_all,
  add_first, // 0: what goes in before what is advised
  add_first_by_knife,
  right_to_come,
  by_recipe,
  in_portions,
  wet_out_all,         // 0: portions that follow
  add_to_all,          // 0: likewise
  add_to_all_in_short, // 0: likewise
  if_that_is_all,      // 0: the advice for what was weighed
  gather_not_right,
  gather_not_smooth,
  gather_gum_short,
  ask_amount,
  ask_bottle,
  ask_specks,
  ask_trouble,
  ask_grams_of,
  ask_grams_planned, // 0: material, 1: g
  ask_bottle_of,
  ask_celsius,
  ask_humidity,
  ask_pour_g,
  ask_pan_g,
  ask_left,
  ask_jar_price,
  ask_jar_g,
  another_clock_ahead,
  pad_more,
  pad_pigments,
  pad_which,
  ask_more,
  ask_pigment,
  ask_paint,
  ask_no_paint,
  ask_line,
  ask_no_lines,
  ask_how_wrong,
  ask_found_minutes,
  ask_found_hours,
  ask_found_days,
  found_wet,
  found_wet_what,
  found_dry,
  found_dry_what,
  pad_weigh_paint,
  pad_weigh_paint_what,
  pad_lines,
  pad_other_paint,
  pad_to_jar,
  pad_half_to_jar,
  pad_from_jar,
  pad_spilt,
  pad_earlier,
  pad_later,
  pad_all_lines,
  pad_other_material,
  pad_it_was,
  pad_materials,
  pad_choose_pads,
  ask_material,
  ask_material_was,
  ask_pads,
  lines_in_time,
  pad_other_amount,
  pad_five_earlier,
  pad_take_back,
  pad_it_is,     // 0: g
  pad_was_meant, // 0: g
  corrected,
  ask_weigh_paint,
  ask_spilt,
  ask_other_amount,
  ask_other_g,      // 0: what the line says
  ask_other_drops,  // likewise
  ask_other_spoons, // likewise
  ask_parts,
  ask_spoons,
  ask_grams,
  ask_wanted_pigment,
  ask_wanted_pans,
  ask_wanted_wet,
  ask_wanted_dried,
  remedy_common,
};

constexpr Table table_of(SlabSay) { return Table::slab; }

std::string_view english(SlabSay id);

}
