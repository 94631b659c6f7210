// Is there enough gum? Dry gum to the pigment's volume decides whether dry paint holds together.
#pragma once

#include "paint/material.hpp"

#include <optional>
#include <vector>

namespace paint {

enum class GumState {
  too_little, // the dry paint would rub off: binder, not water
  enough,     // binder or water
  too_much,   // the dry paint would crack or stay sticky: water only
};

// g of dry gum to 1 mL of pigment, rising. Between little and enough_from, and between enough_to
// and much, nothing is said.
struct GumMarks {
  double little = 0, enough_from = 0, enough_to = 0, much = 0;
  bool operator==(const GumMarks&) const = default;
};

// By class: our own starting values from ten batches computed by hand, until verdicts on dry paint
// have taught better; no published range was found.
GumMarks usual_marks(PigmentClass family);

// Absent where nothing is said, as with no pigment.
std::optional<GumState> gum_state(double gum_g, double pigment_mL, const GumMarks& marks);

// What dry paint of so much gum turned out to be.
struct GumVerdict {
  enum What { rubs_off, holds, too_much } what = holds;
  double g_per_mL = 0; // dry gum to pigment, above 0; others are left out

  bool operator==(const GumVerdict&) const = default;
};

// The marks after some verdicts, by Bayes's rule on a grid over each of two limits, by themselves:
// below the lower one (between little and enough_from) dry paint rubs off, above the upper one it
// cracks or sticks. ln of a limit ~ normal(ln of the usual one, 0.25^2); the chance of a verdict is
// a logistic of slope 0.15 in ln gum around the limit, mixed with one in ten that has another
// reason. "Holds" speaks for both limits, the other two for one each; five of them weigh as much as
// one fault that was seen: lean paint may hold for a month and rub off in a year. Each limit's two
// marks move by the mean of its ln. Our own values, no source: one fault at the usual limit moves
// it by 7 %, ten alike that contradict it by about a half; one that holds never so far that what
// was warned of by more than a twentieth is no longer, five may.
GumMarks marks_after(const GumMarks& usual, const std::vector<GumVerdict>& verdicts);

}
