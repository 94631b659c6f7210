#include "bench/act.hpp"

#include "bench/pans.hpp"

namespace bench {

namespace {

constexpr std::int64_t notice_ms = 4000;

bool belongs_to_number(PadKind kind) {
  return kind == PadKind::digit || kind == PadKind::point || kind == PadKind::erase ||
         kind == PadKind::enter || kind == PadKind::leave;
}

bool leads_elsewhere(PadKind kind) {
  return kind == PadKind::plan || kind == PadKind::slab || kind == PadKind::pans ||
         kind == PadKind::book || kind == PadKind::tablet;
}

}

void go_to(Bench& bench, Screen screen) {
  if (screen == Screen::slab && bench.batch.empty()) return;
  bench.screen = screen;
  bench.keys.binding.reset();
  bench.number.reset();
  bench.middle = Middle::trail;
}

void say_error(Bench& bench, words::Error error, const Now& now) {
  bench.notice = {std::nullopt, std::move(error), now.run_ms + notice_ms};
}

void act(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  if (bench.screen == Screen::pans) bench.notice.error.reset(); // what it said may hold no longer
  const bool leaves_shelf = bench.screen == Screen::shelf && leads_elsewhere(pad.kind);
  if (leaves_shelf && !keep_card(bench, now, effects)) return;
  switch (pad.kind) {
  case PadKind::shelf: return go_to(bench, Screen::shelf);
  case PadKind::plan: return go_to(bench, Screen::plan);
  case PadKind::to_pans:
  case PadKind::pans: open_pans_from_strip(bench, now); return go_to(bench, Screen::pans);
  case PadKind::slab: return go_to(bench, Screen::slab);
  case PadKind::book:
    if (bench.screen == Screen::book) to_all_batches(bench);
    return go_to(bench, Screen::book);
  case PadKind::tablet: return go_to(bench, Screen::tablet);
  case PadKind::sound:
    bench.tablet.sound = !bench.tablet.sound;
    effects.keep_tablet = true;
    return;
  case PadKind::night: bench.night = !bench.night; return;
  case PadKind::wipe: bench.locked = true; return;
  default: break;
  }
  if (bench.number && belongs_to_number(pad.kind)) return act_on_number(bench, pad, now, effects);
  if (bench.screen == Screen::slab) return act_on_slab(bench, pad, now, effects);
  if (bench.screen == Screen::shelf) return act_on_shelf(bench, pad, now, effects);
  if (bench.screen == Screen::pans) return act_on_pans(bench, pad, now, effects);
  if (bench.screen == Screen::plan) return act_on_plan(bench, pad, now, effects);
  if (bench.screen == Screen::tablet) return act_on_tablet(bench, pad, effects);
  act_on_book(bench, pad, now, effects);
}

}
