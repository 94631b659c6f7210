// What an advice is given by, beside the batch on the slab.
#pragma once

#include "bench/advice.hpp"
#include "bench/bench.hpp"

namespace bench {

Known known_of(const Bench& bench);

}
