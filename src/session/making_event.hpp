// One kind of event (event.hpp): what was done to make binder.
#pragma once

#include "paint/material.hpp"
#include "session/immutable.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace session {

enum class MakingStep {
  gum_in, // into the water: with it the making begins
  steep,
  strain,
  sweeten,
  preserve,
  into_jar,
  thinned, // of a jar that was made: water came to it
  thickened,
  dried,    // water has left it
  given_up, // thrown away before it was done
  dose      // of a preservative that is to go in: no step, said before that one begins
};

// A step of making a binder began, which ends the step before; or something was done to a jar of it
// later. Of a step that began twice the first counts.
struct Making {
  static constexpr std::string_view word = "making";
  struct Take {
    std::string of; // card
    double g = 0;
    bool operator==(const Take&) const = default;
  };
  struct Start { // of gum_in, and apart from the others: a line is as large as its largest kind
    std::string by = {};      // card of the binder whose recipe it goes by
    paint::Recipe parts = {}; // all that is to go in, in g
    double spoons = 0;        // by which the gum was measured; 0: weighed
    std::string with = {};    // that spoon
    bool operator==(const Start&) const = default;
  };
  MakingStep step = MakingStep::gum_in;
  std::string of;               // card of the jar that it becomes, by which the making is known
  Immutable<Start> start = {};  // gum_in
  double drops = 0;             // preserve, dose
  double g = 0;                 // preserve, dose; thinned and thickened: put in; dried: gone
  double had_g = 0;             // in the jar before it was thinned, thickened or dry
  std::vector<Take> takes = {}; // off the shelf
  bool operator==(const Making&) const = default;
};

std::string_view name_of(MakingStep); // the word in files
std::optional<MakingStep> making_step_named(std::string_view);

}
