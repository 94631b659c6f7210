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

struct File {
  std::string name;
  std::string session;
  std::string device;
  int version = 1;
  int part = 0;
  std::uint64_t from = 0;
  bool future = false; // a newer format: lines are shown, nothing is summed
  bool ended = false;  // closed by `left`
  std::vector<Line> lines;
  std::vector<Damage> damage;
};

// Never fails: what is wrong stands in `damage`.
File read_file(std::string name, std::string_view bytes);

// All lines of all files, a part's lines in place of those of earlier parts from its `from` on.
// Files may come in any order; files that are `future` are left out.
struct Log {
  std::string session;
  std::string device;
  std::vector<Line> lines;
  bool damaged = false; // a line of it may be missing, beyond what is ordinary
};
std::vector<Log> join_parts(const std::vector<File>& files);

}
