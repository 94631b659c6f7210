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

// ---- values alone, for what is shown while the paint dries

// What was put in, summed once: g and mL.
struct Sums {
  double pigment_g = 0, pigment_mL = 0;
  double oil_mL = 0; // the pigments' at their oil-absorption points
  double gum_g = 0, glycerin_g = 0, honey_g = 0, water_g = 0, alcohol_g = 0;
  double liquid_mL = 0; // as put in
  double without_alcohol_mL = 0;
  bool densities_known = true; // of every pigment
  bool oil_known = true;
};
Sums sums_of(const std::vector<Portion>& contents);

struct Gone { // g that have left; below 0: taken up from the air
  double water_g = 0;
  double alcohol_g = 0;
};

// Absent where it rests on what is not there (pigment, gum) or not known (density, oil absorption).
struct Live {
  double water_g = 0; // below 0 where more is said to have left than there was
  double alcohol_g = 0;
  double liquid_mL = 0;
  std::optional<double> flow;           // mL liquid to 1 mL pigment
  std::optional<double> over_oil_point; // flow over r_oa
  std::optional<double> gum_strength;   // dry gum / (dry gum + water)
};
Live live(const Sums& sums, const Gone& gone);

// Dry gum's share of all liquid's mass as it is now; 0 where there is none.
double dry_gum(const Sums& sums, const Live& now);

// What of it may dry.
Wet wet_of(const Sums& sums, const Live& now);

// ---- with uncertainties

// Values as Live has them. Ratios of what shares a portion carry the portion's error once. A
// pigment's density and oil absorption put the shares "density:" and "oil:" + card into what rests
// on them, gum and honey those that material.hpp names.
struct Standing {
  Amount pigment_g, pigment_mL;
  Amount binder_g;  // materials of kind binder, as put in
  Amount liquid_g;  // everything but pigment, as put in
  Amount liquid_mL; // as put in
  Amount liquid_mL_now;
  Amount water_lost_mL;
  Amount gum_g; // dry
  Amount glycerin_g;
  Amount honey_g;                     // solids
  Amount water_g;                     // free and held, now
  Amount alcohol_g;                   // now
  std::optional<Amount> binder_ratio; // g of binder put in to 10 g of pigment
  std::optional<Amount> flow_put_in;  // mL liquid to 1 mL pigment
  std::optional<Amount> flow_now;
  std::optional<Amount> over_oil_point;   // flow now over r_oa
  std::optional<Amount> gum_strength;     // dry gum / (dry gum + water) now
  std::optional<Amount> gum_per_pigment;  // g dry gum to 1 mL pigment
  std::optional<Amount> humectant_to_gum; // g glycerin and honey solids to 1 g dry gum
  std::optional<Amount> pigment_fraction; // pigment volume over the volume of all, now
};

// water_gone: g, alcohol_left: g; their own variances and shares are theirs alone or shared with
// the contents by name. More gone than there was leaves water_g below 0.
Standing stand(const std::vector<Portion>& contents, const Amount& water_gone,
               const Amount& alcohol_left = {});

// What a Standing says of what was put in, for who needs no more: a tenth of the work.
struct WentIn {
  Amount pigment_g;
  Amount liquid_mL;
  double dry_gum = 0; // its share of all liquid's mass; 0 where there is none
};
WentIn went_in(const std::vector<Portion>& contents);

// Dry gum's share of all liquid's mass, as it was put in and as it is now; 0 where there is none.
double dry_gum_put_in(const Standing& standing);
double dry_gum(const Standing& standing);

}
