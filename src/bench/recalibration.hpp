// What a bottle weighed before and after says of the dropper that its drops fell from.
#pragma once

#include "bench/bench.hpp"

namespace bench {

struct DropperFound {
  session::Card card; // as it would say what was found
  std::string of;     // the liquid's name
  double drops = 0;   // counted between the weighings
  double found_g = 0; // of twenty of them; as the card's fact
  double was_g = 0;   // of twenty, by the card as it is
};

// By the last two weighings of one bottle in the batch on the slab. Absent where they do not tell:
// other measures than drops of one dropper and the scale in between, a count lost, a weight that
// the drops contradict, unless it was confirmed; and where the shelf's card was written anew since,
// as once it took this.
std::optional<DropperFound> dropper_found(const Bench& bench);

}
