#include "words/book_says.hpp"

namespace words {

std::string_view english(BookSay id) {
  using Say = BookSay;
  switch (id) {
  case Say::book_empty:
    return "No batch yet. Under Plan, choose a pigment, weigh it and tap begin: the batch comes "
           "here.";
  case Say::book_damages:
    return "{0} places in the files could not be read: “slabside check” names them";
  case Say::book_damage: return "1 place in the files could not be read: “slabside check” names it";
  case Say::book_take_up: return "take up again";
  case Say::book_dried_off: return "{0} mL of water dried off";
  case Say::book_ratio: return "g binder to 10 g";
  case Say::book_flow: return "flow {0}";
  case Say::book_minutes: return "{0} min";
  case Say::book_passes: return "{0} passes, {1} min";
  case Say::book_one_pass: return "1 pass, {0} min";
  case Say::book_nothing_found: return "No batch bears that. Try a pigment, a verdict or a month.";
  case Say::book_compare_with: return "Compare {0} with which?";
  case Say::book_make_again: return "make again";
  case Say::book_compare: return "compare";
  case Say::book_note: return "note";
  case Say::book_keep: return "keep it";
  case Say::book_rename: return "rename";
  case Say::book_discard: return "discard";
  case Say::book_keep_recipe: return "keep as recipe";
  case Say::book_use_recipe: return "plan by recipe";
  case Say::book_have_back: return "have it back";
  case Say::book_discarded: return "discarded";
  case Say::book_discarded_list: return "Discarded: they teach nothing; what they took is used up.";
  case Say::book_by_colour: return "by colour";
  case Say::book_by_date: return "by date";
  case Say::paint_no_swatch: return "no swatch yet";
  case Say::paint_batches: return "{0} batches, {1}";
  case Say::paint_left_jar: return "{0} mL";
  case Say::paint_left_pans: return "{0} pans";
  case Say::paint_left_pan: return "1 pan";
  case Say::paint_left_both: return "{0}, {1}";
  case Say::paint_on_slab: return "on the slab";
  case Say::paint_none_left: return "none left";
  case Say::book_is_discarded: return "Discarded: it stands in no list and teaches nothing.";
  case Say::book_again_of: return "again of {0}";
  case Say::book_cost: return "cost {0}";
  case Say::cost_pigment: return "pigment {0} %";
  case Say::cost_binder: return "binder {0} %";
  case Say::cost_gum: return "gum {0} %";
  case Say::cost_honey: return "honey and glycerin {0} %";
  case Say::cost_rest: return "the rest {0} %";
  case Say::cost_a_pan: return "a pan {0}";
  case Say::cost_shares: return "of the cost: {0}";
  case Say::cost_without: return "no price known: {0}";
  case Say::cost_without_many: return "materials without a price: {0}";
  case Say::book_made_again: return "made again as {0}";
  case Say::book_verdict: return "{0}: {1}";
  case Say::book_of_pan: return "{0} (pan {1})";
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
  case Say::reading_files: return "Reading the studio: {0} of {1} files …";
  case Say::book_paper: return "on paper";
  case Say::paper_sheet: return "sheet";
  case Say::paper_labels: return "labels";
  case Say::paper_table: return "table";
  case Say::paper_paint_list: return "list of paints";
  case Say::paper_swatch_card: return "swatch card";
  case Say::paper_about:
    return "Sheet: a page for each batch, with its trail. Labels: for the pans. Table: for a "
           "spreadsheet. List of paints: all swatches. Swatch card: empty fields to brush paint "
           "on.";
  case Say::paper_of_all: return "All {0} that are listed, on paper:";
  case Say::paper_label_line: return "your line on labels, as whom to ask";
  case Say::paper_mark: return "only some";
  case Say::paper_mark_how: return "Tap each batch that goes on paper.";
  case Say::paper_marked: return "on paper: {0}";
  case Say::paper_of_marked: return "The {0} that you chose, on paper:";
  case Say::paper_of_marked_one: return "The one that you chose, on paper:";
  case Say::paper_of_one: return "The one that is listed, on paper:";
  case Say::paper_folder: return "Goes into {0}, and is opened to be printed.";
  case Say::paper_writing: return "Being written …";
  case Say::paper_written: return "Written: {0}";
  case Say::paper_by_browser: return "Goes to this browser’s print; a table is saved as a file.";
  case Say::paper_printed: return "Handed to this browser’s print: {0}";
  case Say::paper_saved: return "Saved by this browser as {0}";
  }
  return "";
}

}
