#include "words/notes_says.hpp"

namespace words {

std::string_view english(NotesSay id) {
  using Say = NotesSay;
  switch (id) {
  case Say::file_empty: return "There is nothing in that file.";
  case Say::file_too_large:
    return "A table of old notes has at most {0} MB. Save only the sheet with the recipes.";
  case Say::file_workbook:
    return "That is a spreadsheet's own file, or another packed one. Open it there, and save the "
           "sheet with the recipes as CSV.";
  case Say::file_not_text:
    return "That is no table of text. Save the sheet with the recipes as CSV.";
  case Say::table_quote_open:
    return "The quote with which cell {0} begins is never closed. Close it there, or take it out.";
  case Say::table_cell_too_long: return "Cell {0} is longer than {1} bytes.";
  case Say::table_too_large:
    return "The table has more than {0} cells. Save only the rows with the recipes.";
  case Say::column_not_there: return "There is no column {0}: the last one is {1}.";
  case Say::why_asked: return "as you say";
  case Say::why_empty: return "nothing stands in it";
  case Say::why_heading: return "by its heading";
  case Say::why_heading_card: return "its heading names it, and its cells are amounts";
  case Say::why_cells_amounts: return "{0} of its {1} cells are amounts";
  case Say::why_cells_dates: return "{0} of its {1} cells are dates";
  case Say::why_cells_pigments: return "{0} of its {1} cells name pigments";
  case Say::why_cells_liquids: return "{0} of its {1} cells name liquids";
  case Say::why_first_text: return "the first column of words that are hardly ever the same";
  case Say::why_another_name: return "another column has the name";
  case Say::why_counted: return "its cells count the rows";
  case Say::why_of_heading: return "{0}; its heading says of what";
  case Say::why_of_number: return "{0}; of what, by the number in its heading";
  case Say::why_of_place: return "{0}; of what, by where it stands";
  case Say::why_amount_of_nothing: return "amounts, but of no column that is left";
  case Say::why_nothing_known: return "words that are not known";
  case Say::number_none: return "“{0}” is no number";
  case Say::number_two_ways:
    return "{0} may be read in two ways: say --decimal comma or --decimal point";
  case Say::amount_none: return "no amount";
  case Say::amount_missing: return "its amount is missing";
  case Say::amount_negative: return "{0} is less than nothing";
  case Say::amount_range_falls: return "“{0}” ends lower than it begins";
  case Say::amount_percent: return "percent, and nobody knows of what";
  case Say::amount_heaped: return "“{0}” is no level spoon: say how many level ones it is";
  case Say::amount_no_size: return "“{0}” has no size that is known";
  case Say::amount_unit_unknown: return "“{0}” is no measure that is known";
  case Say::amount_and_more: return "“{0}” stands behind the amount";
  case Say::amount_no_unit: return "no measure: g, drops, spoons?";
  case Say::amount_as_parts:
    return "no measure: taken for parts. Say --column {0}=amount:g, or another measure";
  case Say::amount_of_what: return "an amount, but of what?";
  case Say::amount_otherwise: return "another amount than in {0}";
  case Say::amount_too_large: return "more than {0}";
  case Say::amount_to_parts: return "parts beside other measures: nobody knows how large a part is";
  case Say::amount_powder_in_drops: return "powder does not come in drops";
  case Say::amount_no_dropper: return "drops, and there is no dropper on the shelf";
  case Say::name_unknown: return "“{0}” is not on the shelf";
  case Say::name_pigment: return "“{0}” is a pigment, and no liquid";
  case Say::name_put_away:
    return "“{0}”: the card “{1}” is put away; take it back on the Shelf first";
  case Say::name_of_many: return "“{0}” may be one of several: {1}";
  case Say::date_none: return "no date";
  case Say::date_two_ways: return "day or month first? Say --dates day or --dates month";
  case Say::date_in_future: return "a date in the future";
  case Say::row_no_pigment: return "no pigment";
  case Say::row_twice: return "the same as row {0}";
  case Say::pigments_too_many: return "a recipe has at most {0} pigments";
  case Say::liquids_too_many: return "a recipe has at most {0} liquids";
  case Say::note_shortened: return "of the row's notes only the first {0} characters are kept";
  case Say::card_honey: return "Honey";
  case Say::card_teaspoon: return "teaspoon";
  case Say::card_tablespoon: return "tablespoon";
  }
  return "";
}

}
