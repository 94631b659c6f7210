#include "session/lines_behind.hpp"

#include "session/amounts.hpp"
#include "session/covered.hpp"
#include "words/lists.hpp"

#include <algorithm>

namespace session {

namespace {

template <class E>
bool is(const Event& event) {
  return std::holds_alternative<E>(event);
}

// Whether such a line behind all others alters more of them than one that it names.
struct ReachesBack {
  template <words::one_of<Opened, AsBefore, Confirmed, BottleWeighed, CountLost> E>
  bool operator()(const E&) const {
    return true;
  }
  template <
      words::one_of<Began, LaidOut, PutAway, Bought, StockWeighed, Making, Told, Planned, RoomSet,
                    CautionsSeen, Added, Felt, StageBegan, GoesOn, Dot, Trouble, Moved, Lost,
                    Weighed, Found, Poured, PanWeighed, Verdict, Noted, SetAside, Withdrawn,
                    Corrected, Photo, Gone, Gathered, Closed, Discarded, ClockJumped, Left, Unknown>
          E>
  bool operator()(const E&) const {
    return false;
  }
};

// Whether others change with it where it is withdrawn or corrected.
struct HangsTogether {
  template <words::one_of<Opened, Withdrawn, Corrected, AsBefore, Weighed, Confirmed, Found> E>
  bool operator()(const E&) const {
    return true;
  }
  template <
      words::one_of<Began, LaidOut, PutAway, Bought, StockWeighed, Making, Told, Planned, RoomSet,
                    CautionsSeen, Added, Felt, StageBegan, GoesOn, Dot, Trouble, BottleWeighed,
                    CountLost, Moved, Lost, Poured, PanWeighed, Verdict, Noted, SetAside, Photo,
                    Gone, Gathered, Closed, Discarded, ClockJumped, Left, Unknown>
          E>
  bool operator()(const E&) const {
    return false;
  }
};

// Nothing but the line itself is another where it is withdrawn or corrected. (An addition that puts
// in nothing has its warning.)
bool stands_alone(const FoldLines& known, std::size_t i) {
  const Entry& e = known.of.entries[i];
  if (std::visit(HangsTogether{}, e.event)) return false;
  return !is<Added>(e.event) || e.withdrawn || known.amounts[i].has_value();
}

// What the line should have said, where that is all the correction says.
std::optional<Event> said_instead(const Corrected& c, const Event& event) {
  if (c.by_ms) return std::nullopt;
  return std::visit(words::Overloaded{[](const std::monostate&) { return std::optional<Event>(); },
                                      [&](const auto& said) {
                                        const bool alike = is<std::decay_t<decltype(said)>>(event);
                                        return alike ? std::optional<Event>(said) : std::nullopt;
                                      }},
                    *c.says);
}

// One more line of the session behind all others.
class Behind {
public:
  Behind(FoldLines& known, ReadSoFar& so_far, const std::string& session)
      : known_(known), so_far_(so_far), session_(session) {}

  bool take(const Line& line, std::size_t& first) {
    const CardNames names = cards_named_by(line.event);
    of_ = card(names.card);
    with_ = card(names.tool);
    const auto* laid = std::get_if<LaidOut>(&line.event);
    if (std::visit(ReachesBack{}, line.event) || (laid && so_far_.poured)) return false;
    if (is<Found>(line.event) && follows_what_was_taken_back()) return false; // it was covered then
    const auto grams = amount_of(line.event);
    if (is<Added>(line.event) && !grams) return false;
    for (const SharedCard& c : {laid ? laid->card.shared() : nullptr, of_, with_})
      if (c && !lay_out(c)) return false;
    if (!alter(line.event, first)) return false;
    add(line, grams);
    return true;
  }

private:
  bool follows_what_was_taken_back() const {
    const auto& entries = known_.of.entries;
    return entries.size() > 0 && is_taken_back(entries[entries.size() - 1]);
  }

  SharedCard card(const std::string& id) const {
    const auto laid = so_far_.cards.find(id);
    return id.empty() || laid == so_far_.cards.end() ? nullptr : laid->second;
  }

  std::optional<paint::Amount> amount_of(const Event& event) const {
    const auto* added = std::get_if<Added>(&event);
    if (!added || !of_) return std::nullopt;
    GramsAdded grams_added;
    const auto& grams = grams_added(*added, *of_, with_.get());
    return grams ? std::optional(*grams) : std::nullopt;
  }

  // Which of two sessions' cards of one name counts hangs on the order of the sessions.
  bool lay_out(const SharedCard& laid) {
    const BatchLines& lines = known_.of;
    const bool others = lines.anchors.size() > lines.anchors.count(session_);
    SharedCard& there = known_.of.laid_out[laid->id];
    if (there && others && !(*there == *laid)) return false;
    there = laid;
    return true;
  }

  // It is mostly one of the last.
  std::optional<std::size_t> find(const Ref& line) const {
    for (std::size_t i = known_.of.entries.size(); i-- > 0;)
      if (known_.of.entries[i].ref == line)
        return stands_alone(known_, i) && !so_far_.amounts_hang ? std::optional(i) : std::nullopt;
    return std::nullopt;
  }

  bool withdraw(const Ref& line, std::size_t& first) {
    const auto i = find(line);
    if (!i) return false;
    if (known_.of.entries[*i].withdrawn) return true;
    known_.of.entries.change(*i).withdrawn = true;
    known_.amounts[*i].reset();
    first = std::min(first, first_taken_back(known_.of.entries, *i));
    return true;
  }

  bool correct(const Corrected& c, std::size_t& first) {
    const auto i = find(c.line);
    const auto says = i ? said_instead(c, known_.of.entries[*i].event) : std::nullopt;
    if (!says || is<Poured>(*says)) return false;
    const bool adds = is<Added>(*says) && !known_.of.entries[*i].withdrawn;
    const auto grams = amount_of(*says);
    if (adds && !grams) return false;
    Entry& e = known_.of.entries.change(*i);
    e.event = *says;
    e.corrected = true;
    known_.of.cards[*i] = of_;
    known_.of.tools[*i] = with_;
    known_.amounts[*i] = adds ? grams : std::nullopt;
    first = std::min(first, *i);
    return true;
  }

  bool alter(const Event& event, std::size_t& first) {
    if (const auto* w = std::get_if<Withdrawn>(&event)) return withdraw(w->line, first);
    if (const auto* c = std::get_if<Corrected>(&event)) return correct(*c, first);
    return true;
  }

  void add(const Line& line, const std::optional<paint::Amount>& grams) {
    BatchLines& lines = known_.of;
    Entry entry;
    entry.ref = {session_, line.n};
    entry.clock = clock_behind(lines, entry.ref, line.at, line.t);
    entry.at = line.at;
    entry.event = line.event;
    lines.entries.push_back(std::move(entry));
    SharedCard card = is<Corrected>(line.event) ? nullptr : of_;
    if (const auto* poured = std::get_if<Poured>(&line.event)) {
      const auto pan = lines.laid_out.find(poured->in);
      card = pan == lines.laid_out.end() ? nullptr : pan->second;
      so_far_.poured = true;
    }
    lines.cards.push_back(std::move(card));
    lines.tools.push_back(with_);
    lines.left_at.push_back(left_before(lines, lines.entries.size() - 1));
    known_.amounts.push_back(grams);
  }

  FoldLines& known_;
  ReadSoFar& so_far_;
  const std::string& session_;
  SharedCard of_, with_; // of the line at hand
};

bool comes_behind(const BatchLines& lines, const Ref& ref, std::int64_t at) {
  if (lines.entries.empty()) return false;
  const Entry& last = lines.entries.back();
  return std::tie(last.at, last.ref) < std::tie(at, ref);
}

void lay_out(ReadSoFar& so_far, const Line& line) {
  if (const auto* laid = std::get_if<LaidOut>(&line.event))
    so_far.cards[laid->card->id] = laid->card.shared();
}

}

ReadSoFar read_so_far(const FoldLines& known, const Log& log, std::size_t lines) {
  ReadSoFar out;
  out.lines = lines;
  for (std::size_t i = 0; i < lines; ++i) lay_out(out, log.lines[i]);
  const BatchLines& of = known.of;
  for (std::size_t i = 0; i < of.entries.size(); ++i) {
    const Entry& e = of.entries[i];
    out.amounts_hang |= is<BottleWeighed>(e.event) || is<CountLost>(e.event);
    out.poured |= is<Poured>(e.event);
    out.still_there |=
        i > 0 && of.entries[i - 1].ref.session == log.session && of.left_at[i] < e.clock;
  }
  return out;
}

bool go_on(FoldLines& known, ReadSoFar& so_far, const Log& log, const std::string& batch,
           std::size_t& first) {
  if (so_far.still_there || log.future || log.damaged) return false;
  Behind behind(known, so_far, log.session);
  for (; so_far.lines < log.lines.size(); ++so_far.lines) {
    const Line& line = log.lines[so_far.lines];
    lay_out(so_far, line);
    if (line.batch != batch) continue;
    const bool goes = comes_behind(known.of, {log.session, line.n}, line.at);
    if (!goes || !behind.take(line, first)) return false;
  }
  note_end(known.of, log);
  return true;
}

}
