// How an amount of a liquid is said: in spoons where they serve, the last of it by the drop; what
// nobody counts is weighed.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// What one drop and one level spoon of a liquid hold, and what it weighs; 0 where there is no
// spoon.
struct Measures {
  double drop_mL = 0;
  double spoon_mL = 0;
  double g_per_mL = 1;
};
Measures measures_of(const Bench& bench, const session::Card& liquid);
Measures measures_of_binder(const Bench& bench); // of the batch on the slab

inline constexpr int most_counted = 30; // drops in a row: own choice

// Quarters of a spoon, as many as are in it; 0 where that is none, or more than twelve spoons.
double spoons_in(double mL, const Measures& of);

// Quarters of a spoon from low to high, the nearest to their middle; 0 where there is none.
double spoons_between(double low_mL, double high_mL, const Measures& of);

}
