// What a command has to say of a studio, as a session by itself.
#pragma once

#include "bench/bench.hpp"

#include <vector>

namespace commands {

// Events of no batch as the lines of a new session, from its Began to its Left, stamped after
// everything that `logs` say.
std::vector<session::Line> session_of(std::vector<session::Event> events,
                                      std::vector<session::Log> logs, const bench::Now& now);

}
