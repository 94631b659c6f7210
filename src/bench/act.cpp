#include "bench/act.hpp"

#include "bench/making.hpp"
#include "bench/pads_number.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_top_bar.hpp"
#include "bench/pans.hpp"
#include "bench/screens.hpp"

namespace bench {

namespace {

constexpr std::int64_t notice_ms = 4000;

bool belongs_to_number(PadKind kind) {
  return kind.list() == PadList::number || kind == SharedPad::leave;
}

// Digits that were typed are entered by the next pad of the plan too; false where they cannot be.
bool enter_number_of_plan(Bench& bench, const Now& now, Effects& effects) {
  if (!bench.number || bench.number->text.empty()) return true;
  act_on_number(bench, {NumberPad::enter, ""}, now, effects);
  return !bench.number || bench.number->text.empty();
}

std::optional<Screen> screen_of(PadKind pad) {
  if (pad == SharedPad::to_pans) return Screen::pans;
  if (pad == SharedPad::to_plan) return Screen::plan;
  return screens.find(&ScreenRow::pad, pad);
}

// The tab of Slab takes up what was left there.
void turn_to(Bench& bench, Screen screen, const Now& now, Effects& effects) {
  if (bench.screen == Screen::book) keep_what_is_typed(bench, now, effects);
  if (screen == Screen::slab && bench.batch.empty() && !bench.plan.go_on.empty())
    return take_up(bench, std::string(bench.plan.go_on), now, effects);
  if (screen == Screen::pans) open_pans_from_top_bar(bench, now);
  if (screen == Screen::photos)
    return open_photos(bench, batch_of(bench.book.page), false, effects);
  if (screen == Screen::binder && bench.shelf_page.card)
    open_making(bench, bench.shelf_page.card->id);
  if (screen == Screen::book && bench.screen == Screen::book) to_all_batches(bench);
  go_to(bench, screen);
}

void act_on_top_bar(Bench& bench, TopBarPad pad, Effects& effects) {
  switch (pad) {
  case TopBarPad::sound:
    bench.tablet.sound = !bench.tablet.sound;
    effects.keep_tablet = true;
    return;
  case TopBarPad::night: bench.night = !bench.night; return;
  case TopBarPad::wipe: bench.locked = true; return;
  case TopBarPad::unlock: return; // held, see touch.hpp
  case TopBarPad::today:
  case TopBarPad::shelf:
  case TopBarPad::plan:
  case TopBarPad::slab:
  case TopBarPad::pans:
  case TopBarPad::book:
  case TopBarPad::tablet: return; // see screens.hpp
  }
}

}

void go_to(Bench& bench, Screen screen) {
  bench.screen = screen;
  bench.keys.binding.reset();
  bench.number.reset();
  bench.panel = TrailPanel{};
}

void say_error(Bench& bench, words::Error error, const Now& now) {
  bench.notice = {std::nullopt, std::move(error), now.run_ms + notice_ms};
}

void act(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  if (bench.screen == Screen::pans) bench.notice.error.reset(); // what it said may hold no longer
  const auto to = screen_of(pad.kind);
  const bool leaves_shelf = bench.screen == Screen::shelf && to && to != Screen::shelf;
  if (leaves_shelf && !leave_card(bench, now, effects)) return;
  if (to) return turn_to(bench, *to, now, effects);
  if (const auto top_bar = pad.kind.as<TopBarPad>())
    return act_on_top_bar(bench, *top_bar, effects);
  if (pad.kind == SharedPad::dot_photo) return open_photo_of_trail(bench, pad.arg, effects);
  if (bench.number && belongs_to_number(pad.kind)) return act_on_number(bench, pad, now, effects);
  switch (bench.screen) {
  case Screen::today: return act_on_today(bench, pad, now, effects);
  case Screen::shelf: return act_on_shelf(bench, pad, now, effects);
  case Screen::plan:
    if (!enter_number_of_plan(bench, now, effects)) return;
    return act_on_plan(bench, pad, now, effects);
  case Screen::slab: return act_on_slab(bench, pad, now, effects);
  case Screen::pans: return act_on_pans(bench, pad, now, effects);
  case Screen::book: return act_on_book(bench, pad, now, effects);
  case Screen::tablet: return act_on_tablet(bench, pad, now, effects);
  case Screen::binder: return act_on_binder(bench, pad, now, effects);
  case Screen::photos: return act_on_photos(bench, pad, now, effects);
  }
}

}
