#include "session/lines_of_batch.hpp"

#include <algorithm>
#include <set>
#include <tuple>

namespace session {

namespace {

struct Item {
  const Log* log = nullptr;
  const Line* line = nullptr;
  const Card* card = nullptr;
  const Card* tool = nullptr;
};

std::string card_named_by(const Event& event) {
  if (const auto* a = std::get_if<Added>(&event)) return a->of;
  if (const auto* b = std::get_if<BottleWeighed>(&event)) return b->of;
  if (const auto* c = std::get_if<CountLost>(&event)) return c->of;
  return "";
}

// A session names each card in full before it uses it, so the card of a line is the latest that
// its own session laid out before it.
void collect(const Log& log, const std::string& batch, std::vector<Item>& items,
             std::map<std::string, Card>& laid_out) {
  std::map<std::string, const Card*> cards;
  const auto find = [&](const std::string& id) {
    const auto at = cards.find(id);
    return at == cards.end() ? nullptr : at->second;
  };
  for (const Line& line : log.lines) {
    if (const auto* laid = std::get_if<LaidOut>(&line.event)) cards[laid->card.id] = &laid->card;
    if (line.batch != batch) continue;
    if (const auto* laid = std::get_if<LaidOut>(&line.event)) laid_out[laid->card.id] = laid->card;
    const auto* added = std::get_if<Added>(&line.event);
    items.push_back(
        {&log, &line, find(card_named_by(line.event)), added ? find(added->with) : nullptr});
    for (const Card* used : {items.back().card, items.back().tool})
      if (used) laid_out[used->id] = *used;
  }
}

void order(std::vector<Item>& items) {
  std::sort(items.begin(), items.end(), [](const Item& a, const Item& b) {
    return std::tie(a.line->at, a.log->session, a.line->n) <
           std::tie(b.line->at, b.log->session, b.line->n);
  });
}

void set_clocks(const std::vector<Item>& items, BatchLines& out) {
  Clock clock = 0;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const auto& [log, line, card, tool] = items[i];
    const double own = static_cast<double>(line->t) / 1000;
    const auto known = out.anchors.find(log->session);
    if (known == out.anchors.end()) {
      const double since = static_cast<double>(line->at - items.front().line->at) / 1000;
      out.anchors[log->session] = std::max(clock, since) - own;
    }
    clock = std::max(clock, out.anchors[log->session] + own);
    out.entries[i].clock = clock;
  }
}

// From the last to the first, so that a withdrawal that was itself withdrawn has no effect.
void mark_withdrawn(BatchLines& out) {
  std::set<Ref> gone;
  std::set<Ref> present;
  for (const Entry& e : out.entries) present.insert(e.ref);
  for (auto e = out.entries.rbegin(); e != out.entries.rend(); ++e) {
    e->withdrawn = gone.count(e->ref) > 0;
    const auto* w = std::get_if<Withdrawn>(&e->event);
    if (!w || e->withdrawn) continue;
    gone.insert(w->line);
    if (!present.count(w->line))
      out.warnings.push_back({WarningKind::withdrawn_missing, e->ref,
                              w->line.session + " " + std::to_string(w->line.n)});
  }
}

}

BatchLines lines_of(const Logs& logs, const std::string& batch) {
  BatchLines out;
  std::vector<Item> items;
  for (const Log* log : logs) {
    const std::size_t before = items.size();
    collect(*log, batch, items, out.laid_out);
    out.damaged |= log->damaged && items.size() > before;
  }
  order(items);
  for (const auto& [log, line, card, tool] : items) {
    Entry entry;
    entry.ref = {log->session, line->n};
    entry.at = line->at;
    entry.event = line->event;
    out.entries.push_back(std::move(entry));
    out.cards.push_back(card);
    out.tools.push_back(tool);
  }
  set_clocks(items, out);
  mark_withdrawn(out);
  return out;
}

}
