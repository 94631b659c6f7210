// The regions of a photo that a swatch is read from: proposed, and moved by a wet thumb.
#pragma once

#include "bench/photos.hpp"

namespace bench {

session::ReadAt written_down(const std::vector<colour::Box>& regions);

// As it was read last; else as proposed; else in the middle, with paper beside it.
std::vector<colour::Box> regions_at_first(const session::Photo& photo, const ImageFacts& facts);

// The paint, or from paper to paper.
void choose_region(PhotosState& state, bool paper);
void scale_region(PhotosState& state, double by); // that moves

}
