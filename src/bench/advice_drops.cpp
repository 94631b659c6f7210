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

// A pass that goes on, in which nobody has felt or looked yet: its end is judged, not its start.
bool is_unjudged_pass(const session::Batch& batch) {
  const session::Pass* pass = running(batch);
  if (!pass || pass->stage != session::Stage::mulling) return false;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (std::holds_alternative<session::StageBegan>(e->event)) return true;
    if (std::holds_alternative<session::Felt>(e->event) ||
        std::holds_alternative<session::Dot>(e->event))
      return false;
  }
  return false;
}

// What is too sticky after that, the muller judges better.
bool is_enough_knife(const session::Batch& batch, const Advice& advice) {
  constexpr double enough_s = 300; // own choice
  return advice.by_knife && last_note(batch).feel == Feel::too_sticky &&
         session::seconds_of(batch, session::Stage::wetting_out) >= enough_s;
}

// What was asked for is there, all but what nobody would add.
bool is_there(const session::Batch& batch, const Helping& left, const Measures& of) {
  constexpr double nearly = 0.01; // of the liquid
  constexpr double a_few = 5;     // drops are said by fives
  return left.most_mL < nearly * batch.standing.liquid_mL_now.value ||
         (left.most_mL < a_few * of.drop_mL && left.least_mL < 1.5 * of.drop_mL);
}

}

Advice drop_by_drop(const session::Batch& batch, const session::Expectation& expected,
                    const Measures& binder, const Known& known, Advice advice) {
  advice.kind = Advice::mull_and_judge;
  if (is_enough_knife(batch, advice) || is_unjudged_pass(batch))
    return advice.by_knife = advice.sticky_now = false, advice;
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
  advice.several = takes_several(felt, after.mL + mL / batch.standing.pigment_mL.value, expected);
  return advice;
}

}
