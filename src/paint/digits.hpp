// How many digits a number may show.
#pragma once

#include "paint/amount.hpp"

namespace paint {

struct Shown {
  std::string value;       // as many digits as its uncertainty bears
  std::string uncertainty; // to the same place
  int decimals = 0;        // behind the point; below 0: rounded to tens, hundreds ...
};

// The number written to that place with a point, whatever the system's language; below 0 decimals
// to tens, hundreds ... A half goes away from zero or to it as the nearest double lies. At most 15
// decimals are written.
std::string written(double value, int decimals);

// The place of the last digit that an uncertainty of so many significant digits has: JCGM 100:2008
// (GUM) 7.2.6, where two are the most. On a screen without "±" one is enough. 1 or 2 digits; -15 to
// 15 decimals. Errors: not_a_number; uncertainty_not_positive; uncertainty_too_small below 1e-14;
// digits_out_of_range.
words::Result<int> decimals_by(double uncertainty, int significant = 1);

// Value and uncertainty, both to that place. Errors: those of decimals_by, and of fault_of(Amount).
words::Result<Shown> shown(const Amount& amount, int significant = 2);

// So many decimals that `step` moves the number: the live ratio by the worth of one drop. 0 to 3.
// Errors: not_a_number, measure_not_positive; step_too_small for less than 0.001.
words::Result<int> decimals_to_step(double step);

// A number that a person typed, or read from an instrument: as it was read, but at most `most`
// decimals (0 to 6): 19, 19.5. What is not a number has none.
int decimals_as_read(double value, int most = 1);

// Grams without a stated uncertainty: two decimals below 1 g, and below 0.01 g one digit that is
// not 0 (to 0.000001); one below 100 g, which is what kitchen scales show; then none.
// What is not a number has none.
int decimals_of_grams(double grams);

// Grams with one: by one digit of it, and never more than the line above allows, since the scale or
// the dropper shows no more. Errors: those of fault_of(Amount).
words::Result<std::string> grams_written(const Amount& grams);

}
