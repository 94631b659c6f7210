// What Shelf and the finder of Plan list, made anew only when something has changed that it follows
// from: of ten thousand cards a frame looks at those that show.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// Those of bench.shelf, or of bench.away where the shelf lists what was put away.
std::shared_ptr<const KeptList> list_of_shelf(const Bench& bench);
const std::vector<session::Card>& listed_from(const Bench& bench);

std::shared_ptr<const KeptList> list_of_finder(const Bench& bench); // of bench.shelf

void keep_lists(Bench& bench); // at the end of a step

}
