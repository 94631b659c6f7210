// What was saved in the fallback folder while the studio failed goes home at the next start, as
// copies that are there whole or not at all. The file that stands in stays where it is: it costs
// little, nothing is ever deleted, and should home be lost and put back from an older copy, the
// lines come home once more. Readers count the lines of copies once.
#pragma once

#include "disk/disk.hpp"
#include "studio/journal.hpp"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace studio {

class Homecoming {
public:
  // `home` must outlive it.
  explicit Homecoming(disk::Disk& home) : home_(home) {}

  // To be shown every answer that either disk gives to a reading of its sessions, and those that
  // are nobody else's. True if this one was to a copy of its own. Once both folders were read, and
  // home's names can be listed, the copies are asked for.
  bool take(Location place, const disk::Answer& answer);

  bool over() const { return began_ && copies_.empty(); } // all that can come home has

  // What came of it, in sentences, each once.
  std::vector<words::Error> said() { return std::exchange(said_, {}); }

private:
  using Files = std::map<std::string, std::string>; // name -> bytes

  void answered(const disk::Answer& answer);
  void begin();

  disk::Disk& home_;
  std::map<Location, Files> parts_; // of the first readings
  std::set<Location> read_;
  bool home_is_there_ = true;
  bool began_ = false;
  std::set<disk::Ticket> copies_; // under way
  int came_ = 0;
  std::vector<words::Error> said_;
};

}
