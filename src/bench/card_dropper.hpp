// What a dropper's card says: what twenty of its drops weigh, and of which liquid.
#pragma once

#include "session/card.hpp"
#include "words/error.hpp"

namespace bench {

struct DropsWeight { // g
  double value = 0, u = 0;
};
DropsWeight weight_of_twenty(const session::Card& dropper);

// The card after twenty drops weighed so much. Errors: those of paint::calibrated.
words::Result<session::Card> with_weighed_drops(session::Card dropper, double g);

// The card with the next liquid that it may be weighed with. What was weighed stays as it was read:
// the size of a drop follows from it. Of a dropper nobody weighed the usual drop of water stays, as
// it falls of that liquid.
session::Card with_next_liquid(session::Card dropper);

}
