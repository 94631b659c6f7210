// A photo that was kept, and what was read from it.
#pragma once

#include "session/seldom.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace session {

enum class PhotoOf { slab, dot, swatch, pan };

enum class Specks { many, few, none };

// What was seen on a photo of a dot.
struct SpecksSeen {
  Specks as = Specks::many;           // by the hand
  std::optional<Specks> counted = {}; // proposed to the hand; absent: no photo could tell
  bool operator==(const SpecksSeen&) const = default;
};

// Which part of the doubts is the swatch's own, and what 1 sd of the doubt about the white of its
// photo would do, which every swatch on that photo shares.
struct DoubtParts {
  double l_own = 0, a_own = 0, b_own = 0; // standard uncertainties
  double l_white = 0, a_white = 0, b_white = 0;
  bool operator==(const DoubtParts&) const = default;
};

// The colour of a swatch beside its bare paper, as it was read from the photo.
struct Measured {
  std::uint32_t shown = 0;              // 0xRRGGBB on a screen: sRGB, D65
  double l = 0, a = 0, b = 0;           // CIELAB under D50, the paper as white
  double l_u = 0, a_u = 0, b_u = 0;     // their standard uncertainties
  std::optional<DoubtParts> parts = {}; // absent: nobody has written them down
  bool operator==(const Measured&) const = default;
};

// A part of the upright picture, in its pixels, from the upper left.
struct PhotoPart {
  std::int64_t x = 0, y = 0, width = 0, height = 0;
  bool operator==(const PhotoPart&) const = default;
};

// Where a swatch was read: the paint, and the bare paper beside it.
struct ReadAt {
  PhotoPart paint;
  std::vector<PhotoPart> paper;
  bool operator==(const ReadAt&) const = default;
};

// A picture, kept beside the sessions under the SHA-256 of its bytes.
struct Photo {
  static constexpr std::string_view word = "photo";
  std::string sha256; // 64 lower-case hexadecimal digits
  std::string ending; // "jpg" or "png"
  PhotoOf of = PhotoOf::swatch;
  Seldom<Measured> measured = {};        // of a swatch; absent: not read
  Seldom<ReadAt> read_at = {};           // absent: nobody has written it down
  std::optional<SpecksSeen> specks = {}; // of a dot; absent: nobody has said
  bool operator==(const Photo&) const = default;
};

}
