// A session file's bytes to its lines. Nothing that can be read is dropped because of damage
// elsewhere; nothing that is damaged is believed.
#pragma once

#include "session/event.hpp"
#include "words/error.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace session {

struct Damage {
  std::string file;
  std::size_t line = 0; // 1 for the first
  std::size_t byte = 0; // where that line starts
  words::Error reason;
  bool ordinary = false; // a torn tail or a missing end: the power went, nothing else is wrong
};

// Of version 1, whose lines do not bear whose they are: a run of lines that does not chain to the
// file's own counts only where its clock is theirs.
struct File {
  std::string name;
  std::string session;
  std::string device;
  int version = 1;
  std::uint32_t seed = 0; // that its lines are sealed with
  int part = 0;
  std::uint64_t from = 0;
  bool future = false;     // a newer format: lines are shown, nothing is summed
  bool ended = false;      // closed by `left`
  std::vector<Line> lines; // by n; of a later part its beginning first
  std::vector<Damage> damage;
  bool damaged = false; // beyond what is ordinary
};

// A later part's beginning bears the number of the first line it takes over. It is not that line,
// unless it takes over the whole session.
bool is_beginning_of_part(const File& file, const Line& line);

// Never fails: what is wrong stands in `damage`.
File read_file(std::string name, std::string_view bytes);

// From n to n, both among them.
struct Span {
  std::uint64_t from = 0;
  std::uint64_t to = 0;
  bool operator==(const Span&) const = default;
};

// All lines of all files of one session, a part's lines in place of those of earlier parts from its
// `from` on.
struct Log {
  std::string session;
  std::string device;
  std::vector<Line> lines;                 // by n
  bool future = false;                     // one of its files is
  bool damaged = false;                    // a line of it may be missing, beyond what is ordinary
  std::vector<Span> missing;               // lines that no file holds, before the last there is
  std::vector<std::uint64_t> contradicted; // lines that two files tell differently; one is kept
};

struct Joined {
  std::vector<Log> logs;
  std::vector<Damage> damage; // of all files
};

// Files may come in any order, copies among them.
Joined join(std::vector<File> files);
std::vector<Log> join_parts(std::vector<File> files); // the logs alone

}
