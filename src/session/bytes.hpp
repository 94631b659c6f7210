// One line to bytes and back. FORMAT.md says how a line looks.
#pragma once

#include "session/event.hpp"
#include "words/error.hpp"

#include <cstdint>
#include <string>
#include <string_view>

namespace session {

inline constexpr int format_version = 1;
inline constexpr std::size_t longest_line = 65536; // bytes, newline included
inline constexpr std::size_t longest_text = 200;   // characters a name may have

struct Encoded {
  std::string bytes; // newline included
  std::uint32_t check = 0;
};

// `before` is the check value of the previous line of this file, 0 for the first.
// Errors: text that is not UTF-8, a line longer than longest_line.
words::Result<Encoded> encode(const Line& line, std::uint32_t before);

// `text` without its newline; the check value is not looked at here.
// Errors name the field and what is wrong with it. A kind or a word this version does not know is
// no error: it becomes Unknown.
words::Result<Line> decode(std::string_view text);

// The line's text before its check value, and the check value itself.
struct Sealed {
  std::string_view body;
  std::uint32_t check = 0;
};
std::optional<Sealed> unseal(std::string_view text);

inline constexpr std::size_t seal_length = 6 + 8 + 2; // ,"c":"xxxxxxxx"}

bool is_utf8(std::string_view text);

// The first `most` characters of a text, never half of one. The text must be UTF-8.
std::string first_characters(std::string_view text, std::size_t most);

}
