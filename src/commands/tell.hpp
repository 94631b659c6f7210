// What this studio has learnt, told to another; and what another told, heard by this one.
#pragma once

#include "commands/paper.hpp"
#include "disk/faulty.hpp"

#include <filesystem>

namespace commands {

// A file as paint/range/TOLD.md has it. Errors: tell_nothing where no pigment of the catalogue was
// felt, those of session::learn_ranges, and file_there and the disk's.
words::Result<int> tell(const std::vector<session::Log>& logs, const Destination& to);

struct Hearing {
  std::filesystem::path home, fallback;
  std::string file;                // as it was named
  std::optional<std::string> text; // the file's; absent: what was told is to count no more
  std::optional<disk::Fault> fault;
};

// Keeps it as a line of a session of its own, and says where it is not believed. Errors:
// hear_refused with those of paint::told_from or told_by_itself, hear_nothing where there is
// nothing to forget.
words::Result<int> hear(const Hearing& what, std::ostream& out, std::ostream& err);

}
