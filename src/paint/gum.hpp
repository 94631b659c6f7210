// Is there enough gum? Dry gum to the pigment's volume decides whether dry paint holds together.
#pragma once

#include "paint/material.hpp"

#include <optional>

namespace paint {

enum class GumState {
  too_little, // the dry paint would rub off: binder, not water
  enough,     // binder or water
  too_much,   // the dry paint would crack or stay sticky: water only
};

// g of dry gum to 1 mL of pigment. Between the ranges nothing is said (absent), as with no pigment.
// Ranges by class are our own starting values from ten batches computed by hand, until verdicts on
// dry paint have taught better; no published range was found.
std::optional<GumState> gum_state(double gum_g, double pigment_mL, PigmentClass family);

}
