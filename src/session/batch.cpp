#include "session/batch.hpp"

#include "paint/water.hpp"
#include "session/amounts.hpp"
#include "session/covered.hpp"
#include "session/feelings.hpp"
#include "session/folding.hpp"
#include "words/lists.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace session {

namespace {

using Say = words::SessionSay;

constexpr Clock finest_step_s = 10; // of the trail while water leaves
constexpr double most_steps = 60;   // between two lines

std::string name_of(const Ref& ref) { return ref.session + " " + std::to_string(ref.n); }

void mark_trail(Batch& batch, bool after_gap) {
  const auto flow = live(batch.places).flow;
  if (!flow || sums(batch.places).liquid_mL <= 0) return;
  batch.trail.push_back({batch.clock, *flow, after_gap});
}

bool dries(const Places& places) {
  if (in_hand(places) != Place::slab) return false;
  return sums(places).pigment_g > 0 && sums(places).water_g > 0;
}

// Time in which nothing left.
void pass_by(Batch& batch, Clock until) {
  const bool gap = until - batch.clock > gap_s;
  batch.clock = std::max(batch.clock, until);
  mark_trail(batch, gap);
}

void end_pass(Batch& batch, Clock at, bool cut_short = false) {
  if (batch.passes.empty() || batch.passes.back().end) return;
  batch.passes.back().end = at;
  batch.passes.back().cut_short = cut_short;
  if (sums(batch.places).liquid_mL > 0) batch.powder_is_dry = false;
}

// Lets the paint dry up to a moment, leaving points of the trail on the way.
void dry_until(Batch& batch, Clock until) {
  const Clock whole = until - batch.clock;
  if (whole <= 0) return;
  const bool gap = whole > gap_s;
  if (!dries(batch.places)) return pass_by(batch, until);
  const double steps = gap ? 1 : std::min(most_steps, std::ceil(whole / finest_step_s));
  const Clock start = batch.clock;
  for (int i = 1; i <= static_cast<int>(steps); ++i) {
    const Clock next = start + whole * i / steps;
    dry(batch.places, next - batch.clock);
    batch.clock = next;
    mark_trail(batch, gap);
  }
}

const Quantity all_of_it;

bool lies(const Places& places, Place place) { return places.at.count(place) > 0; }

// A tap alone wets nothing.
void end_work(Batch& batch, const FoldState& state) {
  const Pass* pass = running(batch);
  const bool dry = batch.powder_is_dry;
  const bool wetted = pass && batch.clock - std::max(pass->start, state.powder_at) >= put_away_s;
  end_pass(batch, batch.clock);
  if (!wetted) batch.powder_is_dry = dry;
}

void begin_stage(Batch& batch, FoldState& state, const StageBegan& s, const std::string& session) {
  end_work(batch, state);
  state.lies_open = false;
  batch.progress = Progress::open;
  if (!lies(batch.places, Place::slab) && lies(batch.places, Place::jar)) {
    move(batch.places, Place::jar, Place::slab, all_of_it, "");
    take_up(batch.places, session);
  }
  batch.places.spread = s.stage == Stage::wetting_out ? paint::Spread::knife
                        : s.stage == Stage::mulling   ? paint::Spread::mulling
                                                      : paint::Spread::gathered;
  state.pass_session = session;
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

void put_in(Batch& batch, const Card& card, const paint::Amount& grams, Ref ref) {
  const auto material = material_of(card);
  if (!material) {
    batch.warnings.push_back({WarningKind::unknown_recipe, ref, {}, material.error()});
    return;
  }
  put_in(batch.places, card.id, *material, grams);
  if (material->parts.pigment > 0 && grams.value > 0) batch.powder_is_dry = true;
}

void warn(Batch& batch, WarningKind kind, const Ref& ref, const Fault& fault) {
  if (fault) batch.warnings.push_back({kind, ref, {}, fault});
}

void set_room(Batch& batch, const RoomSet& r, const Ref& ref) {
  const auto room = paint::room(r.celsius, r.humidity * 100);
  if (room)
    batch.places.room = *room;
  else
    warn(batch, WarningKind::amount_unreadable, ref, room.error());
  batch.room_guessed = r.guessed;
}

bool is_all(const Quantity& quantity) { return !quantity.g && quantity.share == 1; }

// A pass goes on over what is still on the slab.
void move_paint(Batch& batch, Place from, std::optional<Place> to, const Quantity& quantity,
                const Ref& ref) {
  if (from == Place::slab && to == Place::jar && is_all(quantity) && lies(batch.places, from))
    gather(batch.places, ref.session);
  else if (const Fault fault = move(batch.places, from, to, quantity, name_of(ref)))
    warn(batch, WarningKind::not_moved, ref, fault);
  else if (to == Place::slab)
    take_up(batch.places, ref.session);
  const bool on_slab = lies(batch.places, Place::slab);
  if (!on_slab && !batch.places.at.empty()) {
    end_pass(batch, batch.clock);
    batch.progress = Progress::gathered;
  }
  if (on_slab && batch.progress == Progress::gathered) {
    batch.progress = Progress::open;
    batch.places.spread = paint::Spread::gathered;
  }
}

void bring_back(Batch& batch, const FoldState& state, const AsBefore& as, const Ref& ref) {
  const auto before = state.named.find(as.line);
  const Fault fault = before == state.named.end()
                          ? words::Error{Say::as_before_nothing, {name_of(as.line)}}
                          : bring_back(batch.places, before->second, name_of(ref));
  warn(batch, WarningKind::not_weighed, ref, fault);
}

// What went in is known better afterwards: outright where all of it was weighed, else by as much as
// this part of it turned out to be more or less.
void correct_total(Total& total, const paint::Amount& counted, const paint::Amount& known) {
  const bool whole = std::abs(counted.value - total.grams.value) < 1e-9 * total.grams.value;
  const double value = total.grams.value + known.value - counted.value;
  if (whole) total.grams = known;
  total.grams.value = value;
}

void weigh_paint(Batch& batch, const Weighed& weighed, const Entry& e) {
  const auto counted = with_tools(batch.places, weighed.place).contents;
  const auto known = weigh(batch.places, weighed, name_of(e.ref), e.confirmed);
  if (!known) return warn(batch, WarningKind::not_weighed, e.ref, known.error());
  for (std::size_t i = 0; i < counted.size(); ++i)
    for (Total& total : batch.totals)
      if (total.card.id == counted[i].card)
        correct_total(total, counted[i].grams, known->contents[i].grams);
}

paint::Mixture paint_in_hand(const Batch& batch) {
  const auto here = batch.places.at.find(in_hand(batch.places));
  return here == batch.places.at.end() ? paint::Mixture{} : here->second.paint;
}

// Of what stayed on the tools too.
paint::Amount dried_off(const Batch& batch) {
  const paint::Mixture all = with_tools(batch.places, in_hand(batch.places));
  return paint::scaled(paint::water_gone(all, batch.places.bench), paint::water_mL_per_g);
}

void pour(Batch& batch, const Poured& p, const Card* in, const Ref& ref, std::int64_t at) {
  if (batch.pans.empty()) batch.dried_mL = dried_off(batch);
  if (const Fault fault = into_no_pan(p, in))
    return warn(batch, WarningKind::not_poured, ref, fault);
  warn(batch, WarningKind::not_poured, ref,
       pour(batch.pans, batch.places, p, *in, {ref, batch.clock, at}, name_of(ref)));
  if (!lies(batch.places, Place::slab) && batch.progress == Progress::open) {
    end_pass(batch, batch.clock);
    batch.progress = Progress::gathered;
  }
}

void read_scale(Batch& batch, const PanWeighed& w, const Ref& ref, std::int64_t at) {
  for (Pan& pan : batch.pans)
    if (pan.number == w.pan) return pan.readings.push_back({batch.clock, at, w.g});
  warn(batch, WarningKind::not_weighed, ref,
       words::Error{Say::pan_never_poured, {std::to_string(w.pan)}});
}

void leave_slab(Batch& batch, Progress progress, const Ref& ref) {
  end_pass(batch, batch.clock);
  gather(batch.places, ref.session);
  batch.progress = progress;
}

// What a line does to the batch, beside adding.
struct Apply {
  Batch& batch;
  FoldState& state;
  const Card* card; // that the line pours into
  const Entry& e;
  const Ref& ref = e.ref;
  std::int64_t at = e.at;

  void operator()(const Opened& o) const {
    batch.name = o.name;
    batch.again_of = o.again_of;
    if (is_nameless(o)) batch.warnings.push_back({WarningKind::nameless, ref, ""});
  }
  void operator()(const Planned& p) const { batch.plan = Plan{ref, p}; }
  void operator()(const CautionsSeen&) const { batch.cautions_seen = true; }
  void operator()(const Found& f) const {
    if (f.as == State::dry) dry_out(batch.places);
  }
  void operator()(const Poured& p) const { pour(batch, p, card, ref, at); }
  void operator()(const PanWeighed& w) const { read_scale(batch, w, ref, at); }
  void operator()(const Verdict& v) const { batch.verdicts.push_back({ref, at, v}); }
  void operator()(const Photo& p) const {
    if (p.measured) batch.swatch = p.measured;
  }
  void operator()(const RoomSet& r) const { set_room(batch, r, ref); }
  void operator()(const StageBegan& s) const { begin_stage(batch, state, s, ref.session); }
  void operator()(const Gathered&) const { leave_slab(batch, Progress::gathered, ref); }
  void operator()(const Closed&) const { leave_slab(batch, Progress::closed, ref); }
  void operator()(const Discarded&) const { batch.discarded = true; }
  void operator()(const Moved& m) const { move_paint(batch, m.from, m.to, m.quantity, ref); }
  void operator()(const Lost& l) const { move_paint(batch, l.from, std::nullopt, l.quantity, ref); }
  void operator()(const Weighed& w) const { weigh_paint(batch, w, e); }
  void operator()(const AsBefore& as) const { bring_back(batch, state, as, ref); }
  void operator()(const Unknown& u) const {
    batch.warnings.push_back({WarningKind::unknown_event, ref, u.e});
  }
  template <words::one_of<Began, LaidOut, PutAway, Bought, StockWeighed, Making, Told, Added, Felt,
                          GoesOn, Dot, Trouble, BottleWeighed, CountLost, Noted, SetAside,
                          Confirmed, Withdrawn, Corrected, Gone, ClockJumped, Left>
                Elsewhere>
  void operator()(const Elsewhere&) const {}
};

void add(Batch& batch, const Entry& e, const Card& card, const paint::Amount& grams) {
  Total& total = total_of(batch, card);
  if (const auto* added = std::get_if<Added>(&e.event)) count(total, *added);
  if (std::holds_alternative<CountLost>(e.event)) total.count_lost = true;
  total.grams = total.grams + grams;
  put_in(batch, card, grams, e.ref);
}

// A pass that was left running has ended with what a hand did last; signs of life are no hand's.
void end_forgotten(FoldState& state) {
  Batch& batch = state.batch;
  if (!running(batch) || batch.clock - state.handled_at <= unattended_s) return;
  end_pass(batch, state.handled_at, true);
  batch.passes.back().left_running = state.lies_open = true;
}

// A pass belongs to the session that began it: when another session speaks, or none does any more,
// it had ended with its own session's last line.
void leave_session(FoldState& state, const std::string& next, Clock left_at) {
  if (state.pass_session.empty() || state.pass_session == next) return;
  if (running(state.batch)) dry_until(state.batch, left_at);
  end_forgotten(state);
  end_pass(state.batch, state.batch.clock, true);
  state.wet_at.reset();
  state.lies_open = false;
  state.pass_session.clear();
  state.batch.places.spread = paint::Spread::gathered;
}

void look_for_wrong_clock(Batch& batch, const Moment& now) {
  const Grown<Entry>& all = batch.entries; // in order of `at`
  const auto ahead = [&](const Entry& e) { return e.at > now.at + a_day_ms; };
  const auto first = std::partition_point(all.begin(), all.end(), std::not_fn(ahead));
  const auto others = [&](const Entry& e) { return e.ref.session != now.session; };
  const auto wrong = std::find_if(first, all.end(), others);
  if (wrong != all.end()) batch.warnings.push_back({WarningKind::clock_ahead, wrong->ref, ""});
}

// A session names what it plans with, in full, as it does what it adds.
void look_for_planned_cards(Batch& batch) {
  if (!batch.plan) return;
  std::vector<std::string> named;
  for (const Planned::Take& take : batch.plan->of.takes) named.push_back(take.of);
  if (batch.plan->of.pans > 0) named.push_back(batch.plan->of.in);
  for (const std::string& card : named)
    if (!batch.cards.count(card))
      batch.warnings.push_back({WarningKind::unknown_plan, batch.plan->line, card});
}

Clock clock_of(const Moment& now, const BatchLines& lines, std::int64_t opened_at, Clock last) {
  const auto anchor = lines.anchors.find(now.session);
  const double own = anchor == lines.anchors.end()
                         ? static_cast<double>(now.at - opened_at) / 1000
                         : anchor->second + static_cast<double>(now.t) / 1000;
  return std::max(last, own);
}

// Up to now, or as far as is known of a pass: whether one runs that nobody has ended, only now
// tells.
void go_on_until(FoldState& state, const BatchLines& lines, const std::optional<Moment>& now) {
  Batch& batch = state.batch;
  const auto end = lines.ends.find(state.pass_session);
  const Clock left_at = end == lines.ends.end() ? batch.clock : end->second;
  if (now) {
    const Clock until = clock_of(*now, lines, batch.opened_at, batch.clock);
    leave_session(state, now->session, std::min(left_at, until));
    dry_until(batch, until);
    end_forgotten(state);
  } else if (running(batch) || state.lies_open) {
    dry_until(batch, left_at);
    end_forgotten(state);
    if (lines.over.count(state.pass_session) > 0) leave_session(state, "", left_at);
  }
}

}

void take(FoldState& state, FoldLines& lines) {
  const std::size_t i = state.taken++;
  Batch& batch = state.batch;
  Entry& e = lines.of.entries.change(i);
  e.grams.reset();
  e.place = Place::slab;
  leave_session(state, e.ref.session, lines.of.left_at[i]);
  if (was_covered(lines.of.entries, i))
    pass_by(batch, e.clock);
  else
    dry_until(batch, e.clock);
  end_forgotten(state);
  if (!std::holds_alternative<GoesOn>(e.event)) state.handled_at = batch.clock;
  e.flow_before = live(batch.places).flow;
  const Card* card = lines.of.cards[i].get();
  if (!e.withdrawn) std::visit(Apply{batch, state, card, e}, e.event);
  if (!e.withdrawn && card && !batch.newer && lines.amounts[i]) {
    add(batch, e, *card, *lines.amounts[i]);
    if (!is_liquid(card->kind())) state.powder_at = batch.clock;
    e.place = in_hand(batch.places);
    e.grams = lines.amounts[i];
  }
  e.flow = live(batch.places).flow;
  feel(state, e, paint_in_hand(batch));
  if (felt_worked_in(batch, e.ref)) batch.powder_is_dry = false;
  if (e.flow != e.flow_before) mark_trail(batch, false);
  if (lines.named.count(e.ref)) state.named[e.ref] = paint_in_hand(batch);
  batch.last_at = e.at;
}

Batch finished(FoldState state, Grown<Entry> entries, const BatchLines& lines,
               const std::optional<Moment>& now) {
  Batch& batch = state.batch;
  batch.entries = std::move(entries);
  for (const auto& [id, card] : lines.laid_out) batch.cards.emplace(id, *card);
  batch.warnings.insert(batch.warnings.begin(), lines.warnings.begin(), lines.warnings.end());
  batch.moved = lines.moved;
  batch.bottles = lines.bottles;
  batch.damaged = lines.damaged;
  look_for_planned_cards(batch);
  if (now) look_for_wrong_clock(batch, *now);
  if (batch.progress == Progress::open) go_on_until(state, lines, now);
  batch.standing = paint::stand(paint_in_hand(batch), batch.places.bench);
  if (batch.pans.empty()) batch.dried_mL = dried_off(batch);
  return std::move(batch);
}

Logs all_of(const std::vector<Log>& logs) {
  Logs out;
  for (const Log& log : logs) out.push_back(&log);
  return out;
}

}
