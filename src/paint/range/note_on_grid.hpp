// A note of today along an even grid of demands. Shared by all that weighs notes.
#pragma once

#include "paint/range/predict.hpp"

#include <vector>

namespace paint {

struct WordEnds { // ln flow from the middle of right; infinite where there is no word beyond
  double below = 0, above = 0;
};
WordEnds ends_of(const NoteModel& hand, int felt);

// The slope of who reads a flow that is off by so much.
double widened(double slope, double sd);

std::optional<words::Error> fault_of(const TodayNote& note); // learn_out_of_range

struct NoteOnGrid {
  double ln_mL = 0, sd = 0;
  int felt = 0;
  double late = 0; // none of those who say the last word are
};
NoteOnGrid on_grid(const TodayNote& note, double drying); // one that has no fault

// Its chance at every place of the grid.
void chances_along(const PredictionPoint& grid, const NoteOnGrid& note, std::vector<double>& out);

// Of a hand that does not slip, by its logarithm: where all would vanish.
double ln_chance(const PredictionPoint& grid, int place, const NoteOnGrid& note);

}
