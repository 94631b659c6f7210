// A recipe while its rows are read: what each cell came to, before units and measures are settled.
#pragma once

#include "notes/recipes.hpp"

namespace notes {

struct Cell {
  std::size_t row = 0, column = 0;
  std::string text; // of the cell, or of the part of it that is meant
};

struct Entry {
  Cell at;
  Meant of;
  std::optional<NotedAmount> amount;
  std::string heading;                // of its column
  std::optional<Cell> amount_at = {}; // where that is another
  std::string amount_heading = {};
};

struct Draft {
  std::size_t row = 0;
  std::string name;
  std::vector<Entry> pigments, liquids;
  std::string made_on;
  std::string dated; // the cell from which that was read, or not
  std::string note;
  std::string cells;      // of all its rows, from which its id follows
  std::string raw;        // the same with every blank and empty cell, as ids were made once
  std::vector<Cell> bare; // amounts that no unit is said of
  std::vector<Unread> unread;

  bool lost() const;
  void misses(const Cell& at, words::Error why, bool lost);
  // "Heading: text", or the text alone.
  void keep(const std::string& heading, const std::string& text);
};

// Reads the rows of a table one after the other into drafts.
class Rows {
public:
  Rows(const Table& table, const Layout& layout, const Names& names, Measures& measures,
       const AskedRecipes& how);

  std::vector<Draft> read();

private:
  bool goes_on(const Row& row) const;
  void read_row(const Row& row);
  void read_cell(const Row& row, std::size_t at);
  void read_pigments(const Row& row, std::size_t at);
  void read_liquid(const Row& row, std::size_t at);
  void read_date(const Row& row, std::size_t at);
  void read_amount(const Row& row, std::size_t at);
  Cell cell(const Row& row, std::size_t at) const;
  std::optional<Cell> beside(const Row& row, std::size_t at) const;
  void keep(const Cell& cell);
  void add(Entry entry, const Cell& from);
  bool is_needed(const Named& named, std::size_t at) const;
  bool agree(const std::vector<Named>& named, const NotedAmount& beside, std::size_t at) const;
  bool complete(std::vector<Named>& named, const Row& row, std::size_t at);
  void share_out(std::vector<Named>& named, const Cell& amounts);
  bool complete_one(Named& named, const Cell& from, const Cell& amounts);
  void stands_beside(Entry& entry, const Row& row, std::size_t at) const;
  Meant own(const Column& column);
  words::Result<std::vector<Named>> names_in(const Cell& cell) const;
  words::Result<Meant> known_by(const std::string& name);
  words::Result<Meant> meant_by(const std::string& name);
  std::optional<std::size_t> column_of(Role role) const;
  CellFormat format_of(std::size_t at) const;
  NotedAmount measured(NotedAmount amount, std::size_t at) const;
  NotedAmount taken(NotedAmount amount, const Cell& from);

  const Table& table_;
  const Layout& layout_;
  const Names& names_;
  Measures& measures_;
  const AskedRecipes& how_;
  std::vector<Tool> tools_;
  std::map<std::size_t, std::size_t> amounts_; // by the column they are of
  bool one_thing_a_row_ = false;               // liquids stand among the pigments
  std::vector<Draft> drafts_;
};

}
