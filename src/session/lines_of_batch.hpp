// The first half of the fold: which lines make a batch, in which order, at which moment, and which
// of them still stand. Used by batch.cpp alone.
#pragma once

#include "session/batch.hpp"

namespace session {

struct BatchLines {
  std::vector<Entry> entries;     // ordered by (at, session, n), clocks set, withdrawn ones marked,
                                  // corrected ones as the correction says
  std::vector<const Card*> cards; // for each entry that adds or weighs: its card; else null
  std::vector<const Card*> tools; // for each addition: its dropper or spoon; else null
  std::map<std::string, Card> laid_out;
  std::map<std::string, double> anchors; // session -> batch clock less the session's own, in s
  std::vector<Warning> warnings;
  bool damaged = false; // a log that speaks of the batch is
  bool newer = false;   // a log that speaks of it is of a newer format
};

BatchLines lines_of(const Logs& logs, const std::string& batch);

}
