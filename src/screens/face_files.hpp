// Where the bytes of faces come from: on a computer files of the system, or those beside the
// program; in a browser the page.
#pragma once

#include <string>
#include <vector>

namespace screens {

// rank: 0 to ranks - 1 (measure.hpp). Empty where it is not there.
std::vector<unsigned char> bytes_of_face(bool bold, int rank);

std::string place_of_face(bool bold, int rank); // for whoever misses it

// Of a rank without which the program starts: it is fetched when a letter needs it.
bool comes_later(int rank);

}
