// Keys and pedals to taps. A pedal is a keyboard to the system, so any key may be bound to any of
// the pads below; what is not bound moves a ring from pad to pad and taps what it rests on.
#pragma once

#include "bench/bench.hpp"

#include <array>
#include <string_view>

namespace bench {

// What a key can be bound to, by the names of pads. An "add" stands for the first material of that
// kind, so that a pedal is bound once and not for each binder.
inline constexpr std::array<std::string_view, 12> bindable{
    "add binder", "add water",      "add honey",
    "undo",       "pass",           "dot",
    "another",    "felt wont_move", "felt too_sticky",
    "felt right", "felt too_loose", "felt too_runny"};

// The pad on the glass that a bound one means now; absent where it is not there.
std::optional<PadId> meant(const Bench& bench, const PadId& bound);

// The pad next to the ring's in a direction of -1, 0 or 1 each; the first one where there is no
// ring, the same where there is none further.
std::optional<PadId> beside(const Layout& layout, const std::optional<PadId>& from, int right,
                            int down);

// What one key means now, and what it changes of the ring, the flash and what is being bound.
// Bounces as glass does: a key that comes again within 80 ms is not counted.
struct KeyMeans {
  std::optional<PadId> tap;
  std::optional<NotCounted> not_counted;
  bool bound = false; // the tablet is to be kept
};
KeyMeans key_means(Bench& bench, const Key& key);

}
