// One sentence by its id. Every room declares its own ids, in a header of its own, so that a new
// sentence is news for that room alone; this holds any of them.
#pragma once

#include <compare>

namespace words {

enum class Table {
  none,
  language,
  paint,
  session,
  notes,
  bench,
  studio,
  paper,
  screens,
  today,
  shelf,
  making,
  plan,
  slab,
  pans,
  book,
  ranges,
  tablet,
  colour,
  photos,
  commands,
  app,
};

struct Sentence {
  Table table = Table::none; // the one that says nothing
  int row = 0;

  constexpr Sentence() = default;
  constexpr Sentence(Table of, int number) : table(of), row(number) {}
  template <class Id, Table of = table_of(Id{})>
  constexpr Sentence(Id id) : table(of), row(static_cast<int>(id)) {}
  auto operator<=>(const Sentence&) const = default;
};

}
