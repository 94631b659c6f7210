#include "words/letter_case.hpp"

#include "words/letters.hpp"

namespace words {

namespace {

bool within(char32_t letter, char32_t from, char32_t to) { return letter >= from && letter <= to; }

// Where capitals and small letters take turns: the capital has the even number, or the odd one.
bool capital_is_even(char32_t c) {
  return within(c, 0x100, 0x12F) || within(c, 0x132, 0x137) || within(c, 0x14A, 0x177) ||
         within(c, 0x460, 0x481) || within(c, 0x48A, 0x4BF) || within(c, 0x4D0, 0x52F) ||
         within(c, 0x1E00, 0x1E95) || within(c, 0x1EA0, 0x1EFF);
}
bool capital_is_odd(char32_t c) {
  return within(c, 0x139, 0x148) || within(c, 0x179, 0x17E) || within(c, 0x4C1, 0x4CE);
}

char32_t small_greek(char32_t c) {
  if (within(c, 0x391, 0x3AB) && c != 0x3A2) return c + 0x20;
  if (within(c, 0x388, 0x38A)) return c + 0x25;
  switch (c) {
  case U'Ά': return U'ά';
  case U'Ό': return U'ό';
  case U'Ύ': return U'ύ';
  case U'Ώ': return U'ώ';
  }
  return c;
}

char32_t small(char32_t c) {
  if (c < 0x80) return within(c, U'A', U'Z') ? c + 0x20 : c;
  if (within(c, 0xC0, 0xDE)) return c == 0xD7 ? c : c + 0x20; // 0xD7 is ×
  if (c == U'İ') return U'i';
  if (c == U'Ÿ') return U'ÿ';
  if (c == U'ẞ') return U'ß';
  if (within(c, 0x386, 0x3AB)) return small_greek(c);
  if (within(c, 0x410, 0x42F)) return c + 0x20;
  if (within(c, 0x400, 0x40F)) return c + 0x50;
  if (c == 0x4C0) return 0x4CF;
  if (capital_is_even(c)) return c | 1;
  if (capital_is_odd(c) && c % 2 == 1) return c + 1;
  return c;
}

// What letters from 0xE0 and from 0x100 on are without their marks; a full stop where that is more
// than one letter, or none of these.
constexpr std::string_view latin_1 = "aaaaaa.ceeeeiiiidnooooo.ouuuuy.y";
constexpr std::string_view extended_a =
    "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiii..jjkkk"
    "llllllllllnnnnnnnnnoooooo..rrrrrrssssssssttttttuuuuuuuuuuuu"
    "wwyyyzzzzzzs";
static_assert(latin_1.size() == 0x20 && extended_a.size() == 0x80);

char32_t without_mark(char32_t c) {
  if (within(c, 0xE0, 0xFF) && latin_1[c - 0xE0] != '.') return latin_1[c - 0xE0];
  if (within(c, 0x100, 0x17F) && extended_a[c - 0x100] != '.') return extended_a[c - 0x100];
  switch (c) {
  case U'ά': return U'α';
  case U'έ': return U'ε';
  case U'ή': return U'η';
  case U'ί':
  case U'ϊ':
  case U'ΐ': return U'ι';
  case U'ό': return U'ο';
  case U'ύ':
  case U'ϋ':
  case U'ΰ': return U'υ';
  case U'ώ': return U'ω';
  case U'ς': return U'σ'; // at the end of a word
  case U'ё': return U'е';
  case U'й': return U'и';
  }
  return c;
}

void put_searchable(std::string& out, char32_t c) {
  if (within(c, 0x300, 0x36F)) return; // a mark on the letter before
  switch (c) {
  case U'ß': out += "ss"; return;
  case U'æ': out += "ae"; return;
  case U'œ': out += "oe"; return;
  case U'þ': out += "th"; return;
  case U'ĳ': out += "ij"; return;
  default: put_letter(out, without_mark(c));
  }
}

template <class Put>
std::string each_letter(std::string_view text, Put put) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t from = at;
    const char32_t letter = next_letter(text, at);
    if (letter == no_letter)
      out += text.substr(from, at - from);
    else
      put(out, small(letter));
  }
  return out;
}

}

std::string in_small_letters(std::string_view text) { return each_letter(text, put_letter); }

std::string searchable(std::string_view text) { return each_letter(text, put_searchable); }

}
