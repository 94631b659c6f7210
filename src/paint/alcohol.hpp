// Alcohol leaves the slab on a clock of its own.
#pragma once

#include "paint/drying.hpp"

namespace paint {

// g of alcohol left after `seconds`, from so much mixed into this paint; `wet` without it. The
// interval is what a fast, the middle and a slow bench leave: `low` the least, a factor of 2.5 in
// the rate either way (own estimate: rate and area as for water, activity and cooling).
//
// Ethanol in still air beside water: the same film of air, 1.56 times the mass for the same
// pressure (molar masses, and diffusion to the power of two thirds), Antoine's vapour pressure, no
// alcohol in the room. Its activity among water is m / (m + 0.64 g of water), so four times its
// mole fraction where there is little and 1 where there is nothing else. The area is the spread's,
// or what the paint with its alcohol at the start covers 0.2 mm deep. Two halves of a time make the
// whole, unless that limit holds.
// Errors: not_a_number, negative_amount, and those of predict_drying but for the room above 0.98.
words::Result<Interval> alcohol_after(double alcohol_g, const Wet& wet, Spread spread,
                                      const Room& room, double seconds,
                                      const BenchRate& bench = {});

}
