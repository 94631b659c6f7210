// A table as RFC 4180 and the spreadsheets have it: cells between separators, quotes around a cell
// that holds one of them or a line break, doubled inside.
#pragma once

#include "notes/text.hpp"

#include <optional>
#include <string>
#include <vector>

namespace notes {

enum class Separator { comma, semicolon, tab, bar };

inline constexpr std::size_t most_cell_bytes = 32'767; // a spreadsheet has no longer one
inline constexpr std::size_t most_cells = 500'000;     // of a whole table

struct Row {
  std::size_t number = 0; // from 1, as a spreadsheet counts; rows of nothing are counted too
  std::vector<std::string> cells;
  bool operator==(const Row&) const = default;
};

struct Table {
  Encoding encoding = Encoding::utf8;
  Separator separator = Separator::comma;
  std::vector<Row> rows;   // without those in which nothing stands
  std::size_t columns = 0; // of the longest row
};

// Lines end with LF, CR LF or CR. A quote inside a cell that does not begin with one is a letter,
// and so is what stands behind a closing quote. Errors: table_quote_open (row and column of a quote
// that is not closed within most_cell_bytes or before the end), table_too_large.
words::Result<std::vector<Row>> rows_of(std::string_view utf8, char separator);

// With the separator it was written with, if nobody says one: what a first line "sep=;" names, else
// the one that makes most rows as long as each other, the headings' row among them.
words::Result<Table> table_of(const Text& text, std::optional<Separator> separator = std::nullopt);

// "C7", as a spreadsheet names a cell; the column counts from 0.
std::string cell_name(std::size_t column, std::size_t row);
std::string column_name(std::size_t column);
// Of "C", "c" or "3"; absent for others.
std::optional<std::size_t> column_named(std::string_view name);

}
