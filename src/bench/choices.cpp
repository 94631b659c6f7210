#include "bench/choices.hpp"

#include "bench/act.hpp"
#include "bench/stock.hpp"
#include "paint/catalogue.hpp"
#include "words/bench_says.hpp"
#include "words/calendar.hpp"

#include <algorithm>
#include <utility>

namespace bench {

std::vector<const session::Card*> shelf_of(const Bench& bench, session::CardKind kind) {
  std::vector<const session::Card*> out;
  for (const session::Card& card : bench.shelf)
    if (card.kind() == kind) out.push_back(&card);
  return out;
}

const session::Card* shelf_card(const Bench& bench, const std::string& id) {
  const auto place = bench.place_on_shelf.find(id);
  if (place != bench.place_on_shelf.end() && place->second < bench.shelf.size() &&
      bench.shelf[place->second].id == id)
    return &bench.shelf[place->second];
  for (const session::Card& card : bench.shelf)
    if (card.id == id) return &card;
  return nullptr;
}

namespace {

// A jar that somebody filled and that is not known to be empty.
bool own_jar(const Bench& bench, const session::Card& card) {
  const auto left = stock_of(bench, card);
  const bool own = bench.own.count(card.id) > 0 || bench.stock.count(card.id) > 0;
  return own && (!left || left->g > 0);
}

}

const session::Card* card_anywhere(const Bench& bench, const std::string& id) {
  for (const auto* cards : {&bench.shelf, &bench.away})
    for (const session::Card& card : *cards)
      if (card.id == id) return &card;
  return nullptr;
}

std::vector<const session::Card*> binders_offered(const Bench& bench) {
  std::vector<const session::Card*> out = shelf_of(bench, session::CardKind::binder);
  // A jar counts as used until the end of the day on which it was filled.
  const auto worth = [&](const session::Card* card) {
    const std::int64_t filled = words::days_of(card->made_on).value_or(-1) + 1;
    return std::pair(own_jar(bench, *card),
                     std::max(last_used(bench, card->id), filled * session::a_day_ms));
  };
  std::stable_sort(out.begin(), out.end(),
                   [&](const auto* a, const auto* b) { return worth(a) > worth(b); });
  return out;
}

void offer_binder(Bench& bench) {
  const bool meant = !bench.plan.blend.empty() || bench.plan.binder_chosen;
  const bool there = shelf_card(bench, bench.plan.binder); // it may have been put away
  if (meant && (there || bench.plan.binder_chosen)) return;
  const auto binders = binders_offered(bench);
  if (!binders.empty()) bench.plan.binder = binders.front()->id;
}

std::vector<const session::Card*> pigments_found(const Bench& bench) {
  std::vector<const session::Card*> out = shelf_of(bench, session::CardKind::pigment);
  std::erase_if(out, [&](const session::Card* card) {
    return !paint::goes_by(card->id, card->name, pigment_of(*card).index_name, bench.plan.search);
  });
  const auto mine = [&](const session::Card* card) { return is_mine(bench, *card); };
  const auto others = std::stable_partition(out.begin(), out.end(), mine);
  std::stable_sort(out.begin(), others, [&](const auto* a, const auto* b) {
    return last_used(bench, a->id) > last_used(bench, b->id);
  });
  if (bench.plan.search.empty() && !bench.plan.all_cards && others != out.begin())
    out.erase(others, out.end());
  return out;
}

Finding finds(const Bench& bench) {
  const PlanState& plan = bench.plan;
  return plan.blend.empty() && plan.finding == Finding::nothing ? Finding::pigment : plan.finding;
}

void clear_plan(PlanState& plan) {
  PlanState next;
  next.binder = plan.binder;
  next.pan = plan.pan;
  next.celsius = plan.celsius;
  next.humidity = plan.humidity;
  next.room_guessed = plan.room_guessed;
  next.room_read_at = plan.room_read_at;
  plan = next;
}

int pages_for(std::size_t items, int a_page) {
  const int count = static_cast<int>(items);
  return std::max(1, (count + a_page - 1) / a_page);
}

bool room_is_guess(const PlanState& plan, const Now& now) {
  constexpr std::int64_t holds_ms = session::a_day_ms / 2;
  return plan.room_guessed || now.wall_ms - plan.room_read_at > holds_ms;
}

void recall_room(Bench& bench, const Now& now) {
  PlanState& plan = bench.plan;
  for (const session::Log& log : bench.logs)
    for (const session::Line& line : log.lines) {
      const auto* room = std::get_if<session::RoomSet>(&line.event);
      const bool newer = line.at > plan.room_read_at && line.at <= now.wall_ms;
      if (!room || room->guessed || !newer) continue;
      plan.celsius = room->celsius;
      plan.humidity = room->humidity;
      plan.room_guessed = false;
      plan.room_read_at = line.at;
    }
}

std::optional<words::Sentence> missing_for_begin(const Bench& bench) {
  if (!bench.loaded) return words::BenchSay::plan_still_reading;
  if (bench.plan.blend.empty()) return words::BenchSay::plan_choose_pigment;
  if (bench.plan.binder_chosen && !shelf_card(bench, bench.plan.binder))
    return words::BenchSay::plan_choose_binder;
  if (bench.plan.name.empty()) return words::BenchSay::plan_needs_name;
  return std::nullopt;
}

std::string name_of_batch(const Bench& bench, const std::string& id) {
  const auto entry = bench.index.of.find(id);
  return entry == bench.index.of.end() ? "" : entry->second.name;
}

std::string made_again(const PlanState& plan) {
  std::vector<std::string> cards;
  for (const BlendPart& part : plan.blend) cards.push_back(part.card);
  std::sort(cards.begin(), cards.end());
  return cards == plan.again_cards ? plan.again_of : "";
}

std::string name_of_blend(const Bench& bench) {
  std::string name;
  for (const BlendPart& part : bench.plan.blend)
    if (const session::Card* card = shelf_card(bench, part.card))
      name += (name.empty() ? "" : ", ") + card->name;
  return name;
}

void say_left_out(Bench& bench, const std::vector<std::string>& names, const Now& now) {
  std::string all;
  for (const std::string& name : names) all += (all.empty() ? "" : ", ") + name;
  if (!all.empty())
    say_error(bench, {words::BenchSay::not_on_shelf, {all, std::to_string(most_pigments)}}, now);
}

std::string proposed_name(const Bench& bench, std::string_view of) {
  std::set<std::string> names;
  for (const auto& [id, entry] : bench.index.of) names.insert(entry.name);
  std::string name(of);
  if (!names.count(name) || name.empty()) return name;
  // Made again, "Weir blue, 2" is another Weir blue.
  const std::size_t counted = name.rfind(", ");
  if (counted != std::string::npos && counted + 2 < name.size() &&
      name.find_first_not_of("0123456789", counted + 2) == std::string::npos &&
      names.count(name.substr(0, counted)))
    name.resize(counted);
  for (int n = 2;; ++n)
    if (const std::string next = name + ", " + std::to_string(n); !names.count(next)) return next;
}

}
