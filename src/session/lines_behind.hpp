// Lines that a session has written since its batch was read, added behind those that are known, so
// that one more costs the same however many there are. Used by folding.cpp alone.
#pragma once

#include "session/lines_of_batch.hpp"

#include <set>

namespace session {

struct FoldLines {
  BatchLines of;
  std::vector<std::optional<paint::Amount>> amounts; // for each: what it put in
  std::set<Ref> named;                               // by a later line
};

// A session as far as it was read.
struct ReadSoFar {
  std::size_t lines = 0;
  std::map<std::string, SharedCard> cards; // as it last laid them out, for whatever batch
  bool still_there = false;                // how long, an earlier line of another session hangs on
  bool amounts_hang = false;               // together: a bottle was weighed, or a count was lost
  bool poured = false;                     // a pan's card may come yet
};
ReadSoFar read_so_far(const FoldLines& known, const Log& log, std::size_t lines);

// Takes the session's lines from there on. False where they alter more than can be told line by
// line, so that all is to be read anew. `first`: before that, at most the first line of the batch
// that is another than it was.
bool go_on(FoldLines& known, ReadSoFar& so_far, const Log& log, const std::string& batch,
           std::size_t& first);

}
