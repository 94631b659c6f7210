// The trail as a drawing: flow across on a log axis, time down, what the pigments want as a soft
// band, and beside it what was told at which moment.
#pragma once

#include "paper/facts.hpp"
#include "paper/markup.hpp"
#include "paper/timeline.hpp"

namespace paper {

inline constexpr double trail_width_mm = 178;

struct Trail {
  Markup svg;                     // in true millimetres
  std::vector<TimelineItem> left; // what found no room beside it, in order
};

Trail trail(const Handed& handed);

// Heights near those wanted, in the same order, at least `step` apart and from `top` on; within
// `bottom` where they all have room. Wanted heights rise.
std::vector<double> spread(std::vector<double> wanted, double step, double top, double bottom);

}
