#include "bench/advice.hpp"

#include "bench/record.hpp"
#include "paint/range/helping.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bench {

namespace {

using session::Feel;

// What changed since the last feel note: an addition makes the note old.
struct LastNote {
  std::optional<Feel> feel;
  bool added_since = false;
};

LastNote last_note(const session::Batch& batch) {
  LastNote note;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (std::holds_alternative<session::Added>(e->event)) note.added_since = true;
    if (const auto* felt = std::get_if<session::Felt>(&e->event)) {
      note.feel = felt->as;
      return note;
    }
  }
  return note;
}

bool was_mulled(const session::Batch& batch) {
  return std::any_of(batch.passes.begin(), batch.passes.end(),
                     [](const session::Pass& p) { return p.stage == session::Stage::mulling; });
}

// Whether it would dry, from what the room lets gum, glycerin and honey keep. Without any of the
// two it is the room's doing, and no stop mark.
std::optional<paint::Tack> sticky(const paint::Standing& s, const paint::Room& room) {
  if (s.glycerin_g.value + s.honey_g.value <= 0) return std::nullopt;
  const auto index = paint::tack_index(s.gum_g, s.glycerin_g, s.honey_g, room);
  const auto tack = index ? paint::tack(*index) : tl::make_unexpected(index.error());
  return tack && *tack != paint::Tack::dries ? std::optional(*tack) : std::nullopt;
}

// What the hand would find now, since water may have left after the last note.
paint::PredictionAt now_at(const session::Batch& batch, double stronger) {
  const paint::Standing& s = batch.standing;
  const double since = batch.feelings.empty() ? 0 : batch.feelings.back().lost_mL;
  const double lost = std::max(0.0, s.water_lost_mL.value - since);
  return {s.flow_now->value, std::min(1.0, session::dried_off_u * lost / s.liquid_mL_now.value),
          stronger};
}

// Since the last note, by more than a hand would feel.
bool has_dried(const session::Batch& batch) {
  constexpr double felt = 0.97;
  return !batch.feelings.empty() &&
         batch.standing.flow_now->value < felt * batch.feelings.back().flow;
}

bool right_is_likeliest(const session::Expectation& expected, const paint::PredictionAt& now) {
  const auto chances = paint::chances(expected.prediction, now);
  return std::max_element(chances.begin(), chances.end()) == chances.begin() + 2;
}

// ---- too loose

// Minutes until so much has dried off, mulled out, that it is at the middle of right, which rises
// as the gum grows stronger; 0 for more than two hours.
int minutes_to_right(const session::Batch& batch, const session::Expectation& expected) {
  session::Places places = batch.places;
  places.spread = paint::Spread::mulling;
  const double dry_gum = paint::dry_gum(session::sums(places), session::live(places));
  for (int minute = 1; minute <= 120; ++minute) {
    session::dry(places, 60);
    const paint::Live now = session::live(places);
    const double stronger = paint::dry_gum(session::sums(places), now) - dry_gum;
    const double middle = expected.band.middle + expected.prediction.drying * stronger;
    if (now.flow && *now.flow <= std::exp(middle)) return minute;
  }
  return 0;
}

// Nobody dries paint by the minute.
int rounded_minutes(int minutes) {
  for (const auto& [most, said] :
       {std::pair{7, 5}, {12, 10}, {17, 15}, {25, 20}, {45, 30}, {80, 60}})
    if (minutes <= most) return said;
  return 120;
}

// A little of every pigment in it brings a loose paint nearer to the middle of what it wants: a
// fifth of what is there at once is as much as a hand can judge.
constexpr double most_pigment = 0.2;

std::vector<Advice::Pigment> pigments_to(const session::Batch& batch, double more) {
  std::vector<Advice::Pigment> out;
  for (const session::Total& t : batch.totals)
    if (t.card.kind() == session::CardKind::pigment && t.grams.value > 0)
      out.push_back({t.card.id, t.card.name, more * t.grams.value});
  return out;
}

// More pigment takes its share of the gum.
void thicken(const session::Batch& batch, double flow, const paint::GumMarks& marks,
             Advice& advice) {
  const paint::Standing& s = batch.standing;
  const double more = std::min(most_pigment, s.flow_now->value / flow - 1);
  const auto after = paint::gum_state(s.gum_g.value, s.pigment_mL.value * (1 + more), marks);
  if (after == paint::GumState::too_little)
    advice.gum = after;
  else
    advice.pigments = pigments_to(batch, more);
}

Advice loosened(const session::Batch& batch, const session::Expectation& expected,
                const paint::GumMarks& marks, Advice advice) {
  constexpr int least_min = 2;
  const double flow = std::exp(expected.band.middle);
  advice.gum.reset();
  if (has_dried(batch) && right_is_likeliest(expected, now_at(batch, expected.stronger)))
    return advice.kind = Advice::right_by_now, advice;
  const int minutes = minutes_to_right(batch, expected);
  const bool contradicts = batch.standing.flow_now->value <= flow;
  if (contradicts || (minutes > 0 && minutes <= least_min))
    return advice.kind = Advice::judge_again, advice;
  advice.kind = Advice::too_loose;
  advice.dry_min = minutes > 0 ? rounded_minutes(minutes) : 0;
  thicken(batch, flow, marks, advice);
  return advice;
}

// ---- right

// A hand that calls it right twice, at much the same flow, is believed.
bool called_right_twice(const session::Batch& batch) {
  constexpr double much_the_same = 1.1;
  const double most = much_the_same * batch.standing.flow_now->value;
  return std::count_if(batch.feelings.begin(), batch.feelings.end(),
                       [&](const session::Feeling& felt) {
                         return felt.as == Feel::right && !felt.repeats && felt.flow < most;
                       }) > 1;
}

Advice felt_right(const session::Batch& batch, const session::Expectation& expected,
                  const Known& known, Advice advice) {
  if (advice.gum != paint::GumState::too_little) advice.gum.reset();
  if (std::log(batch.standing.flow_now->value) < expected.band.from && !called_right_twice(batch))
    return advice.kind = Advice::judge_again, advice;
  const SmoothState state = smooth_state(batch, known.mulling_left);
  switch (smoothness(state)) {
  case Smoothness::smooth: advice.kind = Advice::there; break;
  case Smoothness::not_looked: advice.kind = Advice::test_dot; break;
  case Smoothness::keep_mulling:
    advice.kind = Advice::keep_mulling;
    advice.mulling = state.left;
    break;
  }
  return advice;
}

// ---- the first helping

// How much of it is still to come, in mL.
paint::Helping still_to_come(const session::Batch& batch, const session::Expectation& expected,
                             const Known& known) {
  const paint::Standing& s = batch.standing;
  const paint::Helping all = paint::first_helping(expected.prediction, known.took_first);
  const double now = s.liquid_mL.value > 0 ? s.flow_now->value : 0;
  return {(all.low - now) * s.pigment_mL.value, (all.high - now) * s.pigment_mL.value};
}

Advice start_with(const paint::Helping& mL, const Measures& of, Advice advice) {
  constexpr double as_a_spoon_fills = 0.95; // where one amount is asked for
  advice.kind = Advice::first_helping;
  advice.low_g = mL.low * of.g_per_mL;
  advice.high_g = mL.high * of.g_per_mL;
  advice.amount.spoons = spoons_between(std::min(mL.low, as_a_spoon_fills * mL.high), mL.high, of);
  return advice;
}

// ---- found dry

// The flow that it had when a hand last did something to it, while it was found dry since and has
// not been felt to be right again.
std::optional<double> flow_before_it_dried(const session::Batch& batch) {
  bool dry = false;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    const auto* found = std::get_if<session::Found>(&e->event);
    const auto* felt = std::get_if<session::Felt>(&e->event);
    if (found && found->as == session::State::dry)
      dry = true;
    else if (felt && !dry && felt->as >= Feel::right)
      return std::nullopt;
    else if (dry && e->flow && by_hand(e->event))
      return e->flow;
  }
  return std::nullopt;
}

// mL of water; 0 where it did not dry, or has it back.
double to_give_back(const session::Batch& batch, const session::Expectation& expected) {
  constexpr double near_enough = 0.9;
  const auto before = flow_before_it_dried(batch);
  if (!before) return 0;
  const double flow = std::min(*before, std::exp(expected.band.to));
  const double now = batch.standing.flow_now->value;
  return now < near_enough * flow ? (flow - now) * batch.standing.pigment_mL.value : 0;
}

Advice give_back(double mL, const Known& known, Advice advice) {
  advice.kind = Advice::give_back;
  advice.mL = mL;
  advice.amount = tapped(known.water.drop_mL, mL, known.water);
  advice.gum.reset();
  return advice;
}

// ---- drops

// As the work that follows will leave it, with nothing added: what is added is judged after that.
paint::PredictionAt after_work(const session::Batch& batch, const session::Expectation& expected,
                               const Known& known, bool by_knife) {
  constexpr double knife_s = 60; // own choice
  const paint::PredictionAt now = now_at(batch, expected.stronger);
  session::Places places = batch.places;
  places.spread = by_knife ? paint::Spread::knife : paint::Spread::mulling;
  const paint::Live before = session::live(places);
  const double gum = paint::dry_gum(session::sums(places), before);
  for (double left = by_knife ? knife_s : known.pass_s; left > 0; left -= 60)
    session::dry(places, std::min(60.0, left));
  const paint::Live then = session::live(places);
  if (!then.flow || !(*then.flow > 0)) return now;
  const double lost = before.liquid_mL - then.liquid_mL;
  return {*then.flow,
          std::min(1.0, now.sd * before.liquid_mL / then.liquid_mL +
                            session::dried_off_u * lost / then.liquid_mL),
          now.stronger + paint::dry_gum(session::sums(places), then) - gum};
}

// The flow that a hand last found too sticky, where the range does not say that it cannot be: to be
// there again is no risk of its own.
double flow_felt_sticky(const session::Batch& batch, const session::Expectation& expected) {
  if (batch.feelings.empty()) return 0;
  const session::Feeling& last = batch.feelings.back();
  const bool sticky = last.as < Feel::right && !last.unwetted;
  return sticky && std::log(last.flow) < expected.band.middle ? last.flow : 0;
}

// Rounds of so much until right begins, each as far as this one; 0: one or two, or nobody knows.
int rounds_to_right(double felt, double then, const session::Expectation& expected) {
  constexpr double most = 12;
  if (!(felt > 0) || !(then > felt)) return 0;
  const double rounds = std::ceil((expected.band.from - std::log(felt)) / std::log(then / felt));
  return rounds > 2 && rounds <= most ? static_cast<int>(rounds) : 0;
}

struct Helping {
  double least_mL = 0, most_mL = 0;
};

// No odd drops where there are many.
double up_to_fives(double mL, const Measures& of) {
  const double five_mL = 5 * of.drop_mL;
  return mL > five_mL ? five_mL * std::ceil(mL / five_mL) : mL;
}

// No less than the work that follows dries off, and a step; no more than is safe after it, nor than
// a spoon: then it is judged.
Helping drops_to_add(const session::Batch& batch, const session::Expectation& expected,
                     const paint::PredictionAt& after, double felt, const Measures& of,
                     bool of_water) {
  constexpr double least_step = 1.02, a_little_more = 0.02;
  const double pigment_mL = batch.standing.pigment_mL.value;
  const double least_mL = std::max(0.0, (least_step * felt - after.mL) * pigment_mL);
  const double safe_mL =
      of.drop_mL * paint::safe_drops(expected.prediction, after, of.drop_mL / pigment_mL,
                                     of_water ? -paint::dry_gum_put_in(batch.standing) : 0);
  const double once_mL = of.spoon_mL > 0 ? std::min(safe_mL, of.spoon_mL) : safe_mL;
  const double fives_mL = up_to_fives(least_mL, of);
  const bool a_little = fives_mL - least_mL < a_little_more * batch.standing.liquid_mL_now.value;
  return {least_mL, std::max(a_little ? fives_mL : least_mL, once_mL)};
}

// What was asked for is there, all but what nobody would add.
bool is_there(const session::Batch& batch, const Helping& left, const Measures& of) {
  constexpr double nearly = 0.01; // of the liquid
  constexpr double a_few = 5;     // drops are said by fives
  return left.most_mL < nearly * batch.standing.liquid_mL_now.value ||
         (left.most_mL < a_few * of.drop_mL && left.least_mL < 1.5 * of.drop_mL);
}

Advice drop_by_drop(const session::Batch& batch, const session::Expectation& expected,
                    const Measures& binder, const Known& known, Advice advice) {
  advice.kind = Advice::mull_and_judge;
  advice.water = advice.gum == paint::GumState::too_much;
  const Measures& of = advice.water ? known.water : binder;
  const paint::PredictionAt after = after_work(batch, expected, known, advice.by_knife);
  const double felt = flow_felt_sticky(batch, expected);
  const Helping left = drops_to_add(batch, expected, after, felt, of, advice.water);
  if (last_note(batch).added_since && (running(batch) || is_there(batch, left, of))) return advice;
  advice.amount = tapped(left.least_mL, left.most_mL, of);
  const double mL = mL_of(advice.amount, of);
  if (!(mL > 0)) return advice;
  advice.kind = Advice::add_drops;
  advice.rounds = rounds_to_right(felt, after.mL + mL / batch.standing.pigment_mL.value, expected);
  return advice;
}

// Once the powder was wetted out.
bool was_felt(const session::Batch& batch) {
  return std::any_of(batch.feelings.begin(), batch.feelings.end(),
                     [](const session::Feeling& felt) { return !felt.unwetted; });
}

Advice work_in(Advice advice) {
  advice.kind = Advice::work_in;
  return advice;
}

// With liquid in it.
Advice advise_on(const session::Batch& batch, const session::Expectation& expected,
                 const Measures& of, const Known& known, Advice advice) {
  const paint::Standing& s = batch.standing;
  const auto marks = session::marks_of(known.verdicts, session::family_of(batch));
  advice.gum = paint::gum_state(s.gum_g.value, s.pigment_mL.value, marks);
  advice.by_knife = !was_mulled(batch);
  advice.sticky = sticky(s, batch.places.room);
  const LastNote note = last_note(batch);
  const bool fresh = note.feel && !note.added_since;
  advice.sticky_now = fresh && *note.feel < Feel::right;
  if (const double mL = to_give_back(batch, expected); mL > 0) return give_back(mL, known, advice);
  if (fresh && *note.feel > Feel::right) return loosened(batch, expected, marks, advice);
  if (fresh && !batch.feelings.empty() && batch.feelings.back().unwetted) return work_in(advice);
  const bool still =
      !has_dried(batch) || right_is_likeliest(expected, now_at(batch, expected.stronger));
  if (fresh && *note.feel == Feel::right && still)
    return felt_right(batch, expected, known, advice);
  constexpr double least_of_rest = 0.7;
  const paint::Helping rest = still_to_come(batch, expected, known);
  if (advice.by_knife && !note.feel && rest.low > 0 && rest.high > most_counted / 3 * of.drop_mL) {
    advice.rest = true;
    return start_with({least_of_rest * rest.high, rest.high}, of, advice);
  }
  if (advice.by_knife && !was_felt(batch)) return work_in(advice);
  return drop_by_drop(batch, expected, of, known, advice);
}

}

double advised_mL(const Advice& advice, const Measures& binder, const Known& known) {
  if (advice.kind != Advice::add_drops) return 0;
  return mL_of(advice.amount, advice.water ? known.water : binder);
}

double took_first(const session::Batch& batch) {
  for (const session::Entry& e : batch.entries) {
    if (e.withdrawn) continue;
    const auto* felt = std::get_if<session::Felt>(&e.event);
    const auto* stage = std::get_if<session::StageBegan>(&e.event);
    if (felt && felt->as > Feel::right) return 0;
    if (felt || (stage && stage->stage == session::Stage::mulling))
      return e.flow_before.value_or(0);
  }
  return 0;
}

Advice advise(const session::Batch& batch, const std::optional<session::Expectation>& expected,
              const Measures& of, const Known& known) {
  Advice advice;
  if (batch.progress != session::Progress::open) return advice.kind = Advice::gathered, advice;
  if (!batch.standing.flow_now || !expected) return advice;
  advice.hint = expected->band.of_studio < taught_enough;
  if (batch.standing.liquid_mL.value <= 0)
    return start_with(still_to_come(batch, *expected, known), of, advice);
  return advise_on(batch, *expected, of, known, advice);
}

}
