// What of its plan a batch still waits for.
#pragma once

#include "session/batch.hpp"

namespace session {

struct ToCome {
  const Card* card = nullptr; // of the batch
  double g = 0;
  bool begun = false; // some of it is there
};

// Pigments, until the first liquid says that they are all there; and what goes in beside pigment
// and binder, to as much pigment as was really weighed. A twentieth less is taken for all of it.
// Nothing without a plan, of a card that the batch does not know, or once the paint is off the
// slab.
std::vector<ToCome> to_come(const Batch& batch);

}
