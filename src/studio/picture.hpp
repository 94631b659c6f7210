// A picture's bytes, which are hostile until read: what they are and how large a picture they make
// is looked at before anything is decoded. JPEG (ITU-T T.81) and PNG (ISO/IEC 15948), and nothing
// else.
#pragma once

#include "words/error.hpp"

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

namespace studio {

inline constexpr std::size_t most_picture_bytes = 32 * 1024 * 1024;
inline constexpr std::int64_t most_pixels = 64'000'000;
inline constexpr std::int64_t longest_side = 32'768; // pixels

enum class PictureKind { jpg, png };

struct PictureHeader {
  PictureKind kind = PictureKind::jpg;
  std::int64_t width = 0; // pixels, 1 to longest_side; width * height at most most_pixels
  std::int64_t height = 0;
};

// By the first bytes, whatever the file was called. Errors: photo_empty, photo_too_long,
// photo_not_known, photo_without_size, photo_too_large.
words::Result<PictureHeader> picture_header(std::string_view bytes);

struct Pixels {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> rgb; // row by row from the top; sRGB
};

// Takes memory for the pixels that the header announces (at most 11 bytes each), however much the
// rest of the file would unpack to. Errors: those of picture_header; photo_not_decoded, also where
// only a part can be.
words::Result<Pixels> decode_picture(std::string_view bytes);

}
