// A repaired copy of a studio beside it. The studio itself is only read.
#pragma once

#include "disk/files.hpp"
#include "session/reader.hpp"
#include "words/error.hpp"

#include <filesystem>
#include <string>
#include <vector>

namespace studio {

struct SessionFile {
  std::string name; // without the folder
  std::string bytes;
};

struct MendReport {
  std::vector<words::Error> files; // one for each: mend_whole, mend_as_it_is, mend_anew
  // What could not be had back: mend_lost_lines, mend_lost_end, mend_lost_beginning,
  // mend_lost_telling, mend_lost_rest, mend_lost_file, photo_missing, photo_changed, and what could
  // not be read.
  std::vector<words::Error> lost;
  // Entries that were not finished when the power went, or a file was cut: nothing that was
  // confirmed is lost with them unless it was cut.
  std::vector<session::Damage> torn = {};
  // What a reader finds wrong in the copy: what no mending can undo, and files of a newer format.
  std::vector<session::Damage> still = {};
};

// All session files of one studio, each mended in its place. A file without damage stays as it is,
// but for the one that must tell what its session misses, and for a copy that tells a line
// otherwise than the copy that counts. A damaged one is written anew from the lines that are
// believed, each as it stood but for its seal; a beginning that is not among them is made from the
// file's name. A `gone` stands for each run of lines that no file holds, and for damage at the end.
// Files of a newer format, and what is no session, stay as they are.
MendReport mend_sessions(std::vector<SessionFile>& sessions);

// Copies a studio's sessions and photos to `folder`, which must not be there: whole and forced to
// the disk, or not at all; with them the sessions that lie in `fallback`, which may be empty or not
// there. Unfinished files are left behind. What is no file, or cannot be read, is no error: it is
// lost, and said. Errors: folder_there, those of the disk.
words::Result<MendReport> mend(disk::Files& files, const std::filesystem::path& studio,
                               const std::filesystem::path& folder,
                               const std::filesystem::path& fallback = {});

}
