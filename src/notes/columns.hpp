// What the columns of a table of old notes hold, guessed from their headings and from what stands
// in them. Pure.
#pragma once

#include "notes/amount.hpp"
#include "notes/dates.hpp"
#include "notes/names.hpp"
#include "notes/table.hpp"

#include <map>

namespace notes {

enum class Role {
  skip,    // left out
  name,    // of the paint
  pigment, // names, perhaps with amounts; or amounts of the one that the heading names
  amount,  // of another column's pigment or liquid
  binder,  // amounts, names, or both; so the next four
  honey,
  glycerin,
  water,
  wetting_aid,
  date,
  note // text, kept as it is
};
std::string_view name_of(Role role); // the word by which it is said on the command line
std::optional<Role> role_named(std::string_view name);
std::optional<session::CardKind> liquid_of(Role role);

struct Column {
  Role role = Role::note;
  std::string heading;
  std::size_t filled = 0;        // cells in which something stands
  std::optional<std::size_t> of; // the column whose amounts these are
  std::string card;              // that the heading names
  Unit unit = Unit::none;        // of cells that name none
  Decimal decimal = Decimal::unknown;
  DateOrder dates = DateOrder::unknown;
  words::Error why; // in the words of NotesSay
};

// What somebody says of a column, in place of a guess.
struct AskedColumn {
  Role role = Role::note;
  Unit unit = Unit::none;
};

struct Asked {
  std::map<std::size_t, AskedColumn> columns;
  Decimal decimal = Decimal::unknown;
  DateOrder dates = DateOrder::unknown;
};

struct Layout {
  std::optional<std::size_t> headings; // place among the table's rows; what stands above is no row
  std::vector<Column> columns;
};

Layout layout_of(const Table& table, const Names& names, const Asked& asked);

// "" where a row is too short for it; without blanks around it.
std::string cell_of(const Row& row, std::size_t column);

}
