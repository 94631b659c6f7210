#include "bench/act.hpp"
#include "bench/learning.hpp"
#include "bench/pads_tablet.hpp"
#include "bench/record.hpp"
#include "words/bench_says.hpp"

#include <algorithm>
#include <utility>

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

void tell(Bench& bench) {
  if (bench.sharing.asked) return; // once is enough
  if (bench.loaded)
    bench.sharing.preparing = true;
  else
    bench.sharing.failure = words::Error{words::BenchSay::told_reading, {}};
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
  const auto found = std::exchange(sharing.found, std::nullopt);
  sharing.written.clear();
  sharing.none = false;
  sharing.failure.reset();
  if (pad == TabletPad::others) sharing.open = !sharing.open;
  if (pad == TabletPad::tell) tell(bench);
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
