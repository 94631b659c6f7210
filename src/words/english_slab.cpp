#include "words/slab_says.hpp"

namespace words {

std::string_view english(SlabSay id) {
  using Say = SlabSay;
  switch (id) {
  case Say::wiping_hold: return "wiping: hold here to go on";
  case Say::pad_bottle: return "weigh a bottle";
  case Say::pad_undo: return "Undo";
  case Say::pad_gather: return "gather";
  case Say::pad_gather_what: return "into a jar or pans";
  case Say::pad_back: return "back on the slab";
  case Say::pad_close: return "close";
  case Say::pad_close_what: return "the batch is done";
  case Say::pad_trouble: return "trouble…";
  case Say::pad_leave: return "back to the trail";
  case Say::pad_enter: return "enter";
  case Say::pad_erase: return "erase";
  case Say::pad_lost_count: return "lost count";
  case Say::undo_question: return "only closes the question";
  case Say::undo_nothing: return "nothing to undo";
  case Say::undo_unsaved: return "{0} not saved yet";
  case Say::undo_gives_back: return "again: {0}";
  case Say::stage_wet_out: return "wet out";
  case Say::stage_with_knife: return "with the knife";
  case Say::ratio_none: return "no pigment yet, so no ratio";
  case Say::no_batch:
    return "No batch is open here. Choose a pigment and a binder, weigh the powder and tap begin: "
           "then each drop is one tap here.";
  case Say::to_plan: return "choose a pigment";
  case Say::pour_into_pans: return "pour into pans";
  case Say::dried_off: return "{0} mL has dried off";
  case Say::dried_off_by_guess: return "{0} mL has dried off, by a guessed room";
  case Say::pad_room: return "the room";
  case Say::no_flame: return "alcohol: no flame";
  case Say::dust_mask: return "dry powder: mask on";
  case Say::left_out_why: return "left out: {0}";
  case Say::last_left_out: return "{0}, the last: {1}";
  case Say::jar_and_glass: return "in the jar {0} g; about {1} % stays on the glass";
  case Say::jar_holds: return "in the jar {0} g";
  case Say::dropper_by_bottle:
    return "By its bottle, 20 drops of {0} weigh {1} g. The card of “{2}” says {3} g.";
  case Say::dropper_right:
    return "The {0} drops between the two weighings are counted by the bottle already.";
  case Say::pad_keep_dropper: return "put it on the dropper’s card";
  case Say::pad_keep_dropper_what: return "the next drops go by it";
  case Say::trail_gathered: return "gathered {0}";
  case Say::trail_last_time: return "last time";
  case Say::planned_in_all: return "planned {0} g binder in all";
  case Say::add_first: return "first add {0}, then mull";
  case Say::add_first_by_knife: return "first add {0}, work it in";
  case Say::right_to_come: return "right and smooth: add what is still to come, mull, judge";
  case Say::last_time: return "as last time, {0} g binder in all";
  case Say::by_recipe: return "by the recipe {0} g binder in all";
  case Say::in_portions: return "mull it in {0} portions";
  case Say::wet_out_all: return "wet out all of it, then mull it in {0} portions";
  case Say::add_to_all: return "add it to all of the paint, then mull it in {0} portions";
  case Say::add_to_all_in_short: return "for all {0} portions together";
  case Say::if_that_is_all: return "if there is no more of it: {0}";
  case Say::gather_not_right: return "not right yet";
  case Say::gather_not_smooth: return "not smooth yet";
  case Say::gather_gum_short: return "gum is short";
  case Say::ask_amount: return "how much, with the next tap?";
  case Say::ask_bottle: return "which bottle will you weigh?";
  case Say::ask_specks: return "what does the dot show?";
  case Say::ask_trouble: return "what is wrong?";
  case Say::ask_grams_of: return "{0}, in g";
  case Say::ask_grams_planned: return "{0}, in g; {1} planned";
  case Say::ask_bottle_of: return "bottle of {0}, all of it, in g";
  case Say::ask_celsius: return "room, in °C";
  case Say::ask_humidity: return "humidity, in %";
  case Say::ask_pour_g: return "what pan {0} took, in g";
  case Say::ask_pan_g: return "pan {0} with its paint, in g";
  case Say::ask_left: return "{0} that is left, without its jar, in g";
  case Say::ask_jar_price: return "price of the jar, in {0}; 0: a gift";
  case Say::ask_jar_g: return "what is in the jar, in g";
  case Say::another_clock_ahead: return "a clock is days off, here or on another device";
  case Say::pad_more: return "more…";
  case Say::pad_pigments: return "{0} pigments";
  case Say::pad_which: return "which?";
  case Say::ask_more: return "corrections, the jar, other paint";
  case Say::ask_pigment: return "which pigment?";
  case Say::ask_paint: return "paint of which batch?";
  case Say::ask_no_paint: return "No other batch has paint left.";
  case Say::ask_line: return "which entry is wrong?";
  case Say::ask_no_lines: return "Nothing has been done yet.";
  case Say::ask_how_wrong: return "what should it have been?";
  case Say::ask_found_minutes: return "You were away {0} min. Has it dried?";
  case Say::ask_found_hours: return "You were away {0} h. Has it dried?";
  case Say::ask_found_days: return "You were away {0} days. Has it dried?";
  case Say::found_wet: return "still wet";
  case Say::found_wet_what: return "covered, nothing lost";
  case Say::found_dry: return "dried out";
  case Say::found_dry_what: return "as dry as the room makes it";
  case Say::pad_weigh_paint: return "weigh the paint";
  case Say::pad_weigh_paint_what: return "without its jar";
  case Say::pad_lines: return "correct an entry";
  case Say::pad_other_paint: return "paint of another batch";
  case Say::pad_to_jar: return "all into the jar";
  case Say::pad_half_to_jar: return "half into the jar";
  case Say::pad_from_jar: return "jar onto the slab";
  case Say::pad_spilt: return "some was spilt";
  case Say::pad_earlier: return "earlier entries";
  case Say::pad_later: return "later entries";
  case Say::pad_all_lines: return "all entries";
  case Say::pad_other_material: return "another material";
  case Say::pad_it_was: return "this";
  case Say::pad_materials: return "another material";
  case Say::pad_choose_pads: return "choose the pads";
  case Say::ask_material: return "which goes in?";
  case Say::ask_material_was: return "what was it?";
  case Say::ask_pads: return "which six lie on the slab?";
  case Say::lines_in_time: return "in {0}, until {1}";
  case Say::pad_other_amount: return "another amount";
  case Say::pad_five_earlier: return "5 minutes earlier";
  case Say::pad_take_back: return "leave it out";
  case Say::pad_it_is: return "{0} g it is";
  case Say::pad_was_meant: return "{0} g was meant";
  case Say::corrected: return "corrected";
  case Say::ask_weigh_paint: return "the paint alone, in g";
  case Say::ask_spilt: return "how much was spilt, in g";
  case Say::ask_other_amount: return "it should have been";
  case Say::ask_other_g: return "{0}: how many g should it be?";
  case Say::ask_other_drops: return "{0}: how many drops should it be?";
  case Say::ask_other_spoons: return "{0}: how many level spoons should it be?";
  case Say::ask_parts: return "{0}: how many parts?";
  case Say::ask_spoons: return "{0}: how many level spoons? ¼ is 0.25";
  case Say::ask_grams: return "{0}: how many grams?";
  case Say::ask_wanted_pigment: return "pigment, in g";
  case Say::ask_wanted_pans: return "how many pans?";
  case Say::ask_wanted_wet: return "wet paint, in mL";
  case Say::ask_wanted_dried: return "dried paint, in g";
  case Say::remedy_common: return "Common practice; your supplier’s data sheet comes first.";
  }
  return "";
}

}
