// The points of theta and what each expects of a batch. Private to foresee*.cpp.
#pragma once

#include "paint/foresee.hpp"

namespace paint::learning {

struct Expected { // t at one point of theta: normal(mean, sd)
  Hand hand;
  double mean = 0;
  double sd = 0;
};

// Errors as foresee().
words::Result<std::vector<Expected>> expected_at_points(const Learnt& learnt,
                                                        const ForeseeBatch& batch);

}
