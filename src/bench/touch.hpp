// Pointer events to taps, on wet glass. One recogniser for window, browser, pedal and script.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// No finger taps the same pad again within this; events of one poll, which share their time after
// a stall, are never filtered. A touch that rests longer than `longest_touch_ms` is a hand laid
// down. Wiped glass is unlocked by holding for `unlock_ms`. Our own values.
inline constexpr std::int64_t bounce_ms = 80;
inline constexpr std::int64_t longest_touch_ms = 1500;
inline constexpr std::int64_t unlock_ms = 1200;

// A finger that goes up or down a list by more than `slop_mm`, rather straight, drags it and taps
// nothing. Half a row, and more than a drop or a rolling fingertip shifts a touch. What wanders
// about, leaps further at once than a thumb is wide, takes longer to begin than a hand is let lie,
// or is not alone on the glass, is wet glass or a palm and drags nothing. Our own values.
inline constexpr double slop_mm = 6;
inline constexpr double straight = 1.5;             // the way it went, to how far it has come
inline constexpr double leap_mm = 25;               // before it drags
inline constexpr std::int64_t held_ms = 80;         // still for so long before it lifts: no speed
inline constexpr std::int64_t forgotten_ms = 10000; // a contact that nothing was heard of

struct Dragged {
  ListArea list;                   // as it was when the finger went down
  double mm = 0;                   // down the glass, since the last that was said
  std::optional<double> let_go_at; // mm/s, once the finger has left it
};

struct Recognised {
  std::optional<PadId> tap = {};
  std::optional<NotCounted> not_counted = {};
  std::optional<Dragged> dragged = {};
  bool stopped = false; // a list that ran on
};

// `layout` is the one the finger saw; only one that goes down looks at it. Changes `touch` alone.
Recognised recognise(Touch& touch, const Layout& layout, const Pointer& pointer);

// Whether the unlocking pad has been held long enough by now.
bool held_to_unlock(const Touch& touch, std::int64_t ms);

}
