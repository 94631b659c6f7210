#include "notes/text.hpp"

#include "words/letters.hpp"
#include "words/notes_says.hpp"

#include <array>
#include <optional>
#include <utility>

namespace notes {

namespace {

using Say = words::NotesSay;
using words::no_letter;
using words::put_letter;

constexpr std::string_view utf8_mark = "\xEF\xBB\xBF", le_mark = "\xFF\xFE", be_mark = "\xFE\xFF";

bool begins(std::string_view bytes, std::string_view with) {
  return bytes.substr(0, with.size()) == with;
}

// 0x80 to 0x9F of Windows-1252; 0: none.
constexpr std::array<char32_t, 32> from_0x80{
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

char32_t of_windows_1252(unsigned char byte) {
  if (byte < 0x80 || byte > 0x9F) return byte;
  const char32_t letter = from_0x80[byte - 0x80u];
  return letter ? letter : no_letter;
}

bool is_utf8(std::string_view bytes) {
  constexpr std::string_view itself = "\xEF\xBF\xBD";
  for (std::size_t at = 0; at < bytes.size();) {
    const std::size_t from = at;
    if (words::next_letter(bytes, at) == no_letter && bytes.substr(from, 3) != itself) return false;
  }
  return true;
}

// Western text in UTF-16 has a zero in every other byte and hardly any in the others.
std::optional<Encoding> utf16_by_zeros(std::string_view bytes) {
  const std::string_view some = bytes.substr(0, 4096 & ~1u);
  std::array<std::size_t, 2> zeros{};
  for (std::size_t at = 0; at < some.size(); ++at) zeros[at % 2] += some[at] == '\0';
  const std::size_t pairs = some.size() / 2;
  const auto many = [&](std::size_t n) { return pairs > 0 && 10 * n >= 4 * pairs; };
  const auto few = [&](std::size_t n) { return 20 * n <= pairs; };
  if (many(zeros[1]) && few(zeros[0])) return Encoding::utf16_le;
  if (many(zeros[0]) && few(zeros[1])) return Encoding::utf16_be;
  return std::nullopt;
}

Encoding encoding_of(std::string_view& bytes) {
  for (const auto& [mark, is] :
       {std::pair{utf8_mark, Encoding::utf8_marked}, std::pair{le_mark, Encoding::utf16_le},
        std::pair{be_mark, Encoding::utf16_be}})
    if (begins(bytes, mark)) {
      bytes.remove_prefix(mark.size());
      return is;
    }
  if (const auto wide = utf16_by_zeros(bytes)) return *wide;
  return is_utf8(bytes) ? Encoding::utf8 : Encoding::windows_1252;
}

// Takes the next letter off the bytes; they are not empty.
char32_t taken(std::string_view& bytes, Encoding encoding) {
  const auto unit = [&](std::size_t at) {
    const auto first = static_cast<unsigned char>(bytes[at]),
               second = static_cast<unsigned char>(bytes[at + 1]);
    const int low = encoding == Encoding::utf16_le ? first : second;
    return static_cast<char32_t>(low | (encoding == Encoding::utf16_le ? second : first) << 8);
  };
  std::size_t length = 1;
  char32_t letter = no_letter;
  if (encoding == Encoding::utf8 || encoding == Encoding::utf8_marked) {
    length = 0;
    letter = words::next_letter(bytes, length);
  } else if (encoding == Encoding::windows_1252) {
    letter = of_windows_1252(static_cast<unsigned char>(bytes[0]));
  } else if (bytes.size() >= 2) {
    length = 2;
    letter = unit(0);
    const bool high = letter >= 0xD800 && letter < 0xDC00;
    const char32_t low = high && bytes.size() >= 4 ? unit(2) : 0;
    if (low >= 0xDC00 && low < 0xE000) {
      letter = 0x10000 + ((letter - 0xD800) << 10) + (low - 0xDC00);
      length = 4;
    }
  }
  bytes.remove_prefix(length);
  return letter;
}

bool of_a_table(char32_t letter) {
  return letter == '\t' || letter == '\n' || letter == '\r' || !words::is_control(letter);
}

bool is_workbook(std::string_view bytes) {
  return begins(bytes, "PK\x03\x04") || begins(bytes, "\xD0\xCF\x11\xE0");
}

}

words::Result<Text> text_of(std::string_view bytes) {
  if (bytes.size() > most_bytes)
    return words::failure(Say::file_too_large, {std::to_string(most_bytes / 1'000'000)});
  if (is_workbook(bytes)) return words::failure(Say::file_workbook);
  Text out;
  out.encoding = encoding_of(bytes);
  out.utf8.reserve(bytes.size());
  std::size_t letters = 0, none = 0;
  while (!bytes.empty()) {
    const char32_t letter = taken(bytes, out.encoding);
    const bool fits = of_a_table(letter);
    put_letter(out.utf8, fits ? letter : no_letter);
    ++letters;
    none += !fits || letter == no_letter;
  }
  // One slip in a hundred letters a damaged table may have; a picture or a program has many more.
  if (none > 0 && 100 * none > letters + 100) return words::failure(Say::file_not_text);
  if (out.utf8.find_first_not_of(" \t\r\n") == std::string::npos)
    return words::failure(Say::file_empty);
  return out;
}

}
