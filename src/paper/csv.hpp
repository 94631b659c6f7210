// Rows of cells as RFC 4180 has them: CRLF behind each row, a comma between cells, quotes around a
// cell that needs them and doubled inside, UTF-8 without a byte order mark.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace paper {

struct Cell {
  std::string bytes; // before quoting
};
using Row = std::vector<Cell>;

// Text that somebody gave. Where a spreadsheet would take it for a formula, because it begins with
// = + - @ (wide ones too), a tab or a line break, an apostrophe stands before it. Control
// characters but tab and line breaks, and bytes that are no UTF-8, become U+FFFD.
Cell text_cell(std::string_view any);

// A point in every country, at most nine decimals; empty for what is not a number.
Cell number_cell(double value);

Cell no_cell(); // nothing known
Cell word(const char* ours);

std::string csv(const std::vector<Row>& rows);

}
