#include "words/letters.hpp"

namespace words {

namespace {

// Bytes that follow a first byte; below 0 where it can be none.
int following(unsigned char first) {
  if (first < 0x80) return 0;
  if (first < 0xC2 || first > 0xF4) return -1;
  return first < 0xE0 ? 1 : first < 0xF0 ? 2 : 3;
}

bool is_shortest(char32_t letter, int more) {
  return letter >= (more == 3 ? 0x10000u : more == 2 ? 0x800u : more == 1 ? 0x80u : 0u);
}

}

char32_t next_letter(std::string_view text, std::size_t& at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char first = byte(at++);
  const int more = following(first);
  if (more == 0) return first;
  if (more < 0 || at + static_cast<std::size_t>(more) > text.size()) return no_letter;
  char32_t letter = first & (0x3Fu >> more);
  for (int i = 0; i < more; ++i) {
    const unsigned char next = byte(at + static_cast<std::size_t>(i));
    if ((next & 0xC0) != 0x80) return no_letter;
    letter = letter << 6 | (next & 0x3Fu);
  }
  if (!is_shortest(letter, more) || letter > 0x10FFFF || (letter >= 0xD800 && letter < 0xE000))
    return no_letter;
  at += static_cast<std::size_t>(more);
  return letter;
}

void put_letter(std::string& out, char32_t letter) {
  const auto byte = [&](char32_t value) { out += static_cast<char>(value); };
  if (letter < 0x80) return byte(letter);
  if (letter < 0x800) {
    byte(0xC0 | letter >> 6);
  } else if (letter < 0x10000) {
    byte(0xE0 | letter >> 12);
    byte(0x80 | (letter >> 6 & 0x3F));
  } else {
    byte(0xF0 | letter >> 18);
    byte(0x80 | (letter >> 12 & 0x3F));
    byte(0x80 | (letter >> 6 & 0x3F));
  }
  byte(0x80 | (letter & 0x3F));
}

bool is_control(char32_t letter) {
  return letter < 0x20 || (letter >= 0x7F && letter < 0xA0) ||
         (letter >= 0xD800 && letter < 0xE000) || (letter & 0xFFFE) == 0xFFFE;
}

}
