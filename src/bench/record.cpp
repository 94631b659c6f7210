#include "bench/record.hpp"

#include "bench/act.hpp"
#include "bench/corrections.hpp"
#include "bench/doubt.hpp"
#include "bench/learning.hpp"
#include "bench/materials.hpp"
#include "session/bytes.hpp"
#include "session/check_value.hpp"
#include "session/resolve.hpp"
#include "words/bench_says.hpp"
#include "words/lists.hpp"
#include "words/moments.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace bench {

namespace {

session::Log& own_log(Bench& bench) { return bench.logs.front(); }

// A stamp more than a day ahead of the wall clock came from another device's clock gone wrong. What
// this device has said itself was said before, whatever its clock was set to since.
bool is_believable(const session::Log& log, const session::Line& line, const Bench& bench,
                   const Now& now) {
  return log.device == bench.sitting.device || log.session == bench.sitting.session ||
         line.at <= now.wall_ms + session::a_day_ms;
}

// After everything already said of this batch, whatever the wall clock claims. Where all of it lies
// more than a day ahead, no moment of this clock comes after the batch was begun.
std::int64_t stamp_in_batch(const Bench& bench, const std::string& batch, const Now& now) {
  std::int64_t last = -1, last_ahead = -1;
  for (const session::Log* log : logs_about(bench, batch))
    for (auto line = log->lines.rbegin(); line != log->lines.rend(); ++line) {
      if (line->batch != batch) continue;
      const bool believed = is_believable(*log, *line, bench, now);
      std::int64_t& latest = believed ? last : last_ahead;
      latest = std::max(latest, line->at);
      if (believed) break;
    }
  return std::max(now.wall_ms, (last < 0 ? last_ahead : last) + 1);
}

// The same of the shelf, so that of two words about a card the later one counts.
std::int64_t stamp_on_shelf(const Bench& bench, const Now& now) {
  std::int64_t stamp = now.wall_ms;
  for (const session::Log& log : bench.logs)
    for (auto line = log.lines.rbegin(); line != log.lines.rend(); ++line) {
      if (!line->batch.empty() || tells_the_clock(line->event)) continue;
      if (!is_believable(log, *line, bench, now)) continue;
      const bool own = log.session == bench.sitting.session; // where `n` says what came after
      stamp = std::max(stamp, own ? line->at : line->at + 1);
      break;
    }
  return stamp;
}

std::int64_t order_stamp(const Bench& bench, const std::string& batch, const session::Event& event,
                         const Now& now) {
  if (!batch.empty()) return stamp_in_batch(bench, batch, now);
  return tells_the_clock(event) ? now.wall_ms : stamp_on_shelf(bench, now);
}

void append(Bench& bench, const std::string& batch, session::Event event, const Now& now,
            Effects& effects) {
  session::Line line;
  line.n = bench.sitting.next_n++;
  line.t = now.run_ms - bench.sitting.began_run_ms;
  line.at = order_stamp(bench, batch, event, now);
  line.batch = batch;
  line.event = std::move(event);
  session::note_offset(bench.offsets, bench.sitting.session, line);
  own_log(bench).lines.push_back(line);
  effects.append.push_back(std::move(line));
  if (batch.empty()) return;
  lines_came(bench, batch);
  auto& spoken = bench.speaks_of[batch];
  if (std::find(spoken.begin(), spoken.end(), 0) == spoken.end()) spoken.insert(spoken.begin(), 0);
}

}

namespace {
struct ByHand {
  template <words::one_of<session::Added, session::Felt, session::StageBegan, session::Dot,
                          session::Trouble, session::BottleWeighed, session::CountLost,
                          session::Gathered, session::Closed, session::Moved, session::Lost,
                          session::Weighed, session::AsBefore, session::Found, session::Poured,
                          session::PanWeighed, session::Verdict, session::Noted, session::Confirmed>
                Hand>
  bool operator()(const Hand&) const {
    return true;
  }
  template <words::one_of<session::Began, session::LaidOut, session::PutAway, session::Bought,
                          session::StockWeighed, session::Making, session::Told, session::Opened,
                          session::Planned, session::RoomSet, session::CautionsSeen,
                          session::GoesOn, session::SetAside, session::Withdrawn,
                          session::Corrected, session::Photo, session::Gone, session::Discarded,
                          session::ClockJumped, session::Left, session::Unknown>
                Other>
  bool operator()(const Other&) const {
    return false;
  }
};
}

bool tells_the_clock(const session::Event& event) {
  return std::holds_alternative<session::Began>(event) ||
         std::holds_alternative<session::ClockJumped>(event) ||
         std::holds_alternative<session::Left>(event);
}

bool by_hand(const session::Event& e) { return std::visit(ByHand{}, e); }

bool has_begun(const Bench& bench) { return !bench.logs.front().lines.empty(); }

void notice_clock(Bench& bench, const Now& now, Effects& effects) {
  constexpr std::int64_t least_ms = 60000;
  if (!has_begun(bench) || bench.sitting.left) return;
  const std::int64_t ahead = now.wall_ms - now.run_ms;
  const std::int64_t by = ahead - bench.sitting.wall_ahead_ms;
  const bool elsewhere = now.utc_offset_min != bench.sitting.utc_offset_min;
  if (std::abs(by) < least_ms && !elsewhere) return;
  bench.sitting.wall_ahead_ms = ahead;
  bench.sitting.utc_offset_min = now.utc_offset_min;
  append(bench, "", session::ClockJumped{by, local_time(now)}, now, effects);
}

namespace {

// What is corrected was named by its own session; whatever stands in this one is named by it.
void lay_out_corrected(Bench& bench, const std::string& batch, const session::Event& event,
                       const Now& now, Effects& effects) {
  if (!std::holds_alternative<session::Corrected>(event) || batch != bench.batch) return;
  const session::CardNames named = session::cards_named_by(event);
  for (const std::string& id : {named.card, named.tool})
    if (const auto card = card_of(bench, id)) lay_out_card(bench, batch, *card, now, effects);
}

}

void record(Bench& bench, const std::string& batch, session::Event event, const Now& now,
            Effects& effects) {
  lay_out_corrected(bench, batch, event, now, effects);
  if (!has_begun(bench)) {
    bench.sitting.began_run_ms = now.run_ms;
    bench.sitting.wall_ahead_ms = now.wall_ms - now.run_ms;
    bench.sitting.utc_offset_min = now.utc_offset_min;
    session::Began began;
    began.version = session::format_version;
    began.session = bench.sitting.session;
    began.device = bench.sitting.device;
    began.local = local_time(now);
    append(bench, "", began, now, effects);
  }
  append(bench, batch, std::move(event), now, effects);
}

void record_at_slab(Bench& bench, session::Event event, const Now& now, Effects& effects) {
  record(bench, bench.batch, std::move(event), now, effects);
  bench.number.reset(); // its panel goes too
  bench.panel = TrailPanel{};
  refold(bench, now);
}

void lay_out_card(Bench& bench, const std::string& batch, const session::Card& card, const Now& now,
                  Effects& effects) {
  if (bench.sitting.laid_out.insert({batch, card.id}).second)
    record(bench, batch, session::LaidOut{card}, now, effects);
}

namespace {

// What the undo pad took back itself would come and go for ever.
bool can_take_back(const Bench& bench, const session::Entry& e) {
  if (e.withdrawn || e.ref.session != bench.sitting.session) return false;
  if (std::holds_alternative<session::Withdrawn>(e.event))
    return bench.sitting.picked_out.count(e.ref.n) > 0;
  return by_hand(e.event) || std::holds_alternative<session::Corrected>(e.event);
}

const session::Entry* entry_at(const session::Batch& batch, const session::Ref& line) {
  for (const session::Entry& e : batch.entries)
    if (e.ref == line) return &e;
  return nullptr;
}

// Begun by a slip of the finger: nothing has been done to it since, by anybody.
const session::Entry* only_begun(const Bench& bench, const session::Batch& batch) {
  const session::Entry* opened = nullptr;
  for (const session::Entry& e : batch.entries) {
    if (!e.withdrawn && by_hand(e.event)) return nullptr;
    if (!e.withdrawn && std::holds_alternative<session::Opened>(e.event)) opened = &e;
  }
  return opened && opened->ref.session == bench.sitting.session ? opened : nullptr;
}

}

std::optional<UndoTarget> undo_target(const Bench& bench) {
  return bench.folded ? undo_target(bench, *bench.folded) : std::nullopt;
}

std::optional<UndoTarget> undo_target(const Bench& bench, const session::Batch& batch) {
  const session::Entry* latest = nullptr;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (can_take_back(bench, *e) && (!latest || e->ref.n > latest->ref.n)) latest = &*e;
    if (latest && !batch.moved) break; // a session's own lines stand in order
  }
  if (!latest && bench.screen == Screen::slab && bench.begun) latest = only_begun(bench, batch);
  if (!latest) return std::nullopt;
  const auto* back = std::get_if<session::Withdrawn>(&latest->event);
  const session::Entry* line = back ? entry_at(batch, back->line) : latest;
  return UndoTarget{latest->ref, line ? line->event : latest->event, back != nullptr};
}

bool question_stands(const Bench& bench, const std::optional<UndoTarget>& target) {
  if (bench.number || is_open<FoundPanel>(bench.panel)) return true;
  const auto* open = std::get_if<LinePanel>(&bench.panel);
  if (!open || bench.screen != Screen::slab || !target) return false;
  const session::Entry* line = line_chosen(bench);
  const auto* corrected = std::get_if<session::Corrected>(&target->event);
  const bool about_it = target->ref == open->line || (corrected && corrected->line == open->line);
  return line && !about_it && doubt_about(bench, *line);
}

bool close_question(Bench& bench, const std::optional<UndoTarget>& target, const Now& now) {
  if (!question_stands(bench, target)) return false;
  bench.number.reset();
  bench.amount = {};
  bench.panel = TrailPanel{};
  say_error(bench, {words::BenchSay::question_closed, {}}, now);
  return true;
}

namespace {

const session::Photo* photo_withdrawn(const session::Batch& batch, const session::Entry& e) {
  const auto* away = std::get_if<session::Withdrawn>(&e.event);
  const session::Entry* line = away && !e.withdrawn ? entry_at(batch, away->line) : nullptr;
  return line ? std::get_if<session::Photo>(&line->event) : nullptr;
}

}

bool photo_taken_away(const Bench& bench, const session::Batch& batch) {
  const auto target = undo_target(bench, batch);
  return target && target->gives_back && std::holds_alternative<session::Photo>(target->event);
}

std::vector<session::Ref> undone_together(const Bench& bench, const session::Batch& batch,
                                          const UndoTarget& target) {
  std::vector<session::Ref> out{target.ref};
  const auto* photo = std::get_if<session::Photo>(&target.event);
  if (!photo || !target.gives_back) return out;
  for (const session::Entry& e : batch.entries) {
    const session::Photo* other = can_take_back(bench, e) ? photo_withdrawn(batch, e) : nullptr;
    const bool same = other && other->sha256 == photo->sha256 && other->of == photo->of;
    if (same && !(e.ref == target.ref)) out.push_back(e.ref);
  }
  return out;
}

bool is_newer(const Bench& bench, const std::string& batch) {
  const session::Logs logs = logs_about(bench, batch);
  return std::any_of(logs.begin(), logs.end(), [](const auto* log) { return log->future; });
}

session::Moment moment_of(const Bench& bench, const Now& now) {
  return {now.wall_ms, bench.sitting.session, now.run_ms - bench.sitting.began_run_ms};
}

session::Logs logs_about(const Bench& bench, const std::string& batch) {
  session::Logs out;
  const auto spoken = bench.speaks_of.find(batch);
  if (spoken == bench.speaks_of.end()) return out;
  for (const std::size_t i : spoken->second) out.push_back(&bench.logs[i]);
  return out;
}

void refold(Bench& bench, const Now& now) {
  bench.folded_run_ms = now.run_ms;
  bench.folded = fold_of_slab(bench, moment_of(bench, now));
  expect(bench);
}

std::string local_time(const Now& now) {
  return words::local_time(now.wall_ms, now.utc_offset_min);
}

// Eight digits would do for one workshop's hundreds; ten thousand make two alike once in eighty.
std::string fresh_id(const Now& now) {
  const std::string first = session::to_hex(now.fresh());
  return first + session::to_hex(now.fresh()).substr(4);
}

}
