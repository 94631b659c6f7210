// The first half of the fold: the lines of a batch, and at which moment of it each happened. Used
// by batch.cpp alone.
#pragma once

#include "session/resolve.hpp"

namespace session {

struct BatchLines {
  std::vector<Entry> entries;    // ordered by (at, session, n), clocks set, withdrawn ones marked,
                                 // corrected ones as the correction says
  std::vector<SharedCard> cards; // for each entry that adds or weighs: its card; else null
  std::vector<SharedCard> tools; // for each addition: its dropper or spoon; else null
  std::map<std::string, SharedCard> laid_out;
  std::map<std::string, double> anchors; // session -> batch clock less the session's own, in s
  std::vector<Warning> warnings;
  bool damaged = false; // a log that speaks of the batch is
  bool newer = false;   // a log that speaks of it is of a newer format
};

BatchLines lines_of(const Logs& logs, const std::string& batch);

}
