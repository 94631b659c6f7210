#include "words/paper_says.hpp"

namespace words {

std::string_view english(PaperSay id) {
  using Say = PaperSay;
  switch (id) {
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
  case Say::sheet_photos: return "photos";
  case Say::photo_slab: return "on the slab";
  case Say::photo_dot: return "test dot";
  case Say::photo_swatch: return "swatch";
  case Say::photo_pan: return "pan";
  case Say::sheet_again: return "made again after batch {0}";
  case Say::sheet_not_whole: return "not all of this batch could be read";
  case Say::sheet_care: return "to be careful about";
  case Say::care_pigment_not_known:
    return "{0}: not in the catalogue. Its safety data sheet says what to heed.";
  case Say::sheet_foot:
    return "Flow: mL of liquid to 1 mL of pigment. Times of day are those of the slab. This sheet "
           "tells what was recorded there; it certifies nothing.";
  case Say::sheet_keeps_amounts: return "The recipe is its maker’s own: amounts are left out.";
  case Say::label_in: return "in {0}";
  case Say::label_throw_away: return "Away with it if it hisses, smells or has fur.";
  case Say::contents_gum: return "gum arabic";
  case Say::contents_water: return "water";
  case Say::contents_honey: return "honey";
  case Say::contents_glycerin: return "glycerin";
  case Say::contents_alcohol: return "alcohol";
  case Say::contents_other: return "preservative";
  case Say::sheets_title: return "{0} batch sheets";
  case Say::labels_title: return "labels of {0} batches";
  case Say::labels_too_many:
    return "These are {0} labels, and {1} at once is the most: search for fewer batches first.";
  case Say::paints_title: return "Paints";
  case Say::paints_about: return "Paints on {1}, by hue and lightness: {0}";
  case Say::paints_guess: return "no swatch yet: its pigment’s colour, a guess";
  case Say::paints_batch: return "{0}, batch {1}";
  case Say::paints_left: return "left: {0}";
  case Say::paints_jar: return "{0} mL in the jar";
  case Say::paints_pans: return "{0} pans";
  case Say::paints_pan: return "1 pan";
  case Say::paints_slab: return "on the slab";
  case Say::paints_none: return "none left";
  case Say::card_title: return "swatch cards of {0} batches";
  case Say::card_paint_here: return "paint here";
  case Say::card_white: return "bare paper";
  case Say::card_grey: return "sRGB {0}";
  case Say::card_how:
    return "Print on the paper that is painted on. The greys are as their numbers say only from a "
           "printer that was measured.";
  case Say::label_batch: return "{0}, batch {1}";
  case Say::label_see_sheet: return "See the supplier’s safety data sheet.";
  case Say::labels_ruler: return "50 mm long if it was printed at 100 %";
  case Say::labels_bad_size:
    return "A label is 15 × 8 mm or larger and fits on the sheet, like 38x21: “{0}” is not.";
  case Say::labels_bad_count: return "Between 1 and {1} labels, please: “{0}” is not.";
  case Say::labels_too_small:
    return "Too many words for a label of {1} × {2} mm. Shorten the name, or say --mm and a larger "
           "size to the command labels. It is: {0}";
  case Say::labels_one_page:
    return "One SVG holds {0} labels of this size: ask for so many, or for an HTML file.";
  case Say::show_damaged: return "A file of this batch is damaged: entries may be missing.";
  case Say::paper_no_batch:
    return "This batch could not be read, so there is nothing to put on paper. See in Book what is "
           "said of it.";
  case Say::paper_no_card:
    return "No card {0} is on the shelf, so there is no label to put on paper.";
  case Say::stem_paints: return "paints";
  case Say::stem_batches: return "{0}-batches";
  case Say::stem_nameless: return "batch";
  case Say::stem_sheet: return "{0}-sheet";
  case Say::stem_labels: return "{0}-labels";
  case Say::stem_table: return "{0}-table";
  case Say::stem_swatch_card: return "{0}-swatch-card";
  case Say::paper_kept_back:
    return "{0} goes by a recipe marked as its maker’s own, so its amounts stay off tables. Its "
           "sheet and its labels can be written.";
  case Say::paper_not_printed:
    return "{0} was not printed, as the browser could not do it: {1}. Tap it once more, or load "
           "this page again.";
  case Say::paper_not_saved:
    return "{0} was not saved, as the browser could not do it: {1}. Tap it once more, or load "
           "this page again.";
  case Say::paper_no_codes:
    return "No labels were made, as what draws the code on them could not be fetched: {0}. Tap "
           "once more when there is a network.";
  }
  return "";
}

}
