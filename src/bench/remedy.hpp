// What a maker does about a trouble at the slab: amounts for this batch. All of it is common
// practice, no source.
#pragma once

#include "bench/advice.hpp"

namespace bench {

// Of the two amounts those that are meant are above 0; the words of each trouble say of what.
struct Remedy {
  session::TroubleKind trouble = session::TroubleKind::wont_wet;
  enum Way {
    usual,
    stronger, // it has been named before in this batch
    by_gum,   // what is usual would make too little gum less, or too much more
    loose     // what is usual would make loose paint looser
  } way = usual;
  Tapped amount = {}; // wetting aid, water, or binder
  double g = 0;       // pigment
};

// Beside that advice, which may say that there is too much liquid by the count.
Remedy remedy_of(session::TroubleKind trouble, const session::Batch& batch, const Measures& binder,
                 const Known& known, Advice::Kind beside = Advice::mull_and_judge);

}
