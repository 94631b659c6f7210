// Hands whose paint is off the slab, with Pans before the eyes.
#pragma once

#include "hands.hpp"

namespace hands {

constexpr double hour = 3600, day = 24 * hour; // s

// Some 10 mL of cobalt blue in a jar.
inline void gather_for_pans(Hands& h) {
  h.gather();
  h.tap("pans");
}

inline PansView pans_shown(Hands& h) { return std::get<PansView>(view(h.b, h.now()).screen); }

}
