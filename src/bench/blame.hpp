// What differs between two batches that makers blame for another colour, by how unusual it is.
#pragma once

#include "bench/view_match.hpp"
#include "session/batch.hpp"

namespace bench {

struct Made { // a batch, and how far east of UTC the clock stood that it was begun by
  const session::Batch* batch = nullptr;
  int offset_min = 0;
};

// Of b against a, the most unusual first. `others` are batches of this workshop, each after the one
// of the same paint before it: how much a number differs there from batch to batch is what is
// usual. Until that is known it is taken to be: of binder, gum 5 %, of honey 10 %, of minutes 30 %,
// a pass, 60 days of the binder's age (common practice, no source); these count as much as two
// pairs.
std::vector<MatchView::Blame> blame(const Made& a, const Made& b,
                                    const std::vector<std::pair<Made, Made>>& others);

}
