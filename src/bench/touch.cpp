#include "bench/touch.hpp"

#include "bench/pads_top_bar.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bench {

namespace {

// The number of the page's press by name (window/browser_page.js): what speaks a name twice means
// it.
constexpr int no_finger = 99;

bool bounces(const Touch& touch, const PadId& pad, const Pointer& p) {
  return p.finger != no_finger && touch.last && touch.last->pad == pad &&
         touch.last->poll != p.poll && p.ms - touch.last->ms < bounce_ms;
}

// A hand that was laid down: no tap any more, and nothing waits until it is lifted.
bool rests(const Touch::Press& press, std::int64_t ms) {
  return ms - press.since_ms > longest_touch_ms;
}

// Who is on the glass from now on; whether this one is alone there.
bool is_alone(Touch& touch, const Pointer& p) {
  const bool known = std::erase_if(touch.contacts, [&](const Touch::Contact& c) {
                       return c.finger == p.finger;
                     }) > 0;
  std::erase_if(touch.contacts,
                [&](const Touch::Contact& c) { return p.ms - c.ms > forgotten_ms; });
  const bool alone = touch.contacts.empty();
  if (p.phase == Pointer::down || (p.phase == Pointer::move && known))
    touch.contacts.push_back({p.finger, p.ms});
  return alone;
}

void begin_drag(Touch& touch, const ListArea& list, const Pointer& p) {
  Touch::Drag drag;
  drag.list = list;
  drag.from = drag.to = p.at;
  drag.since_ms = drag.sped_ms = p.ms;
  drag.finger = p.finger;
  touch.drag = drag;
}

Recognised go_down(Touch& touch, const Layout& layout, const Pointer& p, bool alone) {
  const auto drag = std::exchange(touch.drag, std::nullopt);
  const bool beside_drag = drag && drag->pulls && drag->finger != p.finger;
  const bool other = touch.press && touch.press->finger != p.finger;
  if (beside_drag || (other && !rests(*touch.press, p.ms))) return {{}, NotCounted::other_finger};
  touch.press.reset();
  const bool on_list = layout.list && layout.list->box.contains(p.at);
  if (on_list && alone) begin_drag(touch, *layout.list, p);
  if (on_list && layout.list->runs) return {.stopped = true};
  const Pad* pad = pad_at(layout, p.at);
  if (!pad) return {};
  if (bounces(touch, pad->id, p)) return {{}, NotCounted::bounced};
  touch.press = {pad->id, pad->box, p.ms, p.finger, false};
  return {};
}

Recognised go_up(Touch& touch, const Pointer& p) {
  const Touch::Press press = *touch.press;
  touch.press.reset();
  touch.last = {press.pad, p.ms, p.poll};
  if (press.slid || !press.box.contains(p.at)) return {{}, NotCounted::slid};
  if (press.pad.kind == TopBarPad::unlock) return {};
  if (rests(press, p.ms)) return {{}, NotCounted::rested};
  return {press.pad, {}};
}

// Events that were drained in one poll share their time, and say nothing of a speed.
void note_speed(Touch::Drag& drag, double mm, std::int64_t ms) {
  constexpr std::int64_t least_ms = 8;
  drag.since_sped_mm += mm;
  const std::int64_t gone = ms - drag.sped_ms;
  if (gone < least_ms) return;
  const double now = 1000 * std::exchange(drag.since_sped_mm, 0) / static_cast<double>(gone);
  drag.mm_per_s = drag.pulls ? (drag.mm_per_s + now) / 2 : now;
  drag.sped_ms = ms;
}

enum class Way { unknown, along, elsewhere };

Way way_of(const Touch::Drag& drag, double step_mm, std::int64_t ms) {
  const double along = std::abs(drag.to.y - drag.from.y),
               across = std::abs(drag.to.x - drag.from.x);
  if (step_mm > leap_mm) return Way::elsewhere;
  if (std::max(along, across) <= slop_mm) return Way::unknown;
  const bool wanders = across > along || drag.way_mm > straight * std::hypot(along, across);
  return wanders || ms - drag.since_ms > longest_touch_ms ? Way::elsewhere : Way::along;
}

Recognised drag_on(Touch& touch, const Pointer& p) {
  Touch::Drag& drag = *touch.drag;
  const double down = p.at.y - drag.to.y, step = std::hypot(p.at.x - drag.to.x, down);
  drag.to = p.at;
  drag.way_mm += step;
  note_speed(drag, down, p.ms);
  if (drag.pulls) return {.dragged = Dragged{drag.list, down, {}}};
  const Way way = way_of(drag, step, p.ms);
  if (way == Way::elsewhere) touch.drag.reset();
  if (way != Way::along) return {};
  drag.pulls = true;
  touch.press.reset();
  return {.dragged = Dragged{drag.list, p.at.y - drag.from.y, {}}};
}

Recognised let_go(const Touch::Drag& drag, const Pointer& p) {
  const bool held = p.ms - drag.sped_ms > held_ms;
  return {.dragged = Dragged{drag.list, p.at.y - drag.to.y, held ? 0 : drag.mm_per_s}};
}

// What pulls a list is no press any more.
Recognised follow_drag(Touch& touch, const Pointer& p) {
  if (p.phase == Pointer::move) return drag_on(touch, p);
  const Touch::Drag drag = *std::exchange(touch.drag, std::nullopt);
  return drag.pulls && p.phase == Pointer::up ? let_go(drag, p) : Recognised{};
}

}

Recognised recognise(Touch& touch, const Layout& layout, const Pointer& p) {
  const bool alone = is_alone(touch, p);
  if (p.phase == Pointer::down) return go_down(touch, layout, p, alone);
  if (touch.drag && touch.drag->finger == p.finger)
    if (const Recognised r = follow_drag(touch, p); r.dragged) return r;
  if (!touch.press || touch.press->finger != p.finger) return {};
  if (p.phase == Pointer::up) return go_up(touch, p);
  if (p.phase == Pointer::lost)
    touch.press.reset();
  else
    touch.press->slid |= !touch.press->box.contains(p.at);
  return {};
}

bool held_to_unlock(const Touch& touch, std::int64_t ms) {
  return touch.press && !touch.press->slid && touch.press->pad.kind == TopBarPad::unlock &&
         ms - touch.press->since_ms >= unlock_ms;
}

}
