// How large a drop falls from a tip: Tate's law with the correction of Harkins & Brown (1919),
//   m g = pi d s f(u),  u = (d/2) / V^(1/3),
// d the outer diameter of the wetted tip, s the surface tension, V the drop's volume. f is the
// polynomial of Lee, Chan & Pogaku (2008), from memory; within 1.4 % of Harkins & Brown's table and
// of the fit of Heertjes (1971), and it goes down to the finest tips. Drops that fall slowly.
#pragma once

#include "words/error.hpp"

namespace paint {

// f(u), 0 to 1.2: the share of the hanging drop's weight, as Tate has it, that falls.
double drop_weight_factor(double u);

// mL of one drop. tip_mm: outer diameter. Errors: not_a_number, measure_not_positive for anything
// not above 0, drop_out_of_range where u would be above 1.2 (a tip wider than about 15 mm for
// water, 7 mm for a heavy soap). Against measured drops (Eschbaum 1895) 3 to 8 % low, 1 % high for
// the finest tip.
words::Result<double> drop_mL(double tip_mm, double tension_mN_per_m, double g_per_mL);

// The other way: mm of the tip that lets such a drop of that liquid fall. Same errors.
words::Result<double> tip_of_drop_mm(double mL, double tension_mN_per_m, double g_per_mL);

}
