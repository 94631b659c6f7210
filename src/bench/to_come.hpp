// What the batch on the slab still waits for, by its plan.
#pragma once

#include "bench/bench.hpp"
#include "bench/measures.hpp"

namespace bench {

struct ToComeView {
  session::CardKind kind = session::CardKind::other;
  std::string name;
  std::optional<double> g = {}; // absent: nobody said how much
  Tapped amount = {};           // of a liquid
  bool begun = false;
};

std::vector<ToComeView> to_come(const Bench& bench);

}
