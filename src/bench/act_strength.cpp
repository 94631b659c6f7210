// A jar of binder is weighed, and made weaker or stronger.
#include "bench/act.hpp"
#include "bench/making.hpp"
#include "bench/pads_binder.hpp"
#include "bench/record.hpp"
#include "bench/shelf.hpp"
#include "bench/stock.hpp"
#include "words/bench_says.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::Making;
using session::MakingStep;
using Say = words::BenchSay;

constexpr double most_bottle_g = 20000;
constexpr int least_percent = 5, most_percent = 50;

// Whoever reads of what was done to a jar can read what is in it.
void name_jar(Bench& bench, const Now& now, Effects& effects) {
  const session::Card jar = *jar_in_hand(bench);
  if (!bench.own.count(jar.id)) record(bench, "", session::LaidOut{jar}, now, effects);
}

// The batch on the slab, where it takes of the jar, is told what is in it from now on.
void done_to_jar(Bench& bench, const Now& now, Effects& effects) {
  restock(bench);
  bench.binder.net_g.reset();
  bench.binder.percent = 0;
  const session::Card* jar = jar_in_hand(bench);
  if (!jar || !bench.folded || !bench.folded->cards.count(jar->id)) return;
  if (bench.folded->cards.at(jar->id).facts == jar->facts) return;
  record(bench, bench.batch, session::LaidOut{*jar}, now, effects);
  refold(bench, now);
}

void keep_weighing(Bench& bench, const Now& now, Effects& effects) {
  const BinderState& state = bench.binder;
  if (!state.net_g) return;
  record(bench, "", session::StockWeighed{state.jar, *state.net_g, state.tare_g}, now, effects);
}

void used(Bench& bench, const Now& now, Effects& effects) {
  if (!jar_in_hand(bench) || !bench.binder.net_g) return;
  name_jar(bench, now, effects);
  keep_weighing(bench, now, effects);
  done_to_jar(bench, now, effects);
}

void dried(Bench& bench, const Now& now, Effects& effects) {
  const session::Card* jar = jar_in_hand(bench);
  const JarWeighed weighed = jar_weighed(bench);
  if (!jar || !(weighed.missing_g() > 0)) return;
  const auto left = paint::dried_by(recipe_of(*jar), *weighed.counted_g, weighed.missing_g());
  if (!left) return say_error(bench, left.error(), now);
  Making m{MakingStep::dried, jar->id};
  m.had_g = *weighed.counted_g;
  m.g = weighed.missing_g();
  name_jar(bench, now, effects);
  keep_weighing(bench, now, effects);
  record(bench, "", std::move(m), now, effects);
  done_to_jar(bench, now, effects);
}

void change_strength(Bench& bench, int by) {
  const int now = static_cast<int>(std::lround(wanted_strength(bench) * 100));
  bench.binder.percent = std::clamp(now + by, least_percent, most_percent);
}

void put_in(Bench& bench, const Now& now, Effects& effects) {
  const auto in = put_in_for(bench);
  if (!in) return say_error(bench, in.error(), now);
  const bool gum = in->gum_g > 0;
  const double g = gum ? in->gum_g : in->water_g;
  if (is_nothing(*in)) return say_error(bench, {Say::strength_as_it_is, {}}, now);
  Making m{gum ? MakingStep::thickened : MakingStep::thinned, bench.binder.jar};
  m.g = g;
  m.had_g = jar_weighed(bench).left_g();
  const session::Card* powder = gum ? gum_of_shelf(bench) : nullptr;
  if (powder) m.takes = {{powder->id, g}};
  name_jar(bench, now, effects);
  keep_weighing(bench, now, effects);
  record(bench, "", std::move(m), now, effects);
  done_to_jar(bench, now, effects);
}

}

void act_on_strength(Bench& bench, BinderPad pad, const Now& now, Effects& effects) {
  if (pad == BinderPad::dried) dried(bench, now, effects);
  if (pad == BinderPad::used) used(bench, now, effects);
  if (pad == BinderPad::weaker) change_strength(bench, -1);
  if (pad == BinderPad::stronger) change_strength(bench, 1);
  if (pad == BinderPad::put_in) put_in(bench, now, effects);
}

void take_back_of_jar(Bench& bench, const Now& now, Effects& effects) {
  if (bench.binder.net_g || bench.binder.percent > 0) { // nothing was kept of it yet
    bench.binder.net_g.reset();
    bench.binder.percent = 0;
    return;
  }
  const auto line = last_entry(bench, bench.binder.jar);
  if (!line) return;
  record(bench, "", session::Withdrawn{*line}, now, effects);
  done_to_jar(bench, now, effects);
}

words::Result<double> set_on_bottle(Bench& bench, const PadId& target, double value) {
  BinderState& state = bench.binder;
  if (!(value >= 0 && value <= most_bottle_g))
    return words::failure(Say::fact_out_of_range,
                          {words::Number(0, 0), words::Number(most_bottle_g, 0)});
  if (target.kind == BinderPad::empty_bottle) {
    state.tare_g = value;
    state.net_g.reset();
    return value;
  }
  if (!(value > state.tare_g))
    return words::failure(Say::bottle_below_empty, {words::Number(state.tare_g, 1)});
  state.net_g = value - state.tare_g;
  return value;
}

}
