// Every sentence the program says, by id. Screens and rooms hold ids and numbers; the words are
// made from them last, here, so that another language is another file beside english.cpp.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace words {

enum class Say {
  none,
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
  honey_index_out_of_range,
  strength_out_of_reach,
  water_more_than_there,
  density_out_of_reach,
  not_a_share,
  recipe_too_dry,
  // air, drying and what a bench teaches
  pressure_out_of_range, // 0: kPa, 1: least, 2: most
  frost_not_dew,
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
  gauge_out_of_range, // 0: reading, 1: largest
  limits_out_of_order,
  readings_too_few,
  not_declining,
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
  // what holds for every batch, shown before one opens
  care_mask,
  care_no_food_tools,
  care_children,
  care_gloves,
  care_wipe_wet,
  care_sheet_first,
  // lines of a session file
  field_missing,
  field_not_a_number,
  field_out_of_range,
  field_not_whole,
  field_not_text,
  field_not_yes_or_no,
  field_not_object,
  field_not_a_line,
  field_not_a_colour,
  field_not_a_photo, // 0: field
  field_twice,
  line_too_long,
  line_too_deep,
  line_not_an_object,
  line_check_wrong,
  line_without_check,
  line_not_joined,
  line_number_twice, // 0: number
  line_torn,
  text_not_utf8,
  file_without_beginning,
  file_of_other_format,
  file_of_two_sessions, // 0: the second's id
  session_misses_one,   // 0: session, 1: number
  session_misses,       // 0: session, 1: first number, 2: last
  session_contradicted, // 0: session, 1: number
  file_of_future_version,
  file_not_ended,
  card_not_laid_out,
  // planning
  plan_still_reading,
  plan_choose_pigment,
  plan_needs_name,
  text_shortened,
  // the strip
  tab_shelf,
  tab_pans,
  tab_plan,
  tab_slab,
  tab_book,
  tablet_unreadable,
  file_not_kept,
  tablet_keys,
  tablet_size,
  display_small,
  display_may_sleep,
  display_kept_awake,
  card_hold,
  card_fit,
  card_smaller,
  card_larger,
  card_much_smaller,
  card_much_larger,
  hand_left,
  hand_right,
  motion_on,
  motion_off,
  key_binder,
  key_water,
  key_honey,
  key_undo,
  key_pass,
  key_none,
  key_press_now,
  wipe_glass,
  wiping_hold,
  // pads of the slab
  pad_another,
  pad_bottle,
  pad_undo,
  pad_gather,
  pad_gather_what,
  pad_back,
  pad_close,
  pad_close_what,
  pad_dot,
  pad_trouble,
  pad_leave,
  pad_leave_number,
  pad_enter,
  pad_erase,
  pad_lost_count,
  undo_nothing,
  undo_unsaved,
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
  sign_wont_wet,
  sign_gelling,
  sign_gummy,
  sign_gritty,
  sign_foams,
  sign_separates,
  sign_smells,
  // stages
  stage_wet_out,
  stage_wetting_out,
  stage_wetting_out_short,
  stage_mull,
  stage_mulling,
  stage_scrape,
  stage_resting,
  stage_pass,
  stage_with_knife,
  // amounts
  amount_drop,
  amount_drops,
  amount_spoons,
  amount_grams,
  amount_weigh,
  amount_none,
  amount_weighed,
  // what one entry did, after the name of the material
  did_added,
  did_bottle,
  did_lost_count,
  did_opened,
  did_room,
  did_gathered,
  did_move,
  did_lose,
  did_weigh_paint,
  did_as_before,
  much_all,
  much_half,
  much_share,
  did_closed,
  did_unknown,
  did_found_wet,
  did_found_dry,
  did_pour,
  did_pour_pans,
  did_weigh_pan,
  did_see_cautions,
  became_good,
  became_full,
  became_sunken,
  became_cracked,
  became_sticky,
  became_rubs_off,
  became_wont_rewet,
  became_mould,
  did_other,
  // where the paint stands
  ratio_caption,
  ratio_none,
  no_batch,
  advice_guess,
  advice_weigh_pigment,
  advice_first_helping,
  advice_add,
  advice_add_by_knife,
  advice_judge_by_knife,
  advice_mull_and_judge,
  advice_there,
  advice_let_dry,
  advice_let_dry_or_pigment,
  advice_gathered,
  gum_too_little,
  gum_short,
  gum_enough,
  gum_too_much,
  sweet_enough,
  sweet_too_much,
  dried_off,
  dust_mask,
  not_saved,
  entries_left_out,
  entry_left_out,
  not_counted_bounced,
  not_counted_slid,
  not_counted_rested,
  not_counted_other_finger,
  // the trail
  trail_caption,
  trail_right_guess,
  trail_empty,
  trail_gathered,
  // what opens in the middle of the slab
  ask_amount,
  ask_bottle,
  ask_specks,
  ask_trouble,
  ask_grams_of,
  ask_bottle_of,
  ask_pigment_grams,
  ask_celsius,
  ask_humidity,
  // planning
  plan_search,
  plan_name,
  plan_weigh,
  plan_not_weighed,
  plan_begin,
  plan_guess,
  plan_celsius,
  plan_humidity,
  plan_first_helping,
  plan_care_in_short,
  plan_nothing_found,
  page_back,
  page_on,
  // the book
  book_empty,
  book_damages,
  book_damage,
  book_to_list,
  book_take_up,
  book_went_in,
  book_dried_off,
  book_ratio,
  book_flow,
  book_at_slab,
  book_minutes,
  book_passes,
  book_one_pass,
  book_no_pass,
  book_room,
  progress_open,
  progress_gathered,
  progress_closed,
  date_time,
  month_names,
  font_missing,
  // the command line, the window and the pictures
  option_bad_value,
  option_missing,
  window_not_opened,
  display_lost,
  display_lost_unsaved,
  left_unsaved,
  picture_no_pad,
  picture_not_drawn,
  picture_not_written,
  // the disk, saving and reading
  disk_write_failed,
  disk_force_failed,
  disk_open_failed,
  disk_folder_failed,
  disk_read_failed,
  disk_list_failed,
  disk_rename_failed,
  disk_keep_failed, // 0: path
  came_home,        // 0: files
  // photos
  photo_not_there, // 0: path
  photo_empty,
  photo_too_long, // 0: bytes at most
  photo_not_known,
  photo_without_size,
  photo_too_large, // 0: wide, 1: high, 2: megapixels at most
  photo_not_decoded,
  photo_needs_batch,
  photo_bad_of,  // 0: word
  photo_kept,    // 0: file
  photo_missing, // 0: file, 1: batch
  photo_changed, // as photo_missing
  // the command line
  unknown_option,
  option_twice,
  option_without_value,
  option_with_value,
  word_missing,
  word_too_many,
  no_studio,
  bad_fault,
  bad_pace,
  read_with_damage,
  // scripts of taps
  not_a_moment,
  script_not_there,
  script_too_long,
  script_line,
  script_line_too_long,
  script_too_much,
  script_no_such_line,
  script_no_such_pad,
  script_pad_not_there,
  script_number_range,
  script_display,
  script_id,
  script_type,
  script_write,
  script_too_late,
  play_needs_studio,
  play_unsaved,
  play_adrift,
  // a batch shown
  show_no_batches,
  show_no_batch,
  show_name_twice,
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
  place_slab,
  place_jar,
  place_pans,
  show_pigment,
  show_liquid,
  show_solids,
  show_water_lost,
  show_material,
  show_weighed,
  show_drops,
  show_spoons,
  show_count_lost,
  show_pass,
  show_runs,
  show_note,
  list_batch,
  warning_unknown_event,
  warning_unknown_card,
  warning_withdrawn_missing,
  warning_clock_ahead,
  another_clock_ahead,
  another_device_wrote,
  reading_files,             // 0: read, 1: of so many
  warning_corrected_missing, // as withdrawn_missing
  warning_corrected_kind,
  warning_amount_unreadable,
  warning_bottle_heavier,
  warning_not_moved,
  warning_not_poured,
  warning_not_weighed,
  warning_unknown_recipe,
  // a studio checked
  check_damage,
  check_note,
  check_warning,
  check_summary,
  check_gone_one, // 0: session, 1: number, 2: why
  check_gone,     // 0: session, 1: first number, 2: last, 3: why
  // a studio mended, packed and unpacked
  out_missing,   // 0: command
  folder_there,  // 0: folder
  mend_whole,    // 0: file
  mend_as_it_is, // 0: file
  mend_anew,     // 0: file, 1: lines
  mend_gone,
  mend_lost_end,       // 0: file, 1: lines
  mend_lost_beginning, // 0: file
  mend_lost_telling,   // 0: file, 1: number
  mend_lost_rest,      // 0: file, 1: line
  mend_lost_file,      // 0: file
  mend_lost,           // 0: one of these
  mend_summary,        // 0: folder, 1: files, 2: things lost
  pack_done,           // 0: file, 1: files, 2: bytes
  unpack_done,         // 0: folder, 1: files, 2: bytes
  pack_left_out,       // 0: file
  pack_adrift,         // 0: folder
  pack_refused,        // 0: file, 1: why, one of these:
  unpack_refused,      // the same
  pack_itself,
  pack_not_there, // 0: file
  pack_nothing,   // 0: studio
  pack_no_zip,
  pack_too_many,  // 0: entries at most
  pack_too_large, // 0: bytes at most
  pack_swells,    // 0: entry, 1: times at most
  entry_leaves,   // 0: entry, in all of these
  entry_odd_name,
  entry_not_utf8,
  entry_shrank,
  entry_elsewhere,
  entry_twice,
  entry_not_plain,
  entry_encrypted,
  entry_packing,   // 1: how
  entry_too_large, // 1: bytes at most
  entry_broken,    // 1: why
  entry_unlike,
  help,
  saved_elsewhere,
  batch_damaged,
  batch_of_newer_format,
  show_damaged,
};

// The sentence with {0}, {1} ... where the arguments go.
std::string_view pattern(Say id);

enum class Language { english, pseudo };

// What say() speaks from now on, English until then. For the start of a program, before any other
// thread speaks.
void say_in(Language language);

// English as another language might look: about 30 % longer, with marks on its letters, the slots
// as they are. It shows what would not fit or has no glyph before there is a translator; nobody is
// offered it.
std::string pseudo(std::string_view english);

// The finished sentence. An argument that the pattern does not name is left out.
std::string say(Say id, const std::vector<std::string>& args = {});

// A number with so many digits behind the point; "-0.0" is written "0.0".
std::string fixed(double value, int decimals);

}
