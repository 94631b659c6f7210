// What today's feel notes say of the range: each is a reading of one hidden stiffness.
#pragma once

#include "paint/range.hpp"

namespace paint {

// A hand's word for the paint at one live flow: 0 won't move, 1 too sticky, 2 right, 3 too loose,
// 4 too runny.
struct Reading {
  double flow = 0; // mL liquid to 1 mL pigment, above 0
  int note = 2;
};

// The range after today's notes, by Bayes's rule on a grid over ln demand. A note's chance is a
// cumulative logit (McCullagh 1980) around the middle of right, with the thresholds and the slope
// below, mixed with a small share of slips. Readings that cannot be (flow not above 0, note
// outside 0 to 4) are left out. The result is summed up by its middle and sd; what it rests on
// stays as it was.
//
// Our own values until a studio has taught better: right reaches half_width to either side, sticky
// 0.30 beyond it, loose 0.25, in ln flow; one note in twenty is a slip.
Band after(const Band& before, const std::vector<Reading>& notes);

}
