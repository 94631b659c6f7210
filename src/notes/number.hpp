// Numbers as people wrote them down, with a decimal comma or a point. Pure.
#pragma once

#include "words/error.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace notes {

enum class Decimal { unknown, comma, point };

// What one number tells of how decimals are written: 3,5 and 1.234,5 and 0,125 a comma; 1,234
// nothing, since it may be either.
Decimal decimal_told(std::string_view digits);

// Digits with commas, points and apostrophes. One that may be read in two ways is read as `decimal`
// says. Errors: number_two_ways where that is unknown, number_none for what is none (3.4.2019).
words::Result<double> number_of(std::string_view digits, Decimal decimal);

// Of all numbers that stand in these cells; unknown where none tells, or they contradict each
// other.
Decimal decimal_of(const std::vector<std::string_view>& cells);

}
