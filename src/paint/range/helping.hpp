// How much liquid goes in at once, worked in with the knife, before the drops.
#pragma once

#include "paint/range/predict.hpp"

namespace paint {

// As flows: mL to 1 mL of pigment.
struct Helping {
  double low = 0;
  double high = 0;
};

// Half to seven tenths of what the paint will likely want (common practice, no source), and never
// more than leaves the chance of too loose at allowed_too_loose. `took`: what an earlier batch of
// the same paint took at first, which is then asked for again; less than half of what it wants was
// no first helping and is not meant. `all`: the binder that batch or a recipe takes in
// the end, where that is known: it wants no more than that. Of a Prediction whose volumes are to 1
// mL of pigment in all; 0 of an empty one.
Helping first_helping(const Prediction& prediction, double took = 0, double all = 0);

}
