// What is wrong with one number that a caller gave, as an error value; absent where nothing is.
#pragma once

#include "words/error.hpp"

#include <optional>

namespace paint {

std::optional<words::Error> fault_if_negative(double x);     // not_a_number, negative_amount
std::optional<words::Error> fault_if_not_positive(double x); // not_a_number, measure_not_positive
std::optional<words::Error> fault_if_no_share(double x, double least = 0,
                                              double most = 1); // not_a_number, not_a_share

}
