#include "notes/drafts.hpp"

#include "notes/heading_words.hpp"
#include "words/calendar.hpp"
#include "words/notes_says.hpp"

#include <algorithm>
#include <cmath>

namespace notes {

namespace {

using session::CardKind;
using Say = words::NotesSay;

// A dash, and not a nought or a word for it.
bool is_blank(const std::string& cell) { return says_none(cell) && key_of(cell).empty(); }

bool has_amount(const Named& named) { return named.amount.has_value(); }

}

bool Draft::lost() const {
  return std::any_of(unread.begin(), unread.end(), [](const Unread& one) { return one.lost; });
}

void Draft::misses(const Cell& at, words::Error why, bool is_lost) {
  unread.push_back({at.row, at.column, at.text, std::move(why), is_lost});
}

void Draft::keep(const std::string& heading, const std::string& text) {
  const bool says_so = heading.empty() || role_in(heading) == Role::note;
  constexpr std::size_t plenty = 16'000; // bytes: of so long a note the end is cut off anyway
  const std::string part = says_so ? text : heading + ": " + text;
  const bool there = ("; " + note + "; ").find("; " + part + "; ") != std::string::npos;
  if (note.size() > plenty || there) return;
  note += (note.empty() ? "" : "; ") + part;
}

Rows::Rows(const Table& table, const Layout& layout, const Names& names, Measures& measures,
           const AskedRecipes& how)
    : table_(table), layout_(layout), names_(names), measures_(measures), how_(how),
      tools_(measures.tools()) {
  for (std::size_t at = 0; at < layout.columns.size(); ++at)
    if (layout.columns[at].role == Role::amount && layout.columns[at].of)
      amounts_[*layout.columns[at].of] = at;
  for (std::size_t at = 0; at < layout.columns.size(); ++at)
    if (layout.columns[at].role == Role::pigment && layout.columns[at].card.empty())
      for (const Row& row : table.rows)
        if (const auto meant = names.meant_by(cell_of(row, at)))
          one_thing_a_row_ = one_thing_a_row_ || meant->kind != CardKind::pigment;
}

std::vector<Draft> Rows::read() {
  for (std::size_t at = layout_.headings ? *layout_.headings + 1 : 0; at < table_.rows.size(); ++at)
    read_row(table_.rows[at]);
  return std::move(drafts_);
}

std::optional<std::size_t> Rows::column_of(Role role) const {
  for (std::size_t at = 0; at < layout_.columns.size(); ++at)
    if (layout_.columns[at].role == role) return at;
  return std::nullopt;
}

CellFormat Rows::format_of(std::size_t at) const { return {layout_.columns[at].decimal, tools_}; }

// In the column's unit where it names none.
NotedAmount Rows::measured(NotedAmount amount, std::size_t at) const {
  if (amount.unit == Unit::none) amount.unit = layout_.columns[at].unit;
  return amount;
}

// What its number alone does not say stands in the note.
NotedAmount Rows::taken(NotedAmount amount, const Cell& from) {
  amount = measured(std::move(amount), from.column);
  if (amount.unit == Unit::none) drafts_.back().bare.push_back(from);
  if (amount.up_to || !amount.remark.empty()) keep(from);
  return amount;
}

void Rows::keep(const Cell& cell) {
  if (!is_blank(cell.text)) drafts_.back().keep(layout_.columns[cell.column].heading, cell.text);
}

Cell Rows::cell(const Row& row, std::size_t at) const { return {row.number, at, cell_of(row, at)}; }

// In the column of its amounts, where there is one.
std::optional<Cell> Rows::beside(const Row& row, std::size_t at) const {
  const auto amounts = amounts_.find(at);
  return amounts == amounts_.end() ? std::nullopt : std::optional(cell(row, amounts->second));
}

// A row without a name and a date belongs to the one above it; so does one of the same name, where
// each row tells one thing that goes in, unless it was made on another day.
bool Rows::goes_on(const Row& row) const {
  const auto name_at = column_of(Role::name), date_at = column_of(Role::date);
  if (drafts_.empty() || !name_at) return false;
  const Draft& above = drafts_.back();
  const std::string name = cell_of(row, *name_at), date = date_at ? cell_of(row, *date_at) : "";
  if (name.empty()) return date.empty();
  const bool other_day = !date.empty() && !above.dated.empty() && date != above.dated;
  return one_thing_a_row_ && name == above.name && !other_day;
}

void Rows::read_row(const Row& row) {
  if (!goes_on(row)) {
    drafts_.emplace_back();
    drafts_.back().row = row.number;
  }
  Draft& draft = drafts_.back();
  for (const std::string& cell : row.cells) draft.raw += cell + '\x1F';
  std::size_t filled = row.cells.size();
  while (filled > 0 && cell_of(row, filled - 1).empty()) --filled;
  for (std::size_t at = 0; at < filled; ++at) draft.cells += cell_of(row, at) + '\x1F';
  for (std::size_t at = 0; at < layout_.columns.size(); ++at)
    if (!cell_of(row, at).empty()) read_cell(row, at);
}

void Rows::read_cell(const Row& row, std::size_t at) {
  Draft& draft = drafts_.back();
  const Column& column = layout_.columns[at];
  switch (column.role) {
  case Role::skip: return;
  case Role::name: draft.name = cell_of(row, at); return;
  case Role::pigment: return read_pigments(row, at);
  case Role::amount: return read_amount(row, at);
  case Role::binder:
  case Role::honey:
  case Role::glycerin:
  case Role::water:
  case Role::wetting_aid: return read_liquid(row, at);
  case Role::date: return read_date(row, at);
  case Role::note: return draft.keep(column.heading, cell_of(row, at));
  }
}

words::Result<Meant> Rows::known_by(const std::string& name) {
  auto meant = names_.meant_by(name);
  if (meant && meant->card.empty()) meant->card = measures_.card_for(meant->kind);
  return meant;
}

words::Result<Meant> Rows::meant_by(const std::string& name) {
  auto meant = known_by(name);
  const bool unknown = !meant && meant.error().what == words::Sentence(Say::name_unknown);
  if (unknown && how_.new_pigments && !key_of(name).empty())
    return Meant{measures_.new_pigment(name), CardKind::pigment};
  return meant;
}

// What a bare amount in that column is of.
Meant Rows::own(const Column& column) {
  const CardKind kind = *liquid_of(column.role);
  return {column.card.empty() ? measures_.card_for(kind) : column.card, kind};
}

words::Result<std::vector<Named>> Rows::names_in(const Cell& cell) const {
  if (names_.meant_by(cell.text)) return std::vector{Named{std::nullopt, cell.text}};
  return named_in(cell.text, format_of(cell.column));
}

// Whether a recipe is none without it.
bool Rows::is_needed(const Named& named, std::size_t at) const {
  const auto meant = names_.meant_by(named.name);
  const bool liquid = meant && meant->kind != CardKind::pigment;
  return layout_.columns[at].role == Role::pigment && !liquid;
}

// Of a pigment there has to be some; that there is nothing of a liquid stands in the note.
void Rows::add(Entry entry, const Cell& from) {
  Draft& draft = drafts_.back();
  const bool pigment = entry.of.kind == CardKind::pigment;
  const bool none = entry.amount && !(entry.amount->value > 0);
  if (pigment && (none || (!entry.amount && entry.amount_at)))
    return draft.misses(entry.amount_at.value_or(from), {Say::amount_missing, {}}, true);
  if (none) {
    keep(from);
    if (entry.amount_at) keep(*entry.amount_at);
    return;
  }
  (pigment ? draft.pigments : draft.liquids).push_back(std::move(entry));
}

// Whether together they are as much as stands beside them.
bool Rows::agree(const std::vector<Named>& named, const NotedAmount& beside, std::size_t at) const {
  double sum = 0;
  for (const Named& one : named) {
    const NotedAmount amount = measured(*one.amount, at);
    const bool bare = amount.unit == Unit::none || beside.unit == Unit::none;
    if (!bare && (amount.unit != beside.unit || amount.tool != beside.tool)) return false;
    sum += amount.value;
  }
  constexpr double same = 1e-6;
  return std::abs(sum - beside.value) <= same * std::max(sum, beside.value);
}

// One name, and what stands beside it; false where that is no amount.
bool Rows::complete_one(Named& named, const Cell& from, const Cell& amounts) {
  const auto says = amount_in(amounts.text, format_of(amounts.column));
  if (says) {
    if (*says) named.amount = taken(**says, amounts);
    if (!*says && !amounts.text.empty()) named.amount = NotedAmount{};
    return true;
  }
  const bool lost = is_needed(named, from.column);
  drafts_.back().misses(amounts, says.error(), lost);
  keep(from);
  keep(amounts);
  return false;
}

// To each name of a cell one of as many amounts.
void Rows::share_out(std::vector<Named>& named, const Cell& amounts) {
  const auto all = amounts_in(amounts.text, format_of(amounts.column));
  if (!all || all->size() != named.size()) return;
  for (std::size_t at = 0; at < named.size(); ++at) named[at].amount = taken((*all)[at], amounts);
}

// Gives the names of a cell what stands beside them, and says what does not fit; false where
// nothing of it can be taken.
bool Rows::complete(std::vector<Named>& named, const Row& row, std::size_t at) {
  const Cell from = cell(row, at);
  const auto amounts = beside(row, at);
  const bool single = named.size() == 1;
  const bool told = std::all_of(named.begin(), named.end(), has_amount);
  if (amounts && single && !told) return complete_one(named[0], from, *amounts);
  if (amounts && std::none_of(named.begin(), named.end(), has_amount))
    return share_out(named, *amounts), true;
  bool fits = true;
  if (amounts && told && !is_blank(amounts->text)) {
    const auto says = amount_in(amounts->text, format_of(amounts->column));
    const NotedAmount other =
        measured(says ? says->value_or(NotedAmount{}) : NotedAmount{}, amounts->column);
    if (!says || !agree(named, other, at)) {
      const words::Error why{Say::amount_otherwise, {cell_name(at, row.number)}};
      fits = !says || !single;
      drafts_.back().misses(*amounts, says ? why : says.error(), !fits && is_needed(named[0], at));
      keep(from);
      keep(*amounts);
    }
    for (Named& one : named)
      if (one.amount->unit == Unit::none) one.amount->unit = other.unit;
  }
  for (Named& one : named)
    if (fits && one.amount) one.amount = taken(*one.amount, from);
  return fits;
}

void Rows::stands_beside(Entry& entry, const Row& row, std::size_t at) const {
  entry.amount_at = beside(row, at);
  if (entry.amount_at) entry.amount_heading = layout_.columns[entry.amount_at->column].heading;
}

void Rows::read_pigments(const Row& row, std::size_t at) {
  Draft& draft = drafts_.back();
  const Column& column = layout_.columns[at];
  const Cell place = cell(row, at);
  if (!column.card.empty()) {
    const auto amount = amount_in(place.text, format_of(at));
    if (!amount) return draft.misses(place, amount.error(), true);
    if (*amount) add({place, {column.card}, taken(**amount, place), column.heading}, place);
    return;
  }
  if (says_none(place.text)) return;
  auto named = names_in(place);
  if (!named) return draft.misses(place, named.error(), true);
  const bool single = named->size() == 1 && !named->front().amount;
  const bool fits = complete(*named, row, at);
  for (const Named& one : *named) {
    const auto meant = meant_by(one.name);
    if (!meant) draft.misses({row.number, at, one.name}, meant.error(), true);
    if (!meant || !fits) continue;
    Entry entry{{row.number, at, one.name}, *meant, one.amount, column.heading};
    if (single) stands_beside(entry, row, at);
    add(std::move(entry), place);
  }
}

void Rows::read_liquid(const Row& row, std::size_t at) {
  const Column& column = layout_.columns[at];
  const Cell place = cell(row, at);
  const auto amounts = beside(row, at);
  const auto not_read = [&](const Cell& where, words::Error why) {
    drafts_.back().misses(where, std::move(why), false);
    keep(place);
    if (amounts) keep(*amounts);
  };
  const auto amount = amount_in(place.text, format_of(at));
  if (amount && !*amount) return;
  std::vector<Named> named =
      amount ? std::vector{Named{**amount, ""}} : names_in(place).value_or(std::vector<Named>{});
  if (named.empty()) return not_read(place, amount.error());
  const bool told = std::any_of(named.begin(), named.end(), has_amount);
  std::vector<Entry> entries;
  for (const Named& one : named) {
    auto meant = one.name.empty() ? words::Result<Meant>(own(column)) : known_by(one.name);
    if (meant && meant->kind == CardKind::pigment)
      meant = words::failure(Say::name_pigment, {one.name});
    if (!meant && !told && !amounts) return not_read(place, amount.error());
    if (!meant) return not_read({row.number, at, one.name}, meant.error());
    entries.push_back({place, *meant, std::nullopt, column.heading});
  }
  if (!complete(named, row, at)) return;
  if (named.size() > 1 && !std::all_of(named.begin(), named.end(), has_amount))
    return not_read(place, {Say::amount_missing, {}});
  for (std::size_t one = 0; one < entries.size(); ++one) {
    entries[one].amount = named[one].amount;
    if (!told) stands_beside(entries[one], row, at);
    add(std::move(entries[one]), place);
  }
}

// Beside a name it was read with that. Of a liquid that no cell names it is that of its kind.
void Rows::read_amount(const Row& row, std::size_t at) {
  Draft& draft = drafts_.back();
  const Column& column = layout_.columns[at];
  const Cell place = cell(row, at);
  if (!column.of || says_none(place.text)) return;
  const Column& names = layout_.columns[*column.of];
  const Cell name = cell(row, *column.of);
  if (!says_none(name.text)) return;
  if (names.role == Role::pigment) return draft.misses(place, {Say::amount_of_what, {}}, true);
  const auto amount = amount_in(place.text, format_of(at));
  if (amount && !*amount) return;
  if (amount && name.text.empty())
    return add({place, own(names), taken(**amount, place), column.heading}, place);
  draft.misses(place, amount ? words::Error{Say::amount_of_what, {}} : amount.error(), false);
  keep(name);
  keep(place);
}

void Rows::read_date(const Row& row, std::size_t at) {
  Draft& draft = drafts_.back();
  const Cell place = cell(row, at);
  if (says_none(place.text)) return;
  if (draft.dated.empty()) draft.dated = place.text;
  auto day = date_in(place.text, layout_.columns[at].dates);
  if (day && *day > how_.today) day = words::failure(Say::date_in_future);
  if (day && draft.made_on.empty()) draft.made_on = words::date_of(*day);
  if (day && draft.made_on == words::date_of(*day)) return;
  if (!day) draft.misses(place, day.error(), false);
  keep(place);
}

}
