#include "bench/book_index.hpp"

#include "bench/bench.hpp"
#include "bench/pan_times.hpp"
#include "bench/record.hpp"
#include "session/date.hpp"
#include "words/moments_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace bench {

namespace {

using session::Ref;

std::string small(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return text;
}

struct Told { // one line of the batch that matters here
  std::int64_t at = 0;
  Ref ref;
  session::Event event;
  bool operator<(const Told& other) const {
    return std::tie(at, ref) < std::tie(other.at, other.ref);
  }
};

bool matters(const session::Event& e) {
  using namespace session;
  return std::holds_alternative<Opened>(e) || std::holds_alternative<Verdict>(e) ||
         std::holds_alternative<Poured>(e) || std::holds_alternative<Moved>(e) ||
         std::holds_alternative<Gathered>(e) || std::holds_alternative<Closed>(e) ||
         std::holds_alternative<Withdrawn>(e) || std::holds_alternative<Corrected>(e);
}

// From the last to the first, so that what was itself taken back takes nothing back.
std::set<Ref> taken_back(const std::vector<Told>& told) {
  std::set<Ref> gone;
  for (auto t = told.rbegin(); t != told.rend(); ++t)
    if (const auto* w = std::get_if<session::Withdrawn>(&t->event); w && !gone.count(t->ref))
      gone.insert(w->line);
  return gone;
}

void say_instead(Told& line, const session::Corrected& c, std::int64_t own_at) {
  std::visit(
      [&](const auto& said) {
        using Said = std::decay_t<decltype(said)>;
        if constexpr (!std::is_same_v<Said, std::monostate>)
          if (std::holds_alternative<Said>(line.event)) line.event = said;
      },
      *c.says);
  if (c.by_ms) line.at = own_at + *c.by_ms;
}

std::vector<Told> standing(std::vector<Told> told) {
  std::sort(told.begin(), told.end());
  const std::set<Ref> gone = taken_back(told);
  std::erase_if(told, [&](const Told& t) { return gone.count(t.ref) > 0; });
  const std::vector<Told> own = told; // by_ms counts from the moment the line itself bears
  for (const Told& t : own)
    if (const auto* c = std::get_if<session::Corrected>(&t.event))
      for (std::size_t i = 0; i < own.size(); ++i)
        if (own[i].ref == c->line) say_instead(told[i], *c, own[i].at);
  std::sort(told.begin(), told.end());
  return told;
}

struct Read { // into the entry, line after line
  BookEntry& entry;
  const Told& told;
  void operator()(const session::Opened& o) {
    if (entry.opened_at == 0) entry.opened_at = told.at;
    entry.name = o.name;
    entry.again_of = o.again_of;
  }
  void operator()(const session::Verdict& v) { entry.verdicts.push_back({told.ref, told.at, v}); }
  void operator()(const session::Poured&) {
    entry.poured_at = told.at;
    entry.has_left_slab = true;
  }
  void operator()(const session::Moved& m) {
    if (m.from == session::Place::slab) entry.has_left_slab = true;
  }
  void operator()(const session::Gathered&) { entry.has_left_slab = true; }
  void operator()(const session::Closed&) { entry.has_left_slab = true; }
  template <class Other>
  void operator()(const Other&) {}
};

std::string month_of(std::string_view date) { // 2026-11-26
  const std::string names = words::say(words::MomentsSay::month_names);
  const int month = (date[5] - '0') * 10 + (date[6] - '0');
  std::size_t from = 0;
  for (int i = 1; i < month; ++i) from = names.find(' ', from) + 1;
  return names.substr(from, names.find(' ', from) - from);
}

std::string became_words(session::Became became) {
  using Say = words::SessionSay;
  constexpr std::array ids{Say::became_good,       Say::became_full,   Say::became_sunken,
                           Say::became_cracked,    Say::became_sticky, Say::became_rubs_off,
                           Say::became_wont_rewet, Say::became_mould};
  return words::say(ids[static_cast<std::size_t>(became)]);
}

std::string searched_in(const BookEntry& entry, const std::string& pigments, const Now& now) {
  std::string text = entry.name + "\n" + pigments;
  for (const session::Judged& judged : entry.verdicts)
    text += "\n" + became_words(judged.verdict.as);
  const std::int64_t day = session::day_of(entry.opened_at, now.utc_offset_min);
  const std::string date = session::date_of(std::max<std::int64_t>(0, day));
  const std::string of_month = std::to_string((date[8] - '0') * 10 + (date[9] - '0'));
  text += "\n" + date + "\n" + of_month + " " + month_of(date) + " " + date.substr(0, 4);
  return small(text);
}

bool poured_lately(const BookEntry& entry, const Now& now) {
  return entry.poured_at > 0 && now.wall_ms - entry.poured_at < asks_lapse_ms;
}

std::optional<BookEntry> entry_of(const Bench& bench, const std::string& batch, const Now& now) {
  std::vector<Told> told;
  std::set<std::string> known;
  std::string pigments;
  for (const session::Log* log : logs_about(bench, batch))
    for (const session::Line& line : log->lines) {
      if (line.batch != batch) continue;
      if (matters(line.event)) told.push_back({line.at, {log->session, line.n}, line.event});
      const auto* laid = std::get_if<session::LaidOut>(&line.event);
      if (laid && laid->card->is_a == session::CardKind::pigment &&
          known.insert(laid->card->id).second)
        pigments += laid->card->name + "\n" + laid->card->index_name + "\n";
    }
  BookEntry entry;
  bool opened = false;
  for (const Told& line : standing(std::move(told))) {
    opened |= std::holds_alternative<session::Opened>(line.event);
    std::visit(Read{entry, line}, line.event);
  }
  if (!opened) return std::nullopt;
  entry.text = searched_in(entry, pigments, now);
  const bool recent = poured_lately(entry, now);
  const auto folded =
      recent ? session::fold(logs_about(bench, batch), batch, std::nullopt, bench.lessons)
             : std::nullopt;
  if (folded) entry.layer_at = next_layer_at(*folded);
  return entry;
}

void read_anew(Bench& bench, const std::string& batch, const Now& now) {
  bench.index.poured.erase(batch);
  auto entry = entry_of(bench, batch, now);
  if (!entry) {
    bench.index.of.erase(batch);
    return;
  }
  if (poured_lately(*entry, now)) bench.index.poured.insert(batch);
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
  bench.index.of.reserve(bench.batches.size());
  for (const std::string& batch : bench.batches) read_anew(bench, batch, now);
  bench.learning.stale = {bench.batches.begin(), bench.batches.end()};
  find_batches(bench);
}

void refresh_index(Bench& bench, const Now& now) {
  if (bench.index.stale.empty()) return;
  for (const std::string& batch : std::exchange(bench.index.stale, {})) {
    read_anew(bench, batch, now);
    bench.learning.stale.insert(batch);
  }
  find_batches(bench);
}

std::vector<std::string> batches_found(const Bench& bench, const std::string& text) {
  const std::string wanted = small(text);
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
