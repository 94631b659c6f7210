#include "notes/columns.hpp"

#include "notes/pairing.hpp"
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
  bool written = false; // something, if only "none"
  std::size_t bare = 0; // of the amounts
  bool counted = true;  // each is a bare one, and one more than that above it
  double last = 0;
  std::set<std::string> different;
};

void look_at(Content& content, const std::string& cell, const Names& names) {
  ++content.filled;
  content.different.insert(key_of(cell));
  const CellFormat any{Decimal::point};
  if (date_in(cell, DateOrder::day_first)) ++content.dates;
  const auto amount = amount_in(cell, any);
  if (amount && *amount) {
    const bool bare = (*amount)->unit == Unit::none && !(*amount)->up_to;
    const bool next = content.amounts == 0 || (*amount)->value == content.last + 1;
    content.counted = content.counted && bare && next;
    content.last = (*amount)->value;
    content.bare += bare;
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
      if (!key_of(cell).empty()) out[column].written = true;
      if (!says_none(cell)) look_at(out[column], cell, names);
    }
  return out;
}

bool holds_amount(const std::string& cell) {
  const auto amount = amount_in(cell, {Decimal::point});
  return amount && *amount;
}

// An amount beside something else, and no year over a table.
bool is_of_recipe(const Row& row) {
  const auto filled = std::count_if(row.cells.begin(), row.cells.end(),
                                    [](const std::string& cell) { return !key_of(cell).empty(); });
  return filled > 1 && std::any_of(row.cells.begin(), row.cells.end(), holds_amount);
}

// How many cells of a row are words of headings; none where a cell is an amount.
std::size_t headings_in(const Row& row) {
  constexpr std::size_t longest = 40; // of a heading
  if (std::any_of(row.cells.begin(), row.cells.end(), holds_amount)) return 0;
  return static_cast<std::size_t>(
      std::count_if(row.cells.begin(), row.cells.end(), [](const std::string& cell) {
        return cell.size() <= longest && !says_none(cell) && role_in(cell);
      }));
}

// Of two rows, whether the first has words where the second has amounts.
bool stands_over(const Row& first, const Row& second) {
  bool over = false;
  for (std::size_t at = 0; at < second.cells.size(); ++at) {
    if (holds_amount(cell_of(first, at))) return false;
    over = over || (holds_amount(second.cells[at]) && !cell_of(first, at).empty());
  }
  return over;
}

// The first of the first rows that holds most of them, else the first, if it can be one. No recipe
// stands over it.
std::optional<std::size_t> headings_of(const Table& table) {
  constexpr std::size_t highest = 10;
  std::optional<std::size_t> best;
  std::size_t most = 0;
  for (std::size_t row = 0; row < std::min(highest, table.rows.size()); ++row) {
    if (is_of_recipe(table.rows[row])) break;
    if (const std::size_t known = headings_in(table.rows[row]); known > most) {
      most = known;
      best = row;
    }
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
    pairable_.resize(table.columns);
  }

  Layout made() {
    for (std::size_t at = 0; at < out_.columns.size(); ++at) begin(at);
    for (std::size_t at = 0; at < out_.columns.size(); ++at)
      asked_.columns.count(at) ? void(name_card(at)) : guess(at);
    ensure_pigments();
    ensure_name();
    keep_one_name();
    pair_amounts(out_.columns, pairable_);
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
    const Content& content = contents_[at];
    Column& column = out_.columns[at];
    Pairable& pairable = pairable_[at];
    column.filled = content.filled;
    if (out_.headings) column.heading = cell_of(table_.rows[*out_.headings], at);
    pairable.heading = heading_in(column.heading);
    column.unit = pairable.heading.unit;
    pairable.has_amounts = most_of(content.amounts, content);
    pairable.says_amounts = pairable.heading.amounts || is_measured(at);
    if (stands_over_names(at)) ++over_names_[key_of(pairable.heading.rest)];
    const auto said = asked_.columns.find(at);
    if (said == asked_.columns.end()) return;
    be(at, said->second.role, {Say::why_asked, {}});
    if (said->second.unit != Unit::none) column.unit = said->second.unit;
    pairable.says_amounts = said->second.role == Role::amount;
  }

  // A unit in the heading of names is that of the amounts among them.
  bool is_measured(std::size_t at) const {
    return pairable_[at].heading.unit != Unit::none &&
           many_of(contents_[at].amounts, contents_[at]);
  }

  bool stands_over_names(std::size_t at) const {
    const Heading& heading = pairable_[at].heading;
    return contents_[at].filled > 0 && !pairable_[at].has_amounts && !heading.amounts &&
           heading.unit == Unit::none && !heading.rest.empty();
  }

  // Whether it is of amounts, and its heading none that another column of names bears too.
  bool may_be_of_card(std::size_t at) const {
    const Content& content = contents_[at];
    const Heading& heading = pairable_[at].heading;
    if (many_of(content.pigments, content) || many_of(content.liquids, content)) return false;
    const bool said = heading.amounts || heading.unit != Unit::none;
    const bool some = content.amounts > 0 && !heading.role;
    const bool amounts = said || some || pairable_[at].has_amounts;
    if (!amounts) return false;
    const auto same = over_names_.find(key_of(heading.rest));
    return same == over_names_.end() || same->second == (stands_over_names(at) ? 1u : 0u);
  }

  // The pigment or liquid that the heading of a column of amounts names.
  bool name_card(std::size_t at) {
    Column& column = out_.columns[at];
    const std::string& rest = pairable_[at].heading.rest;
    if (column.heading.empty() || !may_be_of_card(at)) return false;
    auto named = names_.meant_by(column.heading.substr(0, column.heading.find_first_of("([")));
    if (!named && !role_in(rest)) named = names_.meant_by(rest);
    if (!named || named->card.empty()) return false;
    const Role role = role_for(named->kind);
    const bool asked = asked_.columns.count(at) > 0;
    if (!asked || column.role == Role::amount) column.role = role;
    if (role == column.role) column.card = named->card;
    if (!asked)
      column.why = {pairable_[at].has_amounts ? Say::why_heading_card : Say::why_heading, {}};
    return !column.card.empty();
  }

  void guess(std::size_t at) {
    const Content& content = contents_[at];
    const auto by_heading = pairable_[at].heading.role;
    if (content.filled == 0 && !content.written) return be(at, Role::skip, {Say::why_empty, {}});
    if (name_card(at)) return;
    const bool amounts = pairable_[at].has_amounts || is_measured(at);
    if (by_heading == Role::pigment && amounts) return be(at, Role::amount, {Say::why_heading, {}});
    if (by_heading == Role::amount && many_of(content.pigments, content))
      return be_by_cells(at, Role::pigment, content.pigments, Say::why_cells_pigments);
    if (by_heading) return be(at, *by_heading, {Say::why_heading, {}});
    guess_by_cells(at);
  }

  void guess_by_cells(std::size_t at) {
    const Content& content = contents_[at];
    if (most_of(content.dates, content))
      return be_by_cells(at, Role::date, content.dates, Say::why_cells_dates);
    if (at == 0 && content.counted && content.amounts > 1 && content.amounts == content.filled)
      return be(at, Role::note, {Say::why_counted, {}});
    if (most_of(content.amounts, content) ||
        (out_.columns[at].heading.empty() && many_of(content.amounts, content) &&
         content.bare == 0))
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

  int name_rank(std::size_t at) const {
    return asked_.columns.count(at) ? 2 : pairable_[at].has_amounts ? 0 : 1;
  }

  // The first column of texts that are hardly ever the same.
  void ensure_name() {
    for (std::size_t at = 0; at < out_.columns.size(); ++at)
      if (out_.columns[at].role == Role::name && name_rank(at) > 0) return;
    for (std::size_t at = 0; at < out_.columns.size(); ++at) {
      const Content& content = contents_[at];
      const bool text = out_.columns[at].role == Role::note && content.filled > 0 &&
                        out_.columns[at].why.what == words::Sentence(Say::why_nothing_known);
      if (text && most_of(content.different.size(), content))
        return be(at, Role::name, {Say::why_first_text, {}});
    }
  }

  // Of several the first whose cells are no mere numbers; the others are kept in the note.
  void keep_one_name() {
    std::optional<std::size_t> best;
    for (std::size_t at = 0; at < out_.columns.size(); ++at)
      if (out_.columns[at].role == Role::name && (!best || name_rank(at) > name_rank(*best)))
        best = at;
    for (std::size_t at = 0; at < out_.columns.size(); ++at)
      if (out_.columns[at].role == Role::name && at != *best)
        be(at, Role::note, {Say::why_another_name, {}});
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
  std::vector<Pairable> pairable_;                // as the columns
  std::map<std::string, std::size_t> over_names_; // how many of each, as key_of has it
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
