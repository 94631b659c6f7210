// What studios tell each other, on this tablet's own screen (paint/range/TOLD.md).
#pragma once

#include "paint/range/told.hpp"
#include "session/ranges.hpp"

#include <cstdint>
#include <optional>
#include <string>

namespace bench {

// What another studio wrote, as it lies in the folder for such files.
struct FriendsFile {
  std::string name;
  std::int64_t at = 0; // when it was written there, wall clock
  paint::ToldRange told;
  std::optional<words::Error> passed_over = {}; // a later one, that cannot be used
};

struct ToldWritten { // the answer to Effects.tell
  words::Result<std::string> file;
};
struct FriendsFound { // the answer to Effects.find_told: the newest; absent: there is none
  words::Result<std::optional<FriendsFile>> file;
};

struct Sharing {
  std::string folder;                       // where such files lie; empty: in none
  bool by_hand = false;                     // they are saved and picked, as in a browser
  bool open = false;                        // in place of the keys
  bool preparing = false;                   // what this studio tells, until it is handed out
  std::optional<session::RangeNames> asked; // the fit of its own notes, under way
  std::string written;                      // the file that was written last
  bool none = false;                        // looked for a friend's, and found none
  std::optional<FriendsFile> found;         // it is asked whether it shall count
  std::optional<words::Error> failure;
};

inline bool has_files(const Sharing& sharing) { return sharing.by_hand || !sharing.folder.empty(); }

}
