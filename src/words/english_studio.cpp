#include "words/studio_says.hpp"

namespace words {

std::string_view english(StudioSay id) {
  using Say = StudioSay;
  switch (id) {
  case Say::session_misses_one: return "session {0}: line {1} is in no file";
  case Say::session_misses: return "session {0}: lines {1} to {2} are in no file";
  case Say::file_not_kept: return "{1}: “{0}” could not be kept.";
  case Say::disk_write_failed: return "{1}: “{0}” could not be written.";
  case Say::disk_force_failed: return "{1}: “{0}” could not be made safe on the disk.";
  case Say::disk_open_failed: return "{1}: “{0}” could not be begun.";
  case Say::disk_folder_failed: return "{1}: the folder “{0}” could not be made.";
  case Say::disk_read_failed: return "{1}: “{0}” could not be read.";
  case Say::disk_list_failed: return "{1}: the folder “{0}” could not be looked through.";
  case Say::disk_rename_failed: return "{1}: “{0}” could not be given its name.";
  case Say::disk_keep_failed:
    return "“{0}” is there already with other bytes, and was left so: move that file away, then "
           "try "
           "again.";
  case Say::disk_file_gone:
    return "“{0}” is no longer there as it was written: all of this session is written again.";
  case Say::disk_other_studio:
    return "“{0}” is not the studio that was there before, and nothing is written into it: put its "
           "disk in. If it is meant all the same, start once with --as-studio.";
  case Say::disk_not_a_file:
    return "“{0}” is no file but a link, folder or device, and is not read: put the file there.";
  case Say::disk_too_large:
    return "“{0}” is too large for a session, and is not read: take it out of that folder.";
  case Say::came_home:
    return "Files saved elsewhere while the studio failed that are now in the studio too: {0}.";
  case Say::system_no_space: return "The disk is full";
  case Say::system_share_used: return "The room it may use here is used up";
  case Say::system_not_allowed: return "The system does not allow it";
  case Say::system_read_only: return "The disk can only be read";
  case Say::system_not_there: return "There is no such file or folder";
  case Say::system_there_already: return "Something of that name is there already";
  case Say::system_no_folder: return "A part of the path is no folder";
  case Say::system_a_folder: return "It is a folder";
  case Say::system_disk_error: return "The disk answers with an error";
  case Say::system_disk_gone: return "The disk is no longer there";
  case Say::system_in_use: return "It is in use";
  case Say::system_link_loop: return "It is a link that leads to itself";
  case Say::system_long_name: return "The name is too long";
  case Say::system_many_open: return "Too many files are open";
  case Say::system_cannot: return "The disk cannot do that";
  case Say::system_error: return "Error {0} of the system";
  case Say::told_by_itself:
    return "It was written by this very studio, whose notes count already: once more as another's "
           "they would count twice.";
  case Say::learner_broke:
    return "The browser could not begin or end the learning: {0}. It is tried again after the next "
           "note.";
  case Say::told_file_refused: return "“{0}” cannot be used. {1}";
  case Say::photo_empty: return "The photo is empty.";
  case Say::photo_too_long: return "A photo has at most {0} bytes.";
  case Say::photo_not_known:
    return "A photo is a JPEG or a PNG, and this is neither: save it as a JPEG first.";
  case Say::photo_without_size: return "The photo breaks off before it says how large it is.";
  case Say::photo_too_large:
    return "The photo is {0} × {1} pixels large; {2} million are the most: make it smaller first.";
  case Say::photo_too_large_in_scans:
    return "The photo is {0} × {1} pixels large and stored in several passes; of such {2} million "
           "are the most. Save it again, not progressive, or smaller.";
  case Say::photo_not_decoded:
    return "The photo is damaged, or of a rare kind: copy it from the camera again.";
  case Say::photo_for_printing:
    return "The photo is in printing colours (CMYK): save it as an ordinary JPEG (RGB) first.";
  case Say::photo_bad_profile:
    return "The photo names a colour profile that cannot be read: save it again with sRGB.";
  case Say::photo_missing: return "{0}: this photo of batch {1} is not there";
  case Say::pack_photo_changed: return "{0}: this photo is not as it was: its bytes differ";
  case Say::photo_changed: return "{0}: this photo of batch {1} is not as it was: its bytes differ";
  case Say::folder_there:
    return "“{0}” is there already, and nothing is ever written over: name a new folder.";
  case Say::mend_whole: return "{0}: copied";
  case Say::mend_as_it_is:
    return "{0}: copied as it is: no session, or not one that this Slabside can mend";
  case Say::mend_anew: return "{0}: written anew, lines: {1}";
  case Say::mend_gone: return "damaged, and nowhere else";
  case Say::mend_lost_end:
    return "{0}: what stood at its end is damaged: lines, by the look of it: {1}";
  case Say::mend_lost_beginning:
    return "{0}: its first line, made again from the file's name without the time of day";
  case Say::mend_lost_telling:
    return "{0}: line {1} as this file tells it: another one tells it otherwise, and counts";
  case Say::mend_lost_rest:
    return "{0}: line {1} and those that belong to it: they are of another session";
  case Say::mend_lost_file: return "{0}: nothing in it can be believed";
  case Say::pack_refused:
    return "“{0}” was not made: {1}. Move or rename what stands in the way, and pack again.";
  case Say::unpack_refused:
    return "“{0}” was not unpacked, and nothing of it was kept: {1}. Fetch it once more, or ask "
           "whoever made it to pack the studio again.";
  case Say::pack_itself: return "the pack";
  case Say::pack_nothing: return "There is nothing to pack in “{0}”: no session and no photo.";
  case Say::pack_no_zip: return "it is no zip file";
  case Say::pack_cut:
    return "it is only the first part of a pack, which lists what is in it at its end: it was cut "
           "after {0} bytes";
  case Say::pack_too_many: return "it has more than {0} entries";
  case Say::pack_too_large: return "it unpacks to more than {0} bytes";
  case Say::pack_swells: return "with the entry “{0}” it unpacks to more than {1} times its size";
  case Say::entry_leaves: return "the name of the entry “{0}” leads to another place";
  case Say::entry_odd_name:
    return "the name of the entry “{0}” has other signs than letters, digits, spaces and plain "
           "marks";
  case Say::entry_not_utf8: return "the name of the entry “{0}” is not UTF-8";
  case Say::entry_shrank: return "“{0}” became shorter while it was read";
  case Say::entry_elsewhere:
    return "the entry “{0}” is neither a session, sessions/….jsonl, nor a photo under the name "
           "that it is given, photos/….jpg or .png";
  case Say::entry_twice:
    return "the entry “{0}” is there twice, if capital and small letters are the same";
  case Say::entry_not_plain:
    return "the entry “{0}” is a link, a device or a folder of its own, not a plain file";
  case Say::entry_encrypted: return "the entry “{0}” is encrypted";
  case Say::entry_packing: return "the entry “{0}” is compressed in a way that is not read: {1}";
  case Say::entry_too_large: return "the entry “{0}” has more than {1} bytes";
  case Say::entry_broken: return "the entry “{0}” is broken: {1}";
  case Say::entry_unlike:
    return "the entry “{0}” has another name, or is another thing, at its own place than in the "
           "list";
  }
  return "";
}

}
