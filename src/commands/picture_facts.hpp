// What a photo's pixels tell, and names of pictures, for whoever answers the bench.
#pragma once

#include "bench/photos.hpp"
#include "colour/photo.hpp"

namespace commands {

bench::ImageFacts facts_of(const colour::Photo& photo);

// Errors: those of the photo; untold with the reason why.
bench::SwatchRead swatch_read(const bench::ReadSwatch& wanted,
                              const words::Result<colour::Photo>& photo);

// "photos/9f86d0818884…jpg": enough of 64 digits to find a file by.
std::string shortened(const std::string& image);

}
