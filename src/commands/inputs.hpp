// What a command reads, as its words name it.
#pragma once

#include "commands/arguments.hpp"
#include "disk/faulty.hpp"
#include "studio/studio.hpp"

#include <iosfwd>

namespace commands {

struct Studio {
  studio::Path home, fallback;
};

studio::Path fallback_of(const Arguments& a, const studio::Path& home);

// Neither is a studio; an empty folder is an empty one. Errors: no_studio, not_a_studio,
// disk_list_failed.
std::optional<words::Error> fault_of_studio(const studio::Path& home, const studio::Path& beside);

// Where to read: what is named, or what the window would use. Errors: those of fault_of_studio.
words::Result<Studio> studio_of(const Arguments& a);

// What can be read there. Where that is nothing of what lies there, the error says why: a studio
// that may not be looked into is not an empty one.
words::Result<studio::Reading> read_studio(const Studio& where);

// One more byte than may be, so that whoever reads them can tell. Errors: not_a_file,
// not_a_plain_file, disk_read_failed.
words::Result<std::string> bytes_of_file(const std::string& path, std::size_t most);

// Which fault the disk is to play.
words::Result<std::optional<disk::Fault>> disk_fault_of(const Arguments& a);

// The files with their lines; `left` are the same without, for what else is said of them.
std::vector<session::File> taken_out(std::vector<session::File>& left);

// What could not be read, and whether something is damaged.
void say_what_is_lacking(const studio::Reading& left, const std::vector<session::Log>& logs,
                         std::ostream& err);

// Everything that can be read, with a word on `err` where that is not all.
words::Result<std::vector<session::Log>> logs_of(const Arguments& a, std::ostream& err);

}
