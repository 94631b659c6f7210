// The end of a run: what is typed is kept, as by every other way off a page, and the session says
// goodbye.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// The notice after it is that of a card that cannot be kept as it is; else there is none.
void say_goodbye(Bench& bench, const Now& now, Effects& effects);

}
