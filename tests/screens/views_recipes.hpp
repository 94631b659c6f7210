#pragma once

#include "screens/views.hpp"

namespace views {

// The longest that a recipe to follow may say.
std::vector<bench::PlanView::Step> lines();

// Amounts in spoons, and for how much of each kind; recipes to choose from; a number being typed.
void add_recipes(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);

}
