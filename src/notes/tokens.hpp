// A cell taken apart into numbers, words and signs.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace notes {

enum class TokenKind { number, fraction, word, sign };

struct Token {
  TokenKind kind = TokenKind::sign;
  std::size_t from = 0, to = 0; // bytes of the cell
  std::string key;              // digits; a word as key_of has it; a sign, dashes being "-"
  double fraction = 0;          // of ½
};

std::vector<Token> tokens_of(std::string_view cell);

}
