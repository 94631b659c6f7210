// How what is known of one pigment narrowed, batch by batch.
#pragma once

#include "session/ranges.hpp"

namespace session {

struct Narrowed {
  const TrainingBatch* batch = nullptr; // null: before the first
  paint::LnSpread demand;               // ln flow, after it
};

// After each of the last `most` batches that felt it, in order, with what came before them first.
// The hand and all other batches are taken as they are known today (theta held), but for the last
// batch, where all is as in `ranges`. Empty for a pigment that nobody felt.
std::vector<Narrowed> narrowing(const Ranges& ranges, const std::vector<const TrainingBatch*>& all,
                                const Card& pigment, std::size_t most);

}
