// What the batch on the slab still waits for, by its plan.
#pragma once

#include "bench/bench.hpp"

namespace bench {

struct ToComeView {
  session::CardKind kind = session::CardKind::other;
  std::string name;
  double g = 0;
  int drops = 0; // that come to it; 0: not dropped, or more than anybody counts
  bool begun = false;
};

std::vector<ToComeView> to_come(const Bench& bench);

}
