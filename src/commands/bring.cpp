#include "commands/bring.hpp"

#include "bench/shelf.hpp"
#include "commands/alone.hpp"
#include "commands/clock.hpp"
#include "commands/show.hpp"
#include "studio/photos.hpp"
#include "words/calendar.hpp"
#include "words/commands_says.hpp"

#include <algorithm>
#include <ostream>

namespace commands {

namespace {

using session::Card;
using Say = words::CommandsSay;

// By its id or its name; the id is what it is read by from here on.
std::optional<words::Error> find_binder(const bench::Bench& bench, std::string& wanted) {
  if (wanted.empty()) return std::nullopt;
  std::string all;
  for (const Card& card : bench.shelf) {
    if (card.kind() != session::CardKind::binder) continue;
    all += (all.empty() ? "" : ", ") + card.id + " (" + card.name + ")";
    if (card.id != wanted && notes::key_of(card.name) != notes::key_of(wanted)) continue;
    wanted = card.id;
    return std::nullopt;
  }
  return words::Error{Say::bring_no_binder, {wanted, all}};
}

std::vector<Fated> fates_of(const notes::Understood& notes, const bench::Bench& bench) {
  std::map<std::string, const Card*> all;
  for (const auto* cards : {&bench.shelf, &bench.away})
    for (const Card& card : *cards) all.emplace(card.id, &card);
  std::vector<Fated> out;
  for (const notes::Brought& brought : notes.recipes) {
    const auto at = all.find(brought.card.id);
    const Card* known = at == all.end() ? nullptr : at->second;
    const Fate fate = !brought.older.empty() ? Fate::newer
                      : known         ? (*known == brought.card ? Fate::there : Fate::otherwise)
                      : brought.whole ? Fate::fresh
                                      : Fate::left;
    out.push_back({&brought, fate});
  }
  return out;
}

std::size_t count(const std::vector<Fated>& recipes, Fate fate) {
  return static_cast<std::size_t>(std::count_if(
      recipes.begin(), recipes.end(), [&](const Fated& one) { return one.fate == fate; }));
}

bool is_taken(const Fated& one) { return one.fate == Fate::fresh || one.fate == Fate::newer; }

// The cards that they need first.
std::vector<session::Event> edits_of(const notes::Understood& notes,
                                     const std::vector<Fated>& recipes) {
  std::vector<session::Event> out;
  for (const Card& card : notes.cards) out.push_back(session::LaidOut{card});
  for (const Fated& one : recipes)
    if (one.fate == Fate::newer) out.push_back(session::PutAway{one.recipe->older});
  for (const Fated& one : recipes)
    if (is_taken(one)) out.push_back(session::LaidOut{one.recipe->card});
  return out;
}

std::string recipes_counted(std::size_t many) {
  return words::counted(many, Say::count_recipe, Say::count_recipes);
}

// What was done, or would be.
std::string summary(const Bringing& what, const std::vector<Fated>& recipes) {
  const std::size_t fresh = count(recipes, Fate::fresh), newer = count(recipes, Fate::newer);
  const std::size_t there = count(recipes, Fate::there) + count(recipes, Fate::otherwise);
  std::string out;
  if (fresh == 0 && newer == 0)
    out = words::say(there > 0 ? Say::bring_nothing_new : Say::bring_nothing);
  else if (fresh > 0)
    out = words::say(what.take ? Say::bring_taken : Say::bring_would_take,
                     {recipes_counted(fresh), what.home.string()});
  if (newer > 0)
    out += (out.empty() ? "" : " ") +
           words::say(what.take ? Say::bring_newer_taken : Say::bring_newer_would_take,
                      {recipes_counted(newer)});
  if (fresh + newer > 0 && there > 0)
    out += " " + words::say(Say::bring_there, {recipes_counted(there)});
  if (const std::size_t left = count(recipes, Fate::left))
    out += " " + words::say(Say::bring_left, {recipes_counted(left)});
  return printable(out) + "\n";
}

std::optional<words::Error> save(const Bringing& what, std::vector<session::Event> edits,
                                 std::vector<session::Log> logs, const bench::Now& now) {
  const studio::Bell bell;
  const auto disk = studio::open(what.home, what.fault, [bell] { bell.ring(); });
  return studio::keep_lines(*disk, bell, session_of(std::move(edits), std::move(logs), now));
}

}

words::Result<int> bring(Bringing what, std::vector<session::Log> logs, std::ostream& out,
                         std::ostream& err) {
  const auto text = notes::text_of(what.bytes);
  if (!text) return tl::make_unexpected(text.error());
  const auto table = notes::table_of(*text, what.separator);
  if (!table) return tl::make_unexpected(table.error());

  bench::Bench bench;
  bench.logs = std::move(logs);
  bench::restock(bench);
  const bench::Now now = real_now();
  if (auto fault = find_binder(bench, what.how.binder)) return tl::make_unexpected(*fault);
  what.how.today = words::day_number(now.wall_ms, now.utc_offset_min);
  what.how.away = bench.away;
  const auto notes = notes::understood(*table, bench.shelf, bench.own, what.asked, what.how);
  if (!notes) return tl::make_unexpected(notes.error());

  const std::vector<Fated> recipes = fates_of(*notes, bench);
  std::vector<Card> known = bench.shelf;
  known.insert(known.end(), bench.away.begin(), bench.away.end());
  out << notes_shown(what, *table, *notes, recipes, known);
  if (what.take && std::any_of(recipes.begin(), recipes.end(), is_taken))
    if (const auto failure = save(what, edits_of(*notes, recipes), std::move(bench.logs), now)) {
      err << printable(words::message(*failure)) << '\n';
      return 1;
    }
  out << summary(what, recipes);
  return count(recipes, Fate::left) == recipes.size() ? 1 : 0;
}

}
