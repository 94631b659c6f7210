// The letters of a file somebody kept, whatever program wrote it. Pure: bytes in, UTF-8 out.
#pragma once

#include "words/error.hpp"

#include <cstddef>
#include <string>
#include <string_view>

namespace notes {

// `marked`: with a byte order mark. Windows-1252 has all of Latin-1 that is printed.
enum class Encoding { utf8, utf8_marked, utf16_le, utf16_be, windows_1252 };

// No notebook is larger, so what is, is another file.
inline constexpr std::size_t most_bytes = 16'000'000;

struct Text {
  std::string utf8; // no control characters but tab and line breaks: U+FFFD stands for others
  Encoding encoding = Encoding::utf8;
};

// UTF-16 is known by its mark, or else by its zeros; what is not UTF-8 is Windows-1252. Errors:
// file_empty, file_too_large, file_workbook (a spreadsheet's own file, or another zip),
// file_not_text.
words::Result<Text> text_of(std::string_view bytes);

}
