// The same colour again.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// Plan, filled with what a batch was made of: its pigments by the grams that went in, its binder,
// the room as it is now. What is no longer on the shelf is left out and said.
void make_again(Bench& bench, const std::string& batch, const Now& now);

// The flow of the first helping of the batch that the one on the slab makes again, while its
// pigments stand to each other as they did there; else 0.
double made_first(const Bench& bench);

// g of binder that it took in all, for as much pigment as lies here; absent where it was another
// binder.
std::optional<double> made_in_all(const Bench& bench);

// Of binder in all, by the plan of the batch on the slab, for as much pigment as lies here; 0 where
// it does not say, or where the pigments or the binder have become others.
struct PlannedBinder {
  double g = 0;
  double flow = 0;
};
PlannedBinder planned_in_all(const Bench& bench);

// Over the slab, as Plan said it of the batch that lies there now.
int portions_planned(const Bench& bench);

}
