#include "session/lines_of_batch.hpp"

#include "words/lists.hpp"

#include <algorithm>

namespace session {

namespace {

void set_clocks(const std::vector<Resolved>& items, BatchLines& out) {
  Clock clock = 0;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Resolved& item = items[i];
    const double own = static_cast<double>(item.t) / 1000;
    const auto known = out.anchors.find(item.ref.session);
    if (known == out.anchors.end()) {
      const double since = static_cast<double>(item.at - items.front().at) / 1000;
      out.anchors[item.ref.session] = std::max(clock, since) - own;
    }
    clock = std::max(clock, out.anchors[item.ref.session] + own);
    out.entries[i].clock = clock;
  }
}

// Of the figure that it bears now: corrected afterwards, it is looked at anew.
void set_confirmed(std::vector<Entry>& entries) {
  std::set<std::pair<Ref, double>> right;
  for (const Entry& e : entries)
    if (const auto* c = std::get_if<Confirmed>(&e.event); c && !e.withdrawn)
      right.emplace(c->line, c->g);
  if (right.empty()) return;
  for (Entry& e : entries) {
    const auto* bottle = std::get_if<BottleWeighed>(&e.event);
    const auto* paint = std::get_if<Weighed>(&e.event);
    if (bottle || paint) e.confirmed = right.count({e.ref, bottle ? bottle->g : paint->g}) > 0;
  }
}

// Its last line may be of another batch, or of none.
void set_ends(const Logs& logs, BatchLines& out) {
  for (const Log* log : logs) {
    const auto anchor = out.anchors.find(log->session);
    if (anchor == out.anchors.end() || log->lines.empty()) continue;
    const double own = static_cast<double>(log->lines.back().t) / 1000;
    out.ends[log->session] = anchor->second + own;
    if (std::holds_alternative<Left>(log->lines.back().event)) out.over.insert(log->session);
  }
  const auto& entries = out.entries;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const bool another = i > 0 && entries[i].ref.session != entries[i - 1].ref.session;
    out.left_at.push_back(another ? std::clamp(out.ends[entries[i - 1].ref.session],
                                               entries[i - 1].clock, entries[i].clock)
                                  : entries[i].clock);
  }
}

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
    const bool only_says = std::holds_alternative<Corrected>(entry.event);
    out.entries.push_back(std::move(entry));
    out.cards.push_back(only_says ? nullptr : std::move(line.card));
    out.tools.push_back(std::move(line.tool));
  }
  set_confirmed(out.entries);
  set_clocks(resolved.lines, out);
  set_ends(logs, out);
  out.laid_out = std::move(resolved.laid_out);
  out.warnings = std::move(resolved.warnings);
  out.damaged = resolved.damaged;
  out.newer = resolved.newer;
  return out;
}

}
