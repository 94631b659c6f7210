// What a person meant who mistyped a weight.
#pragma once

#include <optional>

namespace paint {

// Of the numbers one slip of the finger away from the one typed (a digit wrong, left out or one too
// many, two of them swapped, the point one or two places off), the nearest to what is expected, g
// to three decimals. Absent where none lies as near to that as `within`.
std::optional<double> meant(double typed, double expected, double within);

}
