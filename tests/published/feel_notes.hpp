// The simulated studio of data/range_notes.csv, as a problem to be learnt from.
#pragma once

#include "paint/range/learn.hpp"
#include "published/columns.hpp"
#include "published/row.hpp"

#include <cmath>

namespace published {

inline const Source prototype =
    apart("the same model in SciPy, written apart from this program, on data/range_notes.csv");
inline const std::vector<std::string> four = {"PB29", "PW6", "PBr7", "PY42"};

inline paint::LearnProblem feel_notes() {
  auto table = columns_of("range_notes.csv");
  paint::LearnProblem problem;
  for (const double oil : {0.829412, 0.833155, 1.751872, 1.490909})
    problem.pigments.push_back({std::log(oil), 0, 0});
  for (std::size_t i = 0; i < table["feel"].size(); ++i) {
    const int batch = static_cast<int>(table["batch"][i]) - 1;
    if (batch == static_cast<int>(problem.batches.size())) {
      problem.batches.push_back({});
      paint::LearnSegment segment{batch, {}};
      for (int k = 0; k < 4; ++k)
        if (const double mL = table[four[static_cast<std::size_t>(k)] + "_mL"][i]; mL > 0)
          segment.pigments.push_back({k, mL});
      problem.segments.push_back(segment);
    }
    problem.notes.push_back(
        {batch, std::log(table["liquid_mL"][i]), 0, {}, static_cast<int>(table["feel"][i]) - 1});
  }
  return problem;
}

inline paint::LearnPriors feel_priors(bool slips) {
  paint::LearnPriors priors;
  priors.alpha = {0.5, 0.4};
  priors.slips = slips;
  priors.strength = {0, 0}; // of one binder, and of no time
  priors.walk = 0;
  return priors;
}

}
