// How wide text may turn out in a face that is not known: a reader's own sans serif.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace paper {

// In em, by the widest of the usual faces: a little more than most need.
double width_em(std::string_view text, bool bold);

// Whole words a line where they have room, else broken between letters: what comes out, joined, is
// what went in but for spaces at the breaks. Nothing for a width that holds not even one letter.
std::vector<std::string> broken(std::string_view text, double width_em, bool bold);

// With … behind as much of it as there is room for, where not all has room.
std::string shortened(std::string_view text, double width_em);

}
