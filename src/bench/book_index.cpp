#include "bench/book_index.hpp"

#include "bench/bench.hpp"
#include "bench/pan_times.hpp"
#include "bench/record.hpp"
#include "session/amounts.hpp"
#include "session/in_words.hpp"
#include "words/calendar.hpp"
#include "words/letter_case.hpp"
#include "words/lists.hpp"
#include "words/moments.hpp"
#include "words/say.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace bench {

namespace {

struct Read { // into the entry, line after line
  BookEntry& entry;
  const session::Resolved* line = nullptr;
  std::string pigments;
  std::set<std::string> known; // of them
  bool opened = false;
  const session::Offsets& offsets;
  session::GramsAdded grams_added;

  void operator()(const session::Opened& o) {
    opened = true;
    if (entry.opened_at == 0) {
      entry.opened_at = line->at;
      entry.offset_min = session::offset_of(offsets, line->ref);
    }
    entry.name = o.name;
    entry.again_of = o.again_of;
  }
  void operator()(const session::LaidOut& laid) {
    if (laid.card->kind() == session::CardKind::pigment && known.insert(laid.card->id).second)
      pigments += laid.card->name + "\n" + pigment_of(*laid.card).index_name + "\n";
  }
  void operator()(const session::Added& a) {
    if (!a.with.empty()) entry.tools[{a.unit, a.of}] = {line->at, line->ref, a.with};
    entry.used_ug[a.of][session::use_minute(line->at)] += micrograms(a);
  }
  void operator()(const session::Verdict& v) { entry.verdicts.push_back({line->ref, line->at, v}); }
  void operator()(const session::Poured&) {
    entry.poured_at = line->at;
    entry.has_left_slab = true;
  }
  void operator()(const session::Moved& m) {
    if (m.from == session::Place::slab) entry.has_left_slab = true;
  }
  void operator()(const session::Gathered&) { entry.has_left_slab = true; }
  void operator()(const session::Closed&) { entry.has_left_slab = true; }
  void operator()(const session::Discarded&) { entry.discarded = true; }
  template <words::one_of<session::Began, session::LaidOut, session::PutAway, session::Bought,
                          session::StockWeighed, session::Planned, session::RoomSet,
                          session::CautionsSeen, session::Added, session::Felt, session::StageBegan,
                          session::GoesOn, session::Dot, session::Trouble, session::BottleWeighed,
                          session::CountLost, session::Lost, session::Weighed, session::AsBefore,
                          session::Found, session::PanWeighed, session::Noted, session::SetAside,
                          session::Withdrawn, session::Corrected, session::Photo, session::Gone,
                          session::ClockJumped, session::Left, session::Unknown>
                Other>
  void operator()(const Other&) {}

  std::int64_t micrograms(const session::Added& a) {
    static const session::Card not_laid_out;
    const auto& g = grams_added(a, line->card ? *line->card : not_laid_out, line->tool.get());
    return g ? std::llround(g->value * 1e6) : 0;
  }
};

std::string searched_in(const BookEntry& entry, const std::string& pigments, const Now& now) {
  std::string text = entry.name + "\n" + pigments;
  for (const session::Judged& judged : entry.verdicts)
    text += "\n" + session::became_words(judged.verdict.as);
  const int offset_min = entry.offset_min.value_or(now.utc_offset_min);
  text += "\n" + words::date_of(words::day_of(entry.opened_at, offset_min));
  text += "\n" + words::date(entry.opened_at, offset_min);
  return words::searchable(text);
}

bool poured_lately(const BookEntry& entry, const Now& now) {
  return entry.poured_at > 0 && now.wall_ms - entry.poured_at < asks_lapse_ms;
}

std::optional<BookEntry> entry_of(Bench& bench, const std::string& batch, const Now& now) {
  BookEntry entry;
  const session::Resolution resolved = session::resolve(logs_about(bench, batch), batch);
  Read read{entry, nullptr, {}, {}, false, bench.offsets, {}};
  for (const session::Resolved& line : resolved.lines) {
    read.line = &line;
    if (!line.withdrawn) std::visit(read, *line.event);
  }
  if (!read.opened) return std::nullopt;
  entry.text = searched_in(entry, read.pigments, now);
  const Folded folded = poured_lately(entry, now) ? fold_of(bench, batch) : nullptr;
  if (folded) entry.layer_at = next_layer_at(*folded);
  return entry;
}

std::int64_t sum_of(const session::Uses& uses) {
  std::int64_t ug = 0;
  for (const auto& [minute, one] : uses) ug += one;
  return ug;
}

// Minutes in which nothing is used any more are forgotten: an empty one is no use.
void count_uses(session::Uses& all, const session::Uses& uses, int sign) {
  for (const auto& [minute, ug] : uses)
    if ((all[minute] += sign * ug) == 0) all.erase(minute);
}

void count_out(BookIndex& index, const std::string& batch, const BookEntry& entry) {
  for (const auto& [measured, use] : entry.tools) index.tools[measured].erase(use);
  for (const auto& [card, uses] : entry.used_ug) {
    count_uses(index.used_ug[card], uses, -1);
    index.took_ug[card].erase({entry.opened_at, batch});
  }
}

void count_in(BookIndex& index, const std::string& batch, const BookEntry& entry) {
  for (const auto& [measured, use] : entry.tools) index.tools[measured].insert(use);
  for (const auto& [card, uses] : entry.used_ug) {
    count_uses(index.used_ug[card], uses, 1);
    if (const std::int64_t ug = sum_of(uses); ug > 0)
      index.took_ug[card][{entry.opened_at, batch}] = ug;
  }
}

bool stands_in(const std::vector<std::string>& list, const std::string& batch) {
  return std::find(list.rbegin(), list.rend(), batch) != list.rend(); // a late one mostly
}

// One that was discarded stands apart, and one whose beginning was taken back nowhere.
void list_batches(Bench& bench) {
  if (!std::exchange(bench.index.lists_stale, false)) return;
  bench.batches = session::batch_ids(session::all_of(bench.logs));
  bench.discarded.clear();
  std::erase_if(bench.batches, [&](const std::string& batch) {
    const auto entry = bench.index.of.find(batch);
    const bool discarded = entry != bench.index.of.end() && entry->second.discarded;
    if (discarded) bench.discarded.push_back(batch);
    return discarded || entry == bench.index.of.end();
  });
}

void read_anew(Bench& bench, const std::string& batch, const Now& now) {
  bench.index.poured.erase(batch);
  if (const auto before = bench.index.of.find(batch); before != bench.index.of.end()) {
    count_out(bench.index, batch, before->second);
    bench.index.of.erase(before);
  }
  auto entry = entry_of(bench, batch, now);
  const bool listed = entry && !entry->discarded;
  bench.index.lists_stale = bench.index.lists_stale || listed != stands_in(bench.batches, batch);
  if (!entry) return;
  count_in(bench.index, batch, *entry);
  if (listed && poured_lately(*entry, now)) bench.index.poured.insert(batch);
  bench.index.of[batch] = *std::move(entry);
}

bool bears_words(const std::string& text, const std::string& words) {
  for (std::size_t from = 0; from < words.size();) {
    const std::size_t to = std::min(words.find(' ', from), words.size());
    if (text.find(words.substr(from, to - from)) == std::string::npos) return false;
    from = to + 1;
  }
  return true;
}

template <class Bears>
std::vector<std::string> found_by(const Bench& bench, Bears bears) {
  std::vector<std::string> out;
  for (auto id = bench.batches.rbegin(); id != bench.batches.rend(); ++id) {
    const auto entry = bench.index.of.find(*id);
    if (entry != bench.index.of.end() && bears(entry->second.text)) out.push_back(*id);
  }
  return out;
}

}

void index_all(Bench& bench, const Now& now) {
  bench.index = {};
  bench.index.lists_stale = true;
  bench.index.of.reserve(bench.batches.size());
  for (const std::string& batch : bench.batches) read_anew(bench, batch, now);
  bench.learning.stale = {bench.batches.begin(), bench.batches.end()};
  list_batches(bench);
  find_batches(bench);
}

void refresh_index(Bench& bench, const Now& now) {
  if (bench.index.stale.empty() && !bench.index.lists_stale) return;
  for (const std::string& batch : std::exchange(bench.index.stale, {})) {
    read_anew(bench, batch, now);
    bench.learning.stale.insert(batch);
  }
  list_batches(bench);
  find_batches(bench);
}

bool is_discarded(const Bench& bench, const std::string& batch) {
  const auto entry = bench.index.of.find(batch);
  return entry != bench.index.of.end() && entry->second.discarded;
}

bool lists_discarded(const Bench& bench) {
  const auto* list = std::get_if<ListPage>(&bench.book.page);
  return list && list->discarded;
}

std::vector<std::string> batches_found(const Bench& bench, const std::string& text) {
  const std::string wanted = words::searchable(text);
  auto found = found_by(
      bench, [&](const std::string& has) { return has.find(wanted) != std::string::npos; });
  if (found.empty())
    found = found_by(bench, [&](const std::string& has) { return bears_words(has, wanted); });
  return found;
}

void find_batches(Bench& bench) {
  bench.book.found.clear();
  if (!bench.book.search.empty()) bench.book.found = batches_found(bench, bench.book.search);
}

}
