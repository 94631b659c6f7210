// Looks through a studio's files and says what is damaged. Reads only.
#pragma once

#include "studio/studio.hpp"

#include <iosfwd>
#include <vector>

namespace commands {

struct Finding {
  words::Error what;
  bool ordinary = false; // a note
};

// What is wrong with a studio's files and with the sessions joined of them: everything that was
// read and that could not be.
std::vector<Finding> findings(const studio::Reading& reading,
                              const std::vector<session::Log>& logs);

// Of these, the damaged places: the one count of them.
std::size_t damaged_places(const std::vector<Finding>& found);

// One line for each damage (file, line, byte, reason), line that no file holds or that two tell
// differently, file that could not be read, and warning of a batch; what is ordinary (a torn last
// line, no goodbye), and lines that an earlier mending found gone, are notes. Returns the exit
// status: 0 all is whole, 1 something is damaged, 2 nothing could be read.
int check(const studio::Reading& reading, std::ostream& out);

}
