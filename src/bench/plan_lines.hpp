// A plan as a recipe to follow: what to measure out, in its order.
#pragma once

#include "bench/view.hpp"

namespace bench {

std::vector<PlanView::Step> plan_lines(const Bench& bench, const Planned& comes_to);

// A tool as it is said of.
ScoopView scoop_view(const Bench& bench, const std::string& tool, bool drops, double count);

}
