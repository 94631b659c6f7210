// Binder that is being made, or was, folded from the lines of its steps.
#pragma once

#include "session/event.hpp"

#include <map>

namespace session {

struct Shelf;

struct BinderMaking {
  struct Step {
    MakingStep step = MakingStep::gum_in;
    std::int64_t at = 0; // ms since 1970
    Ref line;
    double g = 0, drops = 0; // of a preservative
  };
  Making plan;                       // as the gum went in
  std::vector<Step> steps;           // in the order in which they began, the gum first
  double dose_g = 0, dose_drops = 0; // of a preservative, said last before it went in
  bool given_up = false;
};
using Makings = std::map<std::string, BinderMaking>; // by the card of the jar

// How long a step takes, in min: a day to steep, the others 1 to 10 (common practice, no source). 0
// where the word is of no step that takes time.
double usual_minutes(MakingStep step);

// Those of a recipe, in their order: a binder without honey and glycerin is sweetened by nothing.
std::vector<MakingStep> steps_of(const paint::Recipe& recipe);

const BinderMaking::Step* begun(const BinderMaking& making, MakingStep step); // null: not yet
// From when on the last step that began has had its time, in ms since 1970.
std::int64_t ends_at(const BinderMaking& making);
// Gum has stood in its water so long, for nothing, that it may have gone off.
bool stood_too_long(const BinderMaking& making, std::int64_t now_ms);
// The first of its recipe's steps that has not begun.
std::optional<MakingStep> next_step(const BinderMaking& making);

// Into the shelf: what the step took from it, what it left in a jar and of which strength. A step
// of a making whose gum never went in, and one that began before, change nothing.
struct MakingLine {
  const Ref& ref;
  std::int64_t at = 0;
  const Making& says;
  int offset_min = 0; // of the clock on the wall then, east of UTC
};
void take_step(Shelf& shelf, const MakingLine& line);

}
