// What is known of a dropper: from drops weighed, from a bottle weighed around drops.
#pragma once

#include "paint/measure.hpp"

#include <string>
#include <vector>

namespace paint {

struct DropsWeighed {
  double drops = 0;
  double g = 0; // net
};

// Calibrated by weighing drops of `with`, once or several times: mean mass of a drop, with the
// scale's resolution (two readings a weighing, uniform in step_g) and the scatter between the
// weighings, or the 5 % of each drop where that is more (one weighing shows no scatter, two hardly
// any). The density of `with` cancels when the same liquid is dropped again.
// Errors: nothing_counted for no weighing; amounts as in grams_of_drops and grams_weighed;
// density_not_known; drop_out_of_range for drops not of 0.003 to 0.3 mL.
words::Result<Dropper> calibrated(const std::string& tool, const std::vector<DropsWeighed>& weighed,
                                  double step_g, const Material& with);

// The dropper after so many drops of `of` were found to weigh so much together: the mean of what it
// was taken for and of what was found, each by its inverse variance. Afterwards it is one
// calibrated with that kind of liquid. Errors as above.
words::Result<Dropper> recalibrated(const Dropper& before, double drops, const Material& of,
                                    const Amount& grams);

}
