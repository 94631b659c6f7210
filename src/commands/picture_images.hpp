// Photos made smaller and upright, to be drawn.
#pragma once

#include "commands/picture_home.hpp"
#include "commands/storage.hpp"

namespace commands {

inline constexpr int thumb_px = 256, large_px = 1600; // of the longer side, at most

// A small one is made once, and kept in the home's folder of thumbs. Errors: those of
// bytes_of_image and studio::decode_part.
words::Result<DrawnImage> make_image(const PictureHome& home, const WantedImage& wanted);

}
