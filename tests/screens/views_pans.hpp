#pragma once

#include "screens/views.hpp"

namespace views {

// Pans, and the Book while it compares, finds and takes a note.
void add_pans(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);

}
