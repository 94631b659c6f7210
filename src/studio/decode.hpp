// Pictures made of their bytes, as fine as they are wanted.
#pragma once

#include "studio/picture.hpp"

#include <string>

namespace studio {

// What a PNG says beside its pixels.
struct PngTags {
  std::string profile;      // ICC; empty: none
  bool bad_profile = false; // there is one, and it cannot be unpacked or is none
  std::string exif;         // from its byte order on
};

// Of every by-th row and column, rounded up; by is 1, 2, 4 or 8. Of a JPEG those between are in
// their mean. Takes as much as decode_picture, and 3 bytes for each of its pixels. Errors: those of
// decode_picture.
words::Result<Pixels> decode_part(std::string_view bytes, int by, PngTags* tags = nullptr);
// The same of a picture whose header was read already.
words::Result<Pixels> decode_part(std::string_view bytes, const PictureHeader& header, int by,
                                  PngTags* tags = nullptr);

}
