// Words that go over two lines.
#pragma once

#include <string>
#include <string_view>

namespace screens {

// Ends a line that breaks within a word, and belongs to the break: a hyphen of the word's own is
// the usual "-". Both look the same.
inline constexpr std::string_view break_hyphen = "\u2010";

// A line and the next one of the same words, as they read in one.
std::string gone_on(std::string line, const std::string& next);

}
