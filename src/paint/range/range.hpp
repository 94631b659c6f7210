// The flow at which a pigment feels right, as it is drawn and told. Natural
// logarithms of flow (mL liquid to 1 mL pigment) throughout.
#pragma once

#include "paint/material.hpp"
#include "paint/range/predict.hpp"

#include <vector>

namespace paint {

// What is known of one paint's range at one moment.
struct Band {
  double middle = 0;       // ln flow at the middle of right: as likely above as below
  double sd = 0;           // of that
  double from = 0, to = 0; // ln flows: right begins as likely below `from` as above it, and ends
                           // likewise at `to`
  double first = 0, step = 0;
  std::vector<double> right; // chance that a hand would call it right at first, first + step, ...
  int batches = 0;           // of this studio, that these pigments were felt in; 0: a guess
  int of_studio = 0;         // batches that anything was felt in
  bool told = false;         // a guess by what another studio told

  bool operator==(const Band&) const = default;
};

// Of a Prediction whose volumes are to 1 mL of pigment in all.
Band band_seen(const Prediction& prediction);

// Between what was sampled by a straight line, beyond it 0; not a number for a flow that is
// negative or not a number.
double chance_right(const Band& band, double flow);

// What a pigment's class alone tells. Where each figure is from: the .cpp.
struct ClassPrior {
  double over_oil = 0;    // ln of demand over r_oa
  double over_oil_sd = 0; // between pigments of the class, beyond LearnPriors' tau
  double oil = 0;         // ln r_oa where the oil absorption is not known
  double oil_sd = 0;
};
ClassPrior class_prior(PigmentClass family);

}
