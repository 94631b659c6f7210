// Whether a batch is of the colour of the last good one of its paint.
#pragma once

#include "session/reader.hpp"

#include <string>
#include <vector>

namespace commands {

// As the Book says it; empty where neither was read.
std::string matched_for_people(const std::vector<session::Log>& logs, const std::string& batch);

}
