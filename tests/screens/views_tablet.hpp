#pragma once

#include "screens/views.hpp"

namespace views {

// This tablet: its keys, and what studios tell each other.
void add_tablets(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);

}
