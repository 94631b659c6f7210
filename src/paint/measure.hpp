// From what a hand does (drops, a spoon, a weighing) to grams, with what is not known about it.
#pragma once

#include "paint/amount.hpp"
#include "paint/material.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace paint {

// The default is an uncalibrated one: the pharmacopoeia's 20 drops to 1 mL of water (USP <1101>),
// 19 %, so that with the error of scaling to binder its 95 % limits span the 20 to 42 drops to 1 mL
// of binder that droppers give (common practice, no source).
struct Dropper {
  std::string tool;              // id under which its calibration error is shared
  double mL_per_drop = 0.05;     // of the liquid it was calibrated with
  double mL_per_drop_u = 0.0095; // standard uncertainty of that
  Kind calibrated_with = Kind::water;
};

struct Spoon { // level
  std::string tool;
  double mL = 5;
  double mL_u = 0.15;
};

// Largest single amount taken: 5,000 g, 10,000 drops, 1,000 spoons. Negative, not-a-number and
// larger amounts are errors, so are measures of no size (measure_not_positive) and materials of no
// known density (density_not_known).
//
// Each drop has 5 %, each spoonful 5 % (powder 10 %) of its own, standard, from memory. Shares:
// the tool for its calibration; "tension:" + liquid for scaling a drop to another liquid than the
// dropper was calibrated with; "heap:" + tool for how powder lies in that spoon.
words::Result<Amount> grams_of_drops(double drops, const Dropper& dropper, const Material& of);
// Dry powder needs its heap_g_per_mL (else powder_not_weighed).
words::Result<Amount> grams_of_spoons(double spoons, const Spoon& spoon, const Material& of);
// step_g: the last digit of the scale; uniform within it, u = step / sqrt(12) (GUM 4.3.7).
words::Result<Amount> grams_weighed(double g, double step_g = 0.1);

// Drop volume of another liquid from the same tip: Tate's law, mass of a drop ~ surface tension.
// Not a number where the density of `of` is not known.
double drop_volume_mL(const Dropper& dropper, const Material& of);

// Spoons as kitchens have them, where the user's own was never weighed.
struct KitchenMeasure {
  std::string_view id; // "teaspoon_us"; a file's word, not a screen's
  double mL = 0;
};
const std::vector<KitchenMeasure>& kitchen_measures();

// +-5 % of household liquid measures (said of the ANSI Z61.1 kind), taken as uniform; cutlery is
// worse. The measure's id is the tool.
Spoon spoon_of(const KitchenMeasure& measure);

// What a person typed into a number field: digits with at most one comma or point. No sign, no
// space, no exponent, at most 15 digits. Error: not_a_number.
words::Result<double> typed_number(const std::string& text);

}
