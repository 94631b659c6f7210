// Pictures: the header bounds whatever comes of the rest.
#include "studio/photos.hpp"

#include "fuzz/must.hpp"
#include "studio/picture.hpp"

#include <cstdint>

using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  const auto header = studio::picture_header(bytes);
  if (header) {
    must(header->width >= 1 && header->width <= studio::longest_side, "the width is bounded");
    must(header->height >= 1 && header->height <= studio::longest_side, "the height is bounded");
    must(header->width * header->height <= studio::most_pixels, "the pixels are bounded");
    must(header->held_bytes <= studio::most_held_bytes, "what has to be held is bounded");
    // Larger ones are as right or wrong, only slower.
    if (header->width * header->height > 250'000) return 0;
  }
  const auto pixels = studio::decode_picture(bytes);
  must(header || !pixels, "nothing is decoded without a header");
  if (!pixels) return 0;
  must(pixels->width == (header->width + 7) / 8 && pixels->height == (header->height + 7) / 8,
       "a picture is as large as its header says");
  must(pixels->rgb.size() == static_cast<std::size_t>(3 * pixels->width * pixels->height),
       "every eighth pixel is there");
  const auto photo = studio::photo_from(bytes, session::PhotoOf::pan);
  must(photo && photo->sha256 == studio::sha256(bytes), "a picture makes a photo");
  return 0;
}
