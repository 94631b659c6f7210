// Whether a batch is of the colour of an earlier one, and what in the two differs that may be why.
#pragma once

#include "bench/bench.hpp"
#include "bench/view_match.hpp"

namespace bench {

// The last batch begun before it that is of the same paint (made again of one another, or of the
// same pigments), was judged good and had its swatch read; empty: none, or its own was not read.
std::string matched_with(const Bench& bench, const std::string& batch);

// Absent where either swatch was not read. Folds both batches, and those that say how much each
// number differs here from batch to batch.
std::optional<MatchView> match_of(Bench& bench, const std::string& one, const std::string& other);

}
