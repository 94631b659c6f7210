#include "words/bench_says.hpp"

namespace words {

std::string_view english(BenchSay id) {
  using Say = BenchSay;
  switch (id) {
  case Say::plan_still_reading: return "Reading the studio …";
  case Say::plan_choose_pigment: return "Choose a pigment to begin.";
  case Say::plan_choose_binder: return "The binder chosen was put away: choose one to begin.";
  case Say::plan_needs_name: return "Give the batch a name to begin.";
  case Say::text_shortened: return "Only the first {0} characters were kept.";
  case Say::tablet_unreadable:
    return "What was kept of this tablet cannot be read: it starts afresh.";
  case Say::saved_lines_gone: return "What was saved here is gone: this session is written again.";
  case Say::display_small:
    return "This display is small: its pads are smaller than they should be.";
  case Say::stage_wetting_out: return "wetting out";
  case Say::stage_mulling: return "mulling {0}";
  case Say::nothing_to_feel:
    return "There is no liquid in it yet: add binder, then say how it feels.";
  case Say::pan_depth_unlikely:
    return "{0} mm deep, a pan of {1} mL would be {2} cm² wide. Measure it again, or weigh its "
           "water "
           "first.";
  case Say::pan_too_heavy:
    return "A pan of {0} mL with its paint weighs no {1} g: weigh one pan alone.";
  case Say::pan_holds_less:
    return "A pan of {0} mL holds no {1} g of paint: enter what went into one pan.";
  case Say::pans_still_wet: return "Pan {0} is still wet: chosen, nothing poured.";
  case Say::card_stays_own:
    return "{0} stays ticked: batches, jars, recipes or figures of your own belong to it. To be "
           "rid of it, put its card away.";
  case Say::pans_no_more: return "no more layers";
  case Say::pans_left_none: return "nothing left to pour";
  case Say::powder_is_weighed: return "{0} is not counted in drops: undo, and weigh it";
  case Say::bottle_of_liquid: return "{0} comes in no bottle: tap a liquid";
  case Say::told_nothing:
    return "No pigment of the catalogue was felt here yet: there is nothing to write.";
  case Say::told_reading:
    return "The studio is still being read, so not all that it taught is known yet: once more in a "
           "moment.";
  case Say::told_counts_already:
    return "“{0}” counts already, and there is no newer one that can be used.";
  case Say::added_elsewhere: return "This batch was added to elsewhere.";
  case Say::discarded_elsewhere:
    return "This batch was discarded elsewhere. Book has it back, under “discarded”.";
  case Say::amount_cannot_be: return "It cannot be so much: is a point missing? Type it again.";
  case Say::nothing_wanted: return "Nothing is wanted: enter more than 0.";
  case Say::pans_too_many: return "{0} pans are too many for one batch: at most {1}.";
  case Say::pans_not_whole: return "Pans are whole: {0} or {1}, not {2}.";
  case Say::drops_doubted:
    return "Its card says {0} g. If 20 drops weigh {1} g, enter it once more.";
  case Say::more_than_left:
    return "By count {0} g of it are left. If {1} g went in, enter it once more.";
  case Say::far_too_much:
    return "{0} g to {1} g of pigment makes it far too loose. If so much went in, enter it once "
           "more.";
  case Say::pan_heavier:
    return "It weighed {0} g before, and drying paint gets lighter. If it weighs {1} g, enter it "
           "once more.";
  case Say::past_the_plan:
    return "{0} g were planned, with this it is {1} g. If so, enter it once more.";
  case Say::past_what_counts:
    return "{0} g are counted already, with this it is {1} g. If so, enter it once more.";
  case Say::so_many_portions:
    return "So much is about {0} portions on the slab. If so, enter it once more.";
  case Say::pigment_left_out: return "Tap once more to leave out what was planned: {0}.";
  case Say::jar_holds_more: return "{0} g went in. If it holds {1} g, enter it again.";
  case Say::dose_doubted: return "{0} g to {1} g of binder? If so, enter it again.";
  case Say::pan_lighter:
    return "Its powder alone weighs some {0} g. If it is {1} g, enter it once more.";
  case Say::spilt_more: return "Only {0} g are there now, so no {1} g were spilt.";
  case Say::spilt_more_than_all: return "Only {0} g went in altogether, so no {1} g were spilt.";
  case Say::question_closed: return "The question is closed. Nothing was taken back.";
  case Say::line_taken_back: return "That line was left out meanwhile.";
  case Say::nothing_typed: return "0 is no amount: type how much it was, or cancel.";
  case Say::none_went_in: return "If none of it was so, cancel and leave that line out.";
  case Say::weighs_nothing: return "Nothing weighs 0 g: weigh it with what is in it.";
  case Say::paint_weighs_nothing: return "If no paint is left there, say how much was spilt.";
  case Say::left_doubted: return "By count {0} g are left. If {1} g are left, enter it once more.";
  case Say::grams_tiny: return "{0} g is next to nothing. If it is so, enter it once more.";
  case Say::parts_out_of_range: return "Spoons, grams or parts of a pigment: above 0, to 1000.";
  case Say::not_on_shelf:
    return "Left out: {0}. What is not on the shelf can be brought back there; a blend has at most "
           "{1} pigments.";
  case Say::paint_not_planned:
    return "{0} was in it too. Paint of another batch is not planned: it goes in on the slab.";
  case Say::recipe_empty: return "No pigment is in this batch yet: it makes no recipe.";
  case Say::recipe_there: return "It is kept already, as {0}.";
  case Say::spoon_gone:
    return "{0}: the spoon it is said in is not on the shelf. Choose another spoon, or grams.";
  case Say::nothing_left:
    return "No pigment of this recipe says how much is left: type it on its card.";
  case Say::blend_full: return "A blend has at most {0} pigments: take one out first.";
  case Say::fact_out_of_range: return "That can be {0} to {1}.";
  case Say::card_needs_name: return "The card has no name yet.";
  case Say::not_a_date: return "{0} is no date: write it like {1}.";
  case Say::made_in_future: return "{0} lies ahead: nothing was made then.";
  case Say::kept_before_made: return "Keep until {0}: that is before it was made, {1}.";
  case Say::bought_in_future: return "{0} lies ahead: nothing was bought then.";
  case Say::jar_needs_g: return "How many grams are in the jar? Without them it cannot be counted.";
  case Say::usual_currency: return "€";
  case Say::jar_needs_currency: return "In which currency is the price? Any word will do.";
  case Say::making_no_recipe:
    return "There is no binder on the shelf to go by: write its card first.";
  case Say::making_nameless: return "Binder";
  case Say::making_jar: return "jar {0}";
  case Say::making_no_spoon: return "There is no spoon on the shelf: weigh the gum.";
  case Say::making_gum_first: return "First the gum goes into the water.";
  case Say::making_step_twice: return "That step has begun already. A slip is taken back below.";
  case Say::making_not_in_jar: return "It is not in its jar yet.";
  case Say::strength_weigh_first: return "Weigh it first: nobody knows how much there is.";
  case Say::strength_as_it_is: return "It is as strong as that already.";
  case Say::bottle_below_empty:
    return "With binder in it, it weighs more than empty: {0} g. Is it a slip?";
  case Say::ships_gum_12: return "Gum 1:2";
  case Say::ships_gum_12_honey: return "Gum and honey";
  case Say::ships_gum_12_glycerin: return "Gum and glycerin";
  case Say::ships_gum_13: return "Gum 1:3";
  case Say::ships_water: return "Water";
  case Say::ships_honey_11: return "Honey 1:1";
  case Say::ships_glycerin: return "Glycerin";
  case Say::ships_ox_gall: return "Ox gall";
  case Say::ships_alcohol_70: return "Alcohol 70 %";
  case Say::ships_gum_arabic: return "Gum arabic, dry";
  case Say::ships_dropper: return "any dropper";
  case Say::ships_teaspoon: return "teaspoon";
  case Say::ships_half_pan: return "half pan";
  case Say::ships_full_pan: return "full pan";
  case Say::tab_today: return "Today";
  case Say::tab_shelf: return "Shelf";
  case Say::tab_plan: return "Plan";
  case Say::tab_slab: return "Slab";
  case Say::tab_pans: return "Pans";
  case Say::tab_book: return "Book";
  case Say::fact_g_per_mL: return "density, g/mL";
  case Say::fact_unknown: return "not known";
  case Say::fact_oil: return "oil absorption, g/100 g";
  case Say::fact_heap: return "loose powder, g/mL";
  case Say::fact_gum: return "gum, g";
  case Say::fact_water: return "water, g";
  case Say::fact_honey: return "honey, g";
  case Say::fact_glycerin: return "glycerin, g";
  case Say::fact_alcohol: return "alcohol, g";
  case Say::fact_preservative: return "preservative, g";
  case Say::fact_made_g: return "g bought or made";
  case Say::fact_drops: return "20 drops, g";
  case Say::fact_water_full: return "water in it, g";
  case Say::fact_depth_mm: return "inside depth, mm";
  case Say::choice_class: return "class";
  case Say::choice_with: return "weighed with";
  case Say::choice_size: return "of the kitchen";
  case Say::choice_is_a: return "is a";
  case Say::choice_mine: return "on what is handed on";
  case Say::choice_from: return "where it is from";
  case Say::card_cautions_what: return "cautions";
  case Say::shelf_pigment: return "pigments";
  case Say::shelf_binder: return "binders";
  case Say::shelf_liquid: return "liquids";
  case Say::shelf_dropper: return "droppers";
  case Say::shelf_spoon: return "spoons";
  case Say::shelf_pan: return "pans";
  case Say::shelf_glass: return "slab and muller";
  case Say::shelf_recipe: return "recipes";
  }
  return "";
}

}
