// What this studio's own mulling lets expect: minutes and passes until there are no specks.
#pragma once

#include "bench/bench.hpp"
#include "bench/smooth.hpp"

namespace bench {

// A batch was folded: what it teaches takes the place of what it taught before. Null: nothing.
void learn_mulling(Bench& bench, const std::string& batch, const session::Batch* folded);

// At the end of a step: asked anew, for the slab, the plan and the card that is read, where
// something has changed.
void expect_mulling(Bench& bench);

// Until there are no specks, or few. Absent where mulling has no say (no pigment, or flakes), and
// where it has lasted longer than anything that was foreseen.
std::optional<MullingNeeded> mulling_planned(const Bench& bench);
// The last paint of the plan's pigments was still full of specks at its last dot: what is to be
// done about it this time.
SpecksStay specks_last_time(const Bench& bench);
std::optional<MullingNeeded> mulling_of_card(const Bench& bench);
std::optional<MullingNeeded> mulling_left(const Bench& bench,
                                          paint::SpeckWord until = paint::SpeckWord::none);

}
