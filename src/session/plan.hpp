// What of its plan a batch still waits for.
#pragma once

#include "session/batch.hpp"
#include "session/tapped.hpp"

namespace session {

struct ToCome {
  const Card* card = nullptr; // of the batch
  std::optional<double> g;    // absent: nobody said how much, of a pigment
  double there_g = 0;         // of it already
};

double grams_in(const Batch& batch, const std::string& card); // as it was added

// g of something that the batch's plan takes: as it was said, or by its parts, as far as the others
// of its blend are there. Absent: nobody can tell yet.
std::optional<double> grams_planned(const Batch& batch, const Planned::Take& take);

// Of what was said in drops, so many of them less; absent: it was said in spoons or grams.
std::optional<int> drops_to_come(const ToCome& one, const Measures& of);

// Pigments, until the first liquid says that what was weighed is all of it; those of a blend, so
// much that its proportions are kept (by its parts from the first of them on), until the paint is
// felt to be right or a dot is made. And what goes in beside pigment and binder, to as much pigment
// as was really weighed. A twentieth less is taken for all of it, and so are the drops that were
// said at first. Nothing without a plan, of a card that the batch does not know, or once the paint
// is off the slab.
std::vector<ToCome> to_come(const Batch& batch);

}
