// How this one device is used, whatever studio is open on it: kept beside the studio, not in it.
#pragma once

#include "bench/layout.hpp"
#include "words/error.hpp"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace bench {

struct Tablet {
  Hand hand = Hand::left; // the side on which the material pads lie
  bool sound = true;
  bool motion = true;                      // the marker glides to where a drop has brought it
  bool full_screen = false;                // the window fills the display from its start on
  std::optional<words::Language> language; // else as the system is set
  std::map<std::string, double> scales;    // monitor -> by how much it is larger than it says
  std::map<std::string, PadId> keys;       // key -> pad; an "add" names a kind of card
  std::vector<std::string> materials;      // cards that shall lie on the slab's pads
  std::string photo_folder;                // that was looked into last; empty: none yet
  std::string label_line;                  // of the maker's own on labels; may be empty
  std::int64_t handed_on = 0;              // ms since 1970: all that was kept by then; 0: nothing
  bool operator==(const Tablet&) const = default;
};

// 0.5 to 2: what a card held against the glass may find.
double scale_of(const Tablet& tablet, const std::string& monitor);

// As a file: JSON, for people too.
std::string written(const Tablet& tablet);

// What cannot be understood is left out and keeps its default. Error: tablet_unreadable where it is
// no JSON object.
words::Result<Tablet> read_tablet(std::string_view json);

}
