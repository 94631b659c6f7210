// Where the paint stands: ratios and volumes of all that lies in one place.
#pragma once

#include "paint/amount.hpp"
#include "paint/material.hpp"
#include "paint/water_activity.hpp"

#include <optional>
#include <string>
#include <vector>

namespace paint {

struct Portion {
  Material material;
  Amount grams;
  std::string card =
      {}; // what the material is kept under; a pigment's density error is shared by it
};

struct Standing {
  Amount pigment_g;
  Amount pigment_mL;
  Amount binder_g;      // materials of kind binder, as put in
  Amount liquid_g;      // everything but pigment, as put in
  Amount liquid_mL;     // as put in
  Amount liquid_mL_now; // less the water that has left and all alcohol, which is gone in minutes
  Amount water_lost_mL;
  double gum_g = 0; // dry gum
  double glycerin_g = 0;
  double honey_g = 0;     // honey solids
  double humectant_g = 0; // both
  double water_g = 0;     // free and held water now
  // Absent while there is no pigment; the flows also where a pigment's density is not known.
  std::optional<Amount> binder_ratio; // g of binder put in to 10 g of pigment
  std::optional<Amount> flow_put_in;  // mL liquid to 1 mL pigment
  std::optional<Amount> flow_now;
  std::optional<double>
      over_oil_point; // flow now over r_oa; absent where a pigment's r_oa is not known
  std::optional<double> gum_strength; // dry gum / (dry gum + water) now; absent without gum
};

// water_lost: g of water that has left this place, with its uncertainty; not more than there was:
// more leaves water_g negative. Pigment volumes carry the uncertainty of the pigment's density as a
// share "density:" + card.
Standing stand(const std::vector<Portion>& contents, const Amount& water_lost);

// What of it may dry.
Wet wet_of(const Standing& s);

}
