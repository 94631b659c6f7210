#include "bench/advice_parts.hpp"
#include "bench/record.hpp"
#include "bench/told_at_slab.hpp"
#include "session/feelings.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bench {

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

paint::PredictionAt now_at(const session::Batch& batch, double stronger) {
  const paint::Standing& s = batch.standing;
  const double since = batch.feelings.empty() ? 0 : batch.feelings.back().lost_mL;
  const double lost = std::max(0.0, s.water_lost_mL.value - since);
  return {s.flow_now->value, std::min(1.0, session::dried_off_u * lost / s.liquid_mL_now.value),
          stronger};
}

bool has_dried(const session::Batch& batch) {
  constexpr double felt = 0.97;
  return !batch.feelings.empty() &&
         batch.standing.flow_now->value < felt * batch.feelings.back().flow;
}

bool right_is_likeliest(const session::Expectation& expected, const paint::PredictionAt& now) {
  const auto chances = paint::chances(expected.prediction, now);
  return std::max_element(chances.begin(), chances.end()) == chances.begin() + 2;
}

double worked_since_s(const session::Batch& batch, session::Stage stage) {
  session::Clock since = 0;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend() && since <= 0; ++e)
    if (!e->withdrawn && (std::holds_alternative<session::Added>(e->event) ||
                          std::holds_alternative<session::Felt>(e->event)))
      since = e->clock;
  double sum = 0;
  for (const session::Pass& pass : batch.passes)
    if (pass.stage == stage)
      sum += std::max(0.0, pass.end.value_or(batch.clock) - std::max(pass.start, since));
  return sum;
}

bool is_worked_since(const session::Batch& batch, const Known& known, bool by_knife) {
  constexpr double least_s = 60; // of the knife, or of a pass that was ended: own choice
  if (by_knife) return worked_since_s(batch, session::Stage::wetting_out) >= least_s;
  const session::Pass* pass = running(batch);
  const bool mulls = pass && pass->stage == session::Stage::mulling;
  return worked_since_s(batch, session::Stage::mulling) >= (mulls ? known.pass_s : least_s);
}

bool was_mulled(const session::Batch& batch) {
  return std::any_of(batch.passes.begin(), batch.passes.end(),
                     [](const session::Pass& p) { return p.stage == session::Stage::mulling; });
}

namespace {

using session::Feel;

// Whether it would dry, from what the room lets gum, glycerin and honey keep. Without any of the
// two it is the room's doing, and no stop mark.
std::optional<paint::Tack> sticky(const paint::Standing& s, const paint::Room& room,
                                  const paint::TackMark& mark, double more_gum_g = 0) {
  if (s.glycerin_g.value + s.honey_g.value <= 0) return std::nullopt;
  const paint::Amount gum_g = s.gum_g + paint::exact(more_gum_g);
  const auto index = paint::tack_index(gum_g, s.glycerin_g, s.honey_g, room);
  const auto tack = index ? paint::tack(*index, mark) : tl::make_unexpected(index.error());
  return tack && *tack != paint::Tack::dries ? std::optional(*tack) : std::nullopt;
}

// g of gum until it would dry; 0 where none does within reason.
double gum_to_dry_g(const paint::Standing& s, const paint::Room& room,
                    const paint::TackMark& mark) {
  constexpr double most = 16; // times what is there
  double low = 0, high = s.gum_g.value / 16;
  while (sticky(s, room, mark, high) && high < most * s.gum_g.value) low = high, high *= 2;
  if (sticky(s, room, mark, high)) return 0;
  for (int i = 0; i < 20; ++i) {
    const double middle = (low + high) / 2;
    (sticky(s, room, mark, middle) ? low : high) = middle;
  }
  return high;
}

// More of all but honey and glycerin, so that it flows as it does: here where that is little, else
// as other paint.
void say_what_takes_honey_up(const session::Batch& batch, const Known& known, Advice& advice) {
  const paint::Standing& s = batch.standing;
  const double gum_g = gum_to_dry_g(s, batch.places.room, known.tack);
  if (!known.plain || !(known.plain->gum > 0) || !(gum_g > 0)) return;
  advice.times_without_honey = gum_g / s.gum_g.value;
  const double mL = gum_g / known.plain->gum / known.plain->of.g_per_mL;
  const double more = mL / s.liquid_mL_now.value;
  if (more > most_pigment) return;
  advice.binder = known.plain->name;
  advice.amount = tapped(std::max(known.plain->of.drop_mL, mL), known.plain->of);
  advice.pigments = pigments_to(batch, more);
}

// ---- right

// A hand that calls it right twice, at much the same flow and not in one breath, is believed.
bool called_right_twice(const session::Batch& batch) {
  constexpr double much_the_same = 1.1, apart_s = 60;
  const double most = much_the_same * batch.standing.flow_now->value;
  std::optional<session::Clock> first;
  auto note = batch.feelings.begin();
  for (const session::Entry& e : batch.entries) {
    if (note == batch.feelings.end() || !(note->line == e.ref)) continue;
    const session::Feeling& felt = *note++;
    if (felt.as != Feel::right || felt.set_aside || !(felt.flow < most)) continue;
    if (first && e.clock - *first >= apart_s) return true;
    if (!first) first = e.clock;
  }
  return false;
}

Advice felt_right(const session::Batch& batch, const session::Expectation& expected,
                  const Measures& of, const Known& known, Advice advice) {
  if (advice.gum == paint::GumState::too_little)
    say_what_gum_takes(batch, expected,
                       session::marks_of(known.verdicts, session::family_of(batch)),
                       binder_meant(of, known, advice), advice);
  else
    advice.gum.reset();
  const bool stiffer = std::log(batch.standing.flow_now->value) < expected.band.from;
  if (stiffer && !advice.gum && !called_right_twice(batch))
    return advice.kind = Advice::judge_again, advice;
  const SmoothState state = smooth_state(batch, known.mulling_left, known.pass_s);
  switch (smoothness(state)) {
  case Smoothness::smooth:
    advice.kind = Advice::there;
    if (advice.sticky && !advice.gum) say_what_takes_honey_up(batch, known, advice);
    break;
  case Smoothness::not_looked: advice.kind = Advice::test_dot; break;
  case Smoothness::keep_mulling:
    advice.kind = Advice::keep_mulling;
    if (known.mulling_left && known.mulling_left->minutes.middle >= 1)
      advice.mulling = known.mulling_left;
    advice.specks = specks_stay(state);
    break;
  }
  return advice;
}

// ---- found dry

struct DriedOut {
  double before = 0;   // its flow when a hand last did something to it
  double since = 0;    // the most that it had after something was given back
  bool judged = false; // after that: what goes in now is no water given back
};

// While it was found dry, or must be stiff by what the room takes, and has not been felt to be
// right again.
std::optional<DriedOut> dried_out(const session::Batch& batch,
                                  const session::Expectation& expected) {
  if (!(batch.standing.gum_g.value > 0)) return std::nullopt;
  constexpr double stiff = 0.5; // of the flow that it had: own choice
  bool dry = false, felt_later = false, judged = false;
  double since = 0;
  auto note = batch.feelings.rbegin();
  double later = batch.standing.flow_now->value;
  const paint::Sums put_in = session::sums(batch.places);
  const auto without_alcohol = [&](double flow) { // it leaves, as it should
    return std::min(flow, put_in.without_alcohol_mL / put_in.pigment_mL);
  };
  const double right = std::exp(expected.band.middle);
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    const auto* found = std::get_if<session::Found>(&e->event);
    const auto* felt = std::get_if<session::Felt>(&e->event);
    if (note != batch.feelings.rend() && note->line == e->ref) {
      felt_later = felt_later || !note->unwetted;
      ++note;
    }
    if (found && found->as == session::State::dry) {
      dry = true;
      continue;
    }
    const bool by_a_hand = e->flow && by_hand(e->event);
    const double flow = without_alcohol(e->flow.value_or(0));
    if (by_a_hand && (dry || later < stiff * std::min(flow, right)))
      return DriedOut{flow, since, judged};
    if (felt && felt->as >= Feel::right) return std::nullopt;
    if (!by_a_hand) continue;
    later = e->flow_before.value_or(*e->flow);
    if (!std::holds_alternative<session::Added>(e->event)) continue;
    since = std::max(since, flow);
    judged = felt_later;
  }
  return std::nullopt;
}

constexpr double given_back_enough = 0.9;

// mL of water; 0 where it did not dry, or has it back.
double to_give_back(const session::Batch& batch, const session::Expectation& expected) {
  const auto dried = dried_out(batch, expected);
  if (!dried) return 0;
  const double flow = std::min(dried->before, std::exp(expected.band.to));
  if (dried->since >= given_back_enough * flow) return 0;
  const double now = batch.standing.flow_now->value;
  return now < given_back_enough * flow ? (flow - now) * batch.standing.pigment_mL.value : 0;
}

// Minutes that water given back since has still to soak in, before anything else is done; 0: none.
int to_soak_min(const session::Batch& batch, const session::Expectation& expected) {
  const auto dried = dried_out(batch, expected);
  if (!dried || dried->judged) return 0;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn || !by_hand(e->event)) continue;
    if (is_added(batch, *e, session::CardKind::wetting_aid)) continue;
    const auto* felt = std::get_if<session::Felt>(&e->event);
    if (felt && felt->as < Feel::right && !session::felt_worked_in(batch, e->ref)) continue;
    if (!std::holds_alternative<session::Added>(e->event)) return 0;
    return static_cast<int>(
        std::ceil(std::max(0.0, session::soaked_s - (batch.clock - e->clock)) / 60));
  }
  return 0;
}

Advice give_back(double mL, const Known& known, Advice advice) {
  advice.kind = Advice::give_back;
  advice.mL = mL;
  advice.amount = tapped(given_back_enough * mL, mL, known.water);
  advice.gum.reset();
  return advice;
}

}

bool was_felt(const session::Batch& batch) {
  return std::any_of(batch.feelings.begin(), batch.feelings.end(),
                     [](const session::Feeling& felt) { return !felt.unwetted; });
}

namespace {

// Until no dry powder is left within it, however it feels before that.
Advice work_in(const session::Batch& batch, bool felt, Advice advice) {
  const double worked_s = session::seconds_of(batch, session::Stage::wetting_out);
  advice.kind = Advice::work_in;
  advice.too_early = felt;
  advice.not_begun = !running(batch) && !(worked_s > 0);
  if (!session::is_worked_in(batch))
    advice.wait_min = static_cast<int>(std::ceil((session::wetted_out_s - worked_s) / 60));
  return advice;
}

// Felt before the powder was wetted out: under the muller no knife is spoken of any more.
Advice before_it_was_wet(const session::Batch& batch, Advice advice) {
  if (advice.by_knife) return work_in(batch, true, advice);
  advice.kind = Advice::mull_and_judge;
  advice.sticky_now = false;
  return advice;
}

// Since it was right nothing went in but honey or glycerin, which make it thinner than they look: a
// hand tells what that did.
bool is_only_sweetened(const session::Batch& batch) {
  bool sweetened = false;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (std::holds_alternative<session::Felt>(e->event)) break;
    if (!std::holds_alternative<session::Added>(e->event)) continue;
    const bool sweet = is_added(batch, *e, session::CardKind::honey) ||
                       is_added(batch, *e, session::CardKind::glycerin);
    if (!sweet) return false;
    sweetened = true;
  }
  return sweetened;
}

// With liquid in it.
Advice advise_on(const session::Batch& batch, const session::Expectation& expected,
                 const Measures& of, const Known& known, Advice advice) {
  const paint::Standing& s = batch.standing;
  const auto marks = session::marks_of(known.verdicts, session::family_of(batch));
  advice.gum = paint::gum_state(s.gum_g.value, s.pigment_mL.value, marks);
  const bool never_mulled = !was_mulled(batch);
  advice.by_knife =
      is_late_powder(batch) ||
      (never_mulled && (running(batch) || next_stage(batch) == session::Stage::wetting_out));
  advice.sticky = sticky(s, batch.places.room, known.tack);
  const LastNote note = last_note(batch);
  const bool fresh = note.feel && !note.added_since;
  advice.sticky_now = fresh && *note.feel < Feel::right;
  if (const double mL = to_give_back(batch, expected); mL > 0) return give_back(mL, known, advice);
  if ((advice.wait_min = to_soak_min(batch, expected)) > 0)
    return advice.kind = Advice::soak, advice;
  if (note.feel == Feel::right && note.added_since && is_only_sweetened(batch))
    return advice.kind = Advice::mull_and_judge, advice;
  if (note.feel == Feel::right && note.added_since && advice.gum == paint::GumState::too_little)
    if (const auto more = rest_of_gum(batch, marks, of, known, advice)) return *more;
  const bool too_loose = fresh ? *note.feel > Feel::right : is_far_too_loose(batch, expected);
  if (too_loose) return loosened(batch, expected, marks, advice);
  const auto rest =
      never_mulled ? rest_of_helping(batch, expected, of, known, advice) : std::nullopt;
  if (rest && fresh && advice.sticky_now && is_hardly_wet(batch, *rest, of)) return *rest;
  if (fresh && !batch.feelings.empty() && batch.feelings.back().unwetted)
    return before_it_was_wet(batch, advice);
  if (is_past_right(batch, expected, of)) return past_right(batch, expected, of, advice);
  const bool still =
      !has_dried(batch) || right_is_likeliest(expected, now_at(batch, expected.stronger));
  const bool gum_is_short = advice.gum == paint::GumState::too_little;
  if (fresh && *note.feel == Feel::right && (still || gum_is_short))
    return felt_right(batch, expected, of, known, advice);
  if (rest && !note.feel) return *rest;
  if (never_mulled && !was_felt(batch)) return work_in(batch, !batch.feelings.empty(), advice);
  return drop_by_drop(batch, expected, of, known, advice);
}

bool is_judged_next(const Advice& advice) {
  return advice.kind == Advice::mull_and_judge || advice.kind == Advice::judge_again ||
         advice.kind == Advice::right_by_now || advice.kind == Advice::past_right;
}

}

bool is_nearly_done(const Advice& advice) {
  return advice.kind == Advice::test_dot || advice.kind == Advice::keep_mulling;
}

double advised_mL(const Advice& advice, const Measures& binder, const Known& known) {
  if (advice.kind != Advice::add_drops) return 0;
  const bool other = !advice.binder.empty() && known.without_honey;
  return mL_of(advice.amount, advice.water ? known.water
                              : other      ? known.without_honey->of
                                           : binder);
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
    return first_helping(batch, *expected, of, known, advice);
  advice = advise_on(batch, *expected, of, known, advice);
  advice.judge_now = is_judged_next(advice) && is_worked_since(batch, known, advice.by_knife);
  return advice;
}

}
