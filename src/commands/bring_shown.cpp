#include "commands/bring.hpp"
#include "commands/show.hpp"
#include "paint/digits.hpp"
#include "paint/in_words.hpp"
#include "session/bytes.hpp"
#include "words/commands_says.hpp"
#include "words/lists.hpp"

#include <algorithm>

namespace commands {

namespace {

using notes::Column;
using notes::Role;
using session::Card;
using session::Said;
using session::SaidIn;
using Say = words::CommandsSay;
using words::say;

constexpr words::EnumTable<notes::Encoding, words::Sentence> encodings{
    {{notes::Encoding::utf8, Say::bring_utf8},
     {notes::Encoding::utf8_marked, Say::bring_utf8},
     {notes::Encoding::utf16_le, Say::bring_utf16},
     {notes::Encoding::utf16_be, Say::bring_utf16},
     {notes::Encoding::windows_1252, Say::bring_windows_1252}}};
constexpr words::EnumTable<notes::Separator, words::Sentence> separators{
    {{notes::Separator::comma, Say::bring_commas},
     {notes::Separator::semicolon, Say::bring_semicolons},
     {notes::Separator::tab, Say::bring_tabs},
     {notes::Separator::bar, Say::bring_bars}}};
constexpr words::EnumTable<Fate, words::Sentence> fates{{{Fate::fresh, Say::bring_fresh},
                                                         {Fate::newer, Say::bring_newer},
                                                         {Fate::there, Say::bring_is_there},
                                                         {Fate::otherwise, Say::bring_otherwise},
                                                         {Fate::left, Say::bring_is_left}}};

using Rows = std::vector<std::vector<std::string>>;

std::size_t letters_of(const std::string& text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

// In columns as wide as most of their words; what is much longer sticks out.
std::string in_columns(const Rows& rows) {
  constexpr std::size_t widest = 28;
  std::vector<std::size_t> widths;
  for (const auto& row : rows)
    for (std::size_t at = 0; at < row.size(); ++at) {
      widths.resize(std::max(widths.size(), at + 1));
      widths[at] = std::max(widths[at], std::min(widest, letters_of(row[at])));
    }
  std::string out;
  for (const auto& row : rows) {
    std::string line = " ";
    for (std::size_t at = 0; at < row.size(); ++at) {
      const std::size_t width = letters_of(row[at]);
      line += " " + row[at];
      if (at + 1 < row.size())
        line += std::string(widths[at] - std::min(widths[at], width) + 1, ' ');
    }
    out += printable(line.substr(0, line.find_last_not_of(' ') + 1)) + "\n";
  }
  return out;
}

// A cell on one line of its own.
std::string quoted(const std::string& cell) {
  constexpr std::size_t longest = 60;
  std::string out = session::first_characters(cell, longest);
  if (out.size() < cell.size()) out += "…";
  for (char& c : out)
    if (c == '\n' || c == '\r' || c == '\t') c = ' ';
  return say(Say::bring_cell, {out});
}

class Page {
public:
  Page(const Bringing& what, const notes::Table& table, const notes::Understood& notes,
       const std::vector<Fated>& recipes, const std::vector<Card>& known)
      : what_(what), table_(table), notes_(notes), recipes_(recipes) {
    for (const auto* cards : {&known, &notes.cards})
      for (const Card& card : *cards) cards_.emplace(card.id, &card);
  }

  std::string made() const {
    std::string out = head() + "\n" + say(Say::bring_columns) + "\n" + columns();
    if (takes_a_binder()) out += say(Say::bring_binder_taken) + "\n";
    if (!recipes_.empty()) out += "\n" + say(Say::bring_recipes) + "\n" + recipes();
    if (!notes_.cards.empty()) out += "\n" + say(Say::bring_cards) + "\n" + cards();
    if (!notes_.unread.empty()) out += "\n" + say(Say::bring_unread) + "\n" + unread();
    if (!notes_.passed.empty()) out += "\n" + passed();
    return out + "\n";
  }

private:
  const Card* find(const std::string& id) const {
    const auto at = cards_.find(id);
    return at == cards_.end() ? nullptr : at->second;
  }

  std::string head() const {
    return printable(
               say(Say::bring_head,
                   {what_.name, words::counted(table_.rows.size(), Say::count_row, Say::count_rows),
                    words::counted(table_.columns, Say::count_column, Say::count_columns),
                    say(encodings[table_.encoding]), say(separators[table_.separator])}) +
               (has_comma() ? say(Say::bring_decimal_comma) : "")) +
           "\n";
  }

  bool takes_a_binder() const {
    const auto& all = notes_.layout.columns;
    return what_.how.binder.empty() &&
           std::any_of(all.begin(), all.end(),
                       [](const Column& column) { return column.role == Role::binder; });
  }

  bool has_comma() const {
    const auto& all = notes_.layout.columns;
    return std::any_of(all.begin(), all.end(), [](const Column& column) {
      return column.decimal == notes::Decimal::comma;
    });
  }

  std::string role(const Column& column) const {
    if (column.role == Role::amount && column.of)
      return say(Say::bring_amount_of, {notes::column_name(*column.of)});
    if (const Card* card = find(column.card)) return say(Say::bring_amount_of, {card->name});
    return std::string(notes::name_of(column.role));
  }

  std::string columns() const {
    Rows rows;
    for (std::size_t at = 0; at < notes_.layout.columns.size(); ++at) {
      const Column& column = notes_.layout.columns[at];
      const std::string heading = column.heading.empty() ? "" : quoted(column.heading);
      rows.push_back({notes::column_name(at), heading, role(column), words::message(column.why)});
    }
    return in_columns(rows);
  }

  std::string said(const Said& one) const {
    const Card *card = find(one.of), *tool = find(one.with);
    const std::string name = card ? card->name : one.of, with = tool ? tool->name : one.with;
    const std::string many = paint::count_words(one.amount);
    constexpr int as_read = 3; // decimals: nothing of what was noted is rounded away
    const words::Number g(one.amount, paint::decimals_as_read(one.amount, as_read));
    switch (one.in) {
    case SaidIn::parts:
      return say(one.amount == 1 ? Say::bring_part : Say::bring_parts, {name, many});
    case SaidIn::g: return say(Say::bring_g, {name, g});
    case SaidIn::drops:
      return say(one.amount == 1 ? Say::bring_drop : Say::bring_drops, {name, many});
    case SaidIn::spoons: return say(Say::bring_spoons, {name, many, with});
    }
    return name;
  }

  std::string said(const std::vector<Said>& all) const {
    std::string out;
    for (const Said& one : all) out += (out.empty() ? "" : ", ") + said(one);
    return out;
  }

  static std::string row_of(const Fated& one) {
    return say(Say::bring_row, {std::to_string(one.recipe->row)});
  }

  std::string recipes() const {
    Rows rows;
    for (const Fated& one : recipes_) {
      const auto& recipe = std::get<session::RecipeCard>(one.recipe->card.facts);
      if (one.fate == Fate::left) {
        rows.push_back({row_of(one), say(fates[one.fate]), one.recipe->card.name});
        continue;
      }
      std::string text = said(recipe.pigments);
      if (!recipe.liquids.empty()) text += "; " + said(recipe.liquids);
      if (!one.recipe->card.made_on.empty()) text += "; " + one.recipe->card.made_on;
      if (!recipe.note.empty()) text += "; " + quoted(recipe.note);
      rows.push_back({row_of(one), say(fates[one.fate]), one.recipe->card.name, text});
    }
    return in_columns(rows);
  }

  std::string cards() const {
    Rows rows;
    for (const Card& card : notes_.cards) {
      const double mL = volume_of(card).mL;
      rows.push_back({card.name, mL > 0 ? say(Say::bring_mL, {words::Number(mL, 1)}) : ""});
    }
    return in_columns(rows);
  }

  std::string unread() const {
    Rows rows;
    for (const notes::Unread& one : notes_.unread)
      rows.push_back({notes::cell_name(one.column, one.row), quoted(one.text),
                      words::message(one.why),
                      say(one.lost ? Say::bring_no_recipe : Say::bring_in_note)});
    return in_columns(rows);
  }

  std::string passed() const {
    std::string rows;
    for (const std::size_t row : notes_.passed)
      rows += (rows.empty() ? "" : ", ") + std::to_string(row);
    return say(Say::bring_passed, {rows}) + "\n";
  }

  const Bringing& what_;
  const notes::Table& table_;
  const notes::Understood& notes_;
  const std::vector<Fated>& recipes_;
  std::map<std::string, const Card*> cards_; // by id
};

}

std::string notes_shown(const Bringing& what, const notes::Table& table,
                        const notes::Understood& notes, const std::vector<Fated>& recipes,
                        const std::vector<Card>& known) {
  return Page(what, table, notes, recipes, known).made();
}

}
