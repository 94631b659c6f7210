// Plays a script of taps on the real bench, into a real studio, without a window.
#pragma once

#include "commands/folders.hpp"
#include "commands/script.hpp"

#include <iosfwd>
#include <string>
#include <vector>

namespace commands {

// False: enough, say goodbye now.
using Onlooker = std::function<bool(const bench::Bench&, const bench::Now&)>;

// Sees each input just before the bench does.
using Overhearing =
    std::function<void(const bench::Bench&, const bench::Input&, const bench::Now&)>;

struct Playing {
  studio::Path studio;
  studio::Path fallback; // empty: none
  std::optional<disk::Fault> fault;
  studio::MakeFiles home_files = disk::posix_files, fallback_files = disk::posix_files;
  bool report = false;   // print "saved N" and "failed WHY" the moment it is so
  double pace = 0;       // so many times faster than life, 0.001 to 1e6; 0: as fast as it goes
  Onlooker onlooker;     // sees the bench after each input that changed it; may be empty
  Overhearing overhears; // may be empty
};

// Prints the session's and its batches' ids, faults to `err`. Returns the exit status: 0 if the
// whole script was played and every line of it is saved, else 1.
int play(const std::vector<ScriptLine>& script, const Playing& how, std::ostream& out,
         std::ostream& err);

}
