#pragma once

#include "screens/views.hpp"

namespace views {

// Slab when a bottle was weighed, and a jar.
void add_weighings(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);

}
