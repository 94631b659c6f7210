#include "notes/drafts.hpp"

#include "notes/heading_words.hpp"
#include "words/calendar.hpp"
#include "words/notes_says.hpp"

#include <algorithm>

namespace notes {

namespace {

using session::CardKind;
using Say = words::NotesSay;

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
  if (note.size() > plenty || note.find(text) != std::string::npos) return;
  note += (note.empty() ? "" : "; ") + (says_so ? text : heading + ": " + text);
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

// In the column's unit where it names none. What its number alone does not say stands in the note.
NotedAmount Rows::taken(NotedAmount amount, const Row& row, std::size_t at) {
  const Column& column = layout_.columns[at];
  if (amount.unit == Unit::none) amount.unit = column.unit;
  if (amount.unit == Unit::none) drafts_.back().bare.push_back({row.number, at, cell_of(row, at)});
  if (amount.up_to || !amount.remark.empty()) drafts_.back().keep(column.heading, cell_of(row, at));
  return amount;
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
  const std::string cell = cell_of(row, at);
  switch (column.role) {
  case Role::skip: return;
  case Role::name: draft.name = cell; return;
  case Role::pigment: return read_pigments(row, at);
  case Role::amount:
    if (column.of && says_none(cell_of(row, *column.of)) && !says_none(cell))
      draft.misses({row.number, at, cell}, {Say::amount_of_what, {}},
                   layout_.columns[*column.of].role == Role::pigment);
    return;
  case Role::binder:
  case Role::honey:
  case Role::glycerin:
  case Role::water:
  case Role::wetting_aid: return read_liquid(row, at);
  case Role::date: return read_date(row, at);
  case Role::note: return draft.keep(column.heading, cell);
  }
}

// What the column of its amounts says in this row.
std::optional<NotedAmount> Rows::amount_beside(const Row& row, std::size_t at, bool lost) {
  const auto beside = amounts_.find(at);
  if (beside == amounts_.end()) return std::nullopt;
  const std::string cell = cell_of(row, beside->second);
  auto amount = amount_in(cell, format_of(beside->second));
  if (!amount) {
    drafts_.back().misses({row.number, beside->second, cell}, amount.error(), lost);
    return std::nullopt;
  }
  if (!*amount) return std::nullopt;
  return taken(**amount, row, beside->second);
}

words::Result<Meant> Rows::meant_by(const std::string& name) {
  auto meant = names_.meant_by(name);
  if (meant && meant->card.empty()) meant->card = measures_.card_for(meant->kind);
  const bool unknown = !meant && meant.error().what == words::Sentence(Say::name_unknown);
  if (unknown && how_.new_pigments && !key_of(name).empty())
    return Meant{measures_.new_pigment(name), CardKind::pigment};
  return meant;
}

void Rows::add(Entry entry) {
  Draft& draft = drafts_.back();
  (entry.of.kind == CardKind::pigment ? draft.pigments : draft.liquids).push_back(std::move(entry));
}

// Whether a column of amounts says of this pigment that there is none, or nothing.
bool Rows::lacks_amount(const Row& row, std::size_t at, const Meant& of) {
  const auto beside = amounts_.find(at);
  if (of.kind != CardKind::pigment || beside == amounts_.end()) return false;
  const std::string cell = cell_of(row, beside->second);
  if (!says_none(cell)) return false;
  drafts_.back().misses({row.number, beside->second, cell}, {Say::amount_missing, {}}, true);
  return true;
}

void Rows::read_pigments(const Row& row, std::size_t at) {
  Draft& draft = drafts_.back();
  const Column& column = layout_.columns[at];
  const Cell place{row.number, at, cell_of(row, at)};
  if (!column.card.empty()) {
    const auto amount = amount_in(place.text, format_of(at));
    if (!amount) return draft.misses(place, amount.error(), true);
    if (*amount) add({place, {column.card}, taken(**amount, row, at), column.heading});
    return;
  }
  if (says_none(place.text)) return;
  if (names_.meant_by(place.text)) {
    const Meant meant = *meant_by(place.text);
    if (lacks_amount(row, at, meant)) return;
    return add({place, meant, amount_beside(row, at, true), column.heading});
  }
  const auto named = named_in(place.text, format_of(at));
  if (!named) return draft.misses(place, named.error(), true);
  std::optional<NotedAmount> beside;
  if (named->size() == 1 && !named->front().amount) beside = amount_beside(row, at, true);
  for (const Named& one : *named) {
    const auto meant = meant_by(one.name);
    if (meant && one.amount && !(one.amount->value > 0)) {
      draft.misses(place, {Say::amount_missing, {}}, true);
      continue;
    }
    if (meant && named->size() == 1 && !one.amount && lacks_amount(row, at, *meant)) continue;
    if (!meant) {
      draft.misses({row.number, at, one.name}, meant.error(), true);
      continue;
    }
    const auto amount = one.amount ? std::optional(taken(*one.amount, row, at)) : beside;
    add({{row.number, at, one.name}, *meant, amount, column.heading});
  }
}

void Rows::read_liquid(const Row& row, std::size_t at) {
  Draft& draft = drafts_.back();
  const Column& column = layout_.columns[at];
  const Cell place{row.number, at, cell_of(row, at)};
  const auto not_read = [&](words::Error why) {
    draft.misses(place, std::move(why), false);
    draft.keep(column.heading, place.text);
    const auto beside = amounts_.find(at);
    if (beside == amounts_.end() || says_none(cell_of(row, beside->second))) return;
    draft.keep(layout_.columns[beside->second].heading, cell_of(row, beside->second));
  };
  const CardKind kind = *liquid_of(column.role);
  const auto amount = amount_in(place.text, format_of(at));
  if (amount) {
    if (!*amount) return;
    const std::string card = column.card.empty() ? measures_.card_for(kind) : column.card;
    return add({place, {card, kind}, taken(**amount, row, at), column.heading});
  }
  const bool whole = names_.meant_by(place.text).has_value();
  auto named = whole ? std::vector{Named{std::nullopt, place.text}}
                     : named_in(place.text, format_of(at)).value_or(std::vector<Named>{});
  const bool single = named.size() == 1;
  const bool lacking =
      !single && std::any_of(named.begin(), named.end(), [](const Named& n) { return !n.amount; });
  if (!named.empty() && lacking) return not_read({Say::amount_missing, {}});
  std::vector<Entry> entries;
  for (const Named& one : named) {
    const auto meant = meant_by(one.name);
    if (!meant || meant->kind == CardKind::pigment) continue;
    Entry& entry = entries.emplace_back(Entry{place, *meant, std::nullopt, column.heading});
    entry.amount =
        one.amount ? std::optional(taken(*one.amount, row, at)) : amount_beside(row, at, false);
    const auto beside = amounts_.find(at);
    if (one.amount || beside == amounts_.end()) continue;
    entry.amount_at = Cell{row.number, beside->second, cell_of(row, beside->second)};
    entry.amount_heading = layout_.columns[beside->second].heading;
  }
  if (entries.empty() || entries.size() != named.size()) return not_read(amount.error());
  for (Entry& entry : entries) add(std::move(entry));
}

void Rows::read_date(const Row& row, std::size_t at) {
  Draft& draft = drafts_.back();
  const Cell place{row.number, at, cell_of(row, at)};
  if (says_none(place.text)) return;
  if (draft.dated.empty()) draft.dated = place.text;
  auto day = date_in(place.text, layout_.columns[at].dates);
  if (day && *day > how_.today) day = words::failure(Say::date_in_future);
  if (day) {
    draft.made_on = words::date_of(*day);
    return;
  }
  draft.misses(place, day.error(), false);
  draft.keep(layout_.columns[at].heading, place.text);
}

}
