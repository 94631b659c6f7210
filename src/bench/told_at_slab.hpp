// What Slab shows of the batch by what was told of it last.
#pragma once

#include "session/ranges.hpp"

namespace bench {

// What the pad of the passes begins: powder that was hardly worked in is worked on first.
session::Stage next_stage(const session::Batch& batch);

// Of powder that was worked for a while with liquid nothing flies up any more.
bool is_dusty(const session::Batch& batch);
// Pigment that was weighed onto paint that had been felt, and is dry as yet.
bool is_late_powder(const session::Batch& batch);

bool flows_right(const session::Batch& batch); // by what the hand said last, if it said anything

// As the paint was when something was last told of it: while it dries, its place moves and not the
// range.
paint::Band band_as_told(const session::Batch& batch, const session::Expectation& expected);

}
