#include "words/screens_says.hpp"

namespace words {

std::string_view english(ScreensSay id) {
  using Say = ScreensSay;
  switch (id) {
  case Say::pad_another: return "another amount";
  case Say::pad_dot: return "test dot";
  case Say::pad_leave_number: return "cancel";
  case Say::sign_wont_wet: return "powder floats, dry inside";
  case Say::sign_gelling: return "stiffens when left alone";
  case Say::sign_gummy: return "pulls strings";
  case Say::sign_gritty: return "grains under the knife";
  case Say::sign_foams: return "bubbles that stay";
  case Say::sign_separates: return "water stands on top";
  case Say::sign_smells: return "sour or rotten";
  case Say::stage_mull: return "mull";
  case Say::stage_scrape: return "scrape";
  case Say::amount_weigh: return "weigh";
  case Say::did_bottle: return "{0} bottle {1}";
  case Say::did_confirm: return "{0} it is";
  case Say::did_lost_count: return "{0}, count lost";
  case Say::did_opened: return "batch opened";
  case Say::did_plan: return "planned";
  case Say::did_plan_pans: return "planned for {0} pans";
  case Say::did_room: return "room {0} °C, {1} %";
  case Say::did_gathered: return "gathered";
  case Say::did_move: return "{0}: from {1} to {2}";
  case Say::did_lose: return "{0} lost from {1}";
  case Say::did_weigh_paint: return "{0} weighed, {1}";
  case Say::did_as_before: return "as it was before";
  case Say::much_all: return "all";
  case Say::much_half: return "half";
  case Say::much_share: return "{0} %";
  case Say::did_closed: return "closed";
  case Say::did_unknown: return "an entry of a newer kind";
  case Say::did_found_wet: return "still wet";
  case Say::did_found_dry: return "dried";
  case Say::did_see_cautions: return "cautions read";
  case Say::did_photo: return "the photo";
  case Say::did_other: return "an entry";
  case Say::advice_guess: return "a guess: {0}";
  case Say::to_come: return "still to come: {0}";
  case Say::to_come_and_more: return "still to come: {0}; others: {1}";
  case Say::to_come_count: return "still to come: {0} things";
  case Say::to_come_one: return "{0} {1}";
  case Say::to_come_more_of: return "{0} more of {1}";
  case Say::to_come_weigh_out: return "weigh out {0}";
  case Say::advice_weigh_pigment: return "weigh the pigment first";
  case Say::advice_first_helping: return "start with {0} g binder";
  case Say::advice_first_spoons: return "start with {0} binder ({1} g)";
  case Say::advice_rest: return "add the rest at once: {0} g binder";
  case Say::advice_rest_spoons: return "add the rest at once: {0} binder ({1} g)";
  case Say::advice_from_to: return "{0} to {1}";
  case Say::advice_of_binder: return "{0} of binder";
  case Say::advice_of_water: return "{0} of water";
  case Say::advice_add: return "add {0}, then mull";
  case Say::advice_in_rounds: return "{0}; it may take several rounds";
  case Say::advice_add_by_knife: return "add {0}, then work it in";
  case Say::advice_judge_by_knife: return "no more yet: work it in, then judge";
  case Say::advice_mull_and_judge: return "no more yet: mull, then judge";
  case Say::advice_mull_sticky: return "mull, then judge again";
  case Say::advice_work_in_sticky: return "work it in, then judge again";
  case Say::advice_mull: return "mull, then judge";
  case Say::advice_judge: return "work it in, then judge";
  case Say::advice_work_in: return "work it in with the knife for {0} min, then judge";
  case Say::advice_begin_work_in: return "tap “wet out”, work it in for {0} min, then judge";
  case Say::advice_work_in_early: return "work it in for {0} min more, then judge";
  case Say::advice_worked_in: return "worked in: say how it moves under the knife";
  case Say::advice_worked_in_early: return "worked in: say again how it moves";
  case Say::advice_keep_mulling: return "it flows right: keep mulling, then make a test dot";
  case Say::advice_keep_mulling_for:
    return "it flows right: keep mulling, about {0} ({1} min), then make a test dot";
  case Say::advice_keep_mulling_usual:
    return "it flows right: mull some {0} min more, a dot each pass";
  case Say::advice_pass_more: return "1 more pass";
  case Say::advice_passes_more: return "{0} more passes";
  case Say::advice_test_dot: return "it flows right: make a test dot";
  case Say::advice_there: return "just right and smooth: scrape it together, gather it";
  case Say::advice_there_portions: return "right and smooth: when all {0} portions are, gather";
  case Say::advice_there_may_be_tacky:
    return "it flows right, but may stay tacky: no more honey or glycerin";
  case Say::advice_there_tacky:
    return "it flows right, but will likely stay tacky: too much honey or glycerin";
  case Say::advice_tacky_add:
    return "it flows right, but is too sweet to dry well: add {0} (mask on) and {1}, mull, judge";
  case Say::advice_tacky_stock:
    return "it flows right, but is too sweet to dry well: keep it, to mix into as much without "
           "honey";
  case Say::advice_tacky_stock_times:
    return "it flows right, but is too sweet to dry well: keep it, to mix into {0} times as much "
           "without honey";
  case Say::advice_there_hard: return "it flows right; {0}";
  case Say::advice_right_by_knife: return "it flows right: mull it now, then make a test dot";
  case Say::advice_specks_stay: return "specks stay: mull it in smaller portions, then a dot";
  case Say::advice_specks_as_it_is: return "specks stay: gather it; next time mull less at once";
  case Say::advice_specks_coarse: return "grains stay: gather it; next time grind it dry, mask on";
  case Say::advice_of_named: return "{0} of {1}";
  case Say::advice_right_but_gum: return "gum is short: dry it a little, add {0}";
  case Say::advice_right_but_gum_dried: return "gum is short: add {0}, then mull";
  case Say::advice_right_but_gum_minutes: return "gum is short: mull wide {0} min, add {1}";
  case Say::advice_right_but_gum_tap: return "gum is short: tap “mull”, mull wide {0} min, add {1}";
  case Say::advice_judge_again: return "less liquid than it likely wants: mull, then judge again";
  case Say::advice_judge_loose: return "it has little liquid for that: mull, then judge again";
  case Say::advice_a_wash: return "far too loose: gather it as a wash, begin anew";
  case Say::advice_right_by_now: return "it may be right by now: mull, then judge again";
  case Say::advice_judge_now: return "mulled: say how it moves now";
  case Say::advice_judge_now_by_knife: return "worked in: say how it moves now";
  case Say::advice_past_right: return "{0} too much liquid: mull, judge";
  case Say::advice_past_right_by_knife: return "{0} too much liquid: work it in, judge";
  case Say::advice_past_right_minutes: return "{0} too much liquid: mull wide {1} min";
  case Say::advice_let_dry: return "mull wide {0} min, then judge";
  case Say::advice_let_dry_minutes: return "mull wide {0} min";
  case Say::advice_or_pigment: return "{0}, or add {1} (mask on), mull; judge";
  case Say::advice_pigment: return "{0} g {1}";
  case Say::advice_give_back: return "give back {0} ({1} mL), let it soak ten minutes, then mull";
  case Say::advice_give_back_short: return "give back {0}, let it soak";
  case Say::advice_give_back_by_knife:
    return "give back {0} ({1} mL), let it soak ten minutes, then work it in";
  case Say::advice_soak_by_knife: return "let it soak for {0} min, then work it in";
  case Say::advice_soak: return "let it soak for {0} min, then mull";
  case Say::advice_gathered: return "gathered: off the slab";
  case Say::gum_too_little: return "gum is short: binder, not water";
  case Say::gum_no_pigment: return "gum is short: no more pigment";
  case Say::gum_too_much: return "water only: gum enough";
  case Say::hard_softener: return "gum alone may dry brittle and re-wet badly; usual: {0} of {1}";
  case Say::hard_softener_loosens:
    return "gum alone may dry brittle; usual: {0} of {1}, it loosens like {2} of water";
  case Say::hard_no_softener:
    return "gum alone may dry brittle and re-wet badly: some honey is usual";
  case Say::sweet_enough: return "no more honey or glycerin: it may stay tacky";
  case Say::sweet_too_much: return "honey and glycerin: it will likely stay tacky";
  case Say::by_guessed_room: return "{0} (the room is a guess)";
  case Say::not_saved: return "not saved: {0}";
  case Say::entry_left_out: return "1 entry is not in the sums";
  case Say::entries_left_out: return "{0} entries are not in the sums";
  case Say::not_counted_bounced: return "not counted: too quick";
  case Say::not_counted_slid: return "not counted: slid off the pad";
  case Say::not_counted_rested: return "not counted: rested too long";
  case Say::not_counted_other_finger: return "not counted: second finger";
  case Say::plan_search: return "search a pigment";
  case Say::recipe_search: return "search a recipe";
  case Say::plan_name: return "name of the batch";
  case Say::page_back: return "back";
  case Say::page_on: return "more";
  case Say::book_name_text: return "a batch needs a name";
  case Say::book_to_list: return "all batches";
  case Say::book_ranges: return "what each pigment wants";
  case Say::book_search: return "find a batch";
  case Say::book_search_other: return "search";
  case Say::book_note_text: return "what to know next time";
  case Say::book_no_verdict: return "no verdict yet";
  case Say::font_missing: return "The typeface {0} is not there.";
  case Say::letters_size:
    return "Letters are drawn with {1} to {2} pixels to a millimetre, and not with {0}: say "
           "another "
           "--size or --mm.";
  case Say::remedy_wont_wet:
    return "Sprinkle water on a pinch: if it beads, work in {0} of ox gall or alcohol with the "
           "knife, then binder.";
  case Say::remedy_wont_wet_more:
    return "Still floats: set this aside. Make a stiff paste of fresh powder with alcohol alone in "
           "fresh air, no flame, let it flash off, then binder.";
  case Say::remedy_gelling:
    return "Stir: if it thins and stiffens again, it gels. Work in {0} of water, pass by pass, and "
           "gather soon.";
  case Say::remedy_gelling_more:
    return "Gels again: more water only keeps it a while. Pour it now; next time more binder from "
           "the start.";
  case Say::remedy_gelling_gum_short:
    return "Stir: if it thins and stiffens again, it gels. Gum is short: work in {0} of binder, "
           "not "
           "water, and gather soon.";
  case Say::remedy_gelling_loose:
    return "Stir: if it thins and stiffens again, it gels. It is loose enough, so no water: stir "
           "it through, mull on, and do not let it stand.";
  case Say::remedy_gummy:
    return "Lift the knife: strings mean too much gum or honey. Add {1} g of pigment, or {0} of "
           "water to work it.";
  case Say::remedy_gummy_gum_short:
    return "Lift the knife: strings. By the count gum is short, so no pigment, and no more honey: "
           "work in {0} of water, a pass, then judge.";
  case Say::remedy_gummy_loose:
    return "Lift the knife: strings. It is loose as well, so no water: mull it out wide to dry, "
           "then judge.";
  case Say::remedy_gritty:
    return "Rub a dab on glass: grains that crush want another pass; grains that stay are the "
           "pigment. Mull, then a dot.";
  case Say::remedy_gritty_more:
    return "Still gritty: half of it into the jar, mull the other half stiffer, 3 passes; then "
           "change.";
  case Say::remedy_foams:
    return "Bubbles that stay: let it stand covered ten minutes, then {0} of alcohol; mull slower, "
           "lift less.";
  case Say::remedy_separates:
    return "Water on top after ten minutes: too little gum for the water. Stir in {0} of binder, "
           "then a "
           "pass.";
  case Say::remedy_separates_gum_enough:
    return "Water on top, though gum is enough: too much water. Stir it, mull it out wide to dry, "
           "then judge.";
  case Say::remedy_smells:
    return "Sour or rotten, or furry: throw it away, do not sniff it again. Clean the jar; new "
           "binder with preservative.";
  case Say::card_name: return "name";
  case Say::card_lot: return "jar or lot";
  case Say::card_written: return "what is written on it";
  case Say::card_made_on: return "made on (date)";
  case Say::card_keep_until: return "keep until";
  case Say::money: return "{0} {1}";
  case Say::money_in_words: return "{1} {0}";
  case Say::money_none: return "nothing";
  case Say::card_bought_on: return "bought (date)";
  case Say::card_jar_lot: return "its lot";
  case Say::card_currency: return "currency";
  case Say::saved_elsewhere: return "studio fails: saved beside it";
  case Say::batch_damaged: return "a file is damaged: entries may be missing";
  }
  return "";
}

}
