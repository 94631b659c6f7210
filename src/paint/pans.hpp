// Pans: how far poured paint dries down, and how many layers fill a pan.
#pragma once

#include "paint/drying.hpp"
#include "paint/film.hpp"

namespace paint {

// Dry over wet volume, 0 to 1: between a body without any air, V_p + V_b, and one that keeps its
// pigment as loose as at the critical concentration, V_p / CPVC, where that is more; never more
// than the wet paint. The middle is halfway, for want of better. Ten batches by an independent
// model: 0.44 to 0.69.
// Errors: those of pvc(Film); not_a_share for a cpvc not above 0 to 1; not_a_number,
// measure_not_positive for wet_mL; wet_less_than_dry.
words::Result<Interval> dry_over_wet(const Film& film, double cpvc, double wet_mL);

// What follows takes one dry share, 0 to 1: ask with both ends of the interval. Every pour fills a
// pan to its brim. Capacity above 0 to 1,000 mL, 0 to 100 layers.
// Errors of all: not_a_number, measure_not_positive, amount_too_large, not_a_share,
// layers_out_of_range.

// Fewest layers that fill a pan to this share or more; 0 for a fill of 0. Error too:
// fill_out_of_reach where no 100 layers would (all of it, or paint that leaves nothing).
words::Result<int> layers_to(double fill_share, double dry_share);

struct PanPlan {
  int pans = 0;
  int layers = 0;
  double wet_mL = 0;  // all pans together
  double fill_mL = 0; // of each, dry
};

// Whole pans that so much wet paint fills, and the wet paint that so many pans (0 to 10,000) want,
// both to at least this share. Errors too: negative_amount, amount_too_large (5,000 mL),
// fill_out_of_reach; a fill of 0 is not_a_share here.
words::Result<PanPlan> pans_of(double batch_mL, double capacity_mL, double dry_share,
                               double fill_share);
words::Result<PanPlan> batch_for(int pans, double capacity_mL, double dry_share, double fill_share);

}
