// An amount in the spoons and drops at hand: the best set of them, by looking at all.
#pragma once

#include "paint/amount.hpp"

#include <string>
#include <vector>

namespace paint {

// Something to measure one material with.
struct Scoop {
  std::string tool;
  Amount grams; // of one level filling, or of one drop
  bool drops = false;
  bool quarters = false; // a spoon that is also filled by the quarter, as teaspoons are
};

// Own choice: what a hand fills and counts without a slip. More is weighed.
inline constexpr int most_spoonfuls = 12, most_drops_in_a_row = 30;

struct Scooped {
  std::string tool;
  bool drops = false;
  double count = 0; // drops, or spoons in quarters
};

struct ScoopSet {
  // What moves it most: being off, one filling or drop and another, the tool's own size, how powder
  // lies, how drops of another liquid fall, how the liquid was made.
  enum class From { off, filling, size, heap, tension, making };
  std::vector<Scooped> of; // in the order of the scoops; none: less than half the smallest
  int scoops = 0;          // 1 1/2 spoons are two, as are two drops
  Amount grams;            // what they give
  double off_g = 0;        // that, less what was wanted
  From mostly = From::off;
  std::string by; // tool, where it is one's
};

// Up to twelve spoonfuls, those of one spoon also by the quarter, and up to thirty drops of one
// dropper. Least error first, then fewest scoops, then least error again: what is off by no more
// than `near_g` counts as not off at all. At most eight scoops, of which four spoons.
// Errors: nothing_counted for no scoop, amount_too_large for more than all of them give or more
// than eight, measure_not_positive for a scoop that holds nothing, not_a_number, negative_amount.
words::Result<ScoopSet> best_scoops(double wanted_g, double near_g,
                                    const std::vector<Scoop>& scoops);

}
