// Why dried paint cracked: the likely causes in order.
#pragma once

#include "paint/gum.hpp"

#include <vector>

namespace paint {

enum class CrackCause { deep_layer, little_gum, much_gum, too_hard, dried_fast };

// What is known of the paint; 0 and absent: nothing.
struct Cracked {
  double layer_mm = 0; // the deepest, as it was poured
  std::optional<GumState> gum;
  double index = 0;      // tack index
  double hard_below = 0; // the index below which paint is too hard
  double firm_h = 0;     // how soon a layer is firm in that room
};

struct LikelyCause {
  CrackCause cause;
  bool seen = false; // what is known points to it
  bool operator==(const LikelyCause&) const = default;
};

// In the order of practice (common practice, no source): depth of the layer, too little gum or
// sweetness, too fast drying. Those that what is known points to come first, in the same order:
// a layer over 6 mm, gum short, an index below the mark, firm within 8 h (our own, no source).
// Too much gum is named only where it is seen, and too little is not named then.
std::vector<LikelyCause> crack_causes(const Cracked& known);

}
