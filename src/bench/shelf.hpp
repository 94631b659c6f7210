// The shelf that ships: marked guesses that stand until a workshop replaces them.
#pragma once

#include "bench/bench.hpp"

#include <vector>

namespace bench {

// Pigments of the catalogue, four binders, water, honey let down, glycerin, ox gall, dry gum for
// making binder, a dropper nobody has calibrated, a metric teaspoon, a half and a full pan.
std::vector<session::Card> shelf_that_ships();

bool ships_so(const session::Card& card); // nobody has edited it

// Dry gum: binder is made of it, and it goes into no paint by itself.
bool makes_binder(const session::Card& card);

// Lays the workshop's own cards and edits over it, its own first; what was put away lies apart.
void restock(Bench& bench);

}
