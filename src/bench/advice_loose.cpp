#include "bench/advice_parts.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bench {

namespace {

constexpr int longest_min = 45; // own choice: what takes longer stands and is looked at

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

// Mulled since the powder was wetted: the hand's word is of all of it.
bool is_mulled(const session::Batch& batch) {
  constexpr double least_s = 60; // own choice
  return !batch.powder_is_dry && session::seconds_of(batch, session::Stage::mulling) >= least_s;
}

// The middle of right; where mulled paint is felt to be too loose below that, the hand is believed:
// as far below the note as half of right is wide, and three times that below a runny one.
double ln_flow_to_reach(const session::Batch& batch, const session::Expectation& expected) {
  const double middle = expected.band.middle;
  if (batch.feelings.empty() || !is_mulled(batch)) return middle;
  const session::Feeling& note = batch.feelings.back();
  if (note.as <= session::Feel::right) return middle;
  const double half = (expected.band.to - expected.band.from) / 2;
  return std::min(middle,
                  std::log(note.flow) - (note.as == session::Feel::too_runny ? 3 : 1) * half);
}

}

std::vector<Advice::Pigment> pigments_to(const session::Batch& batch, double more) {
  std::vector<Advice::Pigment> out;
  for (const session::Total& t : batch.totals)
    if (t.card.kind() == session::CardKind::pigment && t.grams.value > 0)
      out.push_back({t.card.id, t.card.name, more * t.grams.value});
  return out;
}

int minutes_to(const session::Batch& batch, const session::Expectation& expected, double ln_flow) {
  session::Places places = batch.places;
  places.spread = paint::Spread::mulling;
  const double dry_gum = paint::dry_gum(session::sums(places), session::live(places));
  for (int minute = 1; minute <= longest_min; ++minute) {
    session::dry(places, 60);
    const paint::Live now = session::live(places);
    const double stronger = paint::dry_gum(session::sums(places), now) - dry_gum;
    if (now.flow && *now.flow <= std::exp(ln_flow + expected.prediction.drying * stronger))
      return minute;
  }
  return 0;
}

int rounded_minutes(int minutes) {
  for (const auto& [most, said] :
       {std::pair{7, 5}, {12, 10}, {17, 15}, {25, 20}, {longest_min, 30}})
    if (minutes <= most) return said;
  return 30;
}

double ln_right(const session::Batch& batch, const session::Expectation& expected) {
  const double middle = expected.band.middle;
  if (batch.feelings.empty()) return middle;
  const session::Feeling& last = batch.feelings.back();
  if (last.as >= session::Feel::right || last.unwetted) return middle;
  return std::max(middle, std::log(last.flow) + (expected.band.to - expected.band.from) / 2);
}

bool is_past_right(const session::Batch& batch, const session::Expectation& expected,
                   const Measures& binder) {
  constexpr double not_unlikely = 0.3; // own choice: what is asked for leaves a tenth of that
  const double right = std::exp(ln_right(batch, expected));
  const double flow = batch.standing.flow_now->value;
  return last_note(batch).added_since &&
         flow > right * std::exp(expected.band.to - expected.band.middle) &&
         (flow - right) * batch.standing.pigment_mL.value > binder.drop_mL / 2 &&
         paint::chance_too_loose(expected.prediction, now_at(batch, expected.stronger)) >
             not_unlikely;
}

Advice past_right(const session::Batch& batch, const session::Expectation& expected,
                  const Measures& binder, Advice advice) {
  const double right = ln_right(batch, expected);
  const double past = batch.standing.flow_now->value - std::exp(right);
  advice.kind = Advice::past_right;
  advice.mL = past * batch.standing.pigment_mL.value;
  advice.amount = tapped(advice.mL, binder);
  const int minutes = minutes_to(batch, expected, right);
  advice.dry_min = minutes > 0 ? rounded_minutes(minutes) : 0;
  return advice;
}

bool is_far_too_loose(const session::Batch& batch, const session::Expectation& expected) {
  const double flow = batch.standing.flow_now->value;
  for (auto felt = batch.feelings.rbegin(); felt != batch.feelings.rend(); ++felt)
    if (!felt->unwetted) { // a hand that found it stiff not long before knows better
      if (felt->as <= session::Feel::right && flow < times_too_loose * felt->flow) return false;
      break;
    }
  return flow > times_too_loose * std::exp(expected.band.to);
}

Advice loosened(const session::Batch& batch, const session::Expectation& expected,
                const paint::GumMarks& marks, Advice advice) {
  constexpr int least_min = 2;
  advice.gum.reset();
  if (has_dried(batch) && right_is_likeliest(expected, now_at(batch, expected.stronger)))
    return advice.kind = Advice::right_by_now, advice;
  const double ln_flow = ln_flow_to_reach(batch, expected);
  const int minutes = minutes_to(batch, expected, ln_flow);
  if (minutes == 0 && is_far_too_loose(batch, expected))
    return advice.kind = Advice::a_wash, advice;
  const bool there = batch.standing.flow_now->value <= std::exp(ln_flow);
  const bool judged_well = is_mulled(batch) && !has_dried(batch);
  if (there || (minutes > 0 && minutes <= least_min && !judged_well))
    return advice.felt_loose = true, advice.kind = Advice::judge_again, advice;
  advice.kind = Advice::too_loose;
  advice.dry_min = rounded_minutes(minutes > 0 ? minutes : longest_min);
  thicken(batch, std::exp(ln_flow), marks, advice);
  return advice;
}

}
