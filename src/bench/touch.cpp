#include "bench/touch.hpp"

#include "bench/pads_top_bar.hpp"

namespace bench {

namespace {

bool bounces(const Touch& touch, const PadId& pad, const Pointer& p) {
  return touch.last && touch.last->pad == pad && touch.last->poll != p.poll &&
         p.ms - touch.last->ms < bounce_ms;
}

// A hand that was laid down: no tap any more, and nothing waits until it is lifted.
bool rests(const Touch::Press& press, std::int64_t ms) {
  return ms - press.since_ms > longest_touch_ms;
}

Recognised go_down(Touch& touch, const Layout& layout, const Pointer& p) {
  const bool other = touch.press && touch.press->finger != p.finger;
  if (other && !rests(*touch.press, p.ms)) return {{}, NotCounted::other_finger};
  touch.press.reset();
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

}

Recognised recognise(Touch& touch, const Layout& layout, const Pointer& p) {
  if (p.phase == Pointer::down) return go_down(touch, layout, p);
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
