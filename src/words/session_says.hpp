// What is said of what happened: lines of a file, notes, stages and warnings.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class SessionSay {
  // lines of a session file
  field_missing,
  field_not_a_number,
  field_out_of_range,
  field_not_whole,
  field_not_text,
  field_empty,
  field_not_yes_or_no,
  field_not_object,
  field_not_list,
  field_not_a_line,
  field_not_a_colour,
  field_not_a_photo, // 0: field
  field_twice,
  line_too_long,
  line_too_deep,
  line_not_an_object,
  line_check_wrong,
  line_without_check,
  line_blank,
  line_not_joined,
  line_number_twice, // 0: number
  line_torn,
  line_no_beginning,
  line_ends_changed,
  line_of_another,
  line_behind_left,
  line_back_in_time, // 0: by how many s
  text_not_utf8,
  file_without_beginning,
  file_of_other_format,
  file_of_two_sessions, // 0: the second's id
  file_of_future_version,
  file_not_ended,
  card_not_laid_out,
  card_is_a_tool, // 0: its name
  // feel notes, specks, troubles
  feel_wont_move,
  feel_too_sticky,
  feel_right,
  feel_too_loose,
  feel_too_runny,
  specks_many,
  specks_few,
  specks_none,
  trouble_wont_wet,
  trouble_gelling,
  trouble_gummy,
  trouble_gritty,
  trouble_foams,
  trouble_separates,
  trouble_smells,
  // stages
  stage_wetting_out_short,
  stage_resting,
  stage_pass,
  // amounts
  amount_drop,
  amount_drops,
  pvc_number,
  pvc_words,
  pvc_caption,
  amount_and,
  amount_about,  // 0: as counted, 1: in spoons
  amount_in_all, // 0: in spoons
  amount_spoons,
  amount_none,
  amount_weighed,
  // what one entry did, after the name of the material
  did_added,
  did_pour,
  did_pour_pans,
  did_weigh_pan,
  became_good,
  became_full,
  became_sunken,
  became_cracked,
  became_sticky,
  became_rubs_off,
  became_wont_rewet,
  became_mould,
  // where the paint stands
  ratio_caption,
  // the trail
  trail_caption,
  trail_right,
  trail_empty,
  // planning
  plan_guess,
  // the book
  known_guess,
  known_told,
  known_one_batch,
  known_batches,
  book_went_in,
  book_at_slab,
  book_no_pass,
  book_room,
  // pans
  since_pour_just,
  since_pour_first,
  since_pour_hours,
  since_pour_day,
  since_pour_days,
  // the book, found and compared
  progress_open,
  progress_gathered,
  progress_closed,
  // a batch shown
  place_slab,
  place_jar,
  place_pans,
  warning_unknown_event,
  warning_unknown_card,
  warning_unknown_plan,
  warning_withdrawn_missing,
  warning_clock_ahead,
  warning_corrected_missing, // as withdrawn_missing
  warning_corrected_kind,
  warning_corrected_remark,
  warning_corrected_to_no_name,
  warning_nameless,
  warning_amount_unreadable,
  warning_bottle_heavier, // 1: why, 2: of what
  warning_bottle_uncounted,
  warning_not_moved,
  warning_not_poured,
  warning_not_weighed,
  warning_unknown_recipe,
  // why a line is left out
  bottle_lost_less, // 0: g lost, 1: g weighed out of it
  bottle_unchanged,
  bottle_uncounted,   // 0: g
  weighed_below_tare, // 0: by g
  as_before_nothing,  // 0: line
  poured_into_nothing,
  poured_into_no_pan, // 0: name
  pan_not_laid_out,   // 0: card
  pan_never_poured,   // 0: number
  // what is handed on
  sheet_pan, // 0: number, 1: verdict
  batch_of_newer_format,
  // more of a session file
  line_doubled, // 0: line of the file that is the same
  line_moved,   // 0: line of the file that it follows from
  file_empty,
  file_has_bom,
};

constexpr Table table_of(SessionSay) { return Table::session; }

std::string_view english(SessionSay id);

}
