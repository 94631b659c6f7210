// Numbers of paint as they are written for a maker: on screen and on paper the same.
#pragma once

#include "paint/amount.hpp"

namespace paint {

// Quarters as they are written on spoons, other counts with as many digits as they need: 52, 1½,
// 0.3.
std::string count_words(double count);

// 0.04 g, 12.0 g, 250 g; with an uncertainty, by that
std::string grams_number(double grams); // without the unit
std::string grams_words(double grams);
std::string grams_words(const Amount& grams);

// A number by one digit of its uncertainty, and with no more decimals than so many.
std::string number_words(const Amount& amount, int most);

// As an instrument was read, to a tenth: 19.5, 45.
std::string reading_words(double value);

}
