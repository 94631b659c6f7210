// Looks through a studio's files and says what is damaged. Reads only.
#pragma once

#include "studio/studio.hpp"

#include <iosfwd>

namespace commands {

// One line for each damage (file, line, byte, reason), file that could not be read, and warning of
// a batch; what is ordinary (a torn last line, no goodbye) is a note. Returns the exit status: 1 if
// anything is damaged or could not be read.
int check(const studio::Reading& reading, std::ostream& out);

}
