#include "bench/act.hpp"
#include "bench/learning.hpp"
#include "bench/pads_tablet.hpp"
#include "bench/record.hpp"
#include "session/told.hpp"
#include "words/bench_says.hpp"

#include <algorithm>

namespace bench {

namespace {

constexpr double a_little = 0.005, much = 0.04;
constexpr double least = 0.5, most = 2;

// A card drawn larger means that the display is smaller than it was taken for.
void rescale(Bench& bench, double by) {
  double& scale = bench.tablet.scales.try_emplace(bench.display.monitor, 1).first->second;
  scale = std::clamp(scale / by, least, most);
}

words::Language next_language(words::Language now) {
  const auto& all = words::offered_languages;
  const auto at = std::find(all.begin(), all.end(), now);
  return at == all.end() || at + 1 == all.end() ? all.front() : at[1];
}

void wait_for_key(Bench& bench, const std::string& pad_name, Effects& effects) {
  const auto pad = pad_named(pad_name);
  if (!pad) return;
  const bool again = bench.keys.binding == pad;
  bench.keys.binding = pad;
  if (!again) return;
  bench.keys.binding.reset();
  const auto freed =
      std::erase_if(bench.tablet.keys, [&](const auto& k) { return k.second == *pad; });
  effects.keep_tablet = freed > 0;
}

// Of its own notes alone: what a friend told is not told on.
void tell(Bench& bench, Effects& effects) {
  if (!bench.loaded) {
    bench.sharing.failure = words::Error{words::BenchSay::told_reading, {}};
    return;
  }
  finish_studying(bench, effects);
  std::vector<const session::TrainingBatch*> all;
  for (const auto& [id, training] : bench.learning.training) all.push_back(&training);
  auto told = session::told_by(all, bench.shelf);
  if (!told || !*told) {
    bench.sharing.failure =
        told ? words::Error{words::BenchSay::told_nothing, {}} : std::move(told.error());
    return;
  }
  (*told)->from = session::source_of(bench.logs);
  effects.tell = **std::move(told);
}

// What counts already is not written once more.
void be_told(Bench& bench, std::string range, const Now& now, Effects& effects) {
  const Learning& learning = bench.learning;
  if (!learning.not_heard && range == (learning.told ? bytes_of(*learning.told) : "")) return;
  record(bench, "", session::Told{std::move(range)}, now, effects);
  hear(bench);
}

void act_on_sharing(Bench& bench, TabletPad pad, const Now& now, Effects& effects) {
  Sharing& sharing = bench.sharing;
  const auto found = std::move(sharing.found);
  sharing = {sharing.folder, sharing.open, "", false, std::nullopt, std::nullopt};
  if (pad == TabletPad::others) sharing.open = !sharing.open;
  if (pad == TabletPad::tell) tell(bench, effects);
  if (pad == TabletPad::find_told) effects.find_told = true;
  if (pad == TabletPad::take_told && found) be_told(bench, bytes_of(found->told), now, effects);
  if (pad == TabletPad::forget_told) be_told(bench, "", now, effects);
}

}

void act_on_tablet(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  const auto own = pad.kind.as<TabletPad>();
  if (own == TabletPad::bind) return wait_for_key(bench, pad.arg, effects);
  bench.keys.binding.reset();
  if (!own) return;
  const double step = pad.arg == "much" ? much : a_little;
  switch (*own) {
  case TabletPad::hand:
    bench.tablet.hand = bench.tablet.hand == Hand::left ? Hand::right : Hand::left;
    bench.display.hand = bench.tablet.hand;
    break;
  case TabletPad::motion: bench.tablet.motion = !bench.tablet.motion; break;
  case TabletPad::full_screen:
    bench.full_screen = !bench.full_screen.value_or(false);
    bench.tablet.full_screen = *bench.full_screen;
    break;
  case TabletPad::language:
    bench.tablet.language = next_language(bench.spoken);
    effects.speak = bench.tablet.language;
    break;
  case TabletPad::card_smaller: rescale(bench, 1 / (1 + step)); break;
  case TabletPad::card_larger: rescale(bench, 1 + step); break;
  case TabletPad::bind: return; // see above
  case TabletPad::others:
  case TabletPad::tell:
  case TabletPad::find_told:
  case TabletPad::take_told:
  case TabletPad::leave_told:
  case TabletPad::forget_told: return act_on_sharing(bench, *own, now, effects);
  }
  effects.keep_tablet = true;
}

}
