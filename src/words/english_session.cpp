#include "words/session_says.hpp"

namespace words {

std::string_view english(SessionSay id) {
  using Say = SessionSay;
  switch (id) {
  case Say::field_missing: return "“{0}” is missing";
  case Say::field_not_a_number: return "“{0}” is not a number";
  case Say::field_out_of_range: return "“{0}” is {1}, which cannot be";
  case Say::field_not_whole: return "“{0}” is not a whole number";
  case Say::field_not_text: return "“{0}” is not text";
  case Say::field_empty: return "“{0}” is empty";
  case Say::field_not_yes_or_no: return "“{0}” is neither true nor false";
  case Say::field_not_object: return "“{0}” is not an object";
  case Say::field_not_list: return "“{0}” is not a list";
  case Say::field_not_a_line: return "“{0}” does not name a line";
  case Say::field_not_a_colour: return "“colour” is not of the form #rrggbb";
  case Say::field_not_a_photo: return "“{0}” does not name a photo";
  case Say::field_twice: return "a field stands there twice";
  case Say::line_too_long: return "the line has {0} bytes; {1} is the most";
  case Say::line_too_deep: return "brackets within brackets, too many";
  case Say::line_not_an_object: return "not a JSON object";
  case Say::line_check_wrong:
    return "the check value does not match the line: it was changed, or belongs to another file";
  case Say::line_without_check: return "the check value at the end is missing";
  case Say::line_blank: return "an empty line, which says nothing: “mend” makes a copy without it";
  case Say::line_not_joined: return "the line that belongs before this one is not there";
  case Say::line_doubled:
    return "line {0} once more, to the last byte: it counts once, and “mend” makes a copy without "
           "the second";
  case Say::line_moved:
    return "it belongs behind line {0}: lines were moved, or others put between them. It counts, "
           "and “mend” makes a copy in the right order";
  case Say::line_number_twice: return "another line bears the number {0} already: that one counts";
  case Say::line_torn:
    return "the last entry was not finished, so it counts for nothing: the power "
           "went as it was written, or the file was cut here. Where a longer "
           "copy of it lies elsewhere, put that in its place";
  case Say::line_no_beginning:
    return "what stands at the end is no entry that was not finished: these bytes were changed";
  case Say::line_ends_changed:
    return "some program has put CR LF at the ends of lines from here on: they count all the same, "
           "and “mend” makes a copy with the right ends";
  case Say::line_of_another:
    return "the lines from here on follow from none of this file, and their clock is another's: "
           "they "
           "are not counted";
  case Say::line_behind_left:
    return "the session was closed before this, so another program put the lines from here on "
           "there. They count; look whether they are yours";
  case Say::line_back_in_time:
    return "by its own clock it was {0} s before the line that stands before it, and that clock "
           "never goes back: amounts count, times around it are not sure";
  case Say::text_not_utf8: return "That text is not readable (not UTF-8): please type it again.";
  case Say::file_without_beginning: return "the file does not start with “began”";
  case Say::file_empty:
    return "nothing stands in it, not even the first line: the power went as it was begun, or it "
           "was emptied";
  case Say::file_has_bom:
    return "some program has put a byte order mark before the first line: all lines count, and "
           "“mend” makes a copy without it";
  case Say::file_of_other_format: return "this is not a session file of ours";
  case Say::file_of_two_sessions:
    return "session {0} begins here inside another, and is not read. Put it into a file of its own";
  case Say::file_of_future_version:
    return "written by a newer Slabside (format {0}): shown without totals";
  case Say::file_not_ended: return "the program stopped without closing this session";
  case Say::card_not_laid_out: return "no session says what “{0}” is";
  case Say::card_is_a_tool: return "“{0}” is a tool, not a material: correct what was added.";
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
  case Say::stage_wetting_out_short: return "knife";
  case Say::stage_resting: return "resting";
  case Say::stage_pass: return "pass {0}";
  case Say::amount_drop: return "1 drop";
  case Say::pvc_number: return "{0} ± {1} %";
  case Say::pvc_words: return "dry: {0} pigment by volume (PVC)";
  case Say::pvc_caption: return "of the dry paint is pigment (PVC)";
  case Say::amount_and: return "{0} and {1}";
  case Say::amount_about: return "{0} (about {1})";
  case Say::amount_in_all: return "about {0}";
  case Say::amount_drops: return "{0} drops";
  case Say::amount_spoons: return "{0} tsp";
  case Say::amount_none: return "none";
  case Say::amount_weighed: return "weighed";
  case Say::did_added: return "{0} {1}";
  case Say::did_pour: return "pan {0} poured";
  case Say::did_pour_pans: return "pans {0} to {1} poured";
  case Say::did_weigh_pan: return "pan {0} weighs {1}";
  case Say::became_good: return "good";
  case Say::became_full: return "full";
  case Say::became_sunken: return "sunken";
  case Say::became_cracked: return "cracked";
  case Say::became_sticky: return "stays tacky";
  case Say::became_rubs_off: return "rubs off";
  case Say::became_wont_rewet: return "won’t re-wet";
  case Say::became_mould: return "mould";
  case Say::ratio_caption: return "g binder to 10 g pigment";
  case Say::trail_caption: return "liquid to pigment, by volume";
  case Say::trail_right: return "right, {0}";
  case Say::trail_empty: return "The trail begins once pigment and binder are in.";
  case Say::plan_guess: return "a guess";
  case Say::known_guess: return "a guess";
  case Say::known_told: return "as told";
  case Say::known_one_batch: return "1 batch";
  case Say::known_batches: return "{0} batches";
  case Say::book_went_in: return "what went in";
  case Say::book_at_slab: return "at the slab";
  case Say::book_no_pass: return "no pass timed";
  case Say::book_room: return "{0} °C, {1} %";
  case Say::since_pour_just: return "just poured";
  case Say::since_pour_first: return "less than a day after the last pour";
  case Say::since_pour_hours: return "{0} h after the last pour";
  case Say::since_pour_day: return "1 day after the last pour";
  case Say::since_pour_days: return "{0} days after the last pour";
  case Say::progress_open: return "on the slab";
  case Say::progress_gathered: return "gathered";
  case Say::progress_closed: return "closed";
  case Say::place_slab: return "slab";
  case Say::place_jar: return "jar";
  case Say::place_pans: return "pans";
  case Say::warning_unknown_event:
    return "Line {0} is of a newer kind, “{1}”: it is not in the sums.";
  case Say::warning_unknown_card:
    return "Line {0} adds “{1}”, and no session says what that is: not in the sums.";
  case Say::warning_unknown_plan:
    return "Line {0} plans with “{1}”, and no session says what that is: it is not asked for.";
  case Say::warning_withdrawn_missing: return "Line {0} takes back line {1}, which is not there.";
  case Say::warning_clock_ahead:
    return "Line {0} is dated more than a day from now: the clock was wrong then, or is wrong now.";
  case Say::warning_corrected_missing: return "Line {0} corrects line {1}, which is not there.";
  case Say::warning_corrected_kind:
    return "Line {0} corrects line {1} to something of another kind: line {1} counts as it was.";
  case Say::warning_corrected_remark:
    return "Line {0} corrects line {1}, which only speaks of another line: it changes nothing. "
           "Correct that other line.";
  case Say::warning_corrected_to_no_name:
    return "Line {0} takes the name of line {1} away and gives no other: the batch keeps the one "
           "it "
           "had.";
  case Say::warning_nameless:
    return "Line {0} opens this batch without a name: give it one in the Book.";
  case Say::warning_amount_unreadable: return "Line {0} is not in the sums. {1}";
  case Say::warning_bottle_heavier:
    return "Line {0}: this weighing of the bottle of “{2}” was left out. {1}";
  case Say::warning_bottle_uncounted:
    return "Line {0}: this weighing of the bottle of “{2}” tells nothing. {1}";
  case Say::warning_not_moved: return "Line {0}: the paint was not moved as told. {1}";
  case Say::warning_not_poured: return "Line {0}: nothing was poured as told. {1}";
  case Say::warning_not_weighed: return "Line {0} was left out. {1}";
  case Say::warning_unknown_recipe:
    return "Line {0} is not in the sums: its recipe makes no sense. {1}";
  case Say::bottle_lost_less:
    return "The bottle lost {0} g, and {1} g was weighed out of it: correct one of the two.";
  case Say::bottle_unchanged:
    return "No drop was counted since it was weighed: weigh before the drops and after.";
  case Say::bottle_uncounted:
    return "{0} g left the bottle and no drop was counted: weigh before the drops and after.";
  case Say::weighed_below_tare:
    return "It weighs {0} g less than what it lies in: correct it, or weigh again.";
  case Say::as_before_nothing:
    return "There is no line {0} before it to be like: take it back, say it again.";
  case Say::poured_into_nothing: return "It names no pan to pour into: take it back, pour again.";
  case Say::poured_into_no_pan: return "“{0}” is no pan: correct what was poured into.";
  case Say::pan_not_laid_out:
    return "No session says what pan “{0}” is: take it back, and pour into one of the shelf.";
  case Say::pan_never_poured:
    return "Pan {0} was never poured: correct the pan's number, or pour it first.";
  case Say::sheet_pan: return "pan {0}: {1}";
  case Say::batch_of_newer_format: return "Written in part by a newer Slabside: shown, not summed.";
  }
  return "";
}

}
