// Whether a batch is of the colour of an earlier one, and what in the two differs that may be why.
#pragma once

#include "bench/bench.hpp"
#include "bench/view_match.hpp"

namespace bench {

// The last batch begun before it that is of the same paint (made again of one another, or of the
// same pigments), was judged good and had its swatch read; empty: none, or its own was not read.
std::string matched_with(const Bench& bench, const std::string& batch);

// Whether both swatches were read.
bool may_match(const Bench& bench, const std::string& one, const std::string& other);

std::string earlier_of(const Bench& bench, const std::string& one, const std::string& other);

// At the end of a step that shows it: both batches, and those that say how much each number
// differs here from batch to batch.
void fold_for_match(Bench& bench, const std::string& one, const std::string& other);
// Of what was folded so. Absent where either swatch was not read.
std::optional<MatchView> match_of(const Bench& bench, const std::string& one,
                                  const std::string& other);

}
