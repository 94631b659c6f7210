// One value from outside against ours. Every row is checked where it stands, and the same rows make
// the table in README.md of this folder (tests/published/table writes it), so that no row can be in
// the table that no test holds.
#pragma once

#include <string>

namespace published {

enum class Source {
  published,         // a standard, handbook table, paper or worked example that was read
  reference_library, // a general-purpose library, run by the tests or its printed values
  common_practice,   // a fact of the trade without a source
  from_memory,       // the source is named, but nobody has read it again
};

struct Row {
  std::string formula; // what is computed, in a few words with its unit
  std::string source;  // standard, table, page; for common_practice "common practice, no source"
  Source kind = Source::published;
  double expected = 0;
  double ours = 0;
  double tolerance = 0; // absolute, in the row's unit, not negative
  std::string why;      // where the tolerance comes from
};

// Fails the test if ours is not within tolerance of expected, or if a text is empty.
void check(const Row& row);

}
