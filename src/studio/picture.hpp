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
// Of a JPEG in several scans, as progressive ones are, all has to be held until the last is read.
inline constexpr std::int64_t most_held_bytes = 128 << 20;

enum class PictureKind { jpg, png };

struct PictureHeader {
  PictureKind kind = PictureKind::jpg;
  std::int64_t width = 0; // pixels, 1 to longest_side; width * height at most most_pixels
  std::int64_t height = 0;
  std::int64_t held_bytes = 0; // to be held at once, at most most_held_bytes
};

// By the first bytes, whatever the file was called. Errors: photo_empty, photo_too_long,
// photo_not_known, photo_without_size, photo_too_large, photo_too_large_in_scans.
words::Result<PictureHeader> picture_header(std::string_view bytes);

// How many of its pixels, each way, are to be one, that at most so many are left: 1, 2, 4 or 8, at
// which there may be more.
int shrunk_for(const PictureHeader& header, double most);

// Of every eighth row and column, rounded up: that it can be read to its end is what counts.
struct Pixels {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> rgb; // row by row from the top; sRGB
  bool see_through = false;      // some of it was: that is laid over white
};

// Reads all of it, in rows as far as its kind allows, with at most 200 MB, the bytes among them,
// however much they would unpack to. Errors: those of picture_header; photo_not_decoded, also where
// only a part can be.
words::Result<Pixels> decode_picture(std::string_view bytes);

}
