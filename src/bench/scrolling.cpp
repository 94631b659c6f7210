#include "bench/scrolling.hpp"

#include "bench/pads_shared.hpp"

#include <cmath>

namespace bench {

namespace {

// That of the screen.
template <class Of> // a Bench, or a const one
auto scroll_of(Of& bench) -> decltype(&bench.plan.list) {
  switch (bench.screen) {
  case Screen::today: return &bench.today.list;
  case Screen::shelf: return &bench.shelf_page.list;
  case Screen::plan: return &bench.plan.list;
  case Screen::book: return &bench.book.list;
  case Screen::photos: return &bench.photos.list;
  case Screen::slab:
  case Screen::pans: // wet fingers
  case Screen::tablet:
  case Screen::binder: return nullptr;
  }
  return nullptr;
}

}

bool turns_list(Bench& bench, const PadId& pad) {
  const bool on = pad.kind == SharedPad::page_on;
  Scroll* list = scroll_of(bench);
  if (!list || (!on && pad.kind != SharedPad::page_back)) return false;
  const auto area = layout(bench).list;
  if (area) turn_page(*list, *area, on);
  return area.has_value();
}

bool drag_list(Bench& bench, const Recognised& r, const Now& now) {
  Scroll* list = scroll_of(bench);
  if (!list) return false;
  const long before = std::lround(list->at);
  if (r.stopped) stop(*list);
  if (r.dragged) drag(*list, r.dragged->list, r.dragged->mm);
  if (r.dragged && r.dragged->let_go_at && bench.tablet.motion)
    let_go(*list, r.dragged->list, *r.dragged->let_go_at, now.run_ms);
  return std::lround(list->at) != before;
}

bool move_list(Bench& bench, const Now& now) {
  Scroll* list = scroll_of(bench);
  if (!list) return false;
  const long before = std::lround(list->at);
  run_on(*list, now.run_ms);
  if (!list->towards && !(bench.touch.drag && bench.touch.drag->pulls)) stop(*list);
  return std::lround(list->at) != before;
}

std::optional<std::int64_t> next_row_at(const Bench& bench) {
  const Scroll* list = scroll_of(bench);
  return list ? next_row_at(*list) : std::nullopt;
}

}
