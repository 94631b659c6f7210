// Rows of old notes as recipes of the shelf, and every cell that was not understood. Pure: nothing
// is taken here.
#pragma once

#include "notes/columns.hpp"
#include "notes/measures.hpp"

namespace notes {

// One cell, and why it was not understood. `lost`: its row is no recipe without it; else its text
// stands in the recipe's note.
struct Unread {
  std::size_t row = 0, column = 0;
  std::string text;
  words::Error why;
  bool lost = false;
};

struct Brought {
  std::size_t row = 0; // its first
  session::Card card;  // a recipe
  bool whole = false;  // it can be taken
  bool named = false;  // by its row, and not after its pigments
  std::string older;   // recipe of the shelf whose place it takes, as another reading of its row
};

struct Understood {
  Layout layout;
  std::vector<Brought> recipes;
  std::vector<Unread> unread;       // in order of rows and columns
  std::vector<session::Card> cards; // that the recipes need and the shelf has not: spoons, honey
  std::vector<std::size_t> passed;  // rows that hold no pigment
};

// The id of a recipe follows from the cells of its rows, without blanks around them and empty ones
// behind the last, so that the same notes are the same cards.
// One of the shelf's that no row makes any more gives its place to a row of its name and date;
// where there is no date, to a row of its name and pigments. Error: column_not_there for a column
// asked for that the table has not.
words::Result<Understood> understood(const Table& table, const std::vector<session::Card>& shelf,
                                     const std::set<std::string>& own, const Asked& asked,
                                     const AskedRecipes& how);

}
