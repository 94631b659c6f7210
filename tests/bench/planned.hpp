// What Plan shows, and what it has worked out.
#pragma once

#include "bench/planning.hpp"
#include "hands.hpp"

namespace hands {

inline PlanView plan_of(Hands& h) { return std::get<PlanView>(view(h.b, h.now()).screen); }

inline Planned planned_of(Hands& h) {
  const auto p = planned(h.b);
  REQUIRE(p);
  REQUIRE(*p);
  return **p;
}

}
