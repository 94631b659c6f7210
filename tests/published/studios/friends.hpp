// A new studio that was told what another had learnt, beside the same one that was not.
#pragma once

#include <optional>

namespace studios {

// Prints a table of so many pairs of studios; false where what is promised of it was not kept
// within `errors_allowed` standard errors; without a number nothing is judged.
bool print_friends(int count, std::optional<double> errors_allowed);

}
