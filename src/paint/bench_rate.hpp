// How fast one bench dries against what is usual, and what weighings teach of it.
#pragma once

#include "words/error.hpp"

#include <optional>

namespace paint {

// What is known of one bench: by what factor it dries faster than the middle rate from the middle
// area. Log-normal; ln_u is the standard uncertainty of ln_factor. As it stands, the prior: both
// intervals of drying.hpp, taken as uniform in the logarithm, less what differs between sittings.
struct BenchRate {
  double ln_factor = 0; // at most 3 either way
  double ln_u = 0.38;
  int observations = 0;

  bool operator==(const BenchRate&) const = default;
};

// bench_rate_unusable where the factor is out of range or ln_u not above 0.
std::optional<words::Error> fault_of(const BenchRate& bench);

// Relative standard uncertainty of the water lost in one sitting while it leaves freely: the
// bench's, and 0.20 by which one sitting differs from the next (own estimate).
double relative_u(const BenchRate& bench);

// Water that should have left, and by how much that changes with the ln of the bench's factor: by
// itself while water leaves freely, by nothing once all that could leave has left.
struct DryingPrediction {
  double lost_g = 0;
  double per_ln_factor = 0;
  double carried = 1; // what a gram more or less at the start has become at the end

  bool operator==(const DryingPrediction&) const = default;
};

// One stretch after another, and the later part of the whole.
DryingPrediction then(const DryingPrediction& first, const DryingPrediction& next);
DryingPrediction since(const DryingPrediction& first, const DryingPrediction& whole);

// The bench after water lost was observed: by weighing, or as the water that brought the paint back
// to where it was. Normal prior and normal observation of the logarithm, so closed; the observation
// carries its own u (above 0) and the 0.20 between sittings. The new factor lies between the old
// and the observed, its uncertainty is never larger.
// Errors: not_a_number, bench_rate_unusable, nothing_lost where none was foretold or observed,
// uncertainty_not_positive.
words::Result<BenchRate> updated(const BenchRate& bench, const DryingPrediction& predicted,
                                 double observed_g, double observed_u);

}
