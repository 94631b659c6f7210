// One session's lines on their way to the disk. Takes each line once, and says once that it is
// safe. A file that failed is never written again: the session goes on in a new part, which takes
// over every line not yet confirmed; and every line there was, where a file is gone from its name.
//
// While a disk fails the files and bytes put on it are few however many lines come: a part is begun
// at once only so often, later ones when asked for, and those show with little that they can be
// written before they get the rest.
#pragma once

#include "disk/disk.hpp"
#include "session/event.hpp"

#include <cstdint>
#include <deque>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace studio {

inline constexpr const char* sessions_folder = "sessions";
inline constexpr const char* sessions_ending = ".jsonl";

enum class Location {
  home,    // the studio's folder
  fallback // the folder that stands in while that one fails
};

// Every line of the session up to n lies on a disk. n only grows, until a Failed says that nothing
// is safe. A line that was refused (text that is not UTF-8) is never claimed, and so neither is any
// after it.
struct Saved {
  std::uint64_t n = 0;
};
struct Failed {
  words::Error reason;
  bool nothing_is_safe = false; // also what was saved before is to be written again
};
struct Read { // the answer to a reading that somebody else asked of that disk
  Location place = Location::home;
  disk::Answer answer;
};
using News = std::variant<Saved, Failed, Read>;

class Journal {
public:
  // Both disks must outlive the journal, which fetches all their answers. `in the fallback` may be
  // null.
  explicit Journal(disk::Disk& home, disk::Disk* fallback = nullptr);

  // The first line must be a Began; lines come in the order of their n. Never blocks or throws.
  // Lines given together are written and forced together.
  void append(std::vector<session::Line> lines);
  void append(session::Line line) { append(std::vector{std::move(line)}); }

  // What came since the last call, in order. After a failure the next part is tried at once, in the
  // same place and then in the other one; after that by retry(), and once more for a Left.
  std::vector<News> poll();
  void retry();

  bool stuck() const { return stuck_; }                   // waits for retry()
  std::size_t unsaved() const { return waiting_.size(); } // lines not confirmed yet
  Location place() const { return place_; }               // where the present part lies

private:
  struct Waiting {
    session::Line line;
    disk::Ticket ticket = 0; // of the present part
  };

  disk::Disk& disk_of(Location place) { return place == Location::home ? home_ : *fallback_; }
  std::string file_name() const;
  std::uint32_t seed() const;
  void take_in(session::Line line);
  void refuse(const session::Line& line, words::Error reason);
  void begin_part(std::size_t most_bytes);
  void send(std::string bytes, std::size_t most_bytes);
  void take(Location place, disk::Answer answer);
  void confirm(disk::Ticket ticket);
  void calm_down();
  void fail(const disk::Failure& failure);
  void take_back();

  disk::Disk& home_;
  disk::Disk* fallback_;
  std::optional<session::Line> began_;
  std::deque<Waiting> waiting_;
  std::vector<session::Line> safe_; // written anew should their file be gone
  std::map<std::pair<Location, disk::Ticket>, int> parts_of_; // of every append under way
  Location place_ = Location::home;
  int part_ = 0;
  std::uint32_t check_ = 0; // of the present part's last line
  int failures_ = 0;        // since something was confirmed
  int at_once_ = 6;         // parts that may still be begun unasked
  int calm_ = 0;            // confirmations since a failure
  int calm_enough_ = 64;    // so many of them allow for as many parts again
  bool stuck_ = false;
  bool trying_ = false; // the present part has not shown yet that it can be written
  std::optional<std::uint64_t> refused_; // the first line that can never be written
  std::vector<News> news_;
};

}
