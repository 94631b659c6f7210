#include "bench/due.hpp"

#include "bench/here_alone.hpp"
#include "bench/stock.hpp"
#include "words/calendar.hpp"
#include "words/lists.hpp"

#include <algorithm>

namespace bench {

namespace {

constexpr std::int64_t ms_per_min = 60'000;

struct Named {
  std::string_view name;
};
constexpr words::EnumTable<Due::What, Named> names{{{Due::What::on_slab, {"slab"}},
                                                    {Due::What::in_jar, {"jar"}},
                                                    {Due::What::next_layer, {"layer"}},
                                                    {Due::What::weigh_pan, {"weigh"}},
                                                    {Due::What::verdict, {"verdict"}},
                                                    {Due::What::use_up, {"use_up"}},
                                                    {Due::What::runs_low, {"low"}},
                                                    {Due::What::making, {"making"}},
                                                    {Due::What::hand_on, {"hand_on"}}}};

bool lately(std::int64_t at, std::int64_t now_ms, std::int64_t lapse_ms) {
  return at > 0 && at <= now_ms && now_ms - at < lapse_ms;
}

// Poured paint waits until the last verdict that is asked for was given, however late that is.
bool waits_for_word(const BookEntry& entry, std::int64_t now_ms) {
  return !entry.discarded && entry.poured_at > 0 && entry.poured_at <= now_ms &&
         (lately(entry.poured_at, now_ms, asks_lapse_ms) || !is_settled(entry));
}

std::optional<Due> verdict_due(const std::string& batch, const BookEntry& entry,
                               std::int64_t now_ms) {
  std::optional<Due> out;
  if (!waits_for_word(entry, now_ms)) return out;
  for (const int day : asked_days) {
    const std::int64_t by_day = entry.poured_at + day * session::a_day_ms;
    const std::int64_t asked = std::max(by_day, entry.dry_at); // of wet paint nothing can be said
    const bool settled =
        std::any_of(entry.verdicts.begin(), entry.verdicts.end(),
                    [&](const session::Judged& judged) { return judged.at >= by_day; });
    if (now_ms >= asked && !settled) out = Due{batch, Due::What::verdict, day, asked};
  }
  return out;
}

bool takes_layer(const BookEntry& entry, std::int64_t now_ms) {
  return waits_for_word(entry, now_ms) && entry.layer_at && *entry.layer_at <= now_ms;
}

// From when it can be poured: where no pan has room, at once. A moment that lies ahead, by a clock
// that was set back, is taken for now.
std::optional<Due> left_over(const std::string& batch, const BookEntry& entry,
                             std::int64_t now_ms) {
  const bool poured = !entry.discarded && entry.poured_at > 0;
  if (!poured || entry.left_mL < least_left_mL || takes_layer(entry, now_ms)) return std::nullopt;
  if (entry.poured_at > now_ms) return Due{batch, Due::What::in_jar, 0, now_ms};
  return Due{batch, Due::What::in_jar, 0,
             std::max(entry.poured_at, entry.layer_at.value_or(entry.poured_at))};
}

std::optional<Due> to_weigh(const std::string& batch, const BookEntry& entry, std::int64_t now_ms) {
  const auto& again = entry.weigh_again;
  if (entry.discarded || !again || now_ms < again->at || now_ms >= again->until)
    return std::nullopt;
  return Due{batch, Due::What::weigh_pan, 0, again->at, again->pan};
}

// Likewise.
std::optional<Due> unpoured(const std::string& batch, const BookEntry& entry, std::int64_t now_ms) {
  const bool judged = !entry.verdicts.empty() && entry.verdicts.back().at >= entry.lies_from;
  if (entry.discarded || entry.lies == BookEntry::nowhere || judged) return std::nullopt;
  const std::int64_t since = std::min(entry.lies_since, now_ms);
  if (since <= 0) return std::nullopt;
  if (entry.lies == BookEntry::in_jar) return Due{batch, Due::What::in_jar, 0, since};
  return Due{batch, Due::What::on_slab, 0, since};
}

// What was made or bought so that it lasts until a day.
std::optional<Due> used_up_by(const session::Card& card,
                              const std::optional<session::Remaining>& left, std::int64_t now_ms,
                              int utc_offset_min) {
  const auto last = words::days_of(card.keep_until);
  if (!last || !session::is_liquid(card.kind()) || (left && !(left->g > 0))) return std::nullopt;
  if (*last - words::day_number(now_ms, utc_offset_min) > use_up_days) return std::nullopt;
  return Due{card.id, Due::What::use_up, 0,
             *last * session::a_day_ms - utc_offset_min * ms_per_min};
}

std::optional<Due> runs_low(const BookIndex& index, const session::Card& card,
                            const std::optional<session::Remaining>& left) {
  if (card.kind() != session::CardKind::pigment) return std::nullopt;
  const auto takes = low_mark(index, card.id);
  if (!left || !takes || left->g >= 2 * *takes) return std::nullopt;
  return Due{card.id, Due::What::runs_low, 0, 0};
}

bool is_newer_jar(const session::Card& a, const session::Card& than) {
  return std::tie(a.made_on, a.id) > std::tie(than.made_on, than.id);
}

// Of one name together: a jar that is nearly empty beside a full one is no want.
std::optional<Due> binder_runs_low(const BookIndex& index, const std::vector<session::Card>& shelf,
                                   const session::Stocks& stock, const session::Card& card) {
  if (card.kind() != session::CardKind::binder || !stock_of(index, stock, card))
    return std::nullopt;
  double left = 0, takes = 0;
  for (const session::Card& other : shelf) {
    if (other.kind() != session::CardKind::binder || other.name != card.name) continue;
    const auto there = stock_of(index, stock, other);
    if (there && is_newer_jar(other, card)) return std::nullopt;
    if (there) left += std::max(0.0, there->g);
    takes = std::max(takes, low_mark(index, other.id).value_or(0));
  }
  if (!(takes > 0) || left >= 2 * takes) return std::nullopt;
  return Due{card.id, Due::What::runs_low, 0, 0};
}

// From when on its step has had its time.
std::optional<Due> made_further(const std::string& of, const session::BinderMaking& making) {
  if (making.steps.empty()) return std::nullopt;
  return Due{of, Due::What::making, 0, session::ends_at(making)};
}

std::optional<Due> to_hand_on(std::optional<std::int64_t> here_alone_since, std::int64_t now_ms) {
  if (!here_alone_since || now_ms - *here_alone_since < hand_on_ms) return std::nullopt;
  return Due{"all", Due::What::hand_on, 0, *here_alone_since + hand_on_ms};
}

// What nobody has dealt with for so long does not stand before this week's work.
bool is_old(const Due& due, std::int64_t now_ms) {
  return !is_of_shelf(due) && due.what != Due::What::hand_on && now_ms - due.since >= asks_lapse_ms;
}

int place_of(const Due& due, std::int64_t now_ms) {
  if (is_old(due, now_ms)) return 3;
  if (due.what == Due::What::on_slab) return 0;
  return due.what == Due::What::runs_low ? 2 : 1;
}

}

bool is_settled(const BookEntry& entry) {
  const std::int64_t asked = entry.poured_at + asked_days.back() * session::a_day_ms;
  return std::any_of(entry.verdicts.begin(), entry.verdicts.end(),
                     [&](const session::Judged& judged) { return judged.at >= asked; });
}

std::string name_of(const Due& due) { return std::string(names[due.what].name) + " " + due.of; }

bool is_of_shelf(const Due& due) {
  return due.what == Due::What::use_up || due.what == Due::What::runs_low;
}

std::vector<Due> due(const BookIndex& index, const std::vector<session::Card>& shelf,
                     const session::Stocks& stock, std::int64_t now_ms, int utc_offset_min,
                     const session::Makings& makings,
                     std::optional<std::int64_t> here_alone_since) {
  std::vector<Due> out;
  const auto add = [&](const std::optional<Due>& one) {
    if (one) out.push_back(*one);
  };
  for (const std::string& batch : index.asked) {
    const BookEntry& entry = index.of.at(batch);
    add(unpoured(batch, entry, now_ms));
    add(verdict_due(batch, entry, now_ms));
    add(left_over(batch, entry, now_ms));
    add(to_weigh(batch, entry, now_ms));
    if (takes_layer(entry, now_ms)) add(Due{batch, Due::What::next_layer, 0, *entry.layer_at});
  }
  for (const session::Card& card : shelf) {
    const auto left = stock_of(index, stock, card);
    add(used_up_by(card, left, now_ms, utc_offset_min));
    add(runs_low(index, card, left));
    add(binder_runs_low(index, shelf, stock, card));
  }
  for (const auto& [of, making] : makings) add(made_further(of, making));
  add(to_hand_on(here_alone_since, now_ms));
  std::sort(out.begin(), out.end(), [&](const Due& a, const Due& b) {
    const int place_a = place_of(a, now_ms), place_b = place_of(b, now_ms);
    return std::tie(place_a, a.since, a.of, a.what) < std::tie(place_b, b.since, b.of, b.what);
  });
  return out;
}

std::vector<Due> due(const Bench& bench, const Now& now) {
  return due(bench.index, bench.shelf, bench.stock, now.wall_ms, now.utc_offset_min, bench.makings,
             here_alone_since(bench));
}

std::size_t due_now(const Bench& bench, const Now& now) {
  const auto all = due(bench, now);
  return static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [&](const Due& one) {
    const std::int64_t from = one.what == Due::What::on_slab ? one.since + at_slab_ms : one.since;
    return one.what != Due::What::runs_low && from <= now.wall_ms && !is_old(one, now.wall_ms);
  }));
}

int verdict_day_due(const Bench& bench, const std::string& batch, const Now& now) {
  const auto entry = bench.index.of.find(batch);
  if (entry == bench.index.of.end()) return 0;
  const auto verdict = verdict_due(batch, entry->second, now.wall_ms);
  return verdict ? verdict->day : 0;
}

bool layer_due(const Bench& bench, const std::string& batch, const Now& now) {
  const auto entry = bench.index.of.find(batch);
  return entry != bench.index.of.end() && takes_layer(entry->second, now.wall_ms);
}

}
