// One value from outside against ours. Every row is checked where it stands, and the same rows make
// README.md of this folder (./table writes it), so that no row can be there that no test holds.
#pragma once

#include <string>
#include <utility>

namespace published {

// What stands behind a value. It can only be made by one of the six below, so that no row is
// without its kind.
class Source {
public:
  const std::string kind;
  const std::string text;

private:
  Source(const char* kind, std::string text) : kind(kind), text(std::move(text)) {}
  friend Source printed(const std::string& where);
  friend Source library(const std::string& which);
  friend Source apart(const std::string& from);
  friend Source practice();
  friend Source remembered(const std::string& what);
  friend Source consistent_with(const Source& other);
};

Source printed(const std::string& where);   // read there: standard, handbook, paper, data sheet
Source library(const std::string& which);   // a general-purpose library gave it: name and version
Source apart(const std::string& from);      // printed formula or inputs; by hand, or by drawing
Source practice();                          // a fact of the trade without a source
Source remembered(const std::string& what); // named, but nobody has read it again
// The value, but our constant was fitted to it, or the tolerance is our own uncertainty: such a row
// says that we do not contradict ourselves, and no more.
Source consistent_with(const Source& other);

struct Row {
  std::string of;   // header and function of src/paint or src/colour: "film/cpvc"
  std::string what; // with its unit
  Source source;
  double expected;
  double ours;
  double tolerance;    // absolute, in the row's unit, not negative
  std::string why;     // where the tolerance comes from
  std::string at = {}; // which point of a table; rows alike in all other texts are shown as one
};

// Fails the test if ours is not within tolerance of expected, or if a text but `at` is empty.
void check(const Row& row);

}
