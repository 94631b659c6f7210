// What is said of old notes: of a file, its columns and its cells.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class NotesSay {
  // a file
  file_empty,
  file_too_large, // 0: megabytes
  file_workbook,
  file_not_text,
  table_quote_open,    // 0: cell
  table_cell_too_long, // 0: cell, 1: bytes
  table_too_large,     // 0: cells
  column_not_there,    // 0: column, 1: the last
  // why a column is taken for what it is
  why_asked,
  why_empty,
  why_heading,
  why_heading_card,
  why_cells_amounts, // 0: cells, 1: of so many; so the next three
  why_cells_dates,
  why_cells_pigments,
  why_cells_liquids,
  why_first_text,
  why_another_name,
  why_counted,
  why_of_heading, // 0: why it is of amounts; so the next two
  why_of_number,
  why_of_place,
  why_amount_of_nothing,
  why_nothing_known,
  // an amount
  number_none,     // 0: text
  number_two_ways, // 0: text
  amount_none,
  amount_missing,
  amount_negative,    // 0: text
  amount_range_falls, // 0: text
  amount_percent,
  amount_heaped,       // 0: text
  amount_no_size,      // 0: text
  amount_unit_unknown, // 0: text
  amount_and_more,     // 0: text
  amount_no_unit,
  amount_as_parts, // 0: column
  amount_of_what,
  amount_otherwise, // 0: cell
  amount_too_large, // 0: most
  amount_to_parts,
  amount_powder_in_drops,
  amount_no_dropper,
  // a name
  name_unknown,  // 0: text
  name_pigment,  // 0: text
  name_put_away, // 0: text, 1: the card's name
  name_of_many,  // 0: text, 1: those it may mean
  // a date
  date_none,
  date_two_ways,
  date_in_future,
  // a row
  row_no_pigment,
  row_twice,         // 0: row
  pigments_too_many, // 0: most
  liquids_too_many,  // 0: most
  note_shortened,    // 0: characters
  // cards that old notes need
  card_honey,
  card_teaspoon,
  card_tablespoon,
};

constexpr Table table_of(NotesSay) { return Table::notes; }

std::string_view english(NotesSay id);

}
