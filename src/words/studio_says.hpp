// What is said of what is kept: disk, photos, mended copies and packs.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class StudioSay {
  // lines of a session file
  session_misses_one, // 0: session, 1: number
  session_misses,     // 0: session, 1: first number, 2: last
  // the strip
  file_not_kept,
  // the disk, saving and reading
  disk_write_failed,
  disk_force_failed,
  disk_open_failed,
  disk_folder_failed,
  disk_read_failed,
  disk_list_failed,
  disk_rename_failed,
  disk_keep_failed, // 0: path
  disk_file_gone,   // as disk_keep_failed, and so are the next two
  disk_not_a_file,
  disk_too_large,
  disk_other_studio, // 0: folder
  came_home,         // 0: files
  // why, as the system says
  system_no_space,
  system_share_used,
  system_not_allowed,
  system_read_only,
  system_not_there,
  system_there_already,
  system_no_folder,
  system_a_folder,
  system_disk_error,
  system_disk_gone,
  system_in_use,
  system_link_loop,
  system_long_name,
  system_many_open,
  system_cannot,
  system_error, // 0: its number
  // what studios tell each other
  told_by_itself,
  learner_broke,     // 0: the browser's words
  told_file_refused, // 0: path, 1: why
  // photos
  photo_empty,
  photo_too_long, // 0: bytes at most
  photo_not_known,
  photo_without_size,
  photo_too_large_in_scans, // 0: width, 1: height, 2: most, in millions
  photo_too_large,          // 0: wide, 1: high, 2: megapixels at most
  photo_not_decoded,
  photo_for_printing,
  photo_bad_profile,
  photo_missing,      // 0: file, 1: batch
  photo_changed,      // as photo_missing
  pack_photo_changed, // 0: file
  // a studio mended, packed and unpacked
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
  pack_refused,        // 0: file, 1: why, one of these:
  unpack_refused,      // the same
  pack_itself,
  pack_nothing, // 0: studio
  pack_no_zip,
  pack_cut,       // 0: its bytes
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
};

constexpr Table table_of(StudioSay) { return Table::studio; }

std::string_view english(StudioSay id);

}
