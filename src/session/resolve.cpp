#include "session/resolve.hpp"

#include "words/lists.hpp"

#include <algorithm>
#include <set>
#include <tuple>

namespace session {

namespace {

CardNames cards_named_by(const Added& a) { return {a.of, a.with}; }
CardNames cards_named_by(const BottleWeighed& b) { return {b.of, ""}; }
CardNames cards_named_by(const CountLost& c) { return {c.of, ""}; }
CardNames cards_named_by(const Corrected& c) {
  if (const auto* added = std::get_if<Added>(&*c.says)) return cards_named_by(*added);
  if (const auto* weighed = std::get_if<BottleWeighed>(&*c.says)) return cards_named_by(*weighed);
  return {};
}
template <
    words::one_of<Began, LaidOut, PutAway, Bought, StockWeighed, Making, Told, Opened, Planned,
                  RoomSet, CautionsSeen, Felt, StageBegan, GoesOn, Dot, Trouble, Moved, Lost,
                  Weighed, AsBefore, Found, Poured, PanWeighed, Verdict, Noted, SetAside, Confirmed,
                  Withdrawn, Photo, Gone, Gathered, Closed, Discarded, ClockJumped, Left, Unknown>
        NamesNone>
CardNames cards_named_by(const NamesNone&) {
  return {};
}

}

CardNames cards_named_by(const Event& event) {
  return std::visit([](const auto& said) { return cards_named_by(said); }, event);
}

namespace {

// A session names each card in full before it uses it, so the card of a line is the latest that
// its own session laid out before it.
class LaidOutSoFar {
public:
  void put(const LaidOut& laid) { all_.push_back({&laid}); }
  // Null where none is meant, or none was laid out. The first time that it is used it counts as the
  // batch's.
  SharedCard used(const std::string& id, Resolution& out) {
    for (auto laid = all_.rbegin(); laid != all_.rend() && !id.empty(); ++laid) {
      const Card& card = *laid->laid->card;
      if (card.id != id) continue;
      if (!std::exchange(laid->used, true)) out.laid_out[id] = laid->laid->card.shared();
      return laid->laid->card.shared();
    }
    return nullptr;
  }

private:
  struct One {
    const LaidOut* laid = nullptr;
    bool used = false;
  };
  std::vector<One> all_;
};

void collect(const Log& log, const std::string& batch, Resolution& out) {
  LaidOutSoFar cards;
  if (out.lines.empty() && !batch.empty()) out.lines.reserve(log.lines.size()); // mostly all of it
  for (const Line& line : log.lines) {
    const auto* laid = std::get_if<LaidOut>(&line.event);
    if (laid) cards.put(*laid);
    if (line.batch != batch) continue;
    if (laid) out.laid_out[laid->card->id] = laid->card.shared();
    const CardNames named = cards_named_by(line.event);
    Resolved& to = out.lines.emplace_back();
    to.ref = {log.session, line.n};
    to.at = line.at;
    to.t = line.t;
    to.event = &line.event;
    to.card = cards.used(named.card, out);
    to.tool = cards.used(named.tool, out);
  }
}

void order(std::vector<Resolved>& lines) {
  const auto before = [](const Resolved& a, const Resolved& b) {
    return std::tie(a.at, a.ref) < std::tie(b.at, b.ref);
  };
  if (!std::is_sorted(lines.begin(), lines.end(), before))
    std::sort(lines.begin(), lines.end(), before);
}

class ByRef {
public:
  explicit ByRef(std::vector<Resolved>& lines) {
    for (Resolved& line : lines) lines_.push_back(&line);
    if (!std::is_sorted(lines_.begin(), lines_.end(), before))
      std::stable_sort(lines_.begin(), lines_.end(), before);
  }
  Resolved* find(const Ref& ref) const {
    const auto after = std::upper_bound(
        lines_.begin(), lines_.end(), ref,
        [](const Ref& wanted, const Resolved* line) { return wanted < line->ref; });
    return after == lines_.begin() || !((*(after - 1))->ref == ref) ? nullptr : *(after - 1);
  }

private:
  static bool before(const Resolved* a, const Resolved* b) { return a->ref < b->ref; }
  std::vector<Resolved*> lines_;
};

std::string name_of(const Ref& ref) { return ref.session + " " + std::to_string(ref.n); }

// From the last to the first, so that a withdrawal that was itself withdrawn has no effect.
void withdraw(Resolution& out) {
  std::vector<const Resolved*> withdrawals;
  for (const Resolved& line : out.lines)
    if (std::holds_alternative<Withdrawn>(*line.event)) withdrawals.push_back(&line);
  if (withdrawals.empty()) return;
  const ByRef by_ref(out.lines);
  for (auto w = withdrawals.rbegin(); w != withdrawals.rend(); ++w) {
    if ((*w)->withdrawn) continue;
    const Ref& gone = std::get<Withdrawn>(*(*w)->event).line;
    if (Resolved* found = by_ref.find(gone))
      found->withdrawn = true;
    else
      out.warnings.push_back({WarningKind::withdrawn_missing, (*w)->ref, name_of(gone)});
  }
}

// False where the line is of another kind than the correction says.
bool say_instead(Resolution& out, Resolved& line, const Corrected::Says& says) {
  return std::visit(
      [&](const auto& said) {
        using Said = std::decay_t<decltype(said)>;
        if constexpr (std::is_same_v<Said, std::monostate>) {
          return true;
        } else {
          if (!std::holds_alternative<Said>(*line.event)) return false;
          out.said.push_back(std::make_unique<const Event>(said));
          line.event = out.said.back().get();
          return true;
        }
      },
      says);
}

bool speaks_of_another(const Event& event) {
  return std::holds_alternative<Corrected>(event) || std::holds_alternative<Withdrawn>(event) ||
         std::holds_alternative<SetAside>(event);
}

// Why a correction of a line that is there changes nothing.
std::optional<WarningKind> without_effect(const Corrected& c, const Resolved& line) {
  if (speaks_of_another(*line.event)) return WarningKind::corrected_remark;
  const auto* opened = std::get_if<Opened>(&*c.says);
  if (opened && is_nameless(*opened)) return WarningKind::corrected_to_no_name;
  return std::nullopt;
}

struct Borne { // by the line itself: from there a correction's by_ms counts
  std::int64_t at = 0, t = 0;
};

void correct(Resolved& line, const Borne& own, const Resolved& correction) {
  const auto& c = std::get<Corrected>(*correction.event);
  line.corrected = true;
  if (!std::holds_alternative<std::monostate>(*c.says)) {
    line.card = correction.card;
    line.tool = correction.tool;
  }
  if (!c.by_ms) return;
  line.at = own.at + *c.by_ms;
  line.t = own.t + *c.by_ms;
}

void apply_corrections(Resolution& out) {
  const ByRef by_ref(out.lines);
  std::vector<Borne> own;
  for (const Resolved& line : out.lines) own.push_back({line.at, line.t});
  for (const Resolved& correction : out.lines) {
    const auto* c = std::get_if<Corrected>(correction.event);
    if (!c || correction.withdrawn) continue;
    Resolved* found = by_ref.find(c->line);
    if (!found) {
      out.warnings.push_back({WarningKind::corrected_missing, correction.ref, name_of(c->line)});
    } else if (const auto why = without_effect(*c, *found)) {
      out.warnings.push_back({*why, correction.ref, name_of(c->line)});
    } else if (!say_instead(out, *found, *c->says)) {
      out.warnings.push_back({WarningKind::corrected_kind, correction.ref, name_of(c->line)});
    } else {
      correct(*found, own[static_cast<std::size_t>(found - out.lines.data())], correction);
      out.moved |= c->by_ms.has_value();
    }
  }
  order(out.lines);
}

bool any_correction(const std::vector<Resolved>& lines) {
  return std::any_of(lines.begin(), lines.end(), [](const Resolved& line) {
    return std::holds_alternative<Corrected>(*line.event);
  });
}

}

Resolution resolve(const Logs& logs, const std::string& batch) {
  Resolution out;
  for (const Log* log : logs) {
    const std::size_t before = out.lines.size();
    collect(*log, batch, out);
    out.damaged |= log->damaged && out.lines.size() > before;
    out.newer |= log->future && out.lines.size() > before;
  }
  order(out.lines);
  withdraw(out);
  if (any_correction(out.lines)) apply_corrections(out);
  return out;
}

}
