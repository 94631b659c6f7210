// What is said of what is handed on: batch sheet, labels and tables.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class PaperSay {
  paper_pigment, // 0: name, 1: Colour Index name
  sheet_batch,
  sheet_utc,
  sheet_room,
  sheet_flow_put_in,
  sheet_flow_now,
  sheet_flow_last,
  sheet_dried,
  sheet_count_lost,
  sheet_pans,
  sheet_photos,
  photo_slab,
  photo_dot,
  photo_swatch,
  photo_pan,
  sheet_again, // 0: batch
  sheet_not_whole,
  sheet_care,
  care_pigment_not_known,
  sheet_foot,
  sheet_keeps_amounts,
  label_in, // 0: "gum arabic, honey"
  label_throw_away,
  contents_gum,
  contents_water,
  contents_honey,
  contents_glycerin,
  contents_alcohol,
  contents_other,
  sheets_title,    // 0: how many
  labels_title,    // 0: of how many
  labels_too_many, // 1: the most
  paints_title,
  paints_about, // 0: how many, 1: day
  paints_guess,
  paints_batch, // 0: day, 1: id, 2: how many batches
  paints_left,  // 0: what is
  paints_jar,   // 0: mL
  paints_pans,  // 0: how many
  paints_pan,
  paints_slab,
  paints_none,
  card_title, // 0: of how many
  card_paint_here,
  card_white,
  card_grey, // 0: value
  card_how,
  label_batch, // 0: date, 1: id
  label_see_sheet,
  labels_ruler,
  labels_bad_size,
  labels_bad_count, // 1: the most
  labels_too_small,
  labels_one_page,
  show_damaged,
  // of the file that it becomes
  paper_no_batch,
  paper_no_card, // 0: card
  stem_paints,
  stem_batches, // 0: how many
  stem_nameless,
  stem_sheet,        // 0: of what
  stem_labels,       // likewise
  stem_table,        // likewise
  stem_swatch_card,  // likewise
  paper_kept_back,   // 0: batch
  paper_not_printed, // 0: file, 1: the browser's own words
  paper_not_saved,   // likewise
  paper_no_codes,    // 0: the browser's own words
};

constexpr Table table_of(PaperSay) { return Table::paper; }

std::string_view english(PaperSay id);

}
