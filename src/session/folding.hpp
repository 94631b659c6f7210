// A fold that goes on. Read again after something was written, it takes the lines from the first
// one on that is new or another than before. What comes of it is a fold from nothing to the last
// digit: a line's step is given by the state before it and by what is compared here, nothing else.
#pragma once

#include "session/lines_of_batch.hpp"

#include <set>

namespace session {

// What is carried from line to line.
struct FoldState {
  Batch batch; // without its entries and cards; of the warnings the fold's own
  std::string pass_session;
  Clock powder_at = 0;                 // when the last of it was added
  std::map<Ref, paint::Mixture> named; // the paint in hand after lines that a later line names
  std::size_t taken = 0;               // lines so far
};

struct FoldLines {
  BatchLines of;
  std::vector<std::optional<paint::Amount>> amounts; // for each: what it put in
  std::set<Ref> named;                               // by a later line
};

// In batch.cpp: the state after the next line, and the batch after the last.
void take(FoldState& state, FoldLines& lines);
Batch finished(FoldState state, std::vector<Entry> entries, const BatchLines& lines,
               const std::optional<Moment>& now);

class Folding {
public:
  void read(const Logs& logs, const std::string& batch, const Lessons& lessons);
  // As fold() of what was read last.
  std::optional<Batch> at(const std::optional<Moment>& now) const&;
  std::optional<Batch> at(const std::optional<Moment>& now) &&;

private:
  std::size_t alike(const FoldState& start, const FoldLines& lines) const;

  FoldLines lines_;
  std::vector<FoldState> states_; // before any line, some on the way, after all; empty: no batch
};

}
