// How fast mulling takes the specks out, and how many passes are likely still needed. Coarse
// particles decline in the first order: F(n) = F_inf + (F_0 - F_inf) exp(-k n), n passes (so a
// ceramics trade paper has it for mills; no published k for a glass muller was found).
#pragma once

#include "paint/drying.hpp"
#include "paint/material.hpp"

#include <optional>

namespace paint {

// A reading with its limits (95 %): specks in one test dot.
using Fineness = Interval;

// What the three words stand for, own estimate: many 20 to 200, few 1 to 20, none at most 1.
enum class SpeckWord { many, few, none };
Fineness specks_said(SpeckWord word);

struct Decline {
  Interval per_pass; // k, limits 95 %; above 0
  double floor = 0;  // F_inf: what no mulling removes
};

// Before anything was read: from many specks (60) to one in the minutes that makers mull, passes of
// 2 to 5 minutes: minerals and extenders 5 to 20, organic pigments 20 to 60 minutes (common
// practice, no source); carbon and fine minerals as organics, unknown 5 to 60 (own guess). Absent
// for effect pigments, whose flakes mulling breaks.
std::optional<Decline> decline_guess(PigmentClass family);
inline constexpr double guess_pass_min = 3.1622776601683795; // sqrt(2 x 5): of its passes

// Passes until the reading is at the target: 0 where it is already there. Low with the fast rate
// and the lower limit of the reading, high with the slow one and the upper.
// Errors: not_a_number, negative_amount, limits_out_of_order, rate_unusable; target_below_floor
// where the target is not above the floor.
words::Result<Interval> passes_needed(const Fineness& now, double target, const Decline& decline);

}
