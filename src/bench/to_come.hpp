// What the batch on the slab still waits for, by its plan.
#pragma once

#include "bench/advice.hpp"
#include "bench/bench.hpp"
#include "bench/measures.hpp"

namespace bench {

struct ToComeView {
  session::CardKind kind = session::CardKind::other;
  std::string name;
  std::optional<double> g = {}; // absent: nobody said how much
  Tapped amount = {};           // of a liquid
  bool begun = false;
  bool first = false; // goes in before what is advised
  double mL = 0;      // of a liquid
};
bool pigment_to_come(const ToComeView& one);
bool sweet_to_come(const ToComeView& one); // honey or glycerin

std::vector<ToComeView> to_come(const Bench& bench);

// Honey and glycerin loosen: they go in before the drops that make it right, and before it is
// looked at. So does the water of last time, or of a recipe, once as much binder is in.
void put_first(std::vector<ToComeView>& to_come, const Advice& advice, bool binder_is_in);
double first_mL(const std::vector<ToComeView>& to_come);

}
