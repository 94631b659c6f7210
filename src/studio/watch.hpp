// What lies in a studio's folders: all of it at first, and later what other devices bring. Files
// are read by the disk's thread and understood on one of its own, so that the caller never waits.
#pragma once

#include "disk/disk.hpp"
#include "session/reader.hpp"
#include "studio/journal.hpp"
#include "studio/worker.hpp"

#include <functional>
#include <map>
#include <mutex>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace studio {

inline constexpr const char* fallback_prefix =
    "adrift/"; // before the names of files that lie there

// Whole sessions: of a session with several files all of them were read again.
struct Found {
  bool first = false; // everything that was there at the start
  std::vector<session::Log> logs;
  std::vector<session::Damage> damage; // of `files`
  std::vector<std::string> files;
  std::vector<words::Error> faults; // what could not be read at all
};

class Watch {
public:
  // The disks must outlive it; `in the fallback` may be null. The own session's files are passed
  // over: what they say is known. `wake` is called on another thread when poll() has something.
  Watch(disk::Disk& home, disk::Disk* fallback, std::string own_session,
        std::function<void()> wake);

  // Asks the folders for what is new. Does nothing while an earlier look is under way.
  void look();
  // The answer to a reading of look(), whoever fetched it from the disk.
  void take(Location place, disk::Answer answer);

  // What came of a look, once; a look that found nothing new gives nothing, but for the first.
  std::optional<Found> poll();

  bool is_looking() const { return busy_; }
  bool has_looked() const { return looked_; } // the first look is over
  std::size_t files_read() const { return read_; }
  std::size_t files_to_come() const;

private:
  using Name = std::pair<Location, std::string>;

  // What the thread has made of the files. Touched by its jobs alone.
  struct Understood {
    std::map<Name, session::File> files;    // of this look
    std::map<Name, std::string> session_of; // of every look
  };
  // What the thread hands over, under its mutex.
  struct Result {
    std::optional<Found> found;
    std::vector<Name> read_again; // files of a session that changed elsewhere
  };

  void submit(Location place, disk::Disk& disk);
  void finish();
  static Result result_of(Understood& understood);

  disk::Disk& home_;
  disk::Disk* fallback_;
  const std::string own_;
  const std::function<void()> wake_;
  std::map<Location, std::map<std::string, std::uint64_t>> known_;
  std::map<Location, std::size_t> to_come_; // of the readings under way
  std::size_t read_ = 0;
  bool busy_ = false;
  bool looked_ = false;
  std::vector<words::Error> faults_, faults_said_;

  std::mutex mutex_; // over the next
  std::optional<Result> result_;
  Understood understood_;
  Worker worker_; // last: its jobs use the others
};

}
