// What is said of Book.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class BookSay {
  book_empty,
  book_damages,
  book_damage,
  book_take_up,
  book_dried_off,
  book_ratio,
  book_flow,
  book_minutes,
  book_passes,
  book_one_pass,
  book_nothing_found,
  book_compare_with,
  book_make_again,
  book_compare,
  book_note,
  book_keep,
  book_rename,
  book_discard,
  book_keep_recipe,
  book_use_recipe,
  book_have_back,
  book_discarded,
  book_discarded_list,
  book_by_colour,
  book_by_date,
  paint_no_swatch,
  paint_batches,   // 0: how many, 1: day of the last
  paint_left_jar,  // 0: mL
  paint_left_pans, // 0: how many
  paint_left_pan,
  paint_left_both, // 0: of the jar, 1: of the pans
  paint_on_slab,
  paint_none_left,
  book_is_discarded,
  book_again_of,
  book_made_again,
  book_cost,    // 0: sum
  cost_pigment, // 0: per cent, and so on
  cost_binder,
  cost_gum,
  cost_honey,
  cost_rest,
  cost_a_pan,        // 0: price
  cost_shares,       // 0: those per cent
  cost_without,      // 0: cards whose price is not known
  cost_without_many, // 0: how many of them
  book_verdict,
  book_of_pan,
  book_one_back,
  compare_flow,
  compare_gum,
  compare_sweet,
  compare_mulled,
  compare_passes,
  compare_celsius,
  compare_humidity,
  compare_became,
  compare_differs,
  reading_files, // 0: read, 1: of so many
  book_paper,
  paper_sheet,
  paper_labels,
  paper_table,
  paper_paint_list,
  paper_swatch_card,
  paper_about,
  paper_of_all, // 0: how many
  paper_label_line,
  paper_mark,
  paper_mark_how,
  paper_marked,    // 0: how many
  paper_of_marked, // likewise
  paper_of_marked_one,
  paper_of_one,
  paper_folder, // 0: folder
  paper_writing,
  paper_written, // 0: file
  paper_by_browser,
  paper_printed, // 0: name
  paper_saved,   // 0: file
};

constexpr Table table_of(BookSay) { return Table::book; }

std::string_view english(BookSay id);

}
