// Paint of earlier batches as a material of this one, wet from the jar or dry from the pans.
#pragma once

#include "bench/bench.hpp"

namespace bench {

inline constexpr std::size_t most_paints = 4;

struct OtherPaint {
  std::string batch;
  session::Card card; // what it is made of, now
  session::Place place = session::Place::jar;
  double grams = 0;
};

// Of the latest batches that have some, but this one; the latest first.
std::vector<OtherPaint> paints_of_others(const Bench& bench);

bool lies(const Bench& bench, session::Place place); // any of the batch on the slab

}
