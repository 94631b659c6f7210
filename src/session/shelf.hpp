// What the workshop owns, folded from the edits of its cards.
#pragma once

#include "session/stock.hpp"

#include <set>

namespace session {

struct Shelf {
  std::map<std::string, Card> cards; // by id, as last edited
  std::set<std::string> put_away;    // of those and of any other
  Stocks stock;                      // likewise
};

// Edits of all sessions, in order of (at, session, n); withdrawn ones left out.
Shelf shelf_of(const Logs& logs);

}
