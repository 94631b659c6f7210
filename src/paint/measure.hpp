// From what a hand does (drops, a spoon, a weighing) to grams, with what is not known about it.
#pragma once

#include "paint/amount.hpp"
#include "paint/material.hpp"

#include <optional>
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

// A level spoon, or any other measure by volume.
struct Spoon {
  std::string tool;
  double mL = 5;
  double mL_u = 0.15; // standard uncertainty of its calibration
  double own = 0.05;  // relative standard uncertainty of each filling; of powder at least 0.10
};

// Scatter of one drop, relative, standard; from memory. So are the fillings of a spoon above.
inline constexpr double own_of_drop = 0.05;

// Largest single amount taken: 5,000 g, 10,000 drops, 1,000 spoons. Negative, not-a-number and
// larger amounts are errors, so are measures of no size (measure_not_positive), materials of no
// known density (density_not_known) and drops no tip gives (drop_out_of_range).
//
// Each drop and each spoonful has an error of its own. Shares:
// the tool for its calibration; "tension:" + liquid for scaling a drop to another liquid than the
// dropper was calibrated with; "heap:" + tool for how powder lies in that spoon; those of
// material.hpp for the density of a liquid with gum or honey, unless drops of its kind were
// weighed.
words::Result<Amount> grams_of_drops(double drops, const Dropper& dropper, const Material& of);
// Dry powder needs its heap_g_per_mL (else powder_not_weighed).
words::Result<Amount> grams_of_spoons(double spoons, const Spoon& spoon, const Material& of);
inline constexpr double scale_step_g = 0.1; // the last digit of a kitchen's scale

// step_g: the last digit of the scale; uniform within it, u = step / sqrt(12) (GUM 4.3.7).
words::Result<Amount> grams_weighed(double g, double step_g = scale_step_g);

// Drop volume in mL of another liquid from the same tip, by the law of drop.hpp. Errors:
// density_not_known, drop_out_of_range, and measure_not_positive for a drop of no size.
words::Result<double> drop_volume_mL(const Dropper& dropper, const Material& of);

// A spoon of the user's own, filled level with water at about 20 °C: what each filling weighed,
// net. A filling errs by 5 %, so the mean of n by 5 % / sqrt n; the scale adds two readings a
// filling. Errors: nothing_counted for no filling, those of grams_weighed, measure_not_positive.
words::Result<Spoon> spoon_weighed(const std::string& tool, const std::vector<double>& water_g,
                                   double step_g = scale_step_g);

// Spoons and cups as kitchens have them, where the user's own was never weighed. The metric ones
// are also those of Japan, of the UK today and of the US food label; Australia's teaspoon is too.
struct KitchenMeasure {
  std::string_view id; // "teaspoon_us"; a file's word, not a screen's
  double mL = 0;
};
const std::vector<KitchenMeasure>& kitchen_measures();

// +-5 % of household liquid measures (said of the ANSI Z61.1 kind), taken as uniform; cutlery is
// worse. The measure's id is the tool.
Spoon spoon_of(const KitchenMeasure& measure);

// What is wrong with a count or an amount, `most` being the largest taken: not_a_number,
// negative_amount, amount_too_large.
inline constexpr double most_drops = 10000;
std::optional<words::Error> fault_of_count(double count, double most);

// What a person typed into a number field: digits with at most one comma or point. No sign, no
// space, no exponent, at most 15 digits. Error: not_a_number.
words::Result<double> typed_number(const std::string& text);

}
