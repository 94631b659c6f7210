#include "paper/csv.hpp"

#include "words/letters.hpp"
#include "words/say.hpp"

#include <cmath>

namespace paper {

using words::is_control;
using words::next_letter;
using words::no_letter;
using words::put_letter;

namespace {

bool breaks(char32_t c) { return c == '\t' || c == '\r' || c == '\n'; }

// Spreadsheets compute a cell that begins so, some of them with the wide signs too.
bool begins_formula(char32_t c) {
  return c == '=' || c == '+' || c == '-' || c == '@' || c == U'＝' || c == U'＋' || c == U'－' ||
         c == U'＠' || breaks(c);
}

// Where a comma is the decimal sign a spreadsheet takes `;` for the end of a cell, and the next one
// might be a formula.
std::string quoted(const std::string& bytes) {
  if (bytes.find_first_of("\",;\r\n") == std::string::npos) return bytes;
  std::string out = "\"";
  for (const char c : bytes) out += c == '"' ? "\"\"" : std::string(1, c);
  return out + "\"";
}

}

Cell text_cell(std::string_view any) {
  std::string out;
  for (std::size_t at = 0; at < any.size();) {
    const bool first = at == 0;
    const char32_t letter = next_letter(any, at);
    if (first && begins_formula(letter)) out += '\'';
    put_letter(out, is_control(letter) && !breaks(letter) ? no_letter : letter);
  }
  return {out};
}

Cell number_cell(double value) {
  if (!std::isfinite(value)) return {};
  std::string out = words::invariant(value, 9);
  out.erase(out.find_last_not_of('0') + 1);
  if (out.back() == '.') out.pop_back();
  return {out};
}

Cell no_cell() { return {}; }
Cell word(const char* ours) { return {ours}; }

std::string csv(const std::vector<Row>& rows) {
  std::string out;
  for (const Row& row : rows) {
    bool first = true;
    for (const Cell& cell : row) {
      if (!first) out += ',';
      out += quoted(cell.bytes);
      first = false;
    }
    out += "\r\n"; // RFC 4180
  }
  return out;
}

}
