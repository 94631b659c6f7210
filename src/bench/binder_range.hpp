// How much of one binder a pigment wants: its range, said in what a maker weighs and puts in, as
// Plan says it: with what dries off until the paint is right.
#pragma once

#include "bench/bench.hpp"

namespace bench {

struct BinderRange {
  // Than what taught it: then it is known less well. Never felt: by class and oil absorption alone.
  enum Than { as_taught, stronger, thinner, never_felt };
  std::string binder;                  // its name
  double g = 0, low_g = 0, high_g = 0; // to 10 g of pigment; nine in ten of what it may be
  Than than = as_taught;
  bool told = false;     // by another studio; not felt here
  double g_per_flow = 0; // g of it put in to 10 g of pigment, to a flow of 1
};

// What figures of a pigment's card are said in: the binder planned with, else the shelf's first;
// null where there is none. Its dry gum as a share of its mass; the usual one where there is none.
const session::Card* binder_meant(const Bench& bench);
double dry_gum_meant(const Bench& bench);

// Of these mL of pigments together. Absent where nothing can be said.
std::optional<BinderRange> binder_range(const Bench& bench,
                                        const std::vector<session::BatchPigment>& mL,
                                        const session::Card& binder);

// Of the plan's blend, in its binder.
std::optional<BinderRange> range_of_plan(const Bench& bench);

// Of a pigment's card, in the binder that is planned with.
std::optional<BinderRange> range_of_card(const Bench& bench, const session::Card& pigment);

}
