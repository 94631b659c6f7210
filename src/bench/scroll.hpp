// A list under a dragging finger. It shows whole rows at every moment: what a screen shows stays a
// list of rows, none is cut, and a tap falls on one of them. Only a number knows how far between
// two rows it is. Pure: pointers and the time move it, and the pads that turn pages move the same.
#pragma once

#include "bench/layout.hpp"

#include <cstdint>
#include <optional>

namespace bench {

// Where a list stands.
struct Scroll {
  double at = 0;              // rows above the first that shows; a whole number while it rests
  std::optional<int> towards; // the row it runs on to, once a finger has let it go
  std::int64_t ms = 0;        // when it was there, while it runs
  bool operator==(const Scroll&) const = default;
};

// Of so many rows, `shown` at a time. A list that has become shorter shows its last page.
int first_row(const Scroll& scroll, int shown, int rows);
int page_of(const Scroll& scroll, int shown, int rows); // 0 at the top alone

// By the pads, a page up or down.
void turn_page(Scroll& scroll, const ListArea& list, bool on);

// By a finger that moved so many mm down the glass.
void drag(Scroll& scroll, const ListArea& list, double mm);
// A finger has left it at this speed, mm/s down the glass: it slows down and comes to rest at a
// row.
void let_go(Scroll& scroll, const ListArea& list, double mm_per_s, std::int64_t ms);
void stop(Scroll& scroll); // at the row next to it

void run_on(Scroll& scroll, std::int64_t ms);
// When the next row comes, while it runs.
std::optional<std::int64_t> next_row_at(const Scroll& scroll);

}
