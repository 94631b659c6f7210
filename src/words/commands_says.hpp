// What is said of the command line and scripts.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class CommandsSay {
  // lines of a session file
  session_contradicted, // 0: session, 1: number
  // the book
  range_no_pigment,
  range_told,
  show_range,
  show_hand_right,
  show_hand_reaches,
  show_hand_slope,
  show_hand_batches,
  show_hand_slips,
  show_hand_rests_on,
  show_hand_told,
  // what studios tell each other
  tell_nothing,
  hear_nothing,
  hear_done, // 0: pigments, 1: batches
  hear_already,
  hear_older, // 0: path, 1 and 2: batches that it rests on, and those of what counts
  hear_forgotten,
  // photos
  photo_needs_batch,
  photo_bad_of, // 0: word
  photo_kept,   // 0: file
  // a swatch's colour
  colour_bad_box,       // 0: text
  colour_no_swatch,     // 0: photo
  colour_no_such_photo, // 0: batch or path
  colour_which,         // 0: photo
  colour_untold,        // 0: photo, 1: why (words/colour_says.hpp)
  colour_untold_found,  // ... where regions were found, and not named
  colour_where,         // 0: photo, 1: box, 2: boxes of paper
  colour_kept,          // 0: the batch or photo
  colour_lab,           // 0: L*, 1: its doubt, and so on of a* and b*
  colour_d65,           // 0 to 2: L*, a*, b*, 3: as #rrggbb
  match_difference,     // 0: difference, 1: low, 2: high
  match_seen,           // 0: of words/colour_says.hpp
  match_seen_between,   // 0 and 1: two of them
  match_second,         // of two on one photo
  match_new,            // 0: the photo that was named first, 1: what it is held against
  way_in_l,             // 0: "a little darker", 1 and 2: L* from and to, 3: by, 4: nine in ten
  way_in_c,             // ... C*
  way_in_h,             // ... hue in degrees
  match_one_photo,
  match_two_photos,
  // the command line
  no_such_language, // 0: as it was typed, 1: those there are
  unknown_option,
  option_twice,
  option_without_value,
  option_with_value,
  word_missing, // 0: how the command goes
  word_too_many,
  output_failed,
  no_studio,
  bad_fault,
  bad_pace,
  read_with_damage, // 0: places
  // old notes brought in
  bring_no_binder,  // 0: what was asked for, 1: those there are
  bring_bad_column, // 0: text
  bring_bad_word,   // 0: text, 1: option, 2: what it may be
  bring_cell,       // 0: what stands in it
  bring_head,       // 0: file, 1: rows, 2: columns, 3: encoding, 4: separator
  bring_utf8,
  bring_utf16,
  bring_windows_1252,
  bring_commas,
  bring_semicolons,
  bring_tabs,
  bring_bars,
  bring_columns,
  bring_binder_taken,
  bring_amount_of, // 0: column, or card
  bring_decimal_comma,
  bring_recipes,
  bring_row, // 0: row
  bring_fresh,
  bring_newer,
  bring_is_there,
  bring_otherwise,
  bring_is_left,
  bring_part,  // 0: name, 1: amount
  bring_parts, // 0: name, 1: amount; so the next two
  bring_g,
  bring_drop,
  bring_drops,
  bring_spoons, // 2: spoon
  bring_mL,     // 0: mL
  bring_cards,
  bring_unread,
  bring_no_recipe,
  bring_in_note,
  bring_passed, // 0: rows
  bring_taken,  // 0: recipes, 1: folder; so the next one
  bring_would_take,
  bring_newer_taken, // 0: recipes; so the next one
  bring_newer_would_take,
  bring_there, // 0: recipes; so the next one
  bring_left,
  bring_nothing_new,
  bring_nothing,
  count_row,
  count_rows,
  count_column,
  count_columns,
  count_recipe,
  count_recipes,
  // scripts of taps
  not_a_moment,
  script_too_long,
  script_line,
  script_line_too_long,
  script_too_much,
  script_no_such_line,
  script_no_such_pad,
  script_pad_not_there,
  script_number_range, // 3: unit
  script_display,
  script_id,
  script_type,
  script_write,
  script_too_late,
  script_twice, // 0: session
  play_needs_studio,
  play_unsaved_one,
  play_unsaved, // 0: entries, 1: why
  play_fallback,
  // a batch shown
  show_no_batches,
  show_all_discarded,  // 0: the id of one
  show_name_discarded, // 0: name, 1: id
  show_no_batch,
  show_name_twice,
  show_id_twice,
  show_discarded,
  show_title,
  show_room,
  show_guessed,
  show_ratio,
  show_flow_put_in,
  show_flow_now,
  show_over_oil_point,
  show_gum_strength,
  show_gum_per_pigment,
  show_humectant_to_gum,
  show_pigment_fraction,
  show_place,
  show_on_tools, // 0: g
  show_pigment,
  show_liquid,
  show_solids,
  show_water_lost,
  show_material,
  show_swatch,   // 0: L*, 1: its doubt, and so on of a* and b*, 6: as #rrggbb
  show_photo,    // 0: of what, 1: file
  show_of_photo, // 0: a sentence
  show_matched,  // 0: the other batch, 1 to 3: how far apart, 4: what an eye makes of it
  show_ways,     // 0: ways
  show_blame,    // 0: what differs, 1: how unusual that is
  show_weighed,
  show_drop,
  show_drops,
  show_spoons,
  show_count_lost,
  show_pass,
  show_runs,
  show_note,
  list_batch,
  // a studio checked
  check_damage,
  check_note,
  check_warning,
  check_summary, // 0: files, 1: lines, 2: places, 3: notes
  count_file,
  count_files,
  count_line,
  count_lines,
  count_batch,
  count_batches,
  count_pigment,
  count_pigments,
  count_place,
  count_places,
  count_note,
  count_notes,
  count_lost,
  count_losts,
  check_adrift,   // 0: files
  check_gone_one, // 0: session, 1: number, 2: why
  check_gone,     // 0: session, 1: first number, 2: last, 3: why
  // a studio mended, packed and unpacked
  out_missing,   // 0: command
  mend_lost,     // 0: one of these
  mend_still,    // 0: file, 1: line, 2: byte, 3: why
  mend_summary,  // 0: folder, 1: files, 2: things lost
  pack_done,     // 0: file, 1: files, 2: bytes
  unpack_done,   // 0: folder, 1: files, 2: bytes
  pack_left_out, // 0: file
  pack_fallback, // 0: folder
  help,
  // what is handed on
  labels_line_long, // 0: characters
  labels_bad_sheet,
  labels_bad_ending,
  labels_binder_ending, // 0: file
  table_kept_back,
  batch_missing, // 0: command
  file_there,    // 0: file
  paper_made,    // 0: file
  // what is named is not what is wanted
  not_a_file, // 0: path
  not_a_plain_file,
  not_a_studio,
  // what another studio told
  check_cut,      // 0: session, 1: its last line, 2: the line that is named
  unpack_damaged, // 0: damaged places, 1: folder
  hear_refused,   // 0: path, 1: why
  file_refused,   // 0: path, 1: why
  hear_not_believed,
  // a script, played
  script_refused, // 0: digits, 1: why
  script_nothing_down,
  // what the window puts on paper
  labels_batch_or_binder,
  labels_no_binder, // 0: as asked, 1: those there are
  labels_no_binders,
  paints_none,
  paper_no_viewer, // 0: file, 1: program
  paper_not_shown, // likewise
  // the program itself, and a pack that it is to open
  version,     // 0: of the program, 1: of the session format
  pack_opened, // 0: folder
};

constexpr Table table_of(CommandsSay) { return Table::commands; }

std::string_view english(CommandsSay id);
std::string_view help_in_english(); // of all commands; long, and so in a file of its own

}
