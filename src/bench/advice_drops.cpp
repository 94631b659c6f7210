#include "bench/advice_parts.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bench {

namespace {

using session::Feel;

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

// Whether right may begin further off than two rounds like this one, in one of ten. No number of
// them is said: steps grow shorter the nearer they come, and the range moves with each note.
bool takes_several(double felt, double then, const session::Expectation& expected) {
  constexpr double few = 2, sure = 0.9;
  if (!(felt > 0) || !(then > felt)) return false;
  const auto [low, high] = std::pair{paint::mL_at_share(expected.prediction, 0.5),
                                     paint::mL_at_share(expected.prediction, sure)};
  const double from = expected.band.from + std::log(high / low);
  return from - std::log(felt) > few * std::log(then / felt);
}

struct Helping {
  double least_mL = 0, most_mL = 0;
};

// No odd drops where there are many; less than one more is none, as paint dries while it is read.
double up_to_fives(double mL, const Measures& of) {
  const double five_mL = 5 * of.drop_mL;
  return mL > five_mL ? five_mL * std::ceil((mL - of.drop_mL) / five_mL) : mL;
}

// No less than the work that follows dries off, and a step; no more than is safe after it, nor than
// a spoon: then it is judged.
Helping drops_to_add(const session::Batch& batch, const session::Expectation& expected,
                     const paint::PredictionAt& after, double felt, const Measures& of,
                     bool of_water) {
  // Each pass dries off more water: a step of it is half as wide as right, so that it arrives.
  constexpr double step_of_binder = 1.02, step_of_water = 1.06, a_little_more = 0.02;
  const double least_step = of_water ? step_of_water : step_of_binder;
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

// A pass since something was put in or felt: its end is judged, not its start. Who has looked at a
// dot in a pass that goes on has judged it.
bool is_unjudged_pass(const session::Batch& batch, const Known& known) {
  const session::Pass* pass = running(batch);
  const bool mulls = pass && pass->stage == session::Stage::mulling;
  if (!mulls) return is_worked_since(batch, known);
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (std::holds_alternative<session::StageBegan>(e->event)) return true;
    if (std::holds_alternative<session::Felt>(e->event) ||
        std::holds_alternative<session::Dot>(e->event))
      return false;
  }
  return false;
}

// mL of binder until there is as much gum as the paint likely wants, as its binder brings it; below
// 0: there is more. What dried off was water.
double gum_lacks_mL(const session::Batch& batch, const session::Expectation& expected,
                    const Measures& binder) {
  constexpr double enough = 1.06; // of a guess, rather a little more: own choice
  const paint::Standing& s = batch.standing;
  if (!(s.binder_g.value > 0) || !(s.liquid_g.value > 0)) return 0;
  const double weaker = s.gum_g.value / s.binder_g.value - paint::dry_gum_put_in(s);
  const double wants =
      std::exp(expected.band.middle + expected.prediction.drying * (weaker - expected.stronger));
  return enough * wants * s.pigment_mL.value - s.binder_g.value / binder.g_per_mL;
}

// Under the muller, since the last pigment: what has left it since then was water.
bool was_felt_right(const session::Batch& batch) {
  auto note = batch.feelings.rbegin();
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (is_pigment(batch, *e)) return false;
    if (note == batch.feelings.rend() || note->line != e->ref) continue;
    if (note->as == Feel::right && note->by == session::By::muller && !note->set_aside) return true;
    ++note;
  }
  return false;
}

// What is too sticky after that, the muller judges better.
bool is_enough_knife(const session::Batch& batch, const Advice& advice) {
  constexpr double enough_s = 300; // own choice
  return advice.by_knife && last_note(batch).feel == Feel::too_sticky &&
         session::seconds_of(batch, session::Stage::wetting_out) >= enough_s;
}

// Work that has gone on since something was put in: before that a hand may still be counting.
bool is_worked_on(const session::Batch& batch) {
  constexpr double counted_s = 20; // own choice
  const session::Pass* pass = running(batch);
  return pass && worked_since_s(batch, pass->stage) >= counted_s;
}

// In a pass that runs: but for less than a fifth of what went in since it was felt, which the spoon
// left out.
bool is_nearly_in(const session::Batch& batch, double left_mL) {
  constexpr double of_what_went_in = 0.2; // own choice
  if (!running(batch) || batch.feelings.empty()) return false;
  const double more = batch.standing.flow_now->value - batch.feelings.back().flow;
  return left_mL < of_what_went_in * more * batch.standing.pigment_mL.value;
}

double added_since_felt_mL(const session::Batch& batch) {
  if (batch.feelings.empty() || !last_note(batch).added_since) return 0;
  const double more = batch.standing.flow_now->value - batch.feelings.back().flow;
  return std::max(0.0, more * batch.standing.pigment_mL.value);
}

// What was asked for is there, all but what nobody would add: drops are said by fives, spoons by
// their quarters.
bool is_there(const session::Batch& batch, const Helping& left, const Measures& of) {
  constexpr double nearly = 0.01; // of the liquid
  constexpr double a_few = 5, of_what_went_in = 0.12;
  const double added_mL = added_since_felt_mL(batch), quarter_mL = of.spoon_mL / 4;
  const bool by_spoon = quarter_mL > 0 && added_mL > 0.9 * quarter_mL;
  const double rounding_mL = by_spoon ? quarter_mL : a_few * of.drop_mL;
  return left.most_mL < nearly * batch.standing.liquid_mL_now.value ||
         (left.most_mL < 1.1 * rounding_mL &&
          left.least_mL < std::max(1.5 * of.drop_mL, of_what_went_in * added_mL));
}

}

namespace {

// As far as the batch that is made again went in all; what more it takes is a question of its own,
// once that is in and was judged.
Helping by_plan(const session::Batch& batch, const Measures& binder, const Known& known,
                Helping left) {
  const paint::Standing& s = batch.standing;
  const double rest_mL =
      known.takes_in_all * s.pigment_mL.value - s.binder_g.value / binder.g_per_mL;
  if (rest_mL >= binder.drop_mL)
    left.most_mL = std::max(left.least_mL, std::min(left.most_mL, rest_mL));
  return left;
}

// Of binder or of water.
Helping left_to_add(const session::Batch& batch, const session::Expectation& expected,
                    const Measures& of, const Known& known, const Advice& advice) {
  return drops_to_add(batch, expected, after_work(batch, expected, known, advice.by_knife),
                      flow_felt_sticky(batch, expected), of, advice.water);
}

// Water where gum is enough, and of binder no more than gum lacks; what is more, is water.
Helping divided(const session::Batch& batch, const session::Expectation& expected,
                const Measures& binder, const Known& known, Advice& advice) {
  advice.water = advice.gum == paint::GumState::too_much;
  if (!advice.water) {
    const Helping left =
        by_plan(batch, binder, known, left_to_add(batch, expected, binder, known, advice));
    if (advice.gum == paint::GumState::too_little) return left;
    const double lacks_mL = was_felt_right(batch) ? 0 : gum_lacks_mL(batch, expected, binder);
    if (lacks_mL >= left.most_mL) return left;
    const double worth_mL = std::max(binder.drop_mL, left.most_mL / 3);
    if (lacks_mL >= worth_mL) return {std::min(left.least_mL, lacks_mL), lacks_mL};
    advice.water = true;
  }
  return left_to_add(batch, expected, known.water, known, advice);
}

}

Advice drop_by_drop(const session::Batch& batch, const session::Expectation& expected,
                    const Measures& binder, const Known& known, Advice advice) {
  advice.kind = Advice::mull_and_judge;
  if (is_enough_knife(batch, advice) || is_unjudged_pass(batch, known))
    return advice.by_knife = advice.sticky_now = false, advice;
  if (advice.by_knife && last_note(batch).added_since && is_worked_since(batch, known, true))
    return advice.sticky_now = false, advice;
  const Measures& meant = binder_meant(binder, known, advice);
  const Helping left = divided(batch, expected, meant, known, advice);
  const Measures& of = advice.water ? known.water : meant;
  const bool there = is_there(batch, left, of);
  const Tapped amount = tapped(left.least_mL, left.most_mL, of);
  const double mL = mL_of(amount, of);
  const bool in = there || is_worked_on(batch) || is_nearly_in(batch, mL);
  if (last_note(batch).added_since && in) return advice;
  advice.amount = amount;
  if (!(mL > 0)) return advice;
  advice.kind = Advice::add_drops;
  const double after = after_work(batch, expected, known, advice.by_knife).mL;
  const double then = after + mL / batch.standing.pigment_mL.value;
  advice.several = std::log(then) < expected.band.from ||
                   takes_several(flow_felt_sticky(batch, expected), then, expected);
  return advice;
}

}
