#pragma once

#include <string>

namespace screens {

// From the catalogue, as it stands there: what a figure rests on and, in brackets, the figure
// there, which need not be the card's.
std::string source_words(const std::string& from);

}
