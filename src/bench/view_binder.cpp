#include "bench/making.hpp"
#include "bench/pads_binder.hpp"
#include "bench/stock.hpp"
#include "bench/view_parts.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

BinderView::Step step_view(const session::BinderMaking* making, session::MakingStep step,
                           const Now& now) {
  BinderView::Step v;
  v.pad = {BinderPad::step, std::string(session::name_of(step))};
  v.step = step;
  const auto next =
      making ? session::next_step(*making) : std::optional(session::MakingStep::gum_in);
  const auto* began = making ? session::begun(*making, step) : nullptr;
  if (!began) {
    const bool waits = making && session::ends_at(*making) > now.wall_ms;
    v.main = next == step && !waits;
    return v;
  }
  v.began_at = began->at;
  v.runs = making->steps.back().step == step;
  // A clock that was set back makes no step longer than it is.
  if (v.runs) v.ends_at = session::ends_at(*making);
  const double left = static_cast<double>(session::ends_at(*making) - now.wall_ms) / 60000;
  if (v.runs) v.left_min = std::clamp(std::ceil(left), 0.0, session::usual_minutes(step));
  v.main = v.runs && v.left_min > 0;
  return v;
}

void add_amounts(const Bench& bench, BinderView& v) {
  const GumMeasured measured = gum_measured(bench);
  v.spoons = measured.spoon ? bench.binder.spoons : 0;
  v.spoon = measured.spoon ? measured.spoon->name : "";
  v.gum_g = measured.g.value;
  v.gum_u = paint::uncertainty(measured.g);
  const auto parts = to_put_in(bench);
  if (!parts) return void(v.why_not = parts.error());
  v.parts = *parts;
  v.gum_g = v.begun ? parts->gum : v.gum_g;
  const Sweetener honey =
      parts->honey > 0 ? sweet_of_shelf(bench, true, parts->honey) : Sweetener{};
  if (honey.card && honey.water_g > 0) {
    v.syrup = honey.card->name;
    v.syrup_g = honey.g;
    v.syrup_water_g = honey.water_g;
  }
  const session::Card* gum = gum_of_shelf(bench);
  const auto left = gum && !v.begun ? stock_of(bench, *gum) : std::nullopt;
  if (left && left->g < parts->gum) v.gum_left_g = std::max(0.0, left->g);
}

void add_worth(const Bench& bench, BinderView& v) {
  v.makes_g = binder_in_jar(bench);
  v.jar_weighed = bench.binder.jar_g > 0;
  session::Card jar;
  jar.facts = session::LiquidCard{session::CardKind::binder, v.parts};
  const session::Prices known = prices(bench);
  v.a_gram = session::a_gram_of(jar, known);
  v.currency = known.currency;
  const session::Card* by = made_by(bench);
  const auto takes = by ? low_mark(bench, by->id) : std::nullopt;
  if (takes && *takes > 0) v.batches = v.makes_g / *takes;
}

void add_steps(const Bench& bench, const Now& now, BinderView& v) {
  const session::BinderMaking* making = making_in_hand(bench);
  for (const session::MakingStep step : session::steps_of(v.parts))
    v.steps.push_back(step_view(making, step, now));
  // Until the next step says that the gum is in its water.
  v.dust = !making || !session::begun(*making, session::MakingStep::steep);
  const Dose dose = dose_of(bench);
  v.stood = making && session::stood_too_long(*making, now.wall_ms);
  v.dose = dose.amount;
  v.dose_in_g = dose.amount > 0 ? dose.in_g : bench.binder.dose_in_g;
  if (!making) return;
  v.in_jar = session::begun(*making, session::MakingStep::into_jar) != nullptr;
}

StrengthView strength_view(const Bench& bench) {
  StrengthView v;
  const session::Card* jar = jar_in_hand(bench);
  v.gone = !jar;
  if (!jar) return v;
  const JarWeighed weighed = jar_weighed(bench);
  v.recipe = recipe_of(*jar);
  v.strength = paint::strength_of(v.recipe);
  v.wanted = wanted_strength(bench);
  v.counted_g = weighed.counted_g;
  v.weighed_g = weighed.weighed_g;
  v.tare_g = bench.binder.tare_g;
  v.missing_g = std::max(0.0, weighed.missing_g());
  if (v.missing_g > 0)
    if (const auto left = paint::dried_by(v.recipe, *weighed.counted_g, v.missing_g))
      v.dried_strength = paint::strength_of(*left);
  v.typed = bench.binder.net_g || bench.binder.percent > 0;
  const auto in = put_in_for(bench);
  if (in) v.put_in = *in;
  if (!in) v.why_not = in.error();
  v.becomes = paint::with(v.recipe, weighed.left_g(), v.put_in);
  return v;
}

}

BinderView binder_view(const Bench& bench, const Now& now) {
  BinderView v;
  v.number = number_view(bench);
  v.notice = bench.notice;
  v.now_ms = now.wall_ms;
  if (!bench.binder.jar.empty()) {
    const session::Card* jar = jar_in_hand(bench);
    if (jar) v.name = jar->name, v.lot = jar->lot;
    v.strength = strength_view(bench);
    return v;
  }
  const session::Card* by = made_by(bench);
  v.recipe = by ? by->name : "";
  v.name = name_of_jar(bench);
  v.lot = lot_of_jar(bench);
  v.begun = making_in_hand(bench) != nullptr;
  add_amounts(bench, v);
  add_worth(bench, v);
  add_steps(bench, now, v);
  v.preserved = is_preserved(bench);
  v.keep_until = keep_until(bench, now);
  v.others = open_makings(bench).size() - (v.begun ? 1 : 0);
  return v;
}

}
