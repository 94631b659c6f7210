// Flow drawn on a line: a log scale, and where its marks stand. Used by every picture of a trail.
#pragma once

#include "paint/range/range.hpp"

#include <functional>
#include <string>
#include <string_view>
#include <utility>

namespace paint {

// From low at x = left to high at x = right, 0 < low < high.
struct FlowScale {
  double low = 0.8, high = 6;
  double left = 0, right = 100;
  double x(double flow) const; // not clamped; a flow of 0 or less lies far left
  double flow(double x) const;
};

// Wide enough for the band and for every flow shown, though never more than a factor of 25 below
// the middle or of 6 above it: what lies beyond runs off the edge. A flow that is not a number or
// not above 0 asks for nothing.
FlowScale flow_scale(const std::optional<Band>& band, const std::vector<double>& shown, double left,
                     double right);

struct Tick {
  double flow = 0;
  std::string label;
};
// 1 1.5 2 3 4 5 6 8 10 15 ... as many as keep their labels `gap` apart.
std::vector<Tick> ticks(const FlowScale& scale,
                        const std::function<double(std::string_view)>& width, double gap);

std::pair<double, double> band_edges(const Band& band); // as flows

}
