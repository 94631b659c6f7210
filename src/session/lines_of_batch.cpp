#include "session/lines_of_batch.hpp"

#include "words/lists.hpp"

#include <algorithm>

namespace session {

Clock clock_behind(BatchLines& lines, const Ref& line, std::int64_t at, std::int64_t t) {
  const Clock last = lines.entries.empty() ? 0 : lines.entries.back().clock;
  const std::int64_t first_at = lines.entries.empty() ? at : lines.entries.front().at;
  const double own = static_cast<double>(t) / 1000;
  const auto known = lines.anchors.find(line.session);
  if (known == lines.anchors.end()) {
    const double since = static_cast<double>(at - first_at) / 1000;
    lines.anchors[line.session] = std::max(last, since) - own;
  }
  return std::max(last, lines.anchors[line.session] + own);
}

Clock left_before(BatchLines& lines, std::size_t i) {
  const Entry& e = lines.entries[i];
  if (i == 0 || e.ref.session == lines.entries[i - 1].ref.session) return e.clock;
  const Entry& before = lines.entries[i - 1];
  return std::clamp(lines.ends[before.ref.session], before.clock, e.clock);
}

namespace {

// Of the figure that it bears now: corrected afterwards, it is looked at anew.
void set_confirmed(Grown<Entry>& entries) {
  std::set<std::pair<Ref, double>> right;
  for (const Entry& e : entries)
    if (const auto* c = std::get_if<Confirmed>(&e.event); c && !e.withdrawn)
      right.emplace(c->line, c->g);
  if (right.empty()) return;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const Entry& e = entries[i];
    const auto* bottle = std::get_if<BottleWeighed>(&e.event);
    const auto* paint = std::get_if<Weighed>(&e.event);
    if ((bottle || paint) && right.count({e.ref, bottle ? bottle->g : paint->g}) > 0)
      entries.change(i).confirmed = true;
  }
}

}

// Its last line may be of another batch, or of none.
void note_end(BatchLines& lines, const Log& log) {
  const auto anchor = lines.anchors.find(log.session);
  if (anchor == lines.anchors.end() || log.lines.empty()) return;
  lines.ends[log.session] = anchor->second + static_cast<double>(log.lines.back().t) / 1000;
  if (std::holds_alternative<Left>(log.lines.back().event)) lines.over.insert(log.session);
}

BatchLines lines_of(const Logs& logs, const std::string& batch) {
  BatchLines out;
  Resolution resolved = resolve(logs, batch);
  for (Resolved& line : resolved.lines) {
    Entry entry;
    entry.ref = line.ref;
    entry.at = line.at;
    entry.event = *line.event;
    entry.withdrawn = line.withdrawn;
    entry.corrected = line.corrected;
    entry.clock = clock_behind(out, line.ref, line.at, line.t);
    const bool only_says = std::holds_alternative<Corrected>(entry.event);
    out.entries.push_back(std::move(entry));
    out.cards.push_back(only_says ? nullptr : std::move(line.card));
    out.tools.push_back(std::move(line.tool));
  }
  set_confirmed(out.entries);
  for (const Log* log : logs) note_end(out, *log);
  for (std::size_t i = 0; i < out.entries.size(); ++i) out.left_at.push_back(left_before(out, i));
  out.laid_out = std::move(resolved.laid_out);
  out.warnings = std::move(resolved.warnings);
  out.moved = resolved.moved;
  out.damaged = resolved.damaged;
  out.newer = resolved.newer;
  return out;
}

}
