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

struct Recognised {
  std::optional<PadId> tap;
  std::optional<NotCounted> not_counted;
};

// `layout` is the one the finger saw. Changes `touch` alone.
Recognised recognise(Touch& touch, const Layout& layout, const Pointer& pointer);

// Whether the unlocking pad has been held long enough by now.
bool held_to_unlock(const Touch& touch, std::int64_t ms);

}
