// How an amount of a liquid is said with what is on the shelf: session/tapped.hpp.
#pragma once

#include "bench/bench.hpp"
#include "session/tapped.hpp"

namespace bench {

using session::any_drop_mL, session::at_once, session::most_counted, session::mL_of,
    session::tapped, session::drops_by_fives;
using session::Measures, session::Tapped;
using session::spoons_in, session::spoons_between;

Measures measures_of(const Bench& bench, const session::Card& liquid);
Measures measures_of_binder(const Bench& bench); // of the batch on the slab

}
