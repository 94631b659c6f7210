#include "notes/table.hpp"

#include "words/lists.hpp"
#include "words/notes_says.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace notes {

namespace {

using Say = words::NotesSay;

constexpr words::EnumTable<Separator, char> signs{{{Separator::comma, ','},
                                                   {Separator::semicolon, ';'},
                                                   {Separator::tab, '\t'},
                                                   {Separator::bar, '|'}}};
// Where two would do: a tab is in no text, and a comma is the decimal sign of half the world.
constexpr std::array by_trust{Separator::tab, Separator::semicolon, Separator::comma,
                              Separator::bar};

bool is_blank(const std::vector<std::string>& cells) {
  return std::all_of(cells.begin(), cells.end(), [](const std::string& cell) {
    return cell.find_first_not_of(" \t\r\n") == std::string::npos;
  });
}

class RowReader {
public:
  RowReader(std::string_view text, char separator) : text_(text), separator_(separator) {}

  words::Result<std::vector<Row>> read(std::size_t most_rows) {
    while (at_ < text_.size() && rows_.size() < most_rows) {
      ++number_;
      if (const auto fault = read_row()) return tl::make_unexpected(*fault);
    }
    return std::move(rows_);
  }

private:
  std::optional<words::Error> read_row() {
    Row row{number_, {}};
    do {
      std::string cell;
      if (const auto fault = read_cell(cell, row.cells.size())) return fault;
      row.cells.push_back(std::move(cell));
      if (++cells_ > most_cells)
        return words::Error{Say::table_too_large, {std::to_string(most_cells)}};
    } while (passes_separator());
    pass_line_end();
    if (!is_blank(row.cells)) rows_.push_back(std::move(row));
    return std::nullopt;
  }

  std::optional<words::Error> read_cell(std::string& cell, std::size_t column) {
    if (at_ < text_.size() && text_[at_] == '"') {
      ++at_;
      if (!read_quoted(cell))
        return words::Error{Say::table_quote_open, {cell_name(column, number_)}};
    }
    while (at_ < text_.size() && !ends_cell(text_[at_])) cell += text_[at_++];
    if (cell.size() > most_cell_bytes)
      return words::Error{Say::table_cell_too_long,
                          {cell_name(column, number_), std::to_string(most_cell_bytes)}};
    return std::nullopt;
  }

  // Up to behind the closing quote; false where there is none.
  bool read_quoted(std::string& cell) {
    while (at_ < text_.size() && cell.size() <= most_cell_bytes) {
      const char c = text_[at_++];
      if (c != '"') {
        cell += c;
      } else if (at_ < text_.size() && text_[at_] == '"') {
        cell += text_[at_++];
      } else {
        return true;
      }
    }
    return false;
  }

  bool ends_cell(char c) const { return c == separator_ || c == '\n' || c == '\r'; }
  bool passes_separator() {
    const bool is = at_ < text_.size() && text_[at_] == separator_;
    at_ += is;
    return is;
  }
  void pass_line_end() {
    if (at_ < text_.size() && text_[at_] == '\r') ++at_;
    if (at_ < text_.size() && text_[at_] == '\n') ++at_;
  }

  std::string_view text_;
  char separator_;
  std::size_t at_ = 0, number_ = 0, cells_ = 0;
  std::vector<Row> rows_;
};

// How well a separator takes the first rows apart: how many of them are as long as most, counted
// double where the first one is; 0 where they are one cell.
double fit_of(const std::vector<Row>& rows) {
  std::map<std::size_t, std::size_t> lengths;
  for (const Row& row : rows) ++lengths[row.cells.size()];
  std::pair<std::size_t, std::size_t> usual{0, 0};
  for (const auto& [length, many] : lengths)
    if (length > 1 && many >= usual.second) usual = {length, many};
  if (usual.second == 0) return 0;
  const double share = static_cast<double>(usual.second) / static_cast<double>(rows.size());
  return rows.front().cells.size() == usual.first ? 2 * share : share;
}

Separator likely_separator(std::string_view utf8) {
  constexpr std::size_t some = 200;
  Separator best = Separator::comma;
  double best_fit = 0;
  for (const Separator each : by_trust) {
    const auto rows = RowReader(utf8, signs[each]).read(some);
    const double fit = rows && !rows->empty() ? fit_of(*rows) : 0;
    if (fit > best_fit) {
      best_fit = fit;
      best = each;
    }
  }
  return best;
}

// "sep=;", as one spreadsheet writes it for itself; taken off the text.
std::optional<Separator> separator_named(std::string_view& utf8) {
  const std::size_t end = utf8.find_first_of("\r\n");
  const std::string_view line = utf8.substr(0, end);
  if (line.size() != 5 || line.substr(0, 4) != "sep=") return std::nullopt;
  const auto is = [&](Separator each) { return signs[each] == line[4]; };
  const auto found = std::find_if(by_trust.begin(), by_trust.end(), is);
  if (found == by_trust.end()) return std::nullopt;
  utf8.remove_prefix(std::min(end, utf8.size()));
  return *found;
}

}

words::Result<std::vector<Row>> rows_of(std::string_view utf8, char separator) {
  return RowReader(utf8, separator).read(most_cells);
}

words::Result<Table> table_of(const Text& text, std::optional<Separator> separator) {
  std::string_view utf8 = text.utf8;
  const auto named = separator_named(utf8);
  Table table;
  table.encoding = text.encoding;
  table.separator = separator ? *separator : named ? *named : likely_separator(utf8);
  auto rows = rows_of(utf8, signs[table.separator]);
  if (!rows) return tl::make_unexpected(rows.error());
  table.rows = *std::move(rows);
  for (const Row& row : table.rows) table.columns = std::max(table.columns, row.cells.size());
  return table;
}

std::string column_name(std::size_t column) {
  std::string name;
  for (std::size_t left = column + 1; left > 0; left = (left - 1) / 26)
    name.insert(name.begin(), static_cast<char>('A' + (left - 1) % 26));
  return name;
}

std::string cell_name(std::size_t column, std::size_t row) {
  return column_name(column) + std::to_string(row);
}

std::optional<std::size_t> column_named(std::string_view name) {
  constexpr std::size_t longest = 3;
  if (name.empty() || name.size() > longest) return std::nullopt;
  const bool digits = name.find_first_not_of("0123456789") == std::string_view::npos;
  std::size_t column = 0;
  for (const char c : name) {
    const char letter = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    if (digits)
      column = 10 * column + static_cast<std::size_t>(c - '0');
    else if (letter >= 'A' && letter <= 'Z')
      column = 26 * column + static_cast<std::size_t>(letter - 'A') + 1;
    else
      return std::nullopt;
  }
  if (column == 0) return std::nullopt;
  return column - 1;
}

}
