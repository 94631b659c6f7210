#include "session/torn.hpp"

#include "session/bytes.hpp"

#include <algorithm>

namespace session {

namespace {

bool agree(std::string_view bytes, std::string_view with) {
  const std::size_t both = std::min(bytes.size(), with.size());
  return bytes.substr(0, both) == with.substr(0, both);
}

// `{"n":12,"t":`, or as much of it as there is.
bool begins_a_line(std::string_view bytes, std::optional<std::uint64_t> last) {
  constexpr std::string_view start = "{\"n\":", then = ",\"t\":";
  if (!agree(bytes, start)) return false;
  bytes.remove_prefix(std::min(bytes.size(), start.size()));
  constexpr std::size_t most_digits = 16;
  std::size_t figures = 0;
  std::uint64_t n = 0;
  for (; figures < std::min(bytes.size(), most_digits); ++figures) {
    if (bytes[figures] < '0' || bytes[figures] > '9') break;
    n = n * 10 + static_cast<std::uint64_t>(bytes[figures] - '0');
  }
  const std::string_view rest = bytes.substr(figures);
  if (rest.empty()) return true;
  return figures > 0 && agree(rest, then) && (!last || n > *last);
}

// The parts of JSON in so far as each letter by itself shows them: what may stand inside of text,
// what outside, and how deep it nests. RFC 3629 says which bytes are letters.
class Scanner {
public:
  bool take(unsigned char c) {
    if (ended_ || c < 0x20) return false;
    if (more_ > 0) return take_rest_of_letter(c);
    if (!inside_) return take_outside(c);
    if (c >= 0x80) return take_first_of_letter(c);
    if (c == '"' && !escaped_) inside_ = false;
    escaped_ = c == '\\' && !escaped_;
    return true;
  }

private:
  static constexpr int deepest = 8;

  bool take_outside(unsigned char c) {
    constexpr std::string_view others = ",:+-.0123456789eEtrufalsn";
    if (c == '"') return inside_ = true;
    if (c == '{' || c == '[') return ++depth_ <= deepest;
    if (c == '}' || c == ']') return ended_ = --depth_ == 0, true;
    return others.find(static_cast<char>(c)) != std::string_view::npos;
  }

  bool take_first_of_letter(unsigned char c) {
    if (c < 0xC2 || c > 0xF4) return false;
    escaped_ = false;
    more_ = c < 0xE0 ? 1 : c < 0xF0 ? 2 : 3;
    least_ = c == 0xE0 ? 0xA0 : c == 0xF0 ? 0x90 : 0x80;
    most_ = c == 0xED ? 0x9F : c == 0xF4 ? 0x8F : 0xBF;
    return true;
  }

  bool take_rest_of_letter(unsigned char c) {
    if (c < least_ || c > most_) return false;
    least_ = 0x80;
    most_ = 0xBF;
    --more_;
    return true;
  }

  bool inside_ = false, escaped_ = false, ended_ = false;
  int depth_ = 0;
  int more_ = 0; // bytes of a letter that are to come
  unsigned char least_ = 0x80, most_ = 0xBF;
};

}

bool is_torn_line(std::string_view bytes, std::optional<std::uint64_t> last) {
  if (bytes.size() >= longest_line || !begins_a_line(bytes, last)) return false;
  Scanner scanner;
  return std::all_of(bytes.begin(), bytes.end(),
                     [&](char c) { return scanner.take(static_cast<unsigned char>(c)); });
}

}
