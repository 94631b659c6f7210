#include "notes/tokens.hpp"

#include "notes/amount.hpp"
#include "words/letters.hpp"

#include <array>
#include <utility>

namespace notes {

namespace {

constexpr std::array<std::pair<char32_t, double>, 15> fraction_signs{{{U'¼', 0.25},
                                                                      {U'½', 0.5},
                                                                      {U'¾', 0.75},
                                                                      {U'⅓', 1 / 3.0},
                                                                      {U'⅔', 2 / 3.0},
                                                                      {U'⅕', 0.2},
                                                                      {U'⅖', 0.4},
                                                                      {U'⅗', 0.6},
                                                                      {U'⅘', 0.8},
                                                                      {U'⅙', 1 / 6.0},
                                                                      {U'⅚', 5 / 6.0},
                                                                      {U'⅛', 0.125},
                                                                      {U'⅜', 0.375},
                                                                      {U'⅝', 0.625},
                                                                      {U'⅞', 0.875}}};

double fraction_of(char32_t c) {
  for (const auto& [letter, value] : fraction_signs)
    if (letter == c) return value;
  return 0;
}

bool is_digit(char32_t c) { return c >= '0' && c <= '9'; }
bool is_blank(char32_t c) {
  return c == ' ' || c == '\t' || c == '\r' || c == 0xA0 || c == 0x2009 || c == 0x202F;
}
bool is_letter(char32_t c) {
  if (c < 0x80) return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  return c != words::no_letter && fraction_of(c) == 0 && !is_blank(c) && c >= 0xB2 && c != 0xB7 &&
         c != 0xBB && c != 0xBF && c != 0xD7 && c != 0xF7 && (c < 0x2000 || c > 0x2BFF);
}

char32_t letter_at(std::string_view cell, std::size_t at) {
  return at < cell.size() ? words::next_letter(cell, at) : U'\0';
}

std::size_t behind(std::string_view cell, std::size_t at) {
  words::next_letter(cell, at);
  return at;
}

// A sign that belongs to the number or the word around it: 3,5 or 1'000; AS-D, PB15:3.
bool joins(std::string_view cell, std::size_t at, TokenKind kind) {
  const char32_t sign = letter_at(cell, at);
  const char32_t next = letter_at(cell, behind(cell, at));
  if (kind == TokenKind::number)
    return is_digit(next) && (sign == ',' || sign == '.' || sign == '\'' || sign == U'’');
  return sign == '-' ? is_letter(next) : sign == ':' && is_digit(next);
}

Token read_number(std::string_view cell, std::size_t at) {
  Token token{TokenKind::number, at, at, {}};
  while (token.to < cell.size()) {
    const char32_t c = letter_at(cell, token.to);
    if (!is_digit(c) && !joins(cell, token.to, TokenKind::number)) break;
    token.key += c < 0x80 ? static_cast<char>(c) : '\'';
    token.to = behind(cell, token.to);
  }
  return token;
}

Token read_word(std::string_view cell, std::size_t at) {
  Token token{TokenKind::word, at, at, {}};
  while (token.to < cell.size()) {
    const char32_t c = letter_at(cell, token.to);
    if (!is_letter(c) && !is_digit(c) && !joins(cell, token.to, TokenKind::word)) break;
    token.to = behind(cell, token.to);
  }
  token.key = key_of(cell.substr(at, token.to - at));
  if (letter_at(cell, token.to) == '.') ++token.to; // of an abbreviation
  return token;
}

Token read_sign(std::string_view cell, std::size_t at, char32_t c) {
  const std::size_t to = behind(cell, at);
  std::string key(cell.substr(at, to - at));
  if (c == U'–' || c == U'—' || c == U'−' || c == U'‐' || c == U'‑') key = "-";
  if (c == U'⁄' || c == U'∕') key = "/";
  return {TokenKind::sign, at, to, key};
}

}

std::vector<Token> tokens_of(std::string_view cell) {
  std::vector<Token> out;
  for (std::size_t at = 0; at < cell.size();) {
    const char32_t c = letter_at(cell, at);
    if (is_blank(c)) {
      at = behind(cell, at);
      continue;
    }
    if (is_digit(c))
      out.push_back(read_number(cell, at));
    else if (const double value = fraction_of(c); value > 0)
      out.push_back({TokenKind::fraction, at, behind(cell, at), {}, value});
    else if (is_letter(c))
      out.push_back(read_word(cell, at));
    else
      out.push_back(read_sign(cell, at, c));
    at = out.back().to;
  }
  return out;
}

}
