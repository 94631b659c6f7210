// All paints of a studio on paper, as swatches in the order in which they are given.
#pragma once

#include "session/card.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace paper {

struct ListedPaint {
  std::string name;
  std::vector<session::Card> pigments;
  std::uint32_t colour = 0; // 0xRRGGBB
  bool swatch = false;      // it was read from one; else its pigment's, a guess
  std::string batch;        // the latest, its id
  std::string day;          // when that was opened
  double jar_mL = 0;        // what is left of all its batches
  int pans = 0;
  bool on_slab = false;
};

// One HTML file with nothing outside it, on A4 and US Letter. `day` is that of today.
std::string paint_list(const std::vector<ListedPaint>& paints, const std::string& day);

}
