#include "words/say.hpp"

#include <cctype>

namespace words {

namespace {

// Marks that Latin languages of Europe put on these letters; the others have none.
std::string_view with_mark(char letter) {
  switch (letter) {
  case 'a': return "á";
  case 'c': return "ç";
  case 'd': return "ď";
  case 'e': return "ê";
  case 'g': return "ğ";
  case 'h': return "ĥ";
  case 'i': return "í";
  case 'k': return "ķ";
  case 'l': return "ł";
  case 'n': return "ñ";
  case 'o': return "ö";
  case 'r': return "ř";
  case 's': return "š";
  case 't': return "ţ";
  case 'u': return "ů";
  case 'w': return "ŵ";
  case 'y': return "ý";
  case 'z': return "ž";
  case 'A': return "Å";
  case 'C': return "Č";
  case 'E': return "Ê";
  case 'I': return "Î";
  case 'N': return "Ñ";
  case 'O': return "Ö";
  case 'S': return "Š";
  case 'T': return "Ť";
  case 'U': return "Û";
  case 'Y': return "Ŷ";
  default: return {};
  }
}

bool is_letter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

// Where the word that begins here ends.
std::size_t end_of_word(std::string_view text, std::size_t at) {
  while (at < text.size() && is_letter(text[at])) ++at;
  return at;
}

// g, mL, °C: no language makes units longer.
bool grows(std::string_view text, std::size_t at) { return end_of_word(text, at) - at > 2; }

struct Length {
  std::size_t all = 0;     // characters, a slot as none
  std::size_t growing = 0; // letters of words that are not units
};

Length length_of(std::string_view text) {
  Length out;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = end_of_word(text, at);
    if (end > at) {
      out.growing += grows(text, at) ? end - at : 0;
      out.all += end - at;
      at = end;
    } else if (text[at] == '{') {
      at += 3;
    } else {
      out.all += (text[at] & 0xC0) != 0x80;
      ++at;
    }
  }
  return out;
}

}

std::string pseudo(std::string_view english) {
  const auto [all, letters] = length_of(english);
  const std::size_t more = (3 * all + 9) / 10; // rounded up
  std::string out;
  for (std::size_t at = 0, done = 0; at < english.size();) {
    const std::size_t end = end_of_word(english, at);
    if (end == at || !grows(english, at)) {
      const std::size_t plain = end > at ? end - at : 1;
      out += english.substr(at, plain);
      at += plain;
      continue;
    }
    for (; at < end; ++at, ++done) {
      const std::string_view marked = with_mark(english[at]);
      out += marked.empty() ? english.substr(at, 1) : marked;
      const std::size_t twice = (done + 1) * more / letters - done * more / letters;
      out.append(twice, static_cast<char>(std::tolower(static_cast<unsigned char>(english[at]))));
    }
  }
  return out;
}

}
