// A computer whose power can fail: folders and files in memory, of which only what was forced is
// sure to be there afterwards. Two programs' worth of disk, the studio's and the one that stands in
// for it, share one memory and one plug.
//
// What a power cut may do to everything that was not forced, each drawn from the seed: a write is
// gone, cut at any byte, there in part with zeros where an earlier part should be (blocks written
// out of order), or garbled; a new name is there or not, an old one gone or still there. Bytes and
// names that were forced are as they were: that a disk spoils those too is beyond what any program
// can promise. LevelDB's FaultInjectionTestEnv and SQLite's crash tests rest on the same idea.
#pragma once

#include "disk/files.hpp"

#include <condition_variable>
#include <cstdint>
#include <map>
#include <memory>
#include <mutex>
#include <random>
#include <set>
#include <string>
#include <vector>

namespace faults {

using Path = std::filesystem::path;

enum class Harm {
  torn, // what was not forced ends somewhere
  any   // all of the above
};

class Computer {
public:
  enum Who { home, fallback };

  Computer() = default;
  Computer(const Computer&) = delete;
  Computer& operator=(const Computer&) = delete;

  std::unique_ptr<disk::Files> files(Who who); // of one disk; the Computer must outlive it

  // The power fails during that disk's n-th call that changes something, counted from now: the
  // call may have had its effect or not. Every call after it fails on both.
  void cut_at(Who who, int nth);
  bool has_power();

  // That disk's changes from the n-th on, counted from now, so many of them, fail with this errno.
  void outage(Who who, int nth, int changes, int code);

  // Every change waits, as on a disk that never answers, until it may go on.
  void hold();
  void let_go();

  int changes(Who who); // calls so far that would change something

  // What a new start finds.
  std::unique_ptr<Computer> after_power_cut(std::uint32_t seed, Harm harm);

  std::map<std::string, std::string> folder(const Path& path); // names and bytes, as seen now

private:
  class Calls;
  struct File {
    std::string bytes;
    std::size_t forced = 0; // so many of them are safe
  };
  using FileRef = std::shared_ptr<File>;

  struct Fate { // of one change
    bool happens = true;
    int code = 0;
  };
  struct Outage {
    int from = 0, to = 0, code = 0;
  };

  Fate fate(Who who, std::unique_lock<std::mutex>& lock);

  std::mutex mutex_; // over all below
  std::condition_variable changed_;
  bool power_ = true;
  bool held_ = false;
  std::map<Who, int> changes_, cut_;
  std::map<Who, Outage> outages_;
  std::map<Path, FileRef> files_, safe_files_; // as seen now, and as forced
  std::set<Path> folders_{"/"}, safe_folders_{"/"};
};

}
