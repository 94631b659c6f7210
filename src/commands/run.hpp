// The jobs that need no window, by the words behind the program's name.
#pragma once

#include "commands/play.hpp"

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace commands {

// `given`: without the program's own name. Does the job its first word names (play, show, list,
// sheet, labels, paints, card, table, check, mend, pack, unpack, photo, colour, bring, help; also
// --help and
// --version) and returns the exit status: 0 done, 1 it could not be done or something is wrong, 2
// the command was not understood, or check and mend could not be done at all. Absent, with nothing
// printed, for any other first word or none: then a window or a picture is wanted, or whoever calls
// does not know it either.
std::optional<int> run(const std::vector<std::string>& given, std::ostream& out, std::ostream& err,
                       const Onlooker& onlooker = {}); // the onlooker watches a script played
std::optional<int> run(const std::vector<std::string>& given, const Onlooker& onlooker = {});

}
