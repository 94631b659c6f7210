#include "words/say.hpp"

namespace words {

namespace {

constexpr std::string_view help_text =
    R"(Slabside: making watercolour paint by touch, with a record that can be made again.

slabside [--studio DIR] [--size WxH] [--mm WxH] [--hand left|right] [--night] [--full-screen]
                                 the window, on this studio (else ~/Slabside); size in pixels
                                 (1280x800), and in mm as it is on the real display
slabside picture shelf|plan|slab|pans|book|tablet --out FILE.png [--studio DIR] [--batch BATCH]
                 [--at TIME] [--taps "PAD; PAD ..."] [--size WxH] [--mm WxH] [--hand left|right]
                 [--night] [--language english|pseudo]
                                 a screen without a window, as it was at a time (else now), after
                                 taps on those pads; pseudo writes every word a third longer

slabside list  [--studio DIR]    all batches, oldest first
slabside show  BATCH [--studio DIR] [--json]
                                 one batch as numbers: by id, by name, or “last”
slabside range [PIGMENT] [--studio DIR] [--json]
                                 what each pigment wants, as the feel notes of all batches have
                                 taught it; of one: by card, name or Colour Index name
slabside sheet  --batch BATCH [--studio DIR] [--out FILE.html]
                                 the batch sheet, to print on A4 or Letter. Without --out this
                                 and the next two are printed; no file is written over
slabside labels --batch BATCH [--studio DIR] [--count N] [--mm 38x21] [--sheet a4|letter]
                [--out FILE.html|FILE.svg]
                                 labels for its pans, in true millimetres; without --count a sheet
slabside table  [--batch BATCH] [--totals] [--studio DIR] [--out FILE.csv]
                                 every addition, or with --totals what went in of each material.
                                 Names that a spreadsheet would compute get an apostrophe in front
slabside check DIR               look for damage in a studio's files; changes nothing. Exit status
                                 0 whole, 1 damage, 2 it cannot be read at all
slabside mend  [--studio DIR] --out NEWDIR
                                 a repaired copy of a studio, and what could not be had back
                                 (then the exit status is 1); the studio stays as it is
slabside pack  [--studio DIR] --out FILE.zip
                                 sessions and photos as one file, to be carried elsewhere
slabside unpack FILE.zip --out NEWDIR
                                 a studio from such a file; nothing is ever written over
slabside photo FILE --batch BATCH --of dot|swatch|pan|slab [--studio DIR]
                                 keeps a JPEG or PNG with a batch
slabside play  SCRIPT --studio DIR [--adrift DIR] [--report] [--pace N] [--fault F] [--watch]
                                 taps from a script, on the real bench, without a window;
                                 --watch shows them in one
slabside help                    this

Exit status: 0 done, 1 something is wrong, 2 the words make no sense.

A script has one thing to do in a line; # begins a line that says nothing.
  at 2026-11-20T14:02:00+01:00   sets the clock       seed 7    the same ids each time
  display 218x136 [right]        in mm                session c41e08d5, device a83f
  tap PAD [x10] [every 1.5]      seconds, from press to press
  type 12.5                      digits and “that's it” on the number pad
  write name TEXT                into the field “name”, “search” or “note”
  wait 90 | wait 5m | wait 2h
  down PAD, slide, up            one touch by hand
  stop                           end without a goodbye, as if killed
--report prints “saved N” when line N lies on the disk, and the window, which takes --report and
--fault too, “ready”, “unsaved N” and “closed”; --pace 50 plays 50 times faster than
life, without it as fast as it goes; --adrift is where lines go while the studio fails.
--fault slow:150, silent, fail:7, fail-from:7, fail-write:3:EIO … spoils the studio's disk.
)";

}

std::string_view pattern(Say id) {
  switch (id) {
  case Say::none: return "";
  case Say::not_a_number: return "“{0}” is not a number: type digits, with a point or a comma.";
  case Say::negative_amount: return "An amount cannot be below zero: {0}.";
  case Say::amount_too_large: return "{0} is too much for one amount: at most {1}.";
  case Say::humidity_out_of_range: return "Humidity lies between 0 and 100 %: {0} does not.";
  case Say::temperature_out_of_range: return "Between {1} and {2} °C, please: {0} is outside.";
  case Say::unknown_name: return "“{0}” is not a name this program knows.";
  case Say::empty_recipe: return "Nothing is in this recipe yet.";
  case Say::measure_not_positive: return "A measure must hold more than nothing: {0} does not.";
  case Say::density_not_known: return "Its density is not known: weigh it instead.";
  case Say::powder_not_weighed:
    return "Weigh one spoon of this powder first: powders pack differently.";
  case Say::drop_out_of_range: return "No dropper gives drops of such a size.";
  case Say::nothing_counted: return "Nothing was counted here that could weigh so much.";
  case Say::bottle_gained: return "The bottle weighs {0} g more than before.";
  case Say::weighing_contradicts:
    return "By what was recorded it should weigh {0} g, it weighs {1} g: something is missing.";
  case Say::honey_index_out_of_range:
    return "Honey reads between 1.474 and 1.505 on a refractometer: {0} is outside.";
  case Say::strength_out_of_reach: return "{0} % gum cannot be had that way.";
  case Say::water_more_than_there: return "There is not that much water in it.";
  case Say::density_out_of_reach:
    return "Water lost does not explain {0} g/mL: the recipe makes {1}.";
  case Say::not_a_share: return "A share lies between 0 and 1: {0} does not.";
  case Say::recipe_too_dry: return "Gum as dry as that needs some water in its recipe.";
  case Say::recipe_honey:
    return "Honey {0} g to gum {1} g: at most {2} times the gum. Change one of the two.";
  case Say::recipe_glycerin:
    return "Glycerin {0} g to gum {1} g: at most {2} times the gum. Change one of the two.";
  case Say::recipe_water:
    return "Water {0} g to gum {1} g: at most {2} times the gum. Change one of the two.";
  case Say::pressure_out_of_range:
    return "Air pressure lies between {1} and {2} kPa: {0} does not.";
  case Say::frost_not_dew: return "This air is so dry that a cold glass gets frost, not dew.";
  case Say::humidity_above_held:
    return "What paint holds is known up to 98 % humidity: {0} % is more.";
  case Say::nothing_to_dry: return "Nothing is here that could dry.";
  case Say::volume_too_small: return "{0} mL cannot hold {1} g of water.";
  case Say::time_below_zero: return "A time cannot be below zero: {0} s.";
  case Say::time_too_long: return "Nobody waits that long.";
  case Say::nothing_lost: return "A weighing teaches only where water has left.";
  case Say::nothing_there: return "There is no paint there.";
  case Say::not_only_water: return "Paint is as it was only if nothing but water went in since.";
  case Say::uncertainty_not_positive: return "No weighing is exact: {0} cannot be its uncertainty.";
  case Say::bench_rate_unusable:
    return "That makes a bench twenty times as fast or slow as others: please weigh again.";
  case Say::oil_absorption_not_known: return "Its oil absorption is not known.";
  case Say::no_pigment_there: return "There is no pigment in it.";
  case Say::no_gum_there: return "There is no gum in it.";
  case Say::tack_mark_unusable: return "What was learnt about sticky paint makes no sense.";
  case Say::tack_dries:
    return "it should dry without staying sticky in this room, by our own estimate";
  case Say::tack_may_stay: return "it may stay sticky in this room, by our own estimate";
  case Say::tack_stays: return "it will likely stay sticky in this room, by our own estimate";
  case Say::wet_less_than_dry: return "{0} mL of wet paint cannot leave {1} mL of dry paint.";
  case Say::layers_out_of_range: return "A pan takes 0 to 100 layers: {0} is outside.";
  case Say::fill_out_of_reach: return "No number of layers fills a pan to {0} % with this paint.";
  case Say::weigh_ins_too_few: return "It takes the weight when poured and at least one later.";
  case Say::weigh_ins_out_of_order:
    return "Weighings start when the pan is poured, and go on in order of time.";
  case Say::weigh_ins_say_nothing: return "Too little water is gone to tell, or almost all of it.";
  case Say::gauge_out_of_range: return "The gauge goes from 0 to {1}: {0} is outside.";
  case Say::limits_out_of_order: return "A reading lies between its limits, and they apart.";
  case Say::readings_too_few: return "It takes two readings with mulling between them.";
  case Say::not_declining: return "The specks do not get fewer yet: no telling how long.";
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
  case Say::ordinal_rows:
    return "Row {0} does not fit: its word or group is out of range, or it has not as many numbers "
           "as "
           "the first.";
  case Say::ordinal_word_missing: return "Word {0} is never said: take it out of the list.";
  case Say::ordinal_parameters:
    return "Thresholds must rise, slopes be numbers, and spreads be above zero.";
  case Say::learn_out_of_range:
    return "The range cannot be learnt: {0}, “{1}” must lie within {2} to {3}.";
  case Say::learn_not_there:
    return "The range cannot be learnt: {0}, “{1}” points to something that is not in the list.";
  case Say::learn_no_pigment: return "The range cannot be learnt: {0} has no pigment in it.";
  case Say::learn_not_json:
    return "What the range is learnt from cannot be read: it was cut off or damaged.";
  case Say::learn_field:
    return "What the range is learnt from cannot be read: “{0}” is missing or of the wrong kind.";
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
  case Say::caution_cadmium: return "Cadmium: gloves, no dust, never sand or spray.";
  case Say::caution_nickel: return "Nickel: gloves on, keep it off the skin.";
  case Say::caution_chromium:
    return "Chromium: wear gloves; ask whether it is free of chromium(VI).";
  case Say::caution_manganese: return "Manganese: years of its dust do harm.";
  case Say::caution_no_drain: return "Keep its rinse water out of the drain.";
  case Say::caution_silica: return "May hold quartz dust: wipe wet, never sweep.";
  case Say::caution_fine_black:
    return "Very fine: IARC lists it as possibly causing cancer when breathed.";
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
  case Say::care_mask: return "While powder is dry: mask on (FFP2, N95 or better), air moving.";
  case Say::care_no_food_tools: return "No kitchen tools, no food at the bench, no licked brushes.";
  case Say::care_children: return "Keep powder, binder and paint out of reach of children.";
  case Say::care_gloves: return "Gloves for cobalt, cadmium, nickel and chromium.";
  case Say::care_wipe_wet: return "Wipe up wet. Never sweep or blow dry powder.";
  case Say::care_sheet_first: return "The supplier’s safety data sheet and local rules come first.";
  case Say::field_missing: return "“{0}” is missing";
  case Say::field_not_a_number: return "“{0}” is not a number";
  case Say::field_out_of_range: return "“{0}” is {1}, which cannot be";
  case Say::field_not_whole: return "“{0}” is not a whole number";
  case Say::field_not_text: return "“{0}” is not text";
  case Say::field_not_yes_or_no: return "“{0}” is neither true nor false";
  case Say::field_not_object: return "“{0}” is not an object";
  case Say::field_not_a_colour: return "“colour” is not of the form #rrggbb";
  case Say::field_not_a_photo: return "“{0}” does not name a photo";
  case Say::field_not_a_line: return "“{0}” does not name a line";
  case Say::field_twice: return "a field stands there twice";
  case Say::line_too_long: return "the line has {0} bytes; {1} is the most";
  case Say::line_too_deep: return "brackets within brackets, too many";
  case Say::line_not_an_object: return "not a JSON object";
  case Say::line_check_wrong: return "the check value does not match the line";
  case Say::line_without_check: return "the check value at the end is missing";
  case Say::line_not_joined: return "the line that belongs before this one is not there";
  case Say::line_number_twice: return "another line bears the number {0} already: that one counts";
  case Say::line_torn: return "the last entry was not finished";
  case Say::text_not_utf8: return "That text is not readable (not UTF-8): please type it again.";
  case Say::file_without_beginning: return "the file does not start with “began”";
  case Say::file_of_other_format: return "this is not a session file of ours";
  case Say::file_of_two_sessions:
    return "session {0} begins here inside another: from here on nothing is read. Put it into a "
           "file of its own";
  case Say::session_misses_one: return "session {0}: line {1} is in no file";
  case Say::session_misses: return "session {0}: lines {1} to {2} are in no file";
  case Say::session_contradicted:
    return "session {0}: two files tell line {1} differently; one of them counts";
  case Say::file_of_future_version:
    return "written by a newer Slabside (format {0}): shown without totals";
  case Say::card_not_laid_out: return "no session says what “{0}” is";
  case Say::file_not_ended: return "the program was stopped before it could say goodbye";
  case Say::plan_still_reading: return "Reading the studio …";
  case Say::plan_choose_pigment: return "Choose a pigment to begin.";
  case Say::plan_needs_name: return "Give the batch a name to begin.";
  case Say::text_shortened: return "Only the first {0} characters were kept.";
  case Say::tab_shelf: return "Shelf";
  case Say::tab_pans: return "Pans";
  case Say::tab_plan: return "Plan";
  case Say::tab_slab: return "Slab";
  case Say::tab_book: return "Book";
  case Say::tablet_unreadable:
    return "What was kept of this tablet cannot be read: it starts afresh.";
  case Say::file_not_kept: return "{0} could not be kept: {1}.";
  case Say::tablet_keys: return "Tap what a key or pedal should do, then press it";
  case Say::tablet_size: return "this display is taken for {0} × {1} mm";
  case Say::display_small:
    return "This display is small: its pads are smaller than they should be.";
  case Say::display_may_sleep: return "The desktop would not keep the display awake: {0}";
  case Say::display_kept_awake: return "a batch lies on the slab";
  case Say::card_hold: return "hold a bank card here";
  case Say::card_fit: return "until it covers this, no more and no less";
  case Say::card_smaller: return "smaller";
  case Say::card_larger: return "larger";
  case Say::card_much_smaller: return "much smaller";
  case Say::card_much_larger: return "much larger";
  case Say::hand_left: return "materials on the left";
  case Say::hand_right: return "materials on the right";
  case Say::motion_on: return "the marker glides";
  case Say::motion_off: return "the marker jumps";
  case Say::key_binder: return "binder";
  case Say::key_water: return "water";
  case Say::key_honey: return "honey";
  case Say::key_undo: return "take back";
  case Say::key_pass: return "pass, scrape";
  case Say::key_none: return "no key";
  case Say::key_press_now: return "press the key now";
  case Say::wipe_glass: return "wipe the glass";
  case Say::wiping_hold: return "wiping: hold here to go on";
  case Say::pad_another: return "another amount";
  case Say::pad_bottle: return "weigh a bottle";
  case Say::pad_undo: return "Undo";
  case Say::pad_gather: return "gather";
  case Say::pad_gather_what: return "into a jar or pans";
  case Say::pad_back: return "back on the slab";
  case Say::pad_close: return "close";
  case Say::pad_close_what: return "the batch is done";
  case Say::pad_dot: return "test dot";
  case Say::pad_trouble: return "trouble…";
  case Say::pad_leave: return "back to the trail";
  case Say::pad_leave_number: return "leave it";
  case Say::pad_enter: return "that’s it";
  case Say::pad_erase: return "erase";
  case Say::pad_lost_count: return "lost count";
  case Say::undo_nothing: return "nothing yet";
  case Say::undo_nothing_since: return "nothing yet since you came back";
  case Say::undo_unsaved: return "{0} not saved yet";
  case Say::feel_wont_move: return "won’t move";
  case Say::feel_too_sticky: return "too sticky";
  case Say::feel_right: return "right";
  case Say::feel_too_loose: return "too loose";
  case Say::feel_too_runny: return "too runny";
  case Say::specks_many: return "many specks";
  case Say::specks_few: return "few specks";
  case Say::specks_none: return "no specks";
  case Say::trouble_wont_wet: return "won’t wet";
  case Say::trouble_gelling: return "gelling";
  case Say::trouble_gummy: return "gummy";
  case Say::trouble_gritty: return "gritty";
  case Say::trouble_foams: return "foams";
  case Say::trouble_separates: return "separates";
  case Say::trouble_smells: return "smells";
  case Say::sign_wont_wet: return "powder floats, dry inside";
  case Say::sign_gelling: return "stiffens when left alone";
  case Say::sign_gummy: return "pulls strings";
  case Say::sign_gritty: return "grains under the knife";
  case Say::sign_foams: return "bubbles that stay";
  case Say::sign_separates: return "water stands on top";
  case Say::sign_smells: return "sour or rotten";
  case Say::stage_wet_out: return "wet out";
  case Say::stage_wetting_out: return "wetting out";
  case Say::stage_wetting_out_short: return "knife";
  case Say::stage_mull: return "mull";
  case Say::stage_mulling: return "mulling {0}";
  case Say::stage_scrape: return "scrape";
  case Say::stage_resting: return "resting";
  case Say::stage_pass: return "pass {0}";
  case Say::stage_with_knife: return "with the knife";
  case Say::amount_drop: return "1 drop";
  case Say::amount_drops: return "{0} drops";
  case Say::amount_spoons: return "{0} tsp";
  case Say::amount_grams: return "{0} g";
  case Say::amount_weigh: return "weigh";
  case Say::amount_none: return "none";
  case Say::amount_weighed: return "weighed";
  case Say::did_added: return "{0} {1}";
  case Say::did_bottle: return "{0} bottle {1}";
  case Say::did_lost_count: return "{0}, count lost";
  case Say::did_opened: return "batch opened";
  case Say::did_room: return "room {0} °C, {1} %";
  case Say::did_gathered: return "gathered";
  case Say::did_move: return "{0}: from {1} to {2}";
  case Say::did_lose: return "{0} lost from {1}";
  case Say::did_weigh_paint: return "{0} weighed, {1} with what it is in";
  case Say::did_as_before: return "as it was before";
  case Say::much_all: return "all";
  case Say::much_half: return "half";
  case Say::much_share: return "{0} %";
  case Say::did_closed: return "closed";
  case Say::did_unknown: return "an entry of a newer kind";
  case Say::did_found_wet: return "still wet";
  case Say::did_found_dry: return "dried";
  case Say::did_pour: return "pan {0} poured";
  case Say::did_pour_pans: return "pans {0} to {1} poured";
  case Say::did_weigh_pan: return "pan {0} weighs {1}";
  case Say::did_see_cautions: return "cautions read";
  case Say::became_good: return "good";
  case Say::became_full: return "full";
  case Say::became_sunken: return "sunken";
  case Say::became_cracked: return "cracked";
  case Say::became_sticky: return "sticky";
  case Say::became_rubs_off: return "rubs off";
  case Say::became_wont_rewet: return "won’t re-wet";
  case Say::became_mould: return "mould";
  case Say::did_other: return "an entry";
  case Say::ratio_caption: return "g binder to 10 g pigment";
  case Say::ratio_none: return "no pigment yet, so no ratio";
  case Say::no_batch: return "Nothing is on the slab. Plan a batch, or take one up from the Book.";
  case Say::advice_guess: return "a guess: {0}";
  case Say::advice_weigh_pigment: return "weigh the pigment first";
  case Say::advice_first_helping: return "start with {0} to {1} g binder";
  case Say::advice_add: return "add {0}, then mull";
  case Say::advice_add_by_knife: return "add {0}, then work it in";
  case Say::advice_judge_by_knife: return "one drop is a risk: work it in first";
  case Say::advice_mull_and_judge: return "one drop is a risk: mull first";
  case Say::advice_go_on: return "go on drop by drop: mull, then judge";
  case Say::advice_go_on_by_knife: return "go on drop by drop: work it in, then judge";
  case Say::advice_there: return "you are there: leave it so";
  case Say::advice_let_dry: return "too loose: let it dry";
  case Say::advice_let_dry_minutes: return "too loose: let it dry {0} min";
  case Say::advice_or_pigment: return "{0}, or add {1}";
  case Say::advice_pigment: return "{0} g {1}";
  case Say::advice_gathered: return "gathered: off the slab";
  case Say::pour_into_pans: return "pour into pans";
  case Say::gum_too_little: return "gum is short: binder, not water";
  case Say::gum_short: return "gum is short: dry paint may rub off";
  case Say::gum_enough: return "binder or water, both will do";
  case Say::gum_too_much: return "water only: gum enough";
  case Say::sweet_enough: return "no more honey or glycerin: it may stay sticky";
  case Say::sweet_too_much: return "honey and glycerin: it will likely stay sticky";
  case Say::dried_off: return "{0} mL has dried off";
  case Say::dust_mask: return "dry powder: mask on";
  case Say::not_saved: return "not saved: {0}";
  case Say::entries_left_out: return "{0} entries are not in the sums";
  case Say::entry_left_out: return "1 entry is not in the sums";
  case Say::not_counted_bounced: return "not counted: too quick";
  case Say::not_counted_slid: return "not counted: slid off the pad";
  case Say::not_counted_rested: return "not counted: rested too long";
  case Say::not_counted_other_finger: return "not counted: second finger";
  case Say::trail_caption: return "liquid to pigment, by volume";
  case Say::trail_right: return "right, {0}";
  case Say::trail_empty: return "The trail begins once pigment and binder are in.";
  case Say::trail_gathered: return "gathered {0}";
  case Say::ask_amount: return "how much, with the next tap?";
  case Say::ask_bottle: return "which bottle will you weigh?";
  case Say::ask_specks: return "what does the dot show?";
  case Say::ask_trouble: return "what is wrong?";
  case Say::ask_grams_of: return "{0}, in g";
  case Say::ask_bottle_of: return "bottle of {0}, all of it, in g";
  case Say::ask_pigment_grams: return "pigment, in g";
  case Say::ask_celsius: return "room, in °C";
  case Say::ask_humidity: return "humidity, in %";
  case Say::plan_search: return "search a pigment";
  case Say::plan_name: return "name of the batch";
  case Say::plan_weigh: return "or later, at the slab";
  case Say::plan_binder_short: return "Binder {0} g, {1} to {2} first.";
  case Say::plan_how_many: return "how many?";
  case Say::plan_as_last_time: return "As last time: {0} g binder to 10 g.";
  case Say::nothing_to_feel:
    return "There is no liquid in it yet: add binder, then say how it feels.";
  case Say::pan_too_heavy:
    return "A pan of {0} mL with its paint weighs no {1} g: weigh one pan alone.";
  case Say::plan_not_weighed: return "weigh the pigment";
  case Say::plan_begin: return "begin";
  case Say::plan_guess: return "a guess";
  case Say::plan_celsius: return "{0} °C";
  case Say::plan_humidity: return "{0} %";
  case Say::plan_first_helping: return "first {0} to {1} g of binder";
  case Say::plan_care_in_short:
    return "Always: wipe wet, no food tools, away from children; the supplier’s data sheet comes "
           "first.";
  case Say::plan_nothing_found: return "No pigment of that name.";
  case Say::page_back: return "back";
  case Say::page_on: return "more";
  case Say::book_empty: return "No batch yet. The first one begins under Plan.";
  case Say::book_damages:
    return "{0} places in the files could not be read: “slabside check” names them";
  case Say::book_damage: return "1 place in the files could not be read: “slabside check” names it";
  case Say::book_to_list: return "all batches";
  case Say::book_ranges: return "what each pigment wants";
  case Say::known_guess: return "a guess";
  case Say::known_one_batch: return "1 batch";
  case Say::known_batches: return "{0} batches";
  case Say::range_wants: return "wants {0}, likely {1} to {2}";
  case Say::range_not_felt: return "Nobody has felt it here yet.";
  case Say::range_note: return "{0}, {1}: {2}";
  case Say::range_note_back: return "note before";
  case Say::range_note_on: return "next note";
  case Say::range_set_aside: return "leave this note out";
  case Say::range_take_in: return "count it again";
  case Say::range_left_out: return "left out";
  case Say::range_was: return "it was";
  case Say::range_to_all: return "all pigments";
  case Say::range_not_learnt: return "Not learnt anew: {0}";
  case Say::range_no_pigment:
    return "There is no pigment {0} on this shelf. “slabside range” names those that were felt.";
  case Say::show_range:
    return "{0}: wants {1} mL to 1 mL ({2} to {3}), right from {4} to {5}; {6}, {7} notes";
  case Say::show_hand_right: return "right           {0} to either side, in ln flow";
  case Say::show_hand_reaches: return "beyond it       too sticky for {0}, too loose for {1}";
  case Say::show_hand_slope: return "told apart      {0}, the slope of the notes";
  case Say::show_hand_batches: return "differences     {0} between batches, {1} between pigments";
  case Say::show_hand_slips: return "slips           {0} % of the notes";
  case Say::show_hand_rests_on: return "rests on        {0} notes of {1} batches";
  case Say::book_take_up: return "take up again";
  case Say::book_went_in: return "what went in";
  case Say::book_dried_off: return "{0} mL of water dried off";
  case Say::book_ratio: return "g binder to 10 g";
  case Say::book_flow: return "flow {0}";
  case Say::book_at_slab: return "at the slab";
  case Say::book_minutes: return "{0} min";
  case Say::book_passes: return "{0} passes, {1} min";
  case Say::book_one_pass: return "1 pass, {0} min";
  case Say::book_no_pass: return "not mulled yet";
  case Say::book_room: return "{0} °C, {1} %";
  case Say::pans_none: return "No paint lies in a jar or in pans yet. It comes here from the slab.";
  case Say::pans_new: return "new pan";
  case Say::pans_number: return "pan {0}";
  case Say::pans_fill_new: return "fill {0} pans";
  case Say::pans_fill_one: return "fill a pan";
  case Say::pans_pour_all: return "pour into all {0}";
  case Say::pans_pour_one: return "pour into the one with room";
  case Say::pans_pour_none: return "all pans are full";
  case Say::pans_pour_wait: return "wait: still wet";
  case Say::pans_grams: return "in grams";
  case Say::pans_weigh: return "weigh";
  case Say::pans_size: return "{0} mL";
  case Say::pans_still_wet: return "Pan {0} is still wet: chosen, nothing poured.";
  case Say::pans_judge: return "judge";
  case Say::pans_judge_what: return "what became of it";
  case Say::pans_pour: return "pour";
  case Say::pans_pour_what: return "another layer";
  case Say::pans_all_meant: return "all pans";
  case Say::pans_more: return "more pans";
  case Say::pans_older: return "older batch";
  case Say::pans_newer: return "newer batch";
  case Say::pans_next: return "next layer";
  case Say::pans_in_hours: return "in {0} to {1} h";
  case Say::pans_in_days: return "in {0} to {1} days";
  case Say::pans_now: return "now";
  case Say::pans_if_firm: return "if it is firm to the touch";
  case Say::pans_full: return "full";
  case Say::pans_no_more: return "no more layers";
  case Say::pans_when_firm: return "when it is firm to the touch";
  case Say::pans_first: return "first layer";
  case Say::pans_tap_one: return "tap a pan to pour";
  case Say::pans_from_room: return "from the room: a weighed pan knows better";
  case Say::pans_from_scale: return "from what the scale said";
  case Say::pans_weigh_again: return "weighed once: weigh it again in some hours";
  case Say::pans_ask: return "what became of it?";
  case Say::since_pour_just: return "just poured";
  case Say::since_pour_first: return "less than a day after the last pour";
  case Say::since_pour_hours: return "{0} h after the last pour";
  case Say::since_pour_day: return "1 day after the last pour";
  case Say::since_pour_days: return "{0} days after the last pour";
  case Say::pans_left: return "{0} mL to pour";
  case Say::pans_left_none: return "nothing left to pour";
  case Say::pans_will_fill: return "{0} to {1} % full when dry";
  case Say::pans_weighings: return "weighed {0} times";
  case Say::pans_drying: return "drying";
  case Say::pans_still_drying: return "still drying";
  case Say::pans_early:
    return "Too early to tell: by the room this layer is not dry yet. “{0}” is kept.";
  case Say::pans_waits_one: return "1 waits: {0}";
  case Say::pans_waits: return "{0} wait: {1}";
  case Say::pans_wait_layer: return "a layer for {0}";
  case Say::pans_wait_verdict: return "{0} to be judged";
  case Say::remedy_good: return "Nothing to do: make it so again.";
  case Say::remedy_full: return "No more layers: let it dry through.";
  case Say::remedy_sunken: return "Pour one more layer when it is firm.";
  case Say::remedy_cracked:
    return "A drop of glycerin or honey more next time, and thinner layers.";
  case Say::remedy_sticky: return "Wait for drier air; less honey or glycerin next time.";
  case Say::remedy_rubs_off: return "Gum was short: more binder and less water next time.";
  case Say::remedy_wont_rewet:
    return "Leave a drop of water on it for a minute; a little honey next time.";
  case Say::remedy_mould: return "Throw it away, wash the pans, and look at the binder.";
  case Say::ask_pour_g: return "what pan {0} took, in g";
  case Say::ask_pan_g: return "pan {0} with its paint, in g";
  case Say::book_search: return "name, pigment, verdict or date";
  case Say::book_search_other: return "search";
  case Say::book_nothing_found: return "No batch bears that.";
  case Say::book_compare_with: return "Compare {0} with which?";
  case Say::book_make_again: return "make again";
  case Say::book_compare: return "compare";
  case Say::book_note: return "note";
  case Say::book_note_text: return "what to know next time";
  case Say::book_keep: return "keep it";
  case Say::book_again_of: return "again of {0}";
  case Say::book_made_again: return "made again as {0}";
  case Say::book_verdict: return "{0}: {1}";
  case Say::book_of_pan: return "{0} (pan {1})";
  case Say::book_no_verdict: return "no verdict yet";
  case Say::book_one_back: return "back to the batch";
  case Say::compare_flow: return "flow at the end";
  case Say::compare_gum: return "g gum to 1 mL";
  case Say::compare_sweet: return "g sweet to 1 g gum";
  case Say::compare_mulled: return "mulled, min";
  case Say::compare_passes: return "passes";
  case Say::compare_celsius: return "room, °C";
  case Say::compare_humidity: return "humidity, %";
  case Say::compare_became: return "verdict";
  case Say::compare_differs: return "differs by more than is uncertain";
  case Say::progress_open: return "on the slab";
  case Say::progress_gathered: return "gathered";
  case Say::progress_closed: return "closed";
  case Say::date_time: return "{0} {1}, {2}";
  case Say::date: return "{0} {1} {2}";
  case Say::month_names: return "Jan Feb March April May June July Aug Sept Oct Nov Dec";
  case Say::font_missing: return "The typeface {0} is not there.";
  case Say::option_bad_value: return "{0} cannot be “{1}”. “slabside help” shows what it can be.";
  case Say::option_missing: return "{0} is missing. “slabside help” shows what goes behind it.";
  case Say::window_not_opened: return "No window could be opened: {0}";
  case Say::display_lost: return "The display is gone; finishing what is being saved.";
  case Say::display_lost_unsaved: return "Entries that are not saved: {0}.{1}";
  case Say::left_unsaved: return "Entries that are not saved: {0}. They should lie in “{1}”.{2}";
  case Say::picture_no_pad: return "The pad “{0}” is not there at that moment.";
  case Say::picture_not_drawn: return "No picture could be drawn: {0}";
  case Say::picture_not_written: return "The picture could not be written: {0}";
  case Say::disk_write_failed: return "{1}: “{0}” could not be written.";
  case Say::disk_force_failed: return "{1}: “{0}” could not be made safe on the disk.";
  case Say::disk_open_failed: return "{1}: “{0}” could not be begun.";
  case Say::disk_folder_failed: return "{1}: the folder “{0}” could not be made.";
  case Say::disk_read_failed: return "{1}: “{0}” could not be read.";
  case Say::disk_list_failed: return "{1}: the folder “{0}” could not be looked through.";
  case Say::disk_rename_failed: return "{1}: “{0}” could not be given its name.";
  case Say::disk_keep_failed: return "“{0}” is there already with other bytes, and was left so.";
  case Say::photo_not_there: return "The photo “{0}” cannot be read.";
  case Say::photo_empty: return "The photo is empty.";
  case Say::photo_too_long: return "A photo has at most {0} bytes.";
  case Say::photo_not_known: return "A photo is a JPEG or a PNG: this is neither.";
  case Say::photo_without_size: return "The photo breaks off before it says how large it is.";
  case Say::photo_too_large:
    return "The photo is {0} × {1} pixels large; {2} million are the most.";
  case Say::photo_not_decoded:
    return "The photo is damaged, or of a rare kind: it cannot be shown.";
  case Say::photo_needs_batch:
    return "A photo wants its batch (--batch) and what it is of (--of dot, swatch, pan or slab).";
  case Say::photo_bad_of: return "A photo is of a dot, a swatch, a pan or the slab, not of “{0}”.";
  case Say::photo_kept: return "kept as {0}";
  case Say::photo_missing: return "{0}: this photo of batch {1} is not there";
  case Say::photo_changed: return "{0}: this photo of batch {1} is not as it was: its bytes differ";
  case Say::unknown_option:
    return "There is no option {0} here. “slabside help” names those there are.";
  case Say::option_twice: return "The option {0} stands there twice.";
  case Say::option_without_value: return "The option {0} wants something behind it.";
  case Say::option_with_value: return "The option {0} takes nothing behind it.";
  case Say::word_missing: return "A word is missing. “slabside help” says what goes where.";
  case Say::word_too_many: return "“{0}” is one word too many.";
  case Say::no_studio: return "There is no studio folder “{0}”.";
  case Say::bad_fault: return "“{0}” is no fault this program can play.";
  case Say::bad_pace: return "A pace lies between 0.001 and 1000000: {0} does not.";
  case Say::read_with_damage:
    return "Not all could be read: {0} damaged places. “slabside check” names them.";
  case Say::not_a_moment: return "“{0}” is no moment: it looks like 2026-11-20T14:02:00+01:00.";
  case Say::script_not_there: return "The script “{0}” cannot be read.";
  case Say::script_too_long: return "A script has at most {0} bytes.";
  case Say::script_line: return "Line {0}: {1}";
  case Say::script_line_too_long: return "A line has at most {0} bytes.";
  case Say::script_too_much:
    return "Up to here that is more than 100,000 taps or 10,000,000 seconds.";
  case Say::script_no_such_line: return "“{0}” is nothing a script can say.";
  case Say::script_no_such_pad: return "There is no pad “{0}”.";
  case Say::script_pad_not_there: return "The pad “{0}” is not there now. There are: {1}.";
  case Say::script_number_range: return "{0} is not between {1} and {2}.";
  case Say::script_display:
    return "A display looks like 218x136 (mm, 50 to 1000 each), then left or right.";
  case Say::script_id: return "“{0}” is no id: {1} digits, 0 to 9 and a to f.";
  case Say::script_type: return "“{0}” cannot be typed: at most 8 digits, with a point.";
  case Say::script_write: return "There are three fields to write in: name, search and note.";
  case Say::script_too_late: return "That must stand before the first line that does something.";
  case Say::play_needs_studio: return "Where to? A script wants --studio and a folder.";
  case Say::play_unsaved: return "{0} entries are not saved. {1}";
  case Say::came_home:
    return "Files saved elsewhere while the studio failed that are now in the studio too: {0}.";
  case Say::play_adrift: return "The studio failed. What came after is kept in “{0}”.";
  case Say::show_no_batches: return "There is no batch in this studio yet.";
  case Say::show_no_batch: return "There is no batch “{0}”.";
  case Say::show_name_twice: return "More than one batch is called “{0}”: say {1} or {2}.";
  case Say::show_title: return "{0}   {1}   {2}   opened {3}";
  case Say::show_room: return "room            {0} °C, {1} %{2}";
  case Say::show_guessed: return ", a guess";
  case Say::show_ratio: return "binder ratio    {0} g binder to 10 g pigment";
  case Say::show_flow_put_in: return "flow put in     {0} mL liquid to 1 mL pigment";
  case Say::show_flow_now: return "flow now        {0} mL liquid to 1 mL pigment";
  case Say::show_over_oil_point: return "over oil point  {0}";
  case Say::show_gum_strength: return "gum strength    {0} dry gum in gum and water";
  case Say::show_gum_per_pigment: return "gum             {0} g dry gum to 1 mL pigment";
  case Say::show_humectant_to_gum: return "sweet           {0} g honey and glycerin to 1 g gum";
  case Say::show_pigment_fraction: return "solid           {0} of the wet volume is pigment";
  case Say::show_place: return "lies there      {0}: {1} g of paint";
  case Say::place_slab: return "slab";
  case Say::place_jar: return "jar";
  case Say::place_pans: return "pans";
  case Say::show_pigment: return "pigment         {0} g, {1} mL";
  case Say::show_liquid: return "liquid          {0} g put in, {1} mL now";
  case Say::show_solids:
    return "of it           gum {0} g, honey {1} g, glycerin {2} g, water now {3} g";
  case Say::show_water_lost: return "dried off       {0} mL";
  case Say::show_material: return "went in         {0} ({1}): {2} g";
  case Say::show_weighed: return "                  weighed {0} g";
  case Say::show_drops: return "                  {0} drops";
  case Say::show_spoons: return "                  {0} × {1}";
  case Say::show_count_lost: return "                  count lost";
  case Say::show_pass: return "pass            {0}: {1} to {2}";
  case Say::show_runs: return "now";
  case Say::show_note: return "{0}  {1}, at flow {2}  [{3}]";
  case Say::list_batch: return "{0}   {1}   {2}   {3}   {4}";
  case Say::warning_unknown_event:
    return "Line {0} is of a newer kind, “{1}”: it is not in the sums.";
  case Say::warning_unknown_card:
    return "Line {0} adds “{1}”, and no session says what that is: not in the sums.";
  case Say::warning_withdrawn_missing: return "Line {0} takes back line {1}, which is not there.";
  case Say::warning_clock_ahead:
    return "Line {0} is dated more than a day from now: that device's clock was wrong.";
  case Say::another_clock_ahead: return "another device's clock is days ahead: look at it";
  case Say::another_device_wrote: return "Another device has added to this batch.";
  case Say::reading_files: return "Reading the studio: {0} of {1} files …";
  case Say::warning_corrected_missing: return "Line {0} corrects line {1}, which is not there.";
  case Say::warning_corrected_kind:
    return "Line {0} corrects line {1} to something of another kind: line {1} counts as it was.";
  case Say::warning_amount_unreadable: return "Line {0} is not in the sums. {1}";
  case Say::nothing_wanted: return "Nothing is wanted: enter more than 0.";
  case Say::pans_not_whole: return "Pans are whole: {0} or {1}, not {2}.";
  case Say::parts_out_of_range: return "Parts of a blend: above 0, to 1000.";
  case Say::blend_full: return "A blend has at most {0} pigments: take one out first.";
  case Say::fact_out_of_range: return "That can be {0} to {1}.";
  case Say::card_needs_name: return "The card has no name yet.";
  case Say::not_a_date: return "{0} is no date: write it like 2026-11-25.";
  case Say::made_in_future: return "{0} lies ahead: nothing was made then.";
  case Say::pad_more: return "more…";
  case Say::pad_more_what: return "jar, bottle, lines";
  case Say::pad_pigments: return "{0} pigments";
  case Say::pad_which: return "which?";
  case Say::ask_more: return "what else?";
  case Say::ask_pigment: return "which pigment?";
  case Say::ask_paint: return "paint of which batch?";
  case Say::ask_no_paint: return "No other batch has paint left.";
  case Say::ask_line: return "which line was wrong?";
  case Say::ask_no_lines: return "Nothing has been done yet.";
  case Say::ask_how_wrong: return "what should it have been?";
  case Say::ask_found: return "back again: how is the paint?";
  case Say::found_wet: return "still wet";
  case Say::found_wet_what: return "covered, nothing lost";
  case Say::found_dry: return "dried";
  case Say::found_dry_what: return "as dry as the room makes it";
  case Say::pad_weigh_paint: return "weigh it";
  case Say::pad_weigh_paint_what: return "the paint alone";
  case Say::pad_lines: return "a line was wrong";
  case Say::pad_other_paint: return "paint of another batch";
  case Say::pad_to_jar: return "all into the jar";
  case Say::pad_half_to_jar: return "half into the jar";
  case Say::pad_from_jar: return "jar onto the slab";
  case Say::pad_spilt: return "some was lost";
  case Say::pad_earlier: return "earlier lines";
  case Say::pad_other_amount: return "another amount";
  case Say::pad_five_earlier: return "5 minutes earlier";
  case Say::pad_take_back: return "take it back";
  case Say::corrected: return "corrected";
  case Say::ask_weigh_paint: return "the paint alone, in g";
  case Say::ask_spilt: return "how much was lost, in g";
  case Say::ask_other_amount: return "it should have been";
  case Say::ask_parts: return "{0}: how many parts?";
  case Say::ask_wanted_pigment: return "pigment, in g";
  case Say::ask_wanted_pans: return "how many pans?";
  case Say::ask_wanted_wet: return "wet paint, in mL";
  case Say::ask_wanted_dried: return "dried paint, in g";
  case Say::want_pigment: return "g of pigment";
  case Say::want_pans: return "pans";
  case Say::want_wet: return "mL wet paint";
  case Say::want_dried: return "g dried paint";
  case Say::plan_by_weight: return "by weight";
  case Say::plan_by_volume: return "by volume";
  case Say::plan_parts: return "{0} parts";
  case Say::plan_part: return "1 part";
  case Say::plan_weigh_grams: return "weigh out {0} g";
  case Say::plan_binder:
    return "Binder about {0} g in all: {1} to {2} g first, then some {3} drops.";
  case Say::plan_binder_no_drops: return "Binder about {0} g in all: {1} to {2} g first.";
  case Say::plan_wet: return "{0} mL of wet paint: {1} × {2}, {3} pours.";
  case Say::plan_wet_no_pans: return "{0} mL of wet paint.";
  case Say::plan_portions: return "Over the slab in {0} portions.";
  case Say::plan_short: return "Not enough {0}: {1} g left, {2} g wanted.";
  case Say::plan_again_of: return "Again: {0}.";
  case Say::plan_go_on: return "go on with {0}";
  case Say::plan_go_on_what: return "it lies on the slab";
  case Say::plan_pan_one: return "1 {0}";
  case Say::plan_cautions_read: return "cautions read";
  case Say::plan_cautions_to_read: return "read the cautions";
  case Say::plan_how_much: return "How much? Tap “{0}”.";
  case Say::plan_heading_guess: return "A guess until batches teach it.";
  case Say::remedy_wont_wet:
    return "Sprinkle water on a pinch: if it beads, work in {0} drops of ox gall or alcohol with "
           "the knife, then binder.";
  case Say::remedy_wont_wet_more:
    return "Still floats: make a stiff paste with alcohol alone in fresh air, no flame, let it "
           "flash off, then binder.";
  case Say::remedy_gelling:
    return "Stir: if it thins and stiffens again, it gels. Work in {0} drops of water, pass by "
           "pass, and gather soon.";
  case Say::remedy_gelling_more:
    return "Gels again: more water only keeps it a while. Pour it now; next time more binder from "
           "the start.";
  case Say::remedy_gummy:
    return "Lift the knife: strings mean too much gum or honey. Add {1} g of pigment, or {0} drops "
           "of water to work it.";
  case Say::remedy_gritty:
    return "Rub a dab on glass: grains that crush want another pass; grains that stay are the "
           "pigment. Mull, then a dot.";
  case Say::remedy_gritty_more:
    return "Still gritty: take a third at a time under the muller, stiffer, 3 passes each.";
  case Say::remedy_foams:
    return "Bubbles that stay: let it stand covered ten minutes, then {0} drop of alcohol; mull "
           "slower, lift less.";
  case Say::remedy_separates:
    return "Water on top after ten minutes: too little gum. Stir in {0} drops of binder, then a "
           "pass.";
  case Say::remedy_smells:
    return "Sour or rotten, or furry: throw it away, do not sniff it again. Clean the jar; new "
           "binder with preservative.";
  case Say::remedy_common: return "Common practice; your supplier’s data sheet comes first.";
  case Say::shelf_pigment: return "pigments";
  case Say::shelf_binder: return "binders";
  case Say::shelf_liquid: return "liquids";
  case Say::shelf_dropper: return "droppers";
  case Say::shelf_spoon: return "spoons";
  case Say::shelf_pan: return "pans";
  case Say::shelf_glass: return "slab, muller";
  case Say::shelf_new: return "new card";
  case Say::shelf_away: return "put away ({0})";
  case Say::shelf_here: return "on the shelf";
  case Say::shelf_put_away: return "put away";
  case Say::shelf_bring_back: return "back on the shelf";
  case Say::shelf_done: return "done";
  case Say::shelf_none: return "Nothing here.";
  case Say::shelf_choose:
    return "Tap a card to see or change it. Nothing has to be filled in before the first batch.";
  case Say::card_name: return "name";
  case Say::card_lot: return "jar or lot";
  case Say::card_written: return "what is written on it";
  case Say::card_made_on: return "made on (date)";
  case Say::card_keep_until: return "keep until";
  case Say::fact_g_per_mL: return "g in 1 mL, no air in it";
  case Say::fact_oil: return "g of oil that 100 g take";
  case Say::fact_heap: return "g in 1 mL, loose powder";
  case Say::fact_made_g: return "g bought or made";
  case Say::fact_gum: return "gum, g";
  case Say::fact_water: return "water, g";
  case Say::fact_honey: return "honey, g";
  case Say::fact_glycerin: return "glycerin, g";
  case Say::fact_preservative: return "preservative, g";
  case Say::fact_drops: return "20 drops, g";
  case Say::fact_water_full: return "water in it, g";
  case Say::fact_cm2: return "face, cm²";
  case Say::fact_unknown: return "not known";
  case Say::family_mineral: return "mineral";
  case Say::family_fine_mineral: return "fine mineral";
  case Say::family_organic: return "organic";
  case Say::family_carbon: return "carbon";
  case Say::family_effect: return "effect";
  case Say::family_extender: return "extender";
  case Say::family_unknown: return "class not known";
  case Say::choice_class: return "class";
  case Say::choice_with: return "weighed with";
  case Say::with_water: return "water";
  case Say::with_binder: return "binder";
  case Say::with_honey: return "honey";
  case Say::with_glycerin: return "glycerin";
  case Say::liquid_honey: return "honey";
  case Say::liquid_glycerin: return "glycerin";
  case Say::liquid_water: return "water";
  case Say::liquid_aid: return "wetting aid";
  case Say::liquid_other: return "another liquid";
  case Say::glass_slab: return "slab";
  case Say::glass_muller: return "muller";
  case Say::choice_is_a: return "is a";
  case Say::choice_size: return "of the kitchen";
  case Say::size_mL: return "{0} mL";
  case Say::card_ships: return "As it ships: marked guesses, until you replace them.";
  case Say::card_confidence_low: return "Confidence low.";
  case Say::card_confidence_medium: return "Confidence fair.";
  case Say::card_confidence_high: return "Confidence good.";
  case Say::card_source: return "Source: {0}";
  case Say::card_left: return "{0} g left.";
  case Say::card_of_drops: return "Drop 20 drops onto the scale and enter what they weigh.";
  case Say::card_of_water:
    return "Fill it with water to the brim once and enter what the water weighs.";
  case Say::card_keep_note:
    return "A jar that hisses, smells or grows fur is thrown away, whatever the date says.";
  case Say::card_sheet: return "The supplier’s safety data sheet decides.";
  case Say::warning_not_poured: return "Line {0}: nothing was poured as told. {1}";
  case Say::warning_not_moved: return "Line {0}: the paint was not moved as told. {1}";
  case Say::warning_not_weighed: return "Line {0}: this weighing was left out. {1}";
  case Say::warning_bottle_heavier: return "Line {0}: the bottle weighs more than before. {1}";
  case Say::warning_unknown_recipe:
    return "Line {0} is not in the sums: its recipe makes no sense. {1}";
  case Say::check_damage: return "{0}: line {1}, byte {2}: {3}";
  case Say::check_note: return "note: {0}: line {1}, byte {2}: {3}";
  case Say::check_warning: return "{0} ({1}): {2}";
  case Say::check_summary: return "{0} files, {1} lines: {2} damaged places, {3} notes";
  case Say::check_gone_one: return "note: session {0}: line {1} is gone: {2}";
  case Say::check_gone: return "note: session {0}: lines {1} to {2} are gone: {3}";
  case Say::out_missing: return "“{0}” needs --out: the name of what is to be made.";
  case Say::folder_there:
    return "“{0}” is there already, and nothing is ever written over: name a new folder.";
  case Say::mend_whole: return "{0}: copied";
  case Say::mend_as_it_is:
    return "{0}: copied as it is: no session, or not one that this Slabside can mend";
  case Say::mend_anew: return "{0}: written anew, {1} lines";
  case Say::mend_gone: return "damaged, and nowhere else";
  case Say::mend_lost_end:
    return "{0}: what stood at its end is damaged, by the look of it {1} lines";
  case Say::mend_lost_beginning:
    return "{0}: its first line, made again from the file's name without the time of day";
  case Say::mend_lost_telling:
    return "{0}: line {1} as this file tells it: another one tells it otherwise, and counts";
  case Say::mend_lost_rest:
    return "{0}: what stands from line {1} on: it belongs to another session";
  case Say::mend_lost_file: return "{0}: nothing in it can be believed";
  case Say::mend_lost: return "lost: {0}";
  case Say::mend_summary: return "{1} files in “{0}”, {2} things could not be had back";
  case Say::pack_done: return "packed as {0}: {1} files, {2} bytes";
  case Say::unpack_done: return "unpacked as {0}: {1} files, {2} bytes";
  case Say::pack_left_out: return "left out: {0}: no session and no photo";
  case Say::pack_adrift:
    return "not in it: what was saved in “{0}” while the studio failed. Start Slabside on it once, "
           "and pack again.";
  case Say::pack_refused:
    return "“{0}” was not made: {1}. Move or rename what stands in the way, and pack again.";
  case Say::unpack_refused:
    return "“{0}” was not unpacked, and nothing of it was kept: {1}. Fetch it once more, or ask "
           "whoever made it to pack the studio again.";
  case Say::pack_itself: return "the pack";
  case Say::pack_not_there: return "There is no pack “{0}”.";
  case Say::pack_nothing: return "There is nothing to pack in “{0}”: no session and no photo.";
  case Say::pack_no_zip: return "it is no zip file, or only the first part of one";
  case Say::pack_too_many: return "it has more than {0} entries";
  case Say::pack_too_large: return "it unpacks to more than {0} bytes";
  case Say::pack_swells: return "with the entry “{0}” it unpacks to more than {1} times its size";
  case Say::entry_leaves: return "the name of the entry “{0}” leads to another place";
  case Say::entry_odd_name:
    return "the name of the entry “{0}” has other signs than letters, digits, spaces and plain "
           "marks";
  case Say::entry_not_utf8: return "the name of the entry “{0}” is not UTF-8";
  case Say::entry_shrank: return "“{0}” became shorter while it was read";
  case Say::entry_elsewhere:
    return "the entry “{0}” is neither a session, sessions/….jsonl, nor in photos";
  case Say::entry_twice:
    return "the entry “{0}” is there twice, if capital and small letters are the same";
  case Say::entry_not_plain:
    return "the entry “{0}” is a link, a device or a folder of its own, not a plain file";
  case Say::entry_encrypted: return "the entry “{0}” is encrypted";
  case Say::entry_packing: return "the entry “{0}” is compressed in a way that is not read: {1}";
  case Say::entry_too_large: return "the entry “{0}” has more than {1} bytes";
  case Say::entry_unlike:
    return "the entry “{0}” has another name, or is another thing, at its own place than in the "
           "list";
  case Say::entry_broken: return "the entry “{0}” is broken: {1}";
  case Say::paper_pigment: return "{0}, {1}";
  case Say::sheet_batch: return "batch {0}";
  case Say::sheet_utc: return "times in UTC: the zone is not recorded";
  case Say::sheet_room: return "room";
  case Say::sheet_flow_put_in: return "flow put in";
  case Say::sheet_flow_now: return "flow now";
  case Say::sheet_flow_last: return "flow at the end";
  case Say::sheet_dried: return "mL of water gone";
  case Say::sheet_count_lost: return "count lost";
  case Say::sheet_pans: return "pans and notes";
  case Say::sheet_pan: return "pan {0}: {1}";
  case Say::sheet_again: return "made again after batch {0}";
  case Say::sheet_not_whole: return "not all of this batch could be read";
  case Say::sheet_care: return "to be careful about";
  case Say::care_pigment_not_known:
    return "{0}: not in the catalogue. Its safety data sheet says what to heed.";
  case Say::sheet_foot:
    return "Flow: mL of liquid to 1 mL of pigment. Times of day are those of the slab. This sheet "
           "tells what was recorded there; it certifies nothing.";
  case Say::label_binder: return "{0}, {1} g to 10 g";
  case Say::label_batch: return "{0}, batch {1}";
  case Say::label_see_sheet: return "See the supplier’s safety data sheet.";
  case Say::label_notes: return "notes";
  case Say::labels_ruler: return "50 mm long if it was printed at 100 %";
  case Say::labels_bad_size:
    return "A label is 15 × 8 mm or larger and fits on the sheet, like 38x21: “{0}” is not.";
  case Say::labels_bad_sheet: return "A sheet is a4 or letter, not “{0}”.";
  case Say::labels_bad_count: return "Between 1 and {1} labels, please: “{0}” is not.";
  case Say::labels_too_small:
    return "“{0}” does not fit whole on a label of {1} × {2} mm: say --mm and a larger size.";
  case Say::labels_one_page:
    return "One SVG holds {0} labels of this size: ask for so many, or for an HTML file.";
  case Say::labels_bad_ending: return "Labels are made as .html or .svg: “{0}” ends with neither.";
  case Say::batch_missing: return "“{0}” needs --batch: a name, an id, or “last”.";
  case Say::file_there:
    return "“{0}” is there already, and nothing is ever written over: name a new file.";
  case Say::paper_made: return "made: {0}";
  case Say::batch_of_newer_format: return "Written in part by a newer Slabside: shown, not summed.";
  case Say::batch_damaged: return "a file is damaged: entries may be missing";
  case Say::show_damaged: return "A file of this batch is damaged: entries may be missing.";
  case Say::saved_elsewhere: return "studio fails: saved beside it";
  case Say::help: return help_text;
  }
  return "";
}

}
