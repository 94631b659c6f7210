#include "bench/advice_parts.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bench {

namespace {

constexpr int longest_min = 45; // own choice: what takes longer stands and is looked at

// Minutes until so much has dried off, mulled out, that it is at the middle of right, which rises
// as the gum grows stronger; 0 for more than is mulled at once.
int minutes_to_right(const session::Batch& batch, const session::Expectation& expected) {
  session::Places places = batch.places;
  places.spread = paint::Spread::mulling;
  const double dry_gum = paint::dry_gum(session::sums(places), session::live(places));
  for (int minute = 1; minute <= longest_min; ++minute) {
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
       {std::pair{7, 5}, {12, 10}, {17, 15}, {25, 20}, {longest_min, 30}})
    if (minutes <= most) return said;
  return 30;
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

}

bool is_far_too_loose(const session::Batch& batch, const session::Expectation& expected) {
  constexpr double times = 3; // as the number pad asks about: twice the pigment would have to follow
  const double flow = batch.standing.flow_now->value;
  for (auto felt = batch.feelings.rbegin(); felt != batch.feelings.rend(); ++felt)
    if (!felt->unwetted) { // a hand that found it stiff not long before knows better
      if (felt->as <= session::Feel::right && flow < times * felt->flow) return false;
      break;
    }
  return flow > times * std::exp(expected.band.to);
}

Advice loosened(const session::Batch& batch, const session::Expectation& expected,
                const paint::GumMarks& marks, Advice advice) {
  constexpr int least_min = 2;
  const double flow = std::exp(expected.band.middle);
  advice.gum.reset();
  if (has_dried(batch) && right_is_likeliest(expected, now_at(batch, expected.stronger)))
    return advice.kind = Advice::right_by_now, advice;
  const int minutes = minutes_to_right(batch, expected);
  if (minutes == 0 && is_far_too_loose(batch, expected))
    return advice.kind = Advice::a_wash, advice;
  const bool contradicts = batch.standing.flow_now->value <= flow;
  if (contradicts || (minutes > 0 && minutes <= least_min))
    return advice.felt_loose = true, advice.kind = Advice::judge_again, advice;
  advice.kind = Advice::too_loose;
  advice.dry_min = minutes > 0 ? rounded_minutes(minutes) : 0;
  thicken(batch, flow, marks, advice);
  return advice;
}

}
