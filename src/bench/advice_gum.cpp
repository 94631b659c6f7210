// Right with too little gum in it: binder in rounds, each after so much has dried off.
#include "bench/advice_parts.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bench {

namespace {

struct GumShort {
  double in_all_mL = 0; // of binder, until the dry paint likely holds
  double round_mL = 0;  // of that, what can dry off before it
};

GumShort gum_short(const session::Batch& batch, const paint::GumMarks& marks,
                   const Measures& binder, double there_mL) {
  constexpr double at_once = 0.2; // of the liquid when it was felt: more would leave a crumb
  const paint::Standing& s = batch.standing;
  const double gum = s.binder_g.value > 0 && s.gum_g.value > 0 ? s.gum_g.value / s.binder_g.value
                                                               : paint::usual_dry_gum;
  const double short_g = marks.enough_from * s.pigment_mL.value - s.gum_g.value;
  const double in_all_mL = short_g / (gum * binder.g_per_mL);
  const double liquid_mL = batch.feelings.back().flow * s.pigment_mL.value;
  return {in_all_mL, std::min(in_all_mL, at_once * liquid_mL - there_mL)};
}

void say_round(const GumShort& gum, const Measures& binder, Advice& advice) {
  advice.amount = tapped(std::max(binder.drop_mL, gum.round_mL), binder);
  advice.several = gum.in_all_mL - gum.round_mL > binder.drop_mL;
}

// mL that went in since the last note; absent where anything but binder did.
std::optional<double> binder_since_mL(const session::Batch& batch, const Measures& binder) {
  double mL = 0;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (std::holds_alternative<session::Felt>(e->event)) return mL;
    if (!std::holds_alternative<session::Added>(e->event)) continue;
    if (!is_added(batch, *e, session::CardKind::binder) || !e->grams) return std::nullopt;
    mL += e->grams->value / binder.g_per_mL;
  }
  return std::nullopt;
}

}

const Measures& binder_meant(const Measures& binder, const Known& known, Advice& advice) {
  if (!advice.sticky || !known.without_honey) return binder;
  advice.binder = known.without_honey->name;
  return known.without_honey->of;
}

void say_what_gum_takes(const session::Batch& batch, const session::Expectation& expected,
                        const paint::GumMarks& marks, const Measures& binder, Advice& advice) {
  constexpr int nearly_dry_min = 2; // own choice: nobody mulls wide for less
  const GumShort gum = gum_short(batch, marks, binder, 0);
  say_round(gum, binder, advice);
  const paint::Standing& s = batch.standing;
  const double drier = batch.feelings.back().flow - gum.round_mL / s.pigment_mL.value;
  const bool dry_enough = s.flow_now->value <= drier;
  const int minutes = dry_enough ? 0 : minutes_to(batch, expected, std::log(drier));
  advice.dry_min = minutes > nearly_dry_min ? rounded_minutes(minutes) : 0;
  advice.not_begun = !running(batch);
  advice.dried = dry_enough || (minutes > 0 && minutes <= nearly_dry_min);
}

std::optional<Advice> rest_of_gum(const session::Batch& batch, const paint::GumMarks& marks,
                                  const Measures& of, const Known& known, Advice advice) {
  const Measures& binder = binder_meant(of, known, advice);
  const auto there_mL = binder_since_mL(batch, binder);
  if (!there_mL || batch.feelings.empty()) return std::nullopt;
  const GumShort gum = gum_short(batch, marks, binder, *there_mL);
  if (gum.round_mL < binder.drop_mL) return std::nullopt;
  advice.kind = Advice::add_drops;
  say_round(gum, binder, advice);
  return advice;
}

}
