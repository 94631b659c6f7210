#include "session/folding.hpp"

#include "session/amounts.hpp"
#include "session/by_batch.hpp"
#include "session/covered.hpp"

#include <algorithm>
#include <limits>
#include <utility>

namespace session {

namespace {

constexpr std::size_t kept_each = 64; // lines, between two states to which a fold can go back

std::set<Ref> named_by_later(const Grown<Entry>& entries) {
  std::set<Ref> named;
  for (const Entry& e : entries)
    if (const auto* as = std::get_if<AsBefore>(&e.event)) named.insert(as->line);
  return named;
}

// A pan is known however late it was laid out.
void find_pans(BatchLines& lines) {
  for (std::size_t i = 0; i < lines.entries.size(); ++i)
    if (const auto* poured = std::get_if<Poured>(&lines.entries[i].event)) {
      const auto card = lines.laid_out.find(poured->in);
      lines.cards[i] = card == lines.laid_out.end() ? nullptr : card->second;
    }
}

FoldLines lines_to_fold(const Logs& logs, const std::string& batch) {
  FoldLines lines{lines_of(logs, batch), {}, {}};
  lines.amounts = amounts_of(lines.of);
  lines.named = named_by_later(lines.of.entries);
  find_pans(lines.of);
  return lines;
}

void teach(Batch& batch, const Lessons& lessons) {
  for (const Lesson& lesson : lessons)
    if (lesson.opened_at < batch.opened_at && lesson.batch != batch.id) {
      batch.places.bench = lesson.after;
      batch.places.loss = lesson.loss;
    }
}

std::optional<FoldState> start_of(const FoldLines& lines, const std::string& id,
                                  const Lessons& lessons) {
  const auto& entries = lines.of.entries;
  const auto opened = std::find_if(entries.begin(), entries.end(), [](const Entry& e) {
    return std::holds_alternative<Opened>(e.event) && !e.withdrawn;
  });
  if (opened == entries.end()) return std::nullopt;
  FoldState state;
  state.batch.id = id;
  state.batch.opened_at = opened->at;
  state.batch.newer = lines.of.newer;
  teach(state.batch, lessons);
  return state;
}

bool starts_alike(const Batch& a, const Batch& b) {
  return a.id == b.id && a.opened_at == b.opened_at && a.newer == b.newer &&
         a.places.bench == b.places.bench && a.places.loss == b.places.loss;
}

bool same_card(const SharedCard& a, const SharedCard& b) { return a == b || (a && b && *a == *b); }

bool same_line(const FoldLines& a, const FoldLines& b, std::size_t i) {
  const Entry &x = a.of.entries[i], &y = b.of.entries[i];
  return x.ref == y.ref && x.at == y.at && x.clock == y.clock && x.withdrawn == y.withdrawn &&
         x.corrected == y.corrected && x.confirmed == y.confirmed && x.event == y.event &&
         a.amounts[i] == b.amounts[i] && a.of.left_at[i] == b.of.left_at[i] &&
         same_card(a.of.cards[i], b.of.cards[i]) && a.named.count(x.ref) == b.named.count(y.ref);
}

}

// How many lines from the first on are what they were.
std::size_t Folding::alike(const FoldState& start, const FoldLines& lines) const {
  if (states_.empty() || !starts_alike(start.batch, states_.front().batch)) return 0;
  const std::size_t both = std::min(lines.of.entries.size(), lines_.of.entries.size());
  std::size_t same = 0;
  while (same < both && same_line(lines, lines_, same)) ++same;
  return first_taken_back(lines.of.entries, same);
}

void Folding::read(const Logs& logs, const std::string& batch, const Lessons& lessons) {
  FoldLines lines = lines_to_fold(logs, batch);
  auto start = start_of(lines, batch, lessons);
  if (!start) {
    *this = {};
    return;
  }
  const std::size_t same = alike(*start, lines);
  if (same == 0) states_ = {*std::move(start)};
  while (states_.back().taken > same) states_.pop_back();
  lines.of.entries.take_first(lines_.of.entries, states_.back().taken);
  lines_ = std::move(lines);
  so_far_.clear();
  lines_read_.clear();
  for (const Log* log : logs) lines_read_[log->session] = log->lines.size();
  take_from(same);
}

void Folding::read_on(const Log& log, const Logs& logs, const std::string& batch,
                      const Lessons& lessons) {
  if (states_.empty()) return read(logs, batch, lessons);
  auto known = so_far_.find(log.session);
  if (known == so_far_.end()) {
    const auto lines = lines_read_.find(log.session);
    const std::size_t read = lines == lines_read_.end() ? 0 : lines->second;
    known = so_far_.emplace(log.session, read_so_far(lines_, log, read)).first;
  }
  std::size_t first = lines_.of.entries.size();
  const bool goes = go_on(lines_, known->second, log, batch, first);
  while (states_.back().taken > first) states_.pop_back();
  if (!goes) return read(logs, batch, lessons);
  take_from(first);
}

void Folding::take_from(std::size_t same) {
  while (states_.back().taken > same) states_.pop_back();
  changed_ = std::min(changed_, same);
  const bool on_the_way = states_.back().taken % kept_each != 0;
  FoldState state = on_the_way ? std::move(states_.back()) : states_.back();
  if (on_the_way) states_.pop_back();
  while (state.taken < lines_.of.entries.size()) {
    take(state, lines_);
    if (state.taken % kept_each == 0) states_.push_back(state);
  }
  if (state.taken % kept_each != 0) states_.push_back(std::move(state));
}

std::size_t Folding::changed_from() {
  return std::exchange(changed_, std::numeric_limits<std::size_t>::max());
}

std::optional<Batch> Folding::at(const std::optional<Moment>& now) const& {
  if (states_.empty()) return std::nullopt;
  return finished(states_.back(), lines_.of.entries, lines_.of, now);
}

std::optional<Batch> Folding::at(const std::optional<Moment>& now) && {
  if (states_.empty()) return std::nullopt;
  return finished(std::move(states_.back()), std::move(lines_.of.entries), lines_.of, now);
}

std::optional<Batch> fold(const Logs& logs, const std::string& batch,
                          const std::optional<Moment>& now, const Lessons& lessons) {
  Folding once;
  once.read(logs, batch, lessons);
  return std::move(once).at(now);
}

Lessons lessons_of(const Logs& logs) {
  std::set<std::string> teach;
  for (const Log* log : logs)
    for (const Line& line : log->lines)
      if (std::holds_alternative<Weighed>(line.event) ||
          std::holds_alternative<AsBefore>(line.event))
        teach.insert(line.batch);
  if (teach.empty()) return {};
  Lessons lessons;
  const auto about = by_batch(logs);
  for (const std::string& id : batch_ids(logs)) {
    const auto batch =
        teach.count(id) ? fold(about.at(id), id, std::nullopt, lessons) : std::nullopt;
    if (batch && !batch->discarded)
      lessons.push_back({id, batch->opened_at, batch->places.bench, batch->places.loss});
  }
  return lessons;
}

}
