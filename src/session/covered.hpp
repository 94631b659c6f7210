// Whether paint lay covered before a line: nothing has left it then.
#pragma once

#include "session/batch.hpp"

namespace session {

inline constexpr Clock gap_s = 1800;        // longer than this between two lines: nobody was there
inline constexpr Clock unattended_s = 3600; // nobody mulls so long without a tap: own choice

// It was withdrawn, or withdraws another.
bool is_taken_back(const Entry& e);

// Found still wet, of the time since the line before it. What was tapped and withdrawn just before
// that was said changes nothing of it.
bool was_covered(const Grown<Entry>& entries, std::size_t i);

// The first of the taken-back lines just before that one, or it: whether they lay covered may hang
// on what follows them.
std::size_t first_taken_back(const Grown<Entry>& entries, std::size_t i);

}
