// A fold that goes on. Read again after something was written, it takes the lines from the first
// one on that is new or another than before. What comes of it is a fold from nothing to the last
// digit: a line's step is given by the state before it and by what is compared here, nothing else.
#pragma once

#include "session/lines_behind.hpp"

#include <set>

namespace session {

// What is carried from line to line.
struct FoldState {
  Batch batch; // without its entries and cards; of the warnings the fold's own
  std::string pass_session;
  Clock powder_at = 0;            // when the last of it was added
  Clock handled_at = 0;           // when a hand did something last
  bool lies_open = false;         // the paint, since a pass that was left running
  std::optional<Clock> wet_at;    // since when there was liquid with it, and nobody timing the work
  std::optional<Clock> soaked_at; // found dry: when water given back will have soaked in
  std::map<Ref, paint::Mixture> named; // the paint in hand after lines that a later line names
  std::optional<std::size_t> felt;     // the last feeling, if nothing has changed the paint since
  std::set<Ref> set_aside;             // lines so far
  std::size_t taken = 0;               // likewise
};

// In batch.cpp: the state after the next line, and the batch after the last.
void take(FoldState& state, FoldLines& lines);
Batch finished(FoldState state, Grown<Entry> entries, const BatchLines& lines,
               const std::optional<Moment>& now);

class Folding {
public:
  void read(const Logs& logs, const std::string& batch, const Lessons& lessons);
  // After one of those sessions, or another one of them all, has written more, and nothing else has
  // changed since: as read(), and mostly without looking at what was there.
  void read_on(const Log& log, const Logs& logs, const std::string& batch, const Lessons& lessons);
  // As fold() of what was read last.
  std::optional<Batch> at(const std::optional<Moment>& now) const&;
  std::optional<Batch> at(const std::optional<Moment>& now) &&;

  const BatchLines& lines() const { return lines_.of; }
  // The first line that has become another since it was asked last, for who reads them beside this.
  std::size_t changed_from();

private:
  std::size_t alike(const FoldState& start, const FoldLines& lines) const;
  void take_from(std::size_t same);

  FoldLines lines_;
  std::vector<FoldState> states_; // before any line, some on the way, after all; empty: no batch
  std::map<std::string, std::size_t> lines_read_; // of each session
  std::map<std::string, ReadSoFar> so_far_;       // of those that were read on
  std::size_t changed_ = 0;
};

}
