// Making binder, and a jar of it whose strength is looked at.
#pragma once

#include "screens/views.hpp"

namespace views {

void add_binders(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);

}
