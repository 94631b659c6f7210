#include "session/batch.hpp"

#include "paint/drying.hpp"
#include "session/amounts.hpp"

#include <algorithm>
#include <cmath>

namespace session {

namespace {

constexpr Clock gap_s = 1800;       // longer than this between two lines: nobody was there
constexpr Clock finest_step_s = 10; // of the trail while water leaves
constexpr double most_steps = 60;   // between two lines

// What the fold carries from line to line beside the batch itself.
struct Hand {
  paint::Spread spread = paint::Spread::gathered;
  double water_lost_g = 0;
  std::string pass_session;
  std::map<std::string, std::size_t> portion_of; // card -> index in contents
};

void restand(Batch& batch, const Hand& hand) {
  const double u = paint::relative_u({}) * hand.water_lost_g;
  batch.standing = paint::stand(batch.contents, {hand.water_lost_g, 0, {{"evaporation", u}}});
}

void mark_trail(Batch& batch, bool after_gap) {
  if (!batch.standing.flow_now || batch.standing.liquid_mL.value <= 0) return;
  batch.trail.push_back({batch.clock, batch.standing.flow_now->value, after_gap});
}

// Lets the paint dry up to a moment, leaving points of the trail on the way.
void dry_until(Batch& batch, Hand& hand, Clock until) {
  const Clock whole = until - batch.clock;
  if (whole <= 0) return;
  const bool gap = whole > gap_s;
  const bool wet_paint = batch.standing.pigment_g.value > 0 && batch.standing.water_g > 0;
  if (!wet_paint || hand.spread == paint::Spread::covered) {
    batch.clock = until;
    return mark_trail(batch, gap);
  }
  const double steps = gap ? 1 : std::min(most_steps, std::ceil(whole / finest_step_s));
  const Clock start = batch.clock;
  for (int i = 1; i <= static_cast<int>(steps); ++i) {
    const Clock next = start + whole * i / steps;
    const paint::Wet before = paint::wet_of(batch.standing);
    const auto left = paint::water_after(before, hand.spread, batch.room, next - batch.clock);
    // In a room so damp that nothing is known of it, nothing dries.
    hand.water_lost_g += before.water_g - left.value_or(before.water_g);
    batch.clock = next;
    restand(batch, hand);
    mark_trail(batch, gap);
  }
}

void end_pass(Batch& batch, Clock at) {
  if (batch.passes.empty() || batch.passes.back().end) return;
  batch.passes.back().end = at;
  if (batch.standing.liquid_mL.value > 0) batch.powder_is_dry = false;
}

void begin_stage(Batch& batch, Hand& hand, const StageBegan& s, const std::string& session) {
  end_pass(batch, batch.clock);
  batch.progress = Progress::open;
  hand.spread = s.stage == Stage::wetting_out ? paint::Spread::knife
                : s.stage == Stage::mulling   ? paint::Spread::mulling
                                              : paint::Spread::gathered;
  hand.pass_session = session;
  if (s.stage == Stage::resting) return;
  const auto earlier = std::count_if(batch.passes.begin(), batch.passes.end(),
                                     [](const Pass& p) { return p.stage == Stage::mulling; });
  const int number = s.stage == Stage::mulling ? static_cast<int>(earlier) + 1 : 0;
  batch.passes.push_back({s.stage, number, batch.clock, std::nullopt});
}

Total& total_of(Batch& batch, const Card& card) {
  for (Total& t : batch.totals)
    if (t.card.id == card.id) return t;
  Total fresh;
  fresh.card = card;
  batch.totals.push_back(std::move(fresh));
  return batch.totals.back();
}

void count(Total& total, const Added& added) {
  if (added.unit == Unit::drops) total.drops += added.amount;
  if (added.unit == Unit::spoons) total.spoons[added.with] += added.amount;
  if (added.unit == Unit::g) total.weighed_g += added.amount;
}

void put_in(Batch& batch, Hand& hand, const Card& card, const paint::Amount& grams, Ref ref) {
  const auto material = material_of(card);
  if (!material) {
    batch.warnings.push_back({WarningKind::unknown_recipe, ref, words::message(material.error())});
    return;
  }
  const auto [at, fresh] = hand.portion_of.try_emplace(card.id, batch.contents.size());
  if (fresh) {
    batch.contents.emplace_back();
    batch.contents.back().material = *material;
    batch.contents.back().card = card.id;
  }
  paint::Amount& held = batch.contents[at->second].grams;
  held = held + grams;
  if (material->parts.pigment > 0 && grams.value > 0) batch.powder_is_dry = true;
  restand(batch, hand);
}

void apply(Batch& batch, Hand& hand, const Entry& e, const Card* card,
           const std::optional<paint::Amount>& grams) {
  if (const auto* o = std::get_if<Opened>(&e.event)) batch.name = o->name;
  if (const auto* r = std::get_if<RoomSet>(&e.event)) {
    const auto room = paint::room(r->celsius, r->humidity * 100);
    if (room)
      batch.room = *room;
    else
      batch.warnings.push_back(
          {WarningKind::amount_unreadable, e.ref, words::message(room.error())});
    batch.room_guessed = r->guessed;
  }
  if (const auto* s = std::get_if<StageBegan>(&e.event))
    begin_stage(batch, hand, *s, e.ref.session);
  if (std::holds_alternative<Gathered>(e.event) || std::holds_alternative<Closed>(e.event)) {
    end_pass(batch, batch.clock);
    hand.spread = paint::Spread::covered;
    batch.progress =
        std::holds_alternative<Closed>(e.event) ? Progress::closed : Progress::gathered;
  }
  if (std::holds_alternative<Unknown>(e.event))
    batch.warnings.push_back({WarningKind::unknown_event, e.ref, std::get<Unknown>(e.event).e});
  if (!card || !grams) return;
  if (const auto* added = std::get_if<Added>(&e.event)) count(total_of(batch, *card), *added);
  if (std::holds_alternative<CountLost>(e.event)) total_of(batch, *card).count_lost = true;
  Total& total = total_of(batch, *card);
  total.grams = total.grams + *grams;
  put_in(batch, hand, *card, *grams, e.ref);
}

// A pass belongs to the session that began it: when another session speaks, it had ended with the
// last line before.
void leave_session(Batch& batch, Hand& hand, const std::string& next) {
  if (hand.pass_session.empty() || hand.pass_session == next) return;
  end_pass(batch, batch.clock);
  hand.pass_session.clear();
  if (hand.spread != paint::Spread::covered) hand.spread = paint::Spread::gathered;
}

void look_for_wrong_clock(Batch& batch, const Moment& now) {
  const auto wrong = std::find_if(batch.entries.begin(), batch.entries.end(), [&](const Entry& e) {
    return e.at > now.at + a_day_ms && e.ref.session != now.session;
  });
  if (wrong != batch.entries.end())
    batch.warnings.push_back({WarningKind::clock_ahead, wrong->ref, ""});
}

Clock clock_of(const Moment& now, const BatchLines& lines, std::int64_t opened_at, Clock last) {
  const auto anchor = lines.anchors.find(now.session);
  const double own = anchor == lines.anchors.end()
                         ? static_cast<double>(now.at - opened_at) / 1000
                         : anchor->second + static_cast<double>(now.t) / 1000;
  return std::max(last, own);
}

}

std::optional<Batch> fold(const Logs& logs, const std::string& id,
                          const std::optional<Moment>& now) {
  BatchLines lines = lines_of(logs, id);
  const auto opened = std::find_if(lines.entries.begin(), lines.entries.end(), [](const Entry& e) {
    return std::holds_alternative<Opened>(e.event) && !e.withdrawn;
  });
  if (opened == lines.entries.end()) return std::nullopt;
  const auto amounts = amounts_of(lines);
  Batch batch;
  batch.id = id;
  batch.opened_at = opened->at;
  batch.cards = lines.laid_out;
  batch.warnings = lines.warnings;
  batch.damaged = lines.damaged;
  batch.newer = lines.newer;
  Hand hand;
  for (std::size_t i = 0; i < lines.entries.size(); ++i) {
    Entry& e = lines.entries[i];
    leave_session(batch, hand, e.ref.session);
    dry_until(batch, hand, e.clock);
    const auto flow = [&] {
      return batch.standing.flow_now ? std::optional(batch.standing.flow_now->value) : std::nullopt;
    };
    e.flow_before = flow();
    const Card* summed = batch.newer ? nullptr : lines.cards[i];
    if (!e.withdrawn) apply(batch, hand, e, summed, amounts[i]);
    e.flow = flow();
    if (e.flow != e.flow_before) mark_trail(batch, false);
    batch.last_at = e.at;
  }
  batch.entries = std::move(lines.entries);
  if (now) look_for_wrong_clock(batch, *now);
  if (now && batch.progress == Progress::open) {
    leave_session(batch, hand, now->session);
    dry_until(batch, hand, clock_of(*now, lines, batch.opened_at, batch.clock));
  }
  return batch;
}

Logs all_of(const std::vector<Log>& logs) {
  Logs out;
  for (const Log& log : logs) out.push_back(&log);
  return out;
}

std::vector<std::string> batch_ids(const Logs& logs) {
  std::map<std::string, std::int64_t> first;
  for (const Log* log : logs)
    for (const Line& line : log->lines) {
      if (!std::holds_alternative<Opened>(line.event) || line.batch.empty()) continue;
      const auto [at, fresh] = first.try_emplace(line.batch, line.at);
      at->second = std::min(at->second, line.at);
    }
  std::vector<std::string> ids;
  for (const auto& [id, at] : first) ids.push_back(id);
  std::stable_sort(ids.begin(), ids.end(),
                   [&](const auto& a, const auto& b) { return first[a] < first[b]; });
  return ids;
}

double seconds_of(const Batch& batch, Stage stage) {
  double sum = 0;
  for (const Pass& p : batch.passes)
    if (p.stage == stage) sum += p.end.value_or(batch.clock) - p.start;
  return sum;
}

const Pass* running(const Batch& batch) {
  const bool runs = !batch.passes.empty() && !batch.passes.back().end;
  return runs ? &batch.passes.back() : nullptr;
}

namespace {
template <class E>
const E* last_standing(const Batch& batch) {
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e)
    if (const E* found = std::get_if<E>(&e->event); found && !e->withdrawn) return found;
  return nullptr;
}
}

std::optional<Specks> last_dot(const Batch& batch) {
  const auto* dot = last_standing<Dot>(batch);
  return dot ? std::optional(dot->specks) : std::nullopt;
}

std::vector<BatchPigment> pigments(const Batch& batch) {
  std::vector<BatchPigment> out;
  double sum = 0;
  for (const Total& t : batch.totals) {
    if (t.card.is_a != CardKind::pigment || t.grams.value <= 0) continue;
    out.push_back({&t.card, t.grams.value / t.card.pigment.g_per_mL});
    sum += out.back().volume_share;
  }
  for (BatchPigment& p : out) p.volume_share /= sum;
  return out;
}

}
