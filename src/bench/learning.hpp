// How a bench learns the working range: batches are looked through a few at a time, what they felt
// is handed out as one problem, and what comes back stands until the next.
#pragma once

#include "bench/bench.hpp"

namespace bench {

bool wants_to_study(const Bench& bench);

// Looks through some of the stale batches; once there is none, asks for the fit.
void study(Bench& bench, Effects& effects);

// A friend's file lies there: it is asked whether it shall count, but where it does so already.
void found_told(Bench& bench, FriendsFile file);

// After lines came: what another studio told, where that is another word than before.
void hear(Bench& bench);

void take_fit(Bench& bench, const Fitted& input, Effects& effects);

// What the batch on the slab wants, asked anew where something has changed.
void expect(Bench& bench);

}
