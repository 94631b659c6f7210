// Which column each column of amounts is of: by what its heading says, else by where it stands.
// Pure.
#pragma once

#include "notes/heading_words.hpp"

namespace notes {

// What tells that, of one column.
struct Pairable {
  Heading heading;
  bool says_amounts = false; // its heading does, or somebody
  bool has_amounts = false;  // most of its cells are
};

// One of a liquid's amounts, beside one of that liquid's names, becomes a column of amounts; one of
// amounts for which no column is left becomes a note.
void pair_amounts(std::vector<Column>& columns, const std::vector<Pairable>& all);

}
