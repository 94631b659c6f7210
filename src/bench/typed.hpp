// A number that was typed, before it goes anywhere: what cannot be so is refused, what is not
// plausible is asked about once. Every number pad and every correction goes through the two lists
// in typed.cpp.
#pragma once

#include "bench/bench.hpp"

namespace bench {

struct Typed {
  const Bench& bench;
  const PadId& target;
  double value = 0;
  const session::Entry* line = nullptr; // that it corrects
  std::optional<session::Event> says;   // at the slab or of a pan: the line that it makes
};

// By the pad that asks for it, and the line that is open.
Typed typed(const Bench& bench, const PadId& target, double value);

std::optional<words::Error> refused(const Typed& typed);
std::optional<words::Error> asked_about(const Typed& typed);

}
