// Where on a photo the swatches lie, and bare paper beside each, as a proposal for the hand to
// move.
#pragma once

#include "colour/reading.hpp"

#include <vector>

namespace colour {

// The largest first, at most two; empty where no swatch is seen. A swatch is what differs from the
// paper by 8 and more, takes at least 1 % of the photo and does not reach its edge: what does may
// be the table. The box is the largest that lies within it, less a seam; paper is found on up to
// four sides. Looks at the photo in about 160 x 160 fields, whatever its size.
//
// On a printed card (colour/card.hpp) paint lies in the card's field and nowhere else: its greys
// are no swatch. Paint that hardly differs from the paper is found there too, and where none is
// seen, the middle of the field is proposed; reading it tells whether there is any.
std::vector<Regions> propose_regions(const Photo& photo);

}
