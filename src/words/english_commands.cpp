#include "words/commands_says.hpp"

namespace words {

std::string_view english(CommandsSay id) {
  using Say = CommandsSay;
  switch (id) {
  case Say::session_contradicted:
    return "session {0}: two files tell line {1} differently; one of them counts";
  case Say::tell_nothing:
    return "No pigment of the catalogue was felt here yet, so there is nothing to tell.";
  case Say::hear_nothing: return "Nothing was told to this studio, so nothing was changed.";
  case Say::not_a_file: return "“{0}” is a folder, and a file is wanted.";
  case Say::not_a_plain_file: return "“{0}” is no plain file, but a pipe or a device.";
  case Say::not_a_studio:
    return "“{0}” is no studio: other things lie in it, and no folder “sessions”. Name the folder "
           "that "
           "holds one.";
  case Say::check_cut:
    return "session {0} ends at line {1}, and another names its line {2}: it was cut. Put a whole "
           "copy of its file in its place, from another device or from a pack.";
  case Say::unpack_damaged:
    return "What was packed had {0} already: ask for it once more where it comes from. What can be "
           "read counts; “slabside mend --studio {1} --out NEWDIR” makes a copy without damage.";
  case Say::file_refused: return "“{0}” was not taken. {1}";
  case Say::hear_refused: return "“{0}” was not heard. {1}";
  case Say::hear_not_believed:
    return "The feel notes of this studio speak against it: it is kept, and not believed as long "
           "as they do.";
  case Say::hear_done: return "Heard: {0}, from {1}. Your own notes outweigh it as they come.";
  case Say::hear_already: return "That file counts already, so nothing was written.";
  case Say::hear_older:
    return "“{0}” was not heard: it rests on {1} of that studio's batches, and what counts already "
           "on "
           "{2}. To go back to it all the same, say “slabside hear --no-more” first.";
  case Say::hear_forgotten: return "What was told counts no more.";
  case Say::bring_no_binder: return "There is no binder “{0}” on the shelf. There are: {1}.";
  case Say::bring_bad_column:
    return "“{0}” says nothing of a column: it looks like C=amount or D=binder:drops, each column "
           "once, and a column is skip, name, pigment, amount, binder, honey, glycerin, water, "
           "wetting_aid, date or note.";
  case Say::bring_bad_word: return "“{0}” is nothing that {1} can be: it is {2}.";
  case Say::bring_cell: return "“{0}”";
  case Say::bring_head: return "{0}: {1}, {2}; {3}, {4} between cells";
  case Say::bring_utf8: return "UTF-8";
  case Say::bring_utf16: return "UTF-16";
  case Say::bring_windows_1252: return "Latin-1";
  case Say::bring_commas: return "commas";
  case Say::bring_semicolons: return "semicolons";
  case Say::bring_tabs: return "tabs";
  case Say::bring_bars: return "bars";
  case Say::bring_columns: return "Columns, each with why it is taken for that";
  case Say::bring_binder_taken:
    return "Where a cell names no binder, one of the shelf is taken: each recipe says which. "
           "--binder CARD names another.";
  case Say::bring_amount_of: return "amount of {0}";
  case Say::bring_decimal_comma: return ", decimal comma";
  case Say::bring_recipes: return "Recipes";
  case Say::bring_row: return "row {0}";
  case Say::bring_fresh: return "new";
  case Say::bring_newer: return "read anew";
  case Say::bring_is_there: return "there already";
  case Say::bring_otherwise: return "there, but otherwise";
  case Say::bring_is_left: return "left out";
  case Say::bring_part: return "{0} {1} part";
  case Say::bring_parts: return "{0} {1} parts";
  case Say::bring_g: return "{0} {1} g";
  case Say::bring_drop: return "{0} {1} drop";
  case Say::bring_drops: return "{0} {1} drops";
  case Say::bring_spoons: return "{0} {1} × {2}";
  case Say::bring_mL: return "{0} mL";
  case Say::bring_cards: return "New on the shelf with them";
  case Say::bring_unread: return "Not understood";
  case Say::bring_no_recipe: return "→ its row is left out";
  case Say::bring_in_note: return "→ it stands in the recipe's note";
  case Say::bring_passed: return "Passed over, since no pigment stands there: row {0}";
  case Say::bring_taken: return "{0} taken into “{1}”.";
  case Say::bring_would_take:
    return "Nothing was taken yet. With --take {0} would be taken into “{1}”.";
  case Say::bring_newer_taken: return "Read anew: {0}, in place of what was brought before.";
  case Say::bring_newer_would_take:
    return "With --take {0} would be read anew, in place of what was brought before.";
  case Say::bring_there: return "There already: {0}, which stay as they are.";
  case Say::bring_left: return "Left out: {0}. Mend the cells named above, and bring it again.";
  case Say::bring_nothing_new: return "There is nothing new in it: all of it was brought before.";
  case Say::bring_nothing:
    return "No row of it is a recipe. Say what its columns hold, as in --column B=pigment "
           "--column C=amount.";
  case Say::count_row: return "1 row";
  case Say::count_rows: return "{0} rows";
  case Say::count_column: return "1 column";
  case Say::count_columns: return "{0} columns";
  case Say::count_recipe: return "1 recipe";
  case Say::count_recipes: return "{0} recipes";
  case Say::range_told: return "as another studio told";
  case Say::range_no_pigment:
    return "There is no pigment {0} on this shelf. “slabside range” names those that were felt.";
  case Say::show_range:
    return "{0}: wants {1} mL to 1 mL ({2} to {3}), right from {4} to {5}; {6}, {7}";
  case Say::show_hand_right: return "right           {0} to either side, in ln flow";
  case Say::show_hand_reaches: return "beyond it       too sticky for {0}, too loose for {1}";
  case Say::show_hand_slope: return "told apart      {0}, the slope of the notes";
  case Say::show_hand_batches: return "differences     {0} between batches, {1} between pigments";
  case Say::show_hand_slips: return "slips           {0} % of the notes";
  case Say::show_hand_rests_on: return "rests on        {0} of {1}";
  case Say::show_hand_told: return "                and on what another studio told";
  case Say::photo_needs_batch:
    return "A photo wants its batch (--batch) and what it is of (--of dot, swatch, pan or slab).";
  case Say::photo_bad_of: return "A photo is of a dot, a swatch, a pan or the slab, not of “{0}”.";
  case Say::photo_kept: return "kept as {0}";
  case Say::colour_bad_box:
    return "“{0}” is no region: it wants left,top,width,height in whole pixels of the upright "
           "photo.";
  case Say::colour_no_swatch:
    return "{0}: no swatch is seen on it, with bare paper all around: say with --swatch X,Y,W,H "
           "and "
           "--paper X,Y,W,H where they are. Pale paint too can be read so, unless it is as white "
           "as "
           "its paper.";
  case Say::colour_no_such_photo:
    return "“{0}” is neither a photo nor a batch that a photo of a swatch was kept with.";
  case Say::colour_which:
    return "{0}: there are two swatches on it, and nothing was kept: say with --swatch which one "
           "is "
           "of the batch.";
  case Say::colour_untold: return "{0}: the colour cannot be told: {1}.";
  case Say::colour_untold_found:
    return "{0}: the colour cannot be told: {1}. Another place is named with --swatch X,Y,W,H and "
           "--paper X,Y,W,H.";
  case Say::colour_where: return "{0}, swatch at {1}, places with bare paper: {2}";
  case Say::colour_kept: return "{0}, as it was read and kept";
  case Say::colour_lab:
    return "  L* {0} ± {1}   a* {2} ± {3}   b* {4} ± {5}   (D50, the paper as white; ± is 95 %)";
  case Say::colour_d65: return "  L* {0}   a* {1}   b* {2}   (D65)   on a screen {3}";
  case Say::match_difference: return "difference {0} (CIEDE2000), nine in ten {1} to {2}";
  case Say::match_seen: return "  {0}";
  case Say::match_seen_between: return "  from “{0}” to “{1}”";
  case Say::match_second: return "  the second beside the first:";
  case Say::match_new: return "  {0} beside {1}:";
  case Say::way_in_l: return "    {0}: L* {1} to {2} ({3} ± {4} of the difference)";
  case Say::way_in_c: return "    {0}: C* {1} to {2} ({3} ± {4} of the difference)";
  case Say::way_in_h: return "    {0}: h {1}° to {2}° ({3} ± {4} of the difference)";
  case Say::match_one_photo: return "  both on one photo, under one light: the surest way";
  case Say::match_two_photos:
    return "  on two photos, which may differ by themselves: both swatches on one photo tell more";
  case Say::no_such_language:
    return "There is no language “{0}” here. Behind --language stands one of these: {1}.";
  case Say::unknown_option:
    return "There is no option {0} here. “slabside help” names those there are.";
  case Say::option_twice: return "The option {0} stands there twice.";
  case Say::option_without_value: return "The option {0} wants something behind it.";
  case Say::option_with_value: return "The option {0} takes nothing behind it.";
  case Say::word_missing: return "A word is missing: {0}";
  case Say::word_too_many: return "“{0}” is one word too many.";
  case Say::output_failed:
    return "What was to be said here could not be written: the output takes no more.";
  case Say::no_studio: return "There is no studio folder “{0}”.";
  case Say::bad_fault: return "“{0}” is no fault this program can play.";
  case Say::bad_pace: return "A pace lies between 0.001 and 1000000: {0} does not.";
  case Say::read_with_damage:
    return "Not all could be read: {0}. “slabside check” says where and why.";
  case Say::not_a_moment: return "“{0}” is no moment: it looks like 2026-11-20T14:02:00+01:00.";
  case Say::script_too_long: return "A script has at most {0} bytes.";
  case Say::script_line: return "Line {0}: {1}";
  case Say::script_line_too_long: return "A line has at most {0} bytes.";
  case Say::script_too_much:
    return "Up to here that is more than 100,000 taps or 10,000,000 seconds.";
  case Say::script_no_such_line: return "“{0}” is nothing a script can say.";
  case Say::script_no_such_pad: return "There is no pad “{0}”.";
  case Say::script_pad_not_there: return "The pad “{0}” is not there now. There are: {1}.";
  case Say::script_number_range: return "{0} is not between {1} and {2}{3}.";
  case Say::script_display:
    return "A display looks like 218x136 (mm, 50 to 1000 each), then left or right.";
  case Say::script_id: return "“{0}” is no id: {1} digits, 0 to 9 and a to f.";
  case Say::script_refused: return "{0} does not go in: {1}";
  case Say::script_nothing_down:
    return "No finger is down: “down PAD” comes before “slide” and “up”.";
  case Say::script_type: return "“{0}” cannot be typed: at most 8 digits, with a point or a comma.";
  case Say::script_write:
    return "Fields to write in are name, search, note, batch_name, label_line; on a card "
           "card_name, card_lot, made_on, keep_until; of a jar currency, jar_lot, bought_on.";
  case Say::script_too_late: return "That must stand before the first line that does something.";
  case Say::script_twice:
    return "Session {0} is in this studio already: the script was played here before. Play it into "
           "another studio, or give it another “seed” or “session”.";
  case Say::play_needs_studio: return "Where to? A script wants --studio and a folder.";
  case Say::play_unsaved_one: return "1 entry is not saved. {1}";
  case Say::play_unsaved: return "{0} entries are not saved. {1}";
  case Say::play_fallback: return "The studio failed. What came after is kept in “{0}”.";
  case Say::show_no_batches: return "There is no batch in this studio yet.";
  case Say::show_all_discarded:
    return "Every batch of this studio is discarded. One by its id, as “{0}”, can still be shown.";
  case Say::show_name_discarded:
    return "The batch “{0}” is discarded. By its id it can still be shown: {1}.";
  case Say::show_no_batch: return "There is no batch “{0}”.";
  case Say::show_id_twice: return "More than one batch begins with “{0}”: say {1} or {2}.";
  case Say::show_discarded: return "  discarded: it stands in no list and teaches nothing";
  case Say::show_name_twice: return "More than one batch is called “{0}”: say {1} or {2}.";
  case Say::show_title: return "{0}   {1}   {2}   opened {3}";
  case Say::show_room: return "room            {0} °C, {1} %{2}";
  case Say::show_guessed: return ", a guess";
  case Say::show_ratio: return "binder ratio    {0} g binder to 10 g pigment";
  case Say::show_flow_put_in: return "flow put in     {0} mL liquid to 1 mL pigment";
  case Say::show_flow_now: return "flow now        {0} mL liquid to 1 mL pigment";
  case Say::show_over_oil_point: return "over oil point  {0}";
  case Say::show_gum_strength: return "gum strength    {0} dry gum in gum and water";
  case Say::show_gum_per_pigment: return "gum             {0} g dry gum to 1 mL pigment";
  case Say::show_humectant_to_gum: return "sweet           {0} g honey and glycerin to 1 g gum";
  case Say::show_pigment_fraction: return "solid           {0} of the wet volume is pigment";
  case Say::show_place: return "lies there      {0}: {1} g of paint";
  case Say::show_on_tools: return "lies there      on glass and knife: {0} g of paint";
  case Say::show_pigment: return "pigment         {0} g, {1} mL";
  case Say::show_liquid: return "liquid          {0} g put in, {1} mL now";
  case Say::show_solids:
    return "of it           gum {0} g, honey {1} g, glycerin {2} g, water now {3} g";
  case Say::show_water_lost: return "dried off       {0} mL";
  case Say::show_swatch:
    return "swatch          L* {0} ± {1}   a* {2} ± {3}   b* {4} ± {5}   (D50)   on a screen {6}";
  case Say::show_photo: return "photo           {0}: {1}";
  case Say::show_of_photo: return "                  {0}";
  case Say::show_matched:
    return "beside {0}: difference {1} (CIEDE2000), nine in ten {2} to {3}: {4}";
  case Say::show_ways: return "  it is {0}";
  case Say::show_blame: return "  {0}: {1}";
  case Say::show_material: return "went in         {0} ({1}): {2} g";
  case Say::show_weighed: return "                  weighed {0} g";
  case Say::show_drop: return "                  1 drop";
  case Say::show_drops: return "                  {0} drops";
  case Say::show_spoons: return "                  {0} × {1}";
  case Say::show_count_lost: return "                  count lost";
  case Say::show_pass: return "pass            {0}: {1} to {2}";
  case Say::show_runs: return "now";
  case Say::show_note: return "{0}  {1}, at flow {2}  [{3}]";
  case Say::list_batch: return "{0}   {1}   {2}   {3}   {4}";
  case Say::check_damage: return "{0}: line {1}, byte {2}: {3}";
  case Say::check_note: return "note: {0}: line {1}, byte {2}: {3}";
  case Say::check_warning: return "{0} ({1}): {2}";
  case Say::check_summary: return "{0}, {1}: {2}, {3}";
  case Say::count_file: return "1 file";
  case Say::count_files: return "{0} files";
  case Say::count_line: return "1 line";
  case Say::count_lines: return "{0} lines";
  case Say::count_batch: return "1 batch";
  case Say::count_batches: return "{0} batches";
  case Say::count_pigment: return "1 pigment";
  case Say::count_pigments: return "{0} pigments";
  case Say::count_place: return "1 damaged place";
  case Say::count_places: return "{0} damaged places";
  case Say::count_note: return "1 note";
  case Say::count_notes: return "{0} notes";
  case Say::count_lost: return "1 thing could not be had back";
  case Say::count_losts: return "{0} things could not be had back";
  case Say::check_adrift:
    return "note: files saved elsewhere while the studio failed: {0}. The next start of the "
           "program "
           "brings them home";
  case Say::check_gone_one: return "note: session {0}: line {1} is gone: {2}";
  case Say::check_gone: return "note: session {0}: lines {1} to {2} are gone: {3}";
  case Say::out_missing: return "“{0}” needs --out: the name of what is to be made.";
  case Say::mend_lost: return "lost: {0}";
  case Say::mend_still: return "still so in the copy: {0}: line {1}, byte {2}: {3}";
  case Say::mend_summary: return "{1} in “{0}”, {2}";
  case Say::pack_done: return "packed as {0}: {1}, {2} bytes";
  case Say::unpack_done: return "unpacked as {0}: {1}, {2} bytes";
  case Say::pack_opened:
    return "opened in “{0}”, where all that is tapped now is kept; the file stays as it is";
  case Say::pack_left_out: return "left out: {0}: no session and no photo";
  case Say::pack_fallback:
    return "not in it: what was saved in “{0}” while the studio failed. Start Slabside on it once, "
           "and pack again.";
  case Say::help: return help_in_english();
  case Say::version: return "Slabside {0}\nsession format {1}\n";
  case Say::labels_line_long:
    return "The line for labels is longer than {0} characters: no label was made.";
  case Say::labels_bad_sheet: return "A sheet is a4 or letter, not “{0}”.";
  case Say::table_kept_back:
    return "{0} goes by a recipe marked as its maker’s own: add --with-recipes to hand it on.";
  case Say::labels_binder_ending:
    return "A binder’s labels are made as .html: “{0}” ends otherwise.";
  case Say::labels_bad_ending: return "Labels are made as .html or .svg: “{0}” ends with neither.";
  case Say::batch_missing: return "“{0}” needs --batch: a name, an id, or “last”.";
  case Say::file_there:
    return "“{0}” is there already, and nothing is ever written over: name a new file.";
  case Say::paper_made: return "made: {0}";
  case Say::labels_batch_or_binder:
    return "Labels are of a batch or of a binder: say --batch or --binder, one of them.";
  case Say::labels_no_binder: return "No binder goes by “{0}”. On the shelf are: {1}.";
  case Say::labels_no_binders: return "No binder is on the shelf, so “{0}” is none of them.";
  case Say::paints_none: return "No paint was made in this studio yet.";
  case Say::paper_no_viewer:
    return "Written: {0}. It cannot be shown, as {1} is not installed: open the file with a "
           "browser.";
  case Say::paper_not_shown:
    return "Written: {0}. {1} could not show it: open the file with a browser.";
  }
  return "";
}

}
