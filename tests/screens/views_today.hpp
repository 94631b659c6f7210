#pragma once

#include "screens/views.hpp"

namespace views {

// Today: its first day, with everything that can wait, with nothing; and Slab while it is empty.
void add_todays(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);

}
