// Whose what one studio tells another is: no name, but a number that only it knows.
#pragma once

#include "paint/range/told.hpp"
#include "session/reader.hpp"

#include <string>
#include <vector>

namespace session {

// The random number of the studio's first session; empty where it has none of twelve digits.
std::string source_of(const std::vector<Log>& logs);

// By a session that is among these: what it says is learnt already, and would count twice.
bool is_own(const paint::ToldRange& told, const std::vector<Log>& logs);

}
