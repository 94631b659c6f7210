// A batch's trail as numbers: what it is drawn against, and where its moments stand.
#pragma once

#include "session/batch.hpp"

#include <utility>

namespace session {

// Time down. In a whole batch the stretches where nobody was there are short and equal.
struct TimeScale {
  std::vector<std::pair<Clock, double>> knots; // clock -> y, both rising
  double y(Clock clock) const;                 // beyond the ends: the end's slope
};
inline constexpr double gap_in_time_mm = 4;

// From `from` at y = top to `to` at y = bottom, but at least two minutes of it.
TimeScale time_scale(const std::vector<TrailPoint>& points, Clock from, Clock to, bool whole,
                     double top, double bottom);

}
