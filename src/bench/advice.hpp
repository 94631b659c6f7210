// The one sentence of advice, as a kind with numbers. It names binder or water, never a command:
// until three batches of this studio have taught it, all of it is a hint.
#pragma once

#include "paint/film.hpp"
#include "paint/gum.hpp"
#include "paint/range.hpp"
#include "session/batch.hpp"

namespace bench {

struct Advice {
  enum Kind {
    weigh_pigment,  // nothing on the slab yet
    first_helping,  // low_g to high_g of binder
    add_drops,      // so many drops, then mull and judge
    mull_and_judge, // one drop more is already a risk
    there,          // last felt right, nothing added since
    too_loose,      // let it dry, or pigment_g more pigment
    gathered,       // the batch is off the slab
  } kind = weigh_pigment;
  int drops = 0;
  double low_g = 0, high_g = 0;
  double pigment_g = 0;
  paint::RestsOn rests_on = paint::RestsOn::class_guess;
  int batches = 0;
  std::optional<paint::GumState> gum; // binder or water; silent where absent
  std::optional<paint::Tack> sticky;  // honey and glycerin stand at their stop mark, or beyond it
};

// drop_mL: what one drop of the batch's binder adds.
Advice advise(const session::Batch& batch, const std::optional<paint::Band>& band, double drop_mL);

}
