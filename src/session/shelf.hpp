// What the workshop owns, folded from the edits of its cards.
#pragma once

#include "session/making.hpp"
#include "session/offsets.hpp"
#include "session/stock.hpp"

#include <set>

namespace session {

struct Shelf {
  std::map<std::string, Card> cards; // by id, as last edited
  std::set<std::string> put_away;    // of those and of any other
  Stocks stock;                      // likewise
  Makings makings;                   // of binder, done or not
};

// Edits of all sessions, in order of (at, session, n); withdrawn ones left out. Where the offsets
// do not know a line, its days are those of UTC.
Shelf shelf_of(const Logs& logs, const Offsets& offsets = {});

// A recipe marked its maker's own led this batch, or was kept from it: no amount of it is handed on
// unless asked for. Put away, a recipe stays what it was marked.
bool keeps_amounts(const Shelf& shelf, const Batch& batch);

}
