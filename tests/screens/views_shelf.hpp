// Shelf as a maker can make it look: cards to be changed, a pigment that is read, jars, the chart.
#pragma once

#include "screens/views.hpp"

namespace views {

void add_shelves(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);
void add_cards_read(std::vector<Case>& out, bench::Size mm, bench::Hand hand,
                    const std::string& on);

}
