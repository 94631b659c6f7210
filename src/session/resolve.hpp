// The lines of one batch as later lines leave them: those withdrawn marked, those corrected as the
// correction says. Whoever asks what was done, of a batch or of the shelf, asks here.
#pragma once

#include "session/batch.hpp"

#include <memory>

namespace session {

using SharedCard = std::shared_ptr<const Card>; // null: none

struct Resolved {
  Ref ref;
  std::int64_t at = 0; // as corrected, like all that follows
  std::int64_t t = 0;
  const Event* event = nullptr; // stands in its log, or in `said`
  SharedCard card;              // that it, or what a correction says, adds or weighs
  SharedCard tool;              // likewise, measures with
  bool withdrawn = false;
  bool corrected = false;
};

struct CardNames {
  std::string card, tool; // ids; empty: none
};

// The card that an event, or what a correction says, adds or weighs, and the one it measures with.
CardNames cards_named_by(const Event& event);

struct Resolution {            // holds while the logs do
  std::vector<Resolved> lines; // ordered by (at, session, n)
  std::vector<std::unique_ptr<const Event>> said;
  std::map<std::string, SharedCard> laid_out;
  std::vector<Warning> warnings;
  bool moved = false;   // a correction has put a line at another moment
  bool damaged = false; // a log that speaks of the batch is
  bool newer = false;   // a log that speaks of it is of a newer format
};

// Of an empty batch: lines that belong to none, such as the edits of the shelf.
Resolution resolve(const Logs& logs, const std::string& batch);

}
