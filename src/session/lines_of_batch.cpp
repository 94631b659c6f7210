#include "session/lines_of_batch.hpp"

#include <algorithm>
#include <set>
#include <tuple>

namespace session {

namespace {

struct Item {
  Ref ref;
  std::int64_t at = 0;
  std::int64_t t = 0;
  Event event;
  const Card* card = nullptr; // that the event, or what a correction says, names
  const Card* tool = nullptr;
  bool corrected = false;
};

struct CardNames {
  std::string card, tool;
};

CardNames cards_named_by(const Added& a) { return {a.of, a.with}; }
CardNames cards_named_by(const BottleWeighed& b) { return {b.of, ""}; }
CardNames cards_named_by(const CountLost& c) { return {c.of, ""}; }
CardNames cards_named_by(const Corrected& c) {
  if (const auto* added = std::get_if<Added>(&*c.says)) return cards_named_by(*added);
  if (const auto* weighed = std::get_if<BottleWeighed>(&*c.says)) return cards_named_by(*weighed);
  return {};
}
template <class Other>
CardNames cards_named_by(const Other&) {
  return {};
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
    const auto* laid = std::get_if<LaidOut>(&line.event);
    if (laid) cards[laid->card->id] = &*laid->card;
    if (line.batch != batch) continue;
    if (laid) laid_out[laid->card->id] = *laid->card;
    const CardNames named =
        std::visit([](const auto& event) { return cards_named_by(event); }, line.event);
    items.push_back(
        {{log.session, line.n}, line.at, line.t, line.event, find(named.card), find(named.tool)});
    for (const Card* used : {items.back().card, items.back().tool})
      if (used) laid_out[used->id] = *used;
  }
}

void order(std::vector<Item>& items) {
  std::sort(items.begin(), items.end(), [](const Item& a, const Item& b) {
    return std::tie(a.at, a.ref) < std::tie(b.at, b.ref);
  });
}

// From the last to the first, so that a withdrawal that was itself withdrawn has no effect.
std::set<Ref> withdrawn_in(const std::vector<Item>& items, std::vector<Warning>& warnings) {
  std::set<Ref> present;
  std::vector<const Item*> withdrawals;
  for (const Item& item : items) {
    present.insert(item.ref);
    if (std::holds_alternative<Withdrawn>(item.event)) withdrawals.push_back(&item);
  }
  std::set<Ref> gone;
  for (auto w = withdrawals.rbegin(); w != withdrawals.rend(); ++w) {
    if (gone.count((*w)->ref)) continue;
    const Ref& line = std::get<Withdrawn>((*w)->event).line;
    gone.insert(line);
    if (!present.count(line))
      warnings.push_back(
          {WarningKind::withdrawn_missing, (*w)->ref, line.session + " " + std::to_string(line.n)});
  }
  return gone;
}

// False where the line is of another kind than the correction says.
bool say_instead(Event& event, const Corrected::Says& says) {
  return std::visit(
      [&](const auto& said) {
        using Said = std::decay_t<decltype(said)>;
        if constexpr (std::is_same_v<Said, std::monostate>) {
          return true;
        } else {
          if (!std::holds_alternative<Said>(event)) return false;
          event = said;
          return true;
        }
      },
      says);
}

void correct(Item& item, std::int64_t own_at, std::int64_t own_t, const Item& correction) {
  const auto& c = std::get<Corrected>(correction.event);
  item.corrected = true;
  if (!std::holds_alternative<std::monostate>(*c.says)) {
    item.card = correction.card;
    item.tool = correction.tool;
  }
  if (!c.by_ms) return;
  item.at = own_at + *c.by_ms;
  item.t = own_t + *c.by_ms;
}

void apply_corrections(std::vector<Item>& items, const std::set<Ref>& withdrawn,
                       std::vector<Warning>& warnings) {
  std::map<Ref, Item*> by_ref;
  for (Item& item : items) by_ref[item.ref] = &item;
  const std::vector<Item> own = items; // by_ms counts from the moment the line itself bears
  for (std::size_t i = 0; i < items.size(); ++i) {
    const auto* c = std::get_if<Corrected>(&own[i].event);
    if (!c || withdrawn.count(own[i].ref)) continue;
    const std::string detail = c->line.session + " " + std::to_string(c->line.n);
    const auto found = by_ref.find(c->line);
    if (found == by_ref.end()) {
      warnings.push_back({WarningKind::corrected_missing, own[i].ref, detail});
    } else if (!say_instead(found->second->event, *c->says)) {
      warnings.push_back({WarningKind::corrected_kind, own[i].ref, detail});
    } else {
      const Item& as_borne = own[static_cast<std::size_t>(found->second - items.data())];
      correct(*found->second, as_borne.at, as_borne.t, own[i]);
    }
  }
  order(items);
}

void set_clocks(const std::vector<Item>& items, BatchLines& out) {
  Clock clock = 0;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Item& item = items[i];
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

bool any_correction(const std::vector<Item>& items) {
  return std::any_of(items.begin(), items.end(), [](const Item& item) {
    return std::holds_alternative<Corrected>(item.event);
  });
}

}

BatchLines lines_of(const Logs& logs, const std::string& batch) {
  BatchLines out;
  std::vector<Item> items;
  for (const Log* log : logs) {
    const std::size_t before = items.size();
    collect(*log, batch, items, out.laid_out);
    out.damaged |= log->damaged && items.size() > before;
    out.newer |= log->future && items.size() > before;
  }
  order(items);
  const std::set<Ref> withdrawn = withdrawn_in(items, out.warnings);
  if (any_correction(items)) apply_corrections(items, withdrawn, out.warnings);
  for (Item& item : items) {
    Entry entry;
    entry.ref = item.ref;
    entry.at = item.at;
    const bool only_says = std::holds_alternative<Corrected>(item.event);
    entry.event = std::move(item.event);
    entry.withdrawn = withdrawn.count(item.ref) > 0;
    entry.corrected = item.corrected;
    out.entries.push_back(std::move(entry));
    out.cards.push_back(only_says ? nullptr : item.card);
    out.tools.push_back(item.tool);
  }
  set_clocks(items, out);
  return out;
}

}
