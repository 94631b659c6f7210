#include "notes/columns.hpp"

#include "notes/heading_words.hpp"
#include "words/lists.hpp"
#include "words/notes_says.hpp"

#include <algorithm>

namespace notes {

namespace {

using session::CardKind;
using Say = words::NotesSay;

constexpr std::size_t looked_at = 500; // rows that tell what a column holds

constexpr words::EnumTable<Role, std::string_view> roles{{{Role::skip, "skip"},
                                                          {Role::name, "name"},
                                                          {Role::pigment, "pigment"},
                                                          {Role::amount, "amount"},
                                                          {Role::binder, "binder"},
                                                          {Role::honey, "honey"},
                                                          {Role::glycerin, "glycerin"},
                                                          {Role::water, "water"},
                                                          {Role::wetting_aid, "wetting_aid"},
                                                          {Role::date, "date"},
                                                          {Role::note, "note"}}};

Role role_for(CardKind kind) {
  if (kind == CardKind::pigment) return Role::pigment;
  for (const Role role : words::all_of<Role>)
    if (liquid_of(role) == kind) return role;
  return Role::binder; // any other liquid has its card
}

std::string number(std::size_t n) { return std::to_string(n); }

// What stands in a column, by how it can be read.
struct Content {
  std::size_t filled = 0, amounts = 0, dates = 0, pigments = 0, liquids = 0;
  std::set<std::string> different;
};

void look_at(Content& content, const std::string& cell, const Names& names) {
  ++content.filled;
  content.different.insert(key_of(cell));
  const CellFormat any{Decimal::point};
  if (date_in(cell, DateOrder::day_first)) ++content.dates;
  const auto amount = amount_in(cell, any);
  if (amount && *amount) {
    ++content.amounts;
    return;
  }
  const auto count = [&](const words::Result<Meant>& meant) {
    if (!meant) return false;
    ++(meant->kind == CardKind::pigment ? content.pigments : content.liquids);
    return true;
  };
  if (count(names.meant_by(cell))) return;
  const auto named = named_in(cell, any);
  if (named && !named->empty()) count(names.meant_by(named->front().name));
}

std::vector<Content> contents_of(const Table& table, std::size_t from, const Names& names) {
  std::vector<Content> out(table.columns);
  const std::size_t to = std::min(table.rows.size(), from + looked_at);
  for (std::size_t row = from; row < to; ++row)
    for (std::size_t column = 0; column < out.size(); ++column) {
      const std::string cell = cell_of(table.rows[row], column);
      if (!says_none(cell)) look_at(out[column], cell, names);
    }
  return out;
}

// How many cells of a row are words of headings; none where a cell is an amount.
std::size_t headings_in(const Row& row) {
  constexpr std::size_t longest = 40; // of a heading
  std::size_t known = 0;
  for (const std::string& cell : row.cells) {
    const auto amount = amount_in(cell, {Decimal::point});
    if (amount && *amount) return 0;
    known += cell.size() <= longest && role_in(cell);
  }
  return known;
}

// Of two rows, whether the first has words where the second has amounts.
bool stands_over(const Row& first, const Row& second) {
  bool over = false;
  for (std::size_t at = 0; at < second.cells.size(); ++at) {
    const auto below = amount_in(second.cells[at], {Decimal::point});
    const auto above = amount_in(cell_of(first, at), {Decimal::point});
    if (above && *above) return false;
    over = over || (below && *below && !cell_of(first, at).empty());
  }
  return over;
}

// The first of the first rows that holds most of them, else the first, if it can be one.
std::optional<std::size_t> headings_of(const Table& table) {
  constexpr std::size_t highest = 10;
  std::optional<std::size_t> best;
  std::size_t most = 0;
  for (std::size_t row = 0; row < std::min(highest, table.rows.size()); ++row)
    if (const std::size_t known = headings_in(table.rows[row]); known > most) {
      most = known;
      best = row;
    }
  if (!best && table.rows.size() > 1 && stands_over(table.rows[0], table.rows[1])) best = 0;
  return best;
}

class Guess {
public:
  Guess(const Table& table, const Names& names, const Asked& asked)
      : table_(table), names_(names), asked_(asked) {
    out_.headings = headings_of(table);
    contents_ = contents_of(table, out_.headings ? *out_.headings + 1 : 0, names);
    out_.columns.resize(table.columns);
  }

  Layout made() {
    for (std::size_t at = 0; at < out_.columns.size(); ++at) begin(at);
    for (std::size_t at = 0; at < out_.columns.size(); ++at)
      if (!asked_.columns.count(at)) guess(at);
    ensure_pigments();
    ensure_name();
    give_to_neighbours();
    for (std::size_t at = 0; at < out_.columns.size(); ++at) read_hand(at);
    decide_decimals();
    return std::move(out_);
  }

private:
  static bool most_of(std::size_t part, const Content& content) {
    return content.filled > 0 && 10 * part >= 7 * content.filled;
  }
  static bool many_of(std::size_t part, const Content& content) {
    return content.filled > 0 && 2 * part >= content.filled;
  }
  bool there_is(Role role) const {
    return std::any_of(out_.columns.begin(), out_.columns.end(),
                       [&](const Column& column) { return column.role == role; });
  }
  void be(std::size_t at, Role role, words::Error why) {
    out_.columns[at].role = role;
    out_.columns[at].why = std::move(why);
  }
  void be_by_cells(std::size_t at, Role role, std::size_t part, Say say) {
    be(at, role, {say, {number(part), number(contents_[at].filled)}});
  }

  void begin(std::size_t at) {
    Column& column = out_.columns[at];
    column.filled = contents_[at].filled;
    if (out_.headings) column.heading = cell_of(table_.rows[*out_.headings], at);
    column.unit = unit_in(column.heading);
    const auto by_heading = role_in(column.heading);
    const bool names = many_of(contents_[at].liquids, contents_[at]);
    if (by_heading && liquid_of(*by_heading) && names) named_.insert(*by_heading);
    const auto said = asked_.columns.find(at);
    if (said == asked_.columns.end()) return;
    be(at, said->second.role, {Say::why_asked, {}});
    if (said->second.unit != Unit::none) column.unit = said->second.unit;
    name_card(at);
  }

  // The pigment or liquid that the heading of a column of amounts names.
  bool name_card(std::size_t at) {
    Column& column = out_.columns[at];
    if (column.heading.empty() || !most_of(contents_[at].amounts, contents_[at])) return false;
    std::string name = column.heading.substr(0, column.heading.find_first_of("(["));
    const auto named = names_.meant_by(name);
    if (!named || named->card.empty()) return false;
    const Role role = role_for(named->kind);
    if (!asked_.columns.count(at)) column.role = role;
    if (role == column.role) column.card = named->card;
    return !column.card.empty();
  }

  void guess(std::size_t at) {
    const Content& content = contents_[at];
    Column& column = out_.columns[at];
    const auto by_heading = role_in(column.heading);
    if (content.filled == 0) return be(at, Role::skip, {Say::why_empty, {}});
    if (name_card(at)) {
      column.why = {Say::why_heading_card, {}};
      return;
    }
    const bool amounts = most_of(content.amounts, content);
    if (by_heading == Role::pigment && amounts) return be(at, Role::amount, {Say::why_heading, {}});
    if (by_heading == Role::amount && many_of(content.pigments, content))
      return be_by_cells(at, Role::pigment, content.pigments, Say::why_cells_pigments);
    if (by_heading && amounts && named_.count(*by_heading)) // "Binder" and "Binder amount"
      return be(at, Role::amount, {Say::why_heading, {}});
    if (by_heading) return be(at, *by_heading, {Say::why_heading, {}});
    guess_by_cells(at);
  }

  void guess_by_cells(std::size_t at) {
    const Content& content = contents_[at];
    if (most_of(content.dates, content))
      return be_by_cells(at, Role::date, content.dates, Say::why_cells_dates);
    if (most_of(content.amounts, content))
      return be_by_cells(at, Role::amount, content.amounts, Say::why_cells_amounts);
    if (many_of(content.pigments, content))
      return be_by_cells(at, Role::pigment, content.pigments, Say::why_cells_pigments);
    if (many_of(content.liquids, content))
      return be_by_cells(at, Role::binder, content.liquids, Say::why_cells_liquids);
    be(at, Role::note, {Say::why_nothing_known, {}});
  }

  // Where the name of the paint is all there is, it may be that of its pigment.
  void ensure_pigments() {
    if (there_is(Role::pigment)) return;
    for (std::size_t at = 0; at < out_.columns.size(); ++at)
      if (many_of(contents_[at].pigments, contents_[at]) && !asked_.columns.count(at))
        return be_by_cells(at, Role::pigment, contents_[at].pigments, Say::why_cells_pigments);
  }

  // The first column of texts that are hardly ever the same.
  void ensure_name() {
    if (there_is(Role::name)) return;
    for (std::size_t at = 0; at < out_.columns.size(); ++at) {
      const Content& content = contents_[at];
      const bool text = out_.columns[at].role == Role::note && content.filled > 0 &&
                        out_.columns[at].why.what == words::Sentence(Say::why_nothing_known);
      if (text && most_of(content.different.size(), content))
        return be(at, Role::name, {Say::why_first_text, {}});
    }
  }

  bool may_have_amounts(std::size_t at) const {
    const Column& column = out_.columns[at];
    const bool names = column.role == Role::pigment || liquid_of(column.role);
    return names && column.card.empty() && !most_of(contents_[at].amounts, contents_[at]);
  }

  // Each to the nearest before it that has no amounts yet, else to the nearest behind it; in one
  // pass, since a table may be thousands of columns wide.
  void give_to_neighbours() {
    const std::size_t end = out_.columns.size();
    std::vector<std::size_t> before; // without amounts yet
    std::set<std::size_t> taken;     // from before they were passed
    for (std::size_t at = 0, behind = 0; at < end; ++at) {
      Column& column = out_.columns[at];
      if (column.role != Role::amount) {
        if (may_have_amounts(at) && !taken.count(at)) before.push_back(at);
        continue;
      }
      if (!before.empty()) {
        column.of = before.back();
        before.pop_back();
        continue;
      }
      behind = std::max(behind, at + 1);
      while (behind < end && !may_have_amounts(behind)) ++behind;
      if (behind < end) column.of = *taken.insert(behind++).first;
      if (!column.of) be(at, Role::note, {Say::why_amount_of_nothing, {}});
    }
  }

  std::vector<std::string_view> cells_of(std::size_t at) const {
    std::vector<std::string_view> cells;
    for (std::size_t row = out_.headings ? *out_.headings + 1 : 0; row < table_.rows.size(); ++row)
      if (at < table_.rows[row].cells.size()) cells.push_back(table_.rows[row].cells[at]);
    return cells;
  }

  bool has_numbers(const Column& column) const {
    return column.role == Role::pigment || column.role == Role::amount || liquid_of(column.role);
  }

  void read_hand(std::size_t at) {
    Column& column = out_.columns[at];
    column.dates = asked_.dates;
    if (column.role == Role::date && column.dates == DateOrder::unknown)
      column.dates = date_order_of(cells_of(at));
    column.decimal = asked_.decimal;
    if (has_numbers(column) && column.decimal == Decimal::unknown)
      column.decimal = decimal_of(cells_of(at));
  }

  // A column that tells nothing is read as the others are; a table whose cells are set apart by
  // semicolons was made where a comma is the decimal sign.
  void decide_decimals() {
    bool comma = false, point = false;
    for (const Column& column : out_.columns) {
      comma = comma || column.decimal == Decimal::comma;
      point = point || column.decimal == Decimal::point;
    }
    Decimal usual = Decimal::unknown;
    if (comma != point) usual = comma ? Decimal::comma : Decimal::point;
    if (!comma && !point && table_.separator == Separator::semicolon) usual = Decimal::comma;
    for (std::size_t at = 0; at < out_.columns.size(); ++at) {
      Column& column = out_.columns[at];
      if (column.decimal == Decimal::unknown && !contradicts_itself(at)) column.decimal = usual;
    }
  }

  bool contradicts_itself(std::size_t at) const {
    bool comma = false, point = false;
    for (const std::string_view cell : cells_of(at)) {
      const Decimal told = decimal_of({cell});
      comma = comma || told == Decimal::comma;
      point = point || told == Decimal::point;
    }
    return has_numbers(out_.columns[at]) && comma && point;
  }

  const Table& table_;
  const Names& names_;
  const Asked& asked_;
  std::vector<Content> contents_;
  std::set<Role> named_; // liquids that a column of names stands for
  Layout out_;
};

}

std::string_view name_of(Role role) { return roles[role]; }

std::optional<Role> role_named(std::string_view name) {
  for (const Role role : words::all_of<Role>)
    if (roles[role] == name) return role;
  return std::nullopt;
}

std::optional<CardKind> liquid_of(Role role) {
  switch (role) {
  case Role::binder: return CardKind::binder;
  case Role::honey: return CardKind::honey;
  case Role::glycerin: return CardKind::glycerin;
  case Role::water: return CardKind::water;
  case Role::wetting_aid: return CardKind::wetting_aid;
  case Role::skip:
  case Role::name:
  case Role::pigment:
  case Role::amount:
  case Role::date:
  case Role::note: return std::nullopt;
  }
  return std::nullopt;
}

std::string cell_of(const Row& row, std::size_t column) {
  if (column >= row.cells.size()) return "";
  const std::string& cell = row.cells[column];
  constexpr std::string_view blanks = " \t\r\n";
  const std::size_t from = cell.find_first_not_of(blanks);
  if (from == std::string::npos) return "";
  return cell.substr(from, cell.find_last_not_of(blanks) - from + 1);
}

Layout layout_of(const Table& table, const Names& names, const Asked& asked) {
  return Guess(table, names, asked).made();
}

}
