// One line to bytes and back. FORMAT.md says how a line looks.
#pragma once

#include "session/event.hpp"
#include "words/error.hpp"

#include <cstdint>
#include <string>
#include <string_view>

namespace session {

inline constexpr int format_version = 2;
inline constexpr std::size_t longest_line = 65536; // bytes, newline included
inline constexpr std::size_t longest_text = 200;   // characters a name may have

struct Encoded {
  std::string bytes; // newline included
  std::uint32_t check = 0;
};

// Whose a file's lines are, as a value that goes into the check value of each: a line that lies in
// another file, of another session or part, does not fit there. 0 for the lines of version 1.
std::uint32_t seed_of(const Began& began);
std::uint32_t seed_of(const std::string& session, int part); // from version 2 on

// `before` is the check value of the previous line of this file, 0 for the first. It is written
// into the line, so that each line can be verified alone and a line that is missing is noticed.
// Errors: text that is not UTF-8, a line longer than longest_line.
words::Result<Encoded> encode(const Line& line, std::uint32_t before, std::uint32_t seed = 0);

// `text` without its newline; the check value is not looked at here.
// Errors name the field and what is wrong with it. A kind or a word this version does not know is
// no error: it becomes Unknown.
words::Result<Line> decode(std::string_view text);
// The same of a newer format, where a known kind may say what is not known here: it too is Unknown.
words::Result<Line> decode_newer(std::string_view text);

// What is to be written would be read again as it is: no amount out of range, no text too long.
bool reads_back(const Event& event);

// The line's bytes that its check value covers, the check value of the line before as this line
// gives it, and its own.
struct Sealed {
  std::string_view body;
  std::uint32_t before = 0;
  std::uint32_t check = 0;
};
// Absent where the line does not end as a line must. Whether the check value fits: is_intact.
std::optional<Sealed> unseal(std::string_view text);
bool is_intact(const Sealed& sealed, std::uint32_t seed = 0);
// The line's own bytes under another seal: also what this version does not understand stays.
Encoded resealed(const Sealed& sealed, std::uint32_t before, std::uint32_t seed);

// A line without the CR that some program put before its LF, if it is a line without it.
std::string_view without_cr(std::string_view text);

// A file's bytes without the byte order mark that some program put before them.
std::string_view without_bom(std::string_view bytes);

bool is_utf8(std::string_view text);

// The first `most` characters of a text, never half of one. The text must be UTF-8.
std::string first_characters(std::string_view text, std::size_t most);

}
