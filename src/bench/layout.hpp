// Where pads lie. Sizes and gaps: an able user's keys need 20 mm (Colle & Hiszem 2004), users with
// motor difficulty gain up to 30; with paint on the hands every pad is at least 26 x 22 mm lying
// down and 24 x 20 mm upright, 1.5 mm apart; with clean hands at least 12 x 12 mm.
#pragma once

#include "bench/geometry.hpp"
#include "bench/pad.hpp"

#include <optional>
#include <vector>

namespace bench {

enum class Hand { left, right }; // the side of the display on which the material pads lie

struct Display {
  Size mm{218, 136};
  Hand hand = Hand::left;
  std::string monitor = {}; // by what the system calls it; empty where it has no name
  double drawn_at = 1; // of its true size: less where the display is too small; then mm is larger
  bool operator==(const Display&) const = default;
  bool upright() const { return mm.h > mm.w; }
};

// The least that the screens are laid out for, lying; upright the other way round.
inline constexpr Size least_display{218, 136};

inline constexpr double gap_mm = 1.5;
inline constexpr double margin_mm = 2;
inline constexpr double top_bar_mm = 15;

struct Pad {
  PadId id;
  Rect box;
  bool operator==(const Pad&) const = default;
};

// A list that a finger may drag up and down: rows of pads, as many as there is room for.
struct ListArea {
  Rect box;
  double pitch_mm = 0; // from row to row
  int shown = 0;       // rows there is room for
  int rows = 0;        // of all of it
  int first = 0;       // that shows
  bool runs = false;   // a finger has let it go, and it is not at rest yet
  bool operator==(const ListArea&) const = default;
};

// The pads of one moment and the areas between them.
struct Layout {
  std::vector<Pad> pads;
  std::optional<ListArea> list;
  Rect top_bar;
  Rect title; // the batch's name in the top bar
  Rect clock; // the time of day in the top bar
  Rect main;  // slab: the trail; plan: the list; book: the list or the trail
  Rect side;  // slab: the numbers; plan: how much; book: what went in
  Rect lower; // plan: what it comes to and the cautions; book: the times; shelf: the sources
  Rect note;  // plan: why it cannot begin yet; pans: the batch
  Rect title_of_plan; // its words over what was chosen
  Rect result;        // plan: what is to be followed, `lower` in it below its name
  Rect match;         // book: its colour beside that of another batch
  Rect more;          // book: what became of it; pans: what lies there; plan: the binders
};

const Pad* pad_at(const Layout& layout, Point at);
const Pad* pad_of(const Layout& layout, const PadId& id);

// The 7 x 5 cells of a slab lying down, or 5 x 9 upright, below the top bar.
struct Grid {
  int columns = 7, rows = 5;
  Rect area;
  Rect cell(int column, int row, int wide = 1, int high = 1) const;
};
Grid slab_grid(const Display& display);

}
