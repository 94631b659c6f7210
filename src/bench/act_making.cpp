#include "bench/act.hpp"
#include "bench/choices.hpp"
#include "bench/making.hpp"
#include "bench/materials.hpp"
#include "bench/pads_binder.hpp"
#include "bench/record.hpp"
#include "bench/shelf.hpp"
#include "bench/stock.hpp"
#include "words/bench_says.hpp"
#include "words/calendar.hpp"
#include "words/lists.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::Making;
using session::MakingStep;
using Say = words::BenchSay;

constexpr double most_gum_g = 2000, most_spoons = 200, most_dose = 1000, most_jar_g = 5000;

std::optional<words::Error> outside(double value, double least, double most) {
  if (value >= least && value <= most) return std::nullopt;
  return words::Error{
      Say::fact_out_of_range,
      {words::Number(least, least > 0 && least < 1 ? 2 : 0), words::Number(most, 0)}};
}

// In whole spoons, or fives of g.
void change_gum(BinderState& state, int by) {
  if (state.spoons > 0) {
    const double least = std::min(1.0, state.spoons);
    state.spoons = std::clamp(std::floor(state.spoons) + by, least, most_spoons);
    return;
  }
  constexpr double each = 5;
  const double next =
      by > 0 ? std::floor(state.gum_g / each) + 1 : std::ceil(state.gum_g / each) - 1;
  state.gum_g = std::clamp(next * each, std::min(each, state.gum_g), most_gum_g);
}

// From g to spoons of about as much, and back.
void turn_measure(Bench& bench, const Now& now) {
  BinderState& state = bench.binder;
  if (state.spoons > 0) {
    state.gum_g = std::max(1.0, std::round(gum_measured(bench).g.value));
    state.spoons = 0;
    return;
  }
  const session::Card* gum = gum_of_shelf(bench);
  const session::Card* spoon = nullptr;
  if (gum) spoon = shelf_card(bench, tool_for(bench, *gum, session::Unit::spoons));
  if (!spoon) return say_error(bench, {Say::making_no_spoon, {}}, now);
  const auto one = paint::gum_in_spoons(1, volume_of(*spoon).mL);
  if (!one) return say_error(bench, one.error(), now);
  state.spoon = spoon->id;
  state.spoons = std::clamp(std::round(state.gum_g / one->value), 1.0, most_spoons);
}

void turn_recipe(Bench& bench) {
  const auto binders = shelf_of(bench, session::CardKind::binder);
  if (binders.empty()) return;
  const auto at = std::find_if(binders.begin(), binders.end(),
                               [&](const auto* card) { return card->id == bench.binder.by; });
  bench.binder.by =
      at == binders.end() || at + 1 == binders.end() ? binders.front()->id : (*(at + 1))->id;
}

Making gum_goes_in(const Bench& bench, const paint::Recipe& parts, std::string jar) {
  Making::Start start{made_by(bench)->id, parts};
  if (gum_measured(bench).spoon) {
    start.spoons = bench.binder.spoons;
    start.with = bench.binder.spoon;
  }
  Making m{MakingStep::gum_in, std::move(jar), std::move(start)};
  if (const session::Card* gum = gum_of_shelf(bench)) m.takes = {{gum->id, parts.gum}};
  return m;
}

// What is to go in, until its step is ticked: the gum steeps for a day.
void keep_dose(Bench& bench, const Now& now, Effects& effects) {
  const session::BinderMaking* making = making_in_hand(bench);
  if (!making || session::begun(*making, MakingStep::preserve)) return;
  Making m{MakingStep::dose, bench.binder.of};
  (bench.binder.dose_in_g ? m.g : m.drops) = bench.binder.dose;
  if (m.g == making->dose_g && m.drops == making->dose_drops) return;
  record(bench, "", std::move(m), now, effects);
  restock(bench);
}

void begin_making(Bench& bench, MakingStep step, const Now& now, Effects& effects) {
  if (step != MakingStep::gum_in) return say_error(bench, {Say::making_gum_first, {}}, now);
  const auto parts = to_put_in(bench);
  if (!parts) return say_error(bench, parts.error(), now);
  const std::string jar = fresh_id(now);
  record(bench, "", gum_goes_in(bench, *parts, jar), now, effects);
  restock(bench);
  bench.binder.of = jar;
  keep_dose(bench, now, effects);
}

std::vector<Making::Take> sweet_of(const Bench& bench, const paint::Recipe& parts) {
  std::vector<Making::Take> out;
  for (const bool honey : {true, false}) {
    const double g = honey ? parts.honey : parts.glycerin;
    const Sweetener jar = g > 0 ? sweet_of_shelf(bench, honey, g) : Sweetener{};
    if (jar.card) out.push_back({jar.card->id, jar.g});
  }
  return out;
}

void begin_step(Bench& bench, const std::string& word, const Now& now, Effects& effects) {
  const auto step = session::making_step_named(word);
  const session::BinderMaking* making = making_in_hand(bench);
  if (!step) return;
  if (!making) return begin_making(bench, *step, now, effects);
  if (session::begun(*making, *step)) return say_error(bench, {Say::making_step_twice, {}}, now);
  Making m{*step, bench.binder.of};
  if (*step == MakingStep::sweeten) m.takes = sweet_of(bench, making->plan.start->parts);
  if (*step == MakingStep::preserve) (bench.binder.dose_in_g ? m.g : m.drops) = bench.binder.dose;
  record(bench, "", std::move(m), now, effects);
  restock(bench);
}

// Said after its step was ticked: ticked anew, with it.
void tick_with_dose(Bench& bench, const Now& now, Effects& effects) {
  const session::BinderMaking* making = making_in_hand(bench);
  const auto* step = making ? session::begun(*making, MakingStep::preserve) : nullptr;
  if (!step) return;
  record(bench, "", session::Withdrawn{step->line}, now, effects);
  restock(bench);
  begin_step(bench, std::string(session::name_of(MakingStep::preserve)), now, effects);
}

// Back to what was planned, where that was the gum.
void take_back_step(Bench& bench, const Now& now, Effects& effects) {
  const session::BinderMaking* making = making_in_hand(bench);
  if (!making) return;
  const session::BinderMaking::Step last = making->steps.back();
  const Making plan = making->plan;
  record(bench, "", session::Withdrawn{last.line}, now, effects);
  restock(bench);
  keep_dose(bench, now, effects);
  if (last.step != MakingStep::gum_in) return;
  bench.binder.of.clear();
  bench.binder.by = plan.start->by;
  bench.binder.gum_g = plan.start->parts.gum;
  bench.binder.spoons = plan.start->spoons;
  bench.binder.spoon = plan.start->with;
}

void give_up(Bench& bench, const Now& now, Effects& effects) {
  if (!making_in_hand(bench)) return;
  record(bench, "", Making{MakingStep::given_up, bench.binder.of}, now, effects);
  restock(bench);
  plan_making(bench, std::string(bench.binder.by));
}

// Round all that were begun, and a new one.
void turn_making(Bench& bench) {
  const auto open = open_makings(bench);
  const auto here = std::find(open.begin(), open.end(), bench.binder.of);
  const auto next = here == open.end() ? open.begin() : here + 1;
  if (next != open.end()) return show_making(bench, std::string(*next));
  plan_making(bench, std::string(bench.binder.by));
}

session::Card jar_done(const Bench& bench, const session::BinderMaking& making, const Now& now) {
  session::Card card;
  card.id = bench.binder.of;
  card.name = name_of_jar(bench);
  card.lot = lot_of_jar(bench);
  paint::Recipe parts = making.plan.start->parts;
  if (session::begun(making, MakingStep::preserve)) parts.other += grams_of(dose_of(bench));
  card.facts = session::LiquidCard{session::CardKind::binder, parts};
  card.made_on = words::date_of(words::day_number(now.wall_ms, now.utc_offset_min));
  card.keep_until = keep_until(bench, now);
  card.made_g = binder_in_jar(bench);
  return card;
}

void put_onto_shelf(Bench& bench, const Now& now, Effects& effects) {
  const session::BinderMaking* making = making_in_hand(bench);
  if (!making) return say_error(bench, {Say::making_gum_first, {}}, now);
  if (!session::begun(*making, MakingStep::into_jar))
    return say_error(bench, {Say::making_not_in_jar, {}}, now);
  const session::Card jar = jar_done(bench, *making, now);
  record(bench, "", session::LaidOut{jar}, now, effects);
  restock(bench);
  bench.plan.binder = jar.id;
  bench.shelf_page = {};
  bench.shelf_page.kind = ShelfKind::binder;
  bench.shelf_page.card = jar;
  go_to(bench, Screen::shelf);
}

}

void act_on_binder(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  const auto own = pad.kind.as<BinderPad>();
  if (!own) return;
  BinderState& state = bench.binder;
  switch (*own) {
  case BinderPad::recipe: return turn_recipe(bench);
  case BinderPad::less: return change_gum(state, -1);
  case BinderPad::more: return change_gum(state, 1);
  case BinderPad::measured_in: return turn_measure(bench, now);
  case BinderPad::gum:
  case BinderPad::dose:
  case BinderPad::jar_holds:
  case BinderPad::empty_bottle:
  case BinderPad::bottle: return open_number(bench, pad);
  case BinderPad::step: return begin_step(bench, pad.arg, now, effects);
  case BinderPad::dose_in:
    state.dose_in_g = !state.dose_in_g;
    return keep_dose(bench, now, effects);
  case BinderPad::keep: state.preserved = !is_preserved(bench); return;
  case BinderPad::give_up: return give_up(bench, now, effects);
  case BinderPad::other: return turn_making(bench);
  case BinderPad::onto_shelf: return put_onto_shelf(bench, now, effects);
  case BinderPad::take_back:
    if (state.jar.empty()) return take_back_step(bench, now, effects);
    return take_back_of_jar(bench, now, effects);
  case BinderPad::dried:
  case BinderPad::used:
  case BinderPad::weaker:
  case BinderPad::stronger:
  case BinderPad::put_in: return act_on_strength(bench, *own, now, effects);
  }
}

std::optional<words::Error> fault_of_making(const Bench& bench, const PadId& target, double value) {
  const bool spoons = bench.binder.spoons > 0;
  if (target.kind == BinderPad::gum)
    return outside(value, spoons ? 0.25 : 1, spoons ? most_spoons : most_gum_g);
  if (target.kind == BinderPad::dose) return outside(value, 0, most_dose);
  if (target.kind == BinderPad::jar_holds) return outside(value, 1, most_jar_g);
  return std::nullopt;
}

words::Result<double> set_on_binder(Bench& bench, const PadId& target, double value, const Now& now,
                                    Effects& effects) {
  BinderState& state = bench.binder;
  const auto own = target.kind.as<BinderPad>();
  if (own == BinderPad::gum) return (state.spoons > 0 ? state.spoons : state.gum_g) = value;
  if (own == BinderPad::jar_holds) return state.jar_g = value;
  if (own != BinderPad::dose) return set_on_bottle(bench, target, value);
  state.dose = value;
  tick_with_dose(bench, now, effects);
  keep_dose(bench, now, effects);
  return value;
}

}
