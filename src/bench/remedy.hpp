// What a maker does about a trouble at the slab: amounts for this batch. All of it is common
// practice, no source.
#pragma once

#include "bench/measures.hpp"
#include "session/batch.hpp"

namespace bench {

// Of the two amounts those that are meant are above 0; the words of each trouble say of what.
struct Remedy {
  session::TroubleKind trouble = session::TroubleKind::wont_wet;
  Tapped amount = {}; // wetting aid, water, or binder
  double g = 0;       // pigment
  bool more = false;  // it has been named before in this batch: the stronger remedy
};

Remedy remedy_of(session::TroubleKind trouble, const session::Batch& batch, const Measures& binder,
                 const Measures& water);

}
