#include "notes/recipes.hpp"

#include "notes/drafts.hpp"
#include "session/bytes.hpp"
#include "session/check_value.hpp"
#include "words/notes_says.hpp"

#include <algorithm>
#include <iterator>

namespace notes {

namespace {

using session::Said;
using Say = words::NotesSay;

constexpr std::size_t longest_note = 2000; // characters
constexpr std::size_t most_liquids = 20;   // of one recipe

// FNV-1a, 64 bits, of which 48 name a card: of ten thousand recipes two are taken for one with a
// chance of 2 in ten million.
std::string id_of(std::string_view cells) {
  std::uint64_t hash = 0xcbf29ce484222325;
  for (const char c : cells) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3;
  return session::to_hex(static_cast<std::uint32_t>(hash >> 32)) +
         session::to_hex(static_cast<std::uint32_t>(hash)).substr(4);
}

bool is_in_parts(const Entry& entry) {
  return entry.amount && (entry.amount->unit == Unit::parts || entry.amount->unit == Unit::none);
}

// Settles what a draft's amounts are in, and makes a recipe of it.
class Settling {
public:
  Settling(Draft draft, Measures& measures, const AskedRecipes& how)
      : draft_(std::move(draft)), measures_(measures), how_(how) {}

  Brought made() {
    const bool lost = draft_.lost();
    const std::vector<Unread> read = draft_.unread;
    settle_pigments();
    for (const Entry& liquid : draft_.liquids) settle_liquid(liquid);
    if (lost) draft_.unread = read; // what else is wrong may only follow from that
    recipe_.from = session::RecipeFrom::old_notes;
    recipe_.mine = how_.mine;
    Brought out;
    out.row = draft_.row;
    out.card.id = known_or_new_id();
    out.card.made_on = draft_.made_on;
    out.named = !draft_.name.empty();
    name(out.card);
    shorten_note();
    recipe_.note = draft_.note;
    out.card.facts = recipe_;
    out.whole = !recipe_.pigments.empty() && !draft_.lost();
    return out;
  }

  std::vector<Unread>& unread() { return draft_.unread; }

private:
  std::string known_or_new_id() const {
    const std::string id = id_of(draft_.cells), once = id_of(draft_.raw);
    return !measures_.is_known(id) && measures_.is_known(once) ? once : id;
  }

  void settle_pigments() {
    std::vector<Entry>& all = draft_.pigments;
    if (all.size() == 1 && !all[0].amount) all[0].amount = NotedAmount{1, {}, Unit::parts};
    in_parts_ = !all.empty() && std::all_of(all.begin(), all.end(), is_in_parts);
    if (in_parts_)
      for (const Cell& place : draft_.bare)
        draft_.misses(place, {Say::amount_as_parts, {column_name(place.column)}}, false);
    if (all.size() > how_.most_pigments)
      draft_.misses(all[how_.most_pigments].at,
                    {Say::pigments_too_many, {std::to_string(how_.most_pigments)}}, true);
    for (const Entry& one : all) {
      const auto said = said_of(one);
      if (said)
        recipe_.pigments.push_back(*said);
      else
        draft_.misses(one.at, said.error(), true);
    }
  }

  void settle_liquid(const Entry& one) {
    const bool full = recipe_.liquids.size() == most_liquids;
    const auto said =
        full ? words::failure(Say::liquids_too_many, {std::to_string(most_liquids)}) : said_of(one);
    if (said) return recipe_.liquids.push_back(*said);
    const bool of_amount = !full && !one.of.card.empty() && one.amount && one.amount_at;
    draft_.misses(of_amount ? *one.amount_at : one.at, said.error(), false);
    draft_.keep(one.heading, one.at.text);
    if (one.amount_at) draft_.keep(one.amount_heading, one.amount_at->text);
  }

  words::Result<Said> said_of(const Entry& one) {
    if (!one.amount) return words::failure(Say::amount_missing);
    if (one.of.card.empty()) return words::failure(Say::name_unknown, {one.at.text});
    if (is_in_parts(one) != in_parts_)
      return words::failure(one.amount->unit == Unit::none ? Say::amount_no_unit
                                                           : Say::amount_to_parts);
    return measures_.said(one.of, *one.amount);
  }

  // Its own, else that of its pigments.
  void name(session::Card& card) {
    std::string whole = draft_.name;
    if (whole.empty())
      for (const Said& said : recipe_.pigments)
        whole += (whole.empty() ? "" : ", ") + measures_.name_of(said.of);
    card.name = session::first_characters(whole, session::longest_text);
    if (card.name != whole) draft_.keep("", whole);
  }

  void shorten_note() {
    const std::string kept = session::first_characters(draft_.note, longest_note);
    if (kept == draft_.note) return;
    draft_.misses({draft_.row, 0, session::first_characters(draft_.note, 40) + "…"},
                  {Say::note_shortened, {std::to_string(longest_note)}}, false);
    draft_.note = kept;
  }

  Draft draft_;
  Measures& measures_;
  const AskedRecipes& how_;
  session::RecipeCard recipe_;
  bool in_parts_ = false;
};

bool holds_nothing(const Draft& draft) {
  return draft.pigments.empty() && draft.liquids.empty() && !draft.lost();
}

void take(Understood& out, std::vector<Unread>& unread) {
  const auto before = [](const Unread& a, const Unread& b) {
    return std::pair(a.row, a.column) < std::pair(b.row, b.column);
  };
  std::stable_sort(unread.begin(), unread.end(), before);
  out.unread.insert(out.unread.end(), unread.begin(), unread.end());
}

using Older = std::multimap<std::pair<std::string, std::string>, const session::Card*>;

// Recipes that were brought before, by name and date, and that no row makes any more.
Older older_of(const std::vector<Brought>& recipes, const std::vector<session::Card>& shelf) {
  std::set<std::string> made;
  for (const Brought& brought : recipes) made.insert(brought.card.id);
  Older out;
  for (const session::Card& card : shelf)
    if (const auto* recipe = std::get_if<session::RecipeCard>(&card.facts);
        recipe && recipe->from == session::RecipeFrom::old_notes && !made.count(card.id))
      out.emplace(std::pair(card.name, card.made_on), &card);
  return out;
}

// Of another day, and nothing else: its date was mended.
Older::iterator otherwise_dated(const session::Card& card, Older& older) {
  const auto& recipe = std::get<session::RecipeCard>(card.facts);
  for (auto at = older.lower_bound({card.name, ""});
       at != older.end() && at->first.first == card.name; ++at) {
    const auto& before = std::get<session::RecipeCard>(at->second->facts);
    if (before.pigments == recipe.pigments && before.liquids == recipe.liquids) return at;
  }
  return older.end();
}

// Of several the one of the same pigments, else the first.
Older::iterator older_reading(const session::Card& card, Older& older) {
  const auto& pigments = std::get<session::RecipeCard>(card.facts).pigments;
  const auto [first, last] = older.equal_range({card.name, card.made_on});
  for (auto at = first; at != last; ++at)
    if (std::get<session::RecipeCard>(at->second->facts).pigments == pigments) return at;
  return first == last || card.made_on.empty() ? otherwise_dated(card, older) : first;
}

// One that was put away takes its place again.
void take_places(std::vector<Brought>& recipes, const std::vector<session::Card>& shelf) {
  Older older = older_of(recipes, shelf);
  std::set<std::string> there;
  for (const session::Card& card : shelf) there.insert(card.id);
  for (Brought& brought : recipes) {
    if (!brought.whole || !brought.named || there.count(brought.card.id)) continue;
    const auto at = older_reading(brought.card, older);
    if (at == older.end()) continue;
    auto& recipe = std::get<session::RecipeCard>(brought.card.facts);
    recipe.mine = recipe.mine || std::get<session::RecipeCard>(at->second->facts).mine;
    brought.older = at->second->id;
    older.erase(at);
  }
}

// New cards that a recipe which can be taken names.
std::vector<session::Card> needed(const std::vector<session::Card>& cards,
                                  const std::vector<Brought>& recipes) {
  std::set<std::string> named;
  for (const Brought& brought : recipes) {
    if (!brought.whole) continue;
    const auto& recipe = std::get<session::RecipeCard>(brought.card.facts);
    for (const auto* list : {&recipe.pigments, &recipe.liquids})
      for (const Said& said : *list) named.insert({said.of, said.with});
  }
  std::vector<session::Card> out;
  for (const session::Card& card : cards)
    if (named.count(card.id)) out.push_back(card);
  return out;
}

}

words::Result<Understood> understood(const Table& table, const std::vector<session::Card>& shelf,
                                     const std::set<std::string>& own, const Asked& asked,
                                     const AskedRecipes& how) {
  for (const auto& [column, role] : asked.columns)
    if (column >= table.columns)
      return words::failure(Say::column_not_there,
                            {column_name(column), column_name(table.columns - 1)});
  // Recipes, which may be thousands, are only known by their ids.
  std::vector<session::Card> materials;
  std::copy_if(shelf.begin(), shelf.end(), std::back_inserter(materials),
               [](const session::Card& card) { return card.kind() != session::CardKind::recipe; });
  const Names names(materials, own, how.away);
  Measures measures(materials, own, how);
  measures.know(shelf);
  Understood out;
  out.layout = layout_of(table, names, asked);
  std::map<std::string, std::size_t> rows; // by id
  for (Draft& draft : Rows(table, out.layout, names, measures, how).read()) {
    if (holds_nothing(draft)) {
      out.passed.push_back(draft.row);
      continue;
    }
    const Cell first{draft.row, 0, draft.name};
    if (draft.pigments.empty() && !draft.lost())
      draft.misses(first, {Say::row_no_pigment, {}}, true);
    Settling settling(std::move(draft), measures, how);
    Brought brought = settling.made();
    const auto [at, fresh] = rows.emplace(brought.card.id, brought.row);
    if (!fresh) {
      brought.whole = false;
      settling.unread().push_back({brought.row,
                                   0,
                                   brought.card.name,
                                   {Say::row_twice, {std::to_string(at->second)}},
                                   true});
    }
    take(out, settling.unread());
    out.recipes.push_back(std::move(brought));
  }
  take_places(out.recipes, shelf);
  out.cards = needed(measures.new_cards(), out.recipes);
  return out;
}

}
