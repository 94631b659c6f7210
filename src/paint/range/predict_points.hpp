// The points of theta and what each expects of a batch. Private to foresee*.cpp.
#pragma once

#include "paint/range/predict.hpp"

namespace paint::learning {

struct Expected { // t at one point of theta: normal(mean, sd)
  NoteModel hand;
  double mean = 0;
  double sd = 0;
};

// Errors as predict().
words::Result<std::vector<Expected>> expected_at_points(const RangeFit& fit,
                                                        const PredictBatch& batch);

}
