#include "bench/book_index.hpp"

#include "bench/bench.hpp"
#include "bench/due.hpp"
#include "bench/paint_chart.hpp"
#include "bench/pan_said.hpp"
#include "bench/pan_times.hpp"
#include "bench/pours.hpp"
#include "bench/record.hpp"
#include "paint/catalogue.hpp"
#include "session/amounts.hpp"
#include "session/in_words.hpp"
#include "words/bench_says.hpp"
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

struct LineRead {
  const session::Ref& ref;
  std::int64_t at = 0;
  const session::Event& event;
  const session::Card* card = nullptr;
  const session::Card* tool = nullptr;
};

// A picture that is read once more was read wrongly before.
void keep_reading(std::vector<session::Photo>& read, const session::Photo& photo) {
  std::erase_if(read, [&](const session::Photo& one) { return one.sha256 == photo.sha256; });
  read.push_back(photo);
}

struct Read { // into the entry, line after line
  ReadEntry& to;
  const session::Offsets& offsets;
  const LineRead* line = nullptr;
  session::GramsAdded grams_added = {};
  std::pair<const std::string, session::Uses>* last = nullptr; // additions mostly follow their like

  void operator()(const session::Opened& o) {
    BookEntry& entry = to.entry;
    to.opened = true;
    lay(BookEntry::on_slab);
    if (entry.opened_at == 0) {
      entry.opened_at = line->at;
      entry.offset_min = session::offset_of(offsets, line->ref);
    }
    entry.name = o.name;
    entry.again_of = o.again_of;
  }
  void operator()(const session::LaidOut& laid) {
    to.entry.of_paint |= laid.card->kind() == session::CardKind::paint;
    if (laid.card->kind() != session::CardKind::pigment) return;
    if (!to.entry.pigments.insert(laid.card->id).second) return;
    to.pigments += laid.card->name + "\n" + pigment_of(*laid.card).index_name + "\n";
    if (const auto* known = paint::in_catalogue(laid.card->id))
      for (const std::string& name : known->other_names) to.pigments += name + "\n";
  }
  void operator()(const session::Planned& p) { to.entry.recipe = p.recipe; }
  void operator()(const session::Photo& p) {
    if (p.measured) to.entry.swatch = p.measured->shown;
    if (p.measured) keep_reading(to.entry.read, p);
    const bool shows_colour = to.entry.photo && to.entry.photo->of == session::PhotoOf::swatch;
    if (!shows_colour || p.of == session::PhotoOf::swatch) to.entry.photo = p;
  }
  void operator()(const session::Added& a) {
    if (to.entry.first_in_at == 0) to.entry.first_in_at = line->at;
    if (!a.with.empty()) to.entry.tools[{a.unit, a.of}] = {line->at, line->ref, a.with};
    uses_of(a.of)[session::use_moment(a.unit, line->at)] += micrograms(a);
  }
  void operator()(const session::Verdict& v) {
    to.entry.verdicts.push_back({line->ref, line->at, v});
  }
  void operator()(const session::Poured&) {
    BookEntry& entry = to.entry;
    entry.poured_at = line->at;
    entry.has_left_slab = true;
    if (entry.lies == BookEntry::in_jar || !to.some_in_jar) entry.lies = BookEntry::nowhere;
  }
  void operator()(const session::Moved& m) {
    if (m.to == session::Place::slab) lay(BookEntry::on_slab);
    if (m.from == session::Place::jar && is_all(m.quantity)) to.some_in_jar = false;
    if (m.from != session::Place::slab) return;
    to.entry.has_left_slab = to.some_in_jar = true;
    if (is_all(m.quantity)) lay(BookEntry::in_jar);
  }
  void operator()(const session::Lost& lost) {
    if (is_all(lost.quantity) && !to.some_in_jar) to.entry.lies = BookEntry::nowhere;
  }
  void operator()(const session::Gathered&) { off_the_slab(); }
  void operator()(const session::Closed&) { off_the_slab(); }
  void operator()(const session::StageBegan&) { put(BookEntry::on_slab); } // even after a pour
  void operator()(const session::Discarded&) { to.entry.discarded = true; }
  template <words::one_of<
      session::Began, session::LaidOut, session::PutAway, session::Bought, session::StockWeighed,
      session::Making, session::Told, session::RoomSet, session::CautionsSeen, session::Felt,
      session::GoesOn, session::Dot, session::Trouble, session::BottleWeighed, session::CountLost,
      session::Weighed, session::AsBefore, session::Found, session::PanWeighed, session::Noted,
      session::SetAside, session::Confirmed, session::Withdrawn, session::Corrected, session::Gone,
      session::ClockJumped, session::Left, session::Unknown>
                Other>
  void operator()(const Other&) {}

  static bool is_all(const session::Quantity& quantity) {
    return !quantity.g && quantity.share == 1;
  }
  session::Uses& uses_of(const std::string& card) {
    if (!last || last->first != card) last = &*to.entry.used_ug.try_emplace(card).first;
    return last->second;
  }
  void lay(BookEntry::Lies where) {
    if (to.entry.poured_at == 0) put(where);
  }
  void put(BookEntry::Lies where) {
    BookEntry& entry = to.entry;
    if (entry.lies != where) entry.lies_since = entry.lies_from = line->at;
    entry.lies = where;
  }
  void off_the_slab() {
    to.entry.has_left_slab = to.some_in_jar = true;
    BookEntry& entry = to.entry;
    if (entry.poured_at > 0 && entry.lies == BookEntry::on_slab) entry.lies = BookEntry::nowhere;
    if (entry.lies != BookEntry::nowhere) lay(BookEntry::in_jar);
  }

  std::int64_t micrograms(const session::Added& a) {
    static const session::Card not_laid_out;
    const auto& g = grams_added(a, line->card ? *line->card : not_laid_out, line->tool);
    return g ? std::llround(g->value * 1e6) : 0;
  }
};

void read(Read& reading, const LineRead& line) {
  reading.line = &line;
  std::visit(reading, line.event);
  BookEntry& entry = reading.to.entry;
  if (entry.lies == BookEntry::on_slab && by_hand(line.event)) entry.lies_since = line.at;
}

std::string searched_in(const BookEntry& entry, const std::string& pigments, const Now& now) {
  std::string text = entry.name + "\n" + pigments;
  for (const session::Judged& judged : entry.verdicts)
    text += "\n" + session::became_words(judged.verdict.as);
  const int offset_min = entry.offset_min.value_or(now.utc_offset_min);
  text += "\n" + words::date_of(words::day_of(made_at(entry), offset_min));
  text += "\n" + words::date(made_at(entry), offset_min);
  return words::searchable(text);
}

bool poured_lately(const BookEntry& entry, const Now& now) {
  return entry.poured_at > 0 && now.wall_ms - entry.poured_at < asks_lapse_ms;
}

bool is_asked(const BookEntry& entry, const Now& now) {
  const bool pans_wait = entry.poured_at > 0 && !is_settled(entry);
  return entry.lies != BookEntry::nowhere || pans_wait || poured_lately(entry, now);
}

ReadEntry read_all(Bench& bench, const std::string& batch) {
  ReadEntry all;
  const session::Resolution resolved = session::resolve(logs_about(bench, batch), batch);
  Read reading{all, bench.offsets};
  for (const session::Resolved& l : resolved.lines)
    if (!l.withdrawn) read(reading, {l.ref, l.at, *l.event, l.card.get(), l.tool.get()});
  return all;
}

// Goes on from before the first line that is another than it was.
const ReadEntry& read_on_slab(Bench& bench) {
  constexpr std::size_t kept_each = 64; // lines
  const LinesOfSlab of = lines_of_slab(bench);
  std::vector<ReadEntry>& states = bench.index.of_slab;
  if (std::exchange(bench.index.slab, bench.batch) != bench.batch) states.clear();
  while (!states.empty() && states.back().lines > of.changed_from) states.pop_back();
  if (states.empty()) states.emplace_back();
  ReadEntry now = states.back();
  if (now.lines % kept_each != 0) states.pop_back();
  Read reading{now, bench.offsets};
  for (; now.lines < of.lines.entries.size(); ++now.lines) {
    if (now.lines % kept_each == 0 && states.back().lines < now.lines) states.push_back(now);
    const session::Entry& e = of.lines.entries[now.lines];
    const session::Card* card = of.lines.cards[now.lines].get();
    if (!e.withdrawn) read(reading, {e.ref, e.at, e.event, card, of.lines.tools[now.lines].get()});
  }
  if (states.back().lines < now.lines) states.push_back(std::move(now));
  return states.back();
}

void take_pans(BookEntry& entry, const session::Batch& folded) {
  entry.layer_at = next_layer_at(folded);
  entry.weigh_again = weigh_again(folded);
  entry.dry_at = dry_at(folded);
  const bool none_takes_it = pours_to_come(folded).layers == 0 &&
                             !std::all_of(folded.pans.begin(), folded.pans.end(), is_full);
  const bool waits =
      is_worth_pouring(folded) && !settles_layer(folded) && !none_takes_it && !bars_layer(folded);
  entry.left_mL = waits ? to_pour_mL(folded) : 0;
}

std::optional<BookEntry> entry_of(Bench& bench, const std::string& batch, const Now& now) {
  ReadEntry read = batch == bench.batch ? read_on_slab(bench) : read_all(bench, batch);
  if (!read.opened) return std::nullopt;
  BookEntry entry = std::move(read.entry);
  if (is_newer(bench, batch)) entry.lies = BookEntry::nowhere; // nobody can take it up here
  entry.text = searched_in(entry, read.pigments, now);
  const bool at_hand = poured_lately(entry, now) || (batch == bench.batch && entry.poured_at > 0);
  if (const Folded folded = at_hand ? fold_of(bench, batch) : nullptr) take_pans(entry, *folded);
  return entry;
}

std::int64_t sum_of(const session::Uses& uses) {
  std::int64_t ug = 0;
  for (const auto& [at, one] : uses) ug += one;
  return ug;
}

// Moments at which nothing is used any more are forgotten: an empty one is no use.
void count_uses(session::Uses& all, const session::Uses& uses, int sign) {
  for (const auto& [at, ug] : uses) {
    const auto use = all.try_emplace(all.end(), at, 0); // a late one mostly
    if ((use->second += sign * ug) == 0) all.erase(use);
  }
}

// The one pigment that went into it, where it took its colour from nothing else.
std::string alone_in(const BookEntry& entry) {
  std::string one;
  for (const std::string& card : entry.pigments) {
    const auto uses = entry.used_ug.find(card);
    if (uses == entry.used_ug.end() || sum_of(uses->second) <= 0) continue;
    if (!one.empty()) return "";
    one = card;
  }
  return entry.of_paint || entry.discarded ? "" : one;
}

void count_out(BookIndex& index, const std::string& batch, const BookEntry& entry) {
  ++index.taken;
  for (const auto& [measured, use] : entry.tools) index.tools[measured].erase(use);
  for (const auto& [card, uses] : entry.used_ug) {
    count_uses(index.used_ug[card], uses, -1);
    index.took_ug[card].erase({entry.opened_at, batch});
  }
  if (!entry.recipe.empty()) index.made_by[entry.recipe].erase({entry.opened_at, batch});
  if (const std::string pigment = alone_in(entry); entry.swatch && !pigment.empty())
    index.swatches[pigment].erase({entry.opened_at, batch});
  index.read_again.erase(batch);
}

void count_in(BookIndex& index, const std::string& batch, const BookEntry& entry) {
  ++index.taken;
  for (const auto& [measured, use] : entry.tools) index.tools[measured].insert(use);
  for (const auto& [card, uses] : entry.used_ug) {
    count_uses(index.used_ug[card], uses, 1);
    if (const std::int64_t ug = sum_of(uses); ug > 0)
      index.took_ug[card][{entry.opened_at, batch}] = ug;
  }
  if (!entry.recipe.empty()) index.made_by[entry.recipe].insert({entry.opened_at, batch});
  if (const std::string pigment = alone_in(entry); entry.swatch && !pigment.empty())
    index.swatches[pigment][{entry.opened_at, batch}] = *entry.swatch;
  if (entry.read.size() > 1 && !entry.discarded) index.read_again.insert(batch);
}

bool stands_in(const std::vector<std::string>& list, const std::string& batch) {
  return std::find(list.rbegin(), list.rend(), batch) != list.rend(); // a late one mostly
}

// One that was discarded stands apart, and one whose beginning was taken back nowhere.
void part_batches(Bench& bench) {
  bench.index.lists_stale = false;
  bench.discarded.clear();
  std::erase_if(bench.batches, [&](const std::string& batch) {
    const auto entry = bench.index.of.find(batch);
    const bool discarded = entry != bench.index.of.end() && entry->second.discarded;
    if (discarded) bench.discarded.push_back(batch);
    return discarded || entry == bench.index.of.end();
  });
}

void list_batches(Bench& bench) {
  if (!bench.index.lists_stale) return;
  bench.batches = session::batch_ids(session::all_of(bench.logs));
  part_batches(bench);
}

// Whether it is to be listed.
bool read_entry(Bench& bench, const std::string& batch, const Now& now) {
  bench.index.asked.erase(batch);
  if (const auto before = bench.index.of.find(batch); before != bench.index.of.end()) {
    count_out(bench.index, batch, before->second);
    bench.index.of.erase(before);
  }
  auto entry = entry_of(bench, batch, now);
  if (!entry) return false;
  const bool listed = !entry->discarded;
  count_in(bench.index, batch, *entry);
  if (listed && is_asked(*entry, now)) bench.index.asked.insert(batch);
  bench.index.of[batch] = *std::move(entry);
  return listed;
}

void read_anew(Bench& bench, const std::string& batch, const Now& now) {
  const bool listed = read_entry(bench, batch, now);
  bench.index.lists_stale = bench.index.lists_stale || listed != stands_in(bench.batches, batch);
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

// Of bench.batches as they were listed a moment ago.
void index_all(Bench& bench, const Now& now) {
  bench.index = {};
  bench.index.of.reserve(bench.batches.size());
  for (const std::string& batch : bench.batches) read_entry(bench, batch, now);
  bench.learning.stale = {bench.batches.begin(), bench.batches.end()};
  part_batches(bench);
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

void look_at_pans(Bench& bench, const std::string& batch, const session::Batch* folded) {
  const auto entry = bench.index.of.find(batch);
  const bool asked = bench.index.asked.count(batch) > 0;
  if (folded && asked && entry->second.poured_at > 0) take_pans(entry->second, *folded);
}

bool is_discarded(const Bench& bench, const std::string& batch) {
  const auto entry = bench.index.of.find(batch);
  return entry != bench.index.of.end() && entry->second.discarded;
}

words::Error news_of_slab(const Bench& bench) {
  using Say = words::BenchSay;
  return {is_discarded(bench, bench.batch) ? Say::discarded_elsewhere : Say::added_elsewhere, {}};
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
  chart_paints(bench);
}

}
