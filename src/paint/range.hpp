// The flow at which a pigment feels right, and what may be added next. Natural logarithms of flow
// (mL liquid to 1 mL pigment) throughout.
#pragma once

#include "paint/material.hpp"

#include <optional>
#include <vector>

namespace paint {

enum class RestsOn { class_guess, studio };

// The demand as a distribution: ln flow at the middle of right is normal(middle, sd).
struct Band {
  double middle = 0;
  double sd = 0.5;
  double half_width = 0.12; // right reaches from middle - half_width to middle + half_width
  double slope = 0.06;      // how sharply a hand tells one note from the next, logistic scale
  RestsOn rests_on = RestsOn::class_guess;
  int batches = 0; // of this studio
};

struct PigmentShare {
  Pigment pigment;
  double volume_share = 1; // of all the pigment
};

// What a pigment's class alone tells. Where each figure is from: the .cpp.
struct ClassPrior {
  double over_oil = 0; // ln of demand over r_oa
  double over_oil_sd = 0;
  double oil = 0; // ln r_oa where the oil absorption is not known
  double oil_sd = 0;
  double binder_g = 0; // usual g of binder (gum 1 : water 2) to 10 g of pigment
};
ClassPrior class_prior(PigmentClass family);

// Starting range from oil absorption and class. Absent without pigment, or where a volume share is
// negative or not a number, or none is above 0.
// A class's demand over r_oa, and r_oa where it is not known: own estimate, see the .cpp.
std::optional<Band> class_guess(const std::vector<PigmentShare>& pigments);

// First helping by practice, g binder (gum 1 : water 2) to 10 g pigment: half to seven tenths of
// the class's usual; for an unknown pigment that of the class that wants least.
struct Helping {
  double low = 0;
  double high = 0;
};
Helping first_helping(PigmentClass family);
Helping first_helping(double usual_g); // of what is usual, in its unit

// Chance that a hand would call this flow right, or too loose or runnier. 0 to 1; not a number for
// a flow that is negative or not a number. slope must be above 0. The normal spread of the demand
// is folded into the logistic of the hand as one logistic of the same variance: wrong by 0.05
// points where the chance is 4 %, by 2.3 points at worst.
double chance_right(const Band& band, double flow);
double chance_too_loose(const Band& band, double flow);

// Most drops of drop_mL that keep the chance of too loose at 4 % or less; 0 if one is too many, or
// if what is asked is no flow, drop or pigment at all. At most 10,000, the largest addition.
int safe_drops(const Band& band, double flow, double drop_mL, double pigment_mL);

}
