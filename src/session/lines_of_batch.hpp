// The first half of the fold: the lines of a batch, and at which moment of it each happened. Used
// by batch.cpp alone.
#pragma once

#include "session/resolve.hpp"

#include <set>

namespace session {

struct BatchLines {
  Grown<Entry> entries;          // ordered by (at, session, n), clocks set, withdrawn ones marked,
                                 // corrected ones as the correction says
  std::vector<SharedCard> cards; // for each entry that adds or weighs: its card; else null
  std::vector<SharedCard> tools; // for each addition: its dropper or spoon; else null
  std::map<std::string, SharedCard> laid_out;
  std::map<std::string, double> anchors; // session -> batch clock less the session's own, in s
  std::map<std::string, Clock> ends;     // session -> moment of its last line, of whatever batch
  std::set<std::string> over;            // sessions that ended in good order
  std::vector<Clock> left_at; // for each entry: until when the session of the one before was there
  std::vector<BottleChecked> bottles;
  std::vector<Warning> warnings;
  bool moved = false;   // a correction has put a line at another moment
  bool damaged = false; // a log that speaks of the batch is
  bool newer = false;   // a log that speaks of it is of a newer format
};

BatchLines lines_of(const Logs& logs, const std::string& batch);

// When a session wrote its last line, if it speaks of the batch.
void note_end(BatchLines& lines, const Log& log);
// The moment of a line that comes behind all others of its batch.
Clock clock_behind(BatchLines& lines, const Ref& line, std::int64_t at, std::int64_t t);
// Until when the session of the line before was there, of a line that has its clock.
Clock left_before(BatchLines& lines, std::size_t i);

}
