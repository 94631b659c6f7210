// What stays on glass, knife and muller when paint is gathered, and what weighings teach of it.
#pragma once

#include "paint/amount.hpp"

namespace paint {

// Shares of the paint that is gathered. As it stands, the prior: 5 to 10 % stays behind (common
// practice, no source), and one workshop may lie a little beside that (own estimate).
struct ToolsLoss {
  double share = 0.075;
  double u = 0.025; // standard uncertainty of this workshop's usual share
  int observations = 0;

  bool operator==(const ToolsLoss&) const = default;
};

// Of one gathering, which differs by 0.02 from the next (own estimate).
Amount foretold(const ToolsLoss& loss);

// After a weighing told what share stayed behind one gathering, to a standard uncertainty above 0:
// normal prior and normal observation, so closed. A share below 0 is a weighing's error. What is
// not a number, or above 1, teaches nothing.
ToolsLoss updated(const ToolsLoss& loss, double observed, double observed_u);

}
