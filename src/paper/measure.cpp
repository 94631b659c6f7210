#include "paper/measure.hpp"

#include "words/letters.hpp"

#include <algorithm>
#include <array>

namespace paper {

using words::next_letter;

namespace {

// Advances of DejaVu Sans 2.37 from ' ' to '~', hundredths of an em, from the font file; Verdana,
// Arial, Helvetica, Roboto and B612 run narrower.
constexpr std::array<int, 95> advances{
    32, 40, 46, 84, 64, 95, 78, 27, 39,  39, 50, 84, 32, 36, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64,
    64, 64, 34, 34, 84, 84, 84, 53, 100, 68, 69, 70, 77, 63, 58, 77, 75, 29, 29, 66, 56, 86, 75, 79,
    60, 79, 69, 63, 61, 73, 68, 99, 69,  61, 69, 39, 34, 39, 84, 50, 50, 61, 63, 55, 63, 62, 35, 63,
    63, 28, 28, 58, 28, 97, 63, 61, 63,  63, 41, 52, 39, 63, 59, 82, 59, 59, 52, 64, 34, 64, 84};

constexpr double bolder = 1.15;

// Marks that stand on the letter before, and signs that only steer.
bool is_narrow(char32_t c) {
  return (c >= 0x300 && c < 0x370) || (c >= 0x200B && c < 0x2010) || (c >= 0x202A && c < 0x202F) ||
         (c >= 0x2060 && c < 0x2070) || (c >= 0xFE00 && c < 0xFE10) || c == 0xFEFF;
}

double advance(char32_t c) {
  if (c >= 0x20 && c < 0x7F) return advances[c - 0x20] / 100.0;
  if (is_narrow(c)) return 0;
  if (c < 0x2000) return 0.85; // Latin, Greek, Cyrillic and their neighbours
  return c < 0x1F000 ? 1.05 : 1.4;
}

struct Piece {
  std::string bytes;
  double em = 0;
};

// A letter with what stands on it.
Piece next_piece(std::string_view text, std::size_t& at, bool bold) {
  const std::size_t start = at;
  Piece piece{"", advance(next_letter(text, at)) * (bold ? bolder : 1)};
  for (std::size_t ahead = at; ahead < text.size(); at = ahead)
    if (!is_narrow(next_letter(text, ahead))) break;
  piece.bytes = text.substr(start, at - start);
  return piece;
}

struct Lines {
  const double room;
  const bool bold;
  std::vector<std::string> done = {};
  std::string line = {};
  double em = 0;

  void end() {
    if (!line.empty()) done.push_back(line);
    line.clear();
    em = 0;
  }
  void put(const std::string& bytes, double wide) {
    line += bytes;
    em += wide;
  }
  void put_letters(std::string_view word) {
    for (std::size_t at = 0; at < word.size();) {
      const Piece piece = next_piece(word, at, bold);
      if (em + piece.em > room) end();
      put(piece.bytes, piece.em);
    }
  }
  void put_word(std::string_view word) {
    const double wide = width_em(word, bold), space = width_em(" ", bold);
    if (!line.empty() && em + space + wide <= room)
      return put(" " + std::string(word), space + wide);
    end();
    wide <= room ? put(std::string(word), wide) : put_letters(word);
  }
};

}

double width_em(std::string_view text, bool bold) {
  double em = 0;
  for (std::size_t at = 0; at < text.size();) em += advance(next_letter(text, at));
  return em * (bold ? bolder : 1);
}

std::vector<std::string> broken(std::string_view text, double width, bool bold) {
  if (width < 1.4 * bolder) return {};
  Lines lines{width, bold};
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    if (end > at) lines.put_word(text.substr(at, end - at));
    at = end + 1;
  }
  lines.end();
  return lines.done;
}

std::string shortened(std::string_view text, double width) {
  if (width_em(text, false) <= width) return std::string(text);
  const double room = width - advance(U'…');
  std::string out;
  double em = 0;
  for (std::size_t at = 0; at < text.size();) {
    const Piece piece = next_piece(text, at, false);
    if ((em += piece.em) > room) break;
    out += piece.bytes;
  }
  return out + "…";
}

}
