// A new studio that was told what another had learnt, beside the same one that was not.
#pragma once

namespace studios {

// Prints a table of so many pairs of studios; false where what is promised of it was not kept
// within `errors_allowed` standard errors.
bool print_friends(int count, double errors_allowed);

}
