// A photo's bytes to pixels whose colours mean something: what colour/reading.hpp reads.
#pragma once

#include "colour/photo.hpp"
#include "words/error.hpp"

#include <string_view>

namespace studio {

// More pixels than these are made fewer, by 2, 4 or 8 each way: enough for any swatch.
inline constexpr double most_read_pixels = 16e6;

// With the profile, the orientation and the steps that the file names; without a profile it is
// sRGB. Takes 3 bytes a pixel, 48 MB at most, beside what decoding takes (studio/picture.hpp).
// Errors: those of decode_picture; photo_for_printing (CMYK); photo_bad_profile.
words::Result<colour::Photo> read_photo(std::string_view bytes);

}
