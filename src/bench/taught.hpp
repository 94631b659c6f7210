// What the batches have taught, as a bench holds it: the range, mulling, and what became of dry
// paint.
#pragma once

#include "paint/mull_time.hpp"
#include "session/mulled.hpp"
#include "session/ranges.hpp"
#include "session/training.hpp"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace bench {

// What the batches have taught of the range, as far as they were looked through.
struct Learning {
  std::map<std::string, session::TrainingBatch> training; // by batch
  session::GumVerdicts verdicts;                          // of them
  session::SharedTold told;                               // by another studio
  std::set<std::string> stale;                            // to be looked through
  std::string at_work;                                    // the open batch on the slab, left out
  bool changed = false;                                   // since `asked`
  std::optional<session::RangeNames> asked;               // under way
  session::SharedTold told_asked;                         // that the fit under way rests on
  session::Ranges ranges = session::untrained_ranges();
  int version = 0; // of ranges
  std::optional<words::Error> failure;
  std::optional<words::Error> not_heard; // what another studio told cannot be read
};

struct Expected { // of the batch on the slab
  int version = 0;
  session::RangeQuestion question;
  std::optional<session::Expectation> answer;
  paint::NotesSeen seen; // from question to question, which alone tells the answer
};

// What the batches have taught of mulling, and what that lets expect.
struct MullingModel {
  std::map<std::string, session::Mulled> of; // batch; that on the slab is left out while it is open
  int version = 0;                           // of them
  double pass_s = paint::usual_pass_s;       // as this studio makes them
  struct Expected {
    int version = -1; // never asked
    std::vector<session::MulledPigment> pigments;
    std::optional<paint::MullTime> time; // until there are no specks
    int batches = 0;                     // with dots, of the pigment known least
  };
  Expected slab, plan, card; // of the shelf, that is read
};

// What became of dry paint, by batch.
struct Rewetting {
  std::map<std::string, session::DriedPaint> of; // that on the slab is left out while it is open
  int version = 0;                               // of those
  struct Tack { // where paint of these pigments begins to stay tacky
    int version = -1;
    std::vector<std::string> pigments;
    paint::TackMark mark;
  };
  Tack slab; // as of the last step
};

}
