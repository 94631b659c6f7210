#include "bench/act.hpp"
#include "bench/pads_tablet.hpp"

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

}

void act_on_tablet(Bench& bench, const PadId& pad, Effects& effects) {
  const auto own = pad.kind.as<TabletPad>();
  if (own == TabletPad::bind) return wait_for_key(bench, pad.arg, effects);
  bench.keys.binding.reset();
  if (!own) return;
  effects.keep_tablet = true;
  const double step = pad.arg == "much" ? much : a_little;
  switch (*own) {
  case TabletPad::hand:
    bench.tablet.hand = bench.tablet.hand == Hand::left ? Hand::right : Hand::left;
    bench.display.hand = bench.tablet.hand;
    return;
  case TabletPad::motion: bench.tablet.motion = !bench.tablet.motion; return;
  case TabletPad::card_smaller: return rescale(bench, 1 / (1 + step));
  case TabletPad::card_larger: return rescale(bench, 1 + step);
  case TabletPad::bind: return; // see above
  }
}

}
