// Pictures: the header bounds whatever comes of the rest.
#include "studio/photos.hpp"

#include "colour/propose.hpp"
#include "colour/specks.hpp"
#include "fuzz/must.hpp"
#include "studio/photo_pixels.hpp"
#include "studio/picture.hpp"

#include <cmath>
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
  if (const auto fine = studio::read_photo(bytes)) {
    must(fine->orientation >= 1 && fine->orientation <= 8, "a photo lies on one of eight sides");
    must(fine->rgb.size() == static_cast<std::size_t>(3 * fine->width * fine->height),
         "every pixel is there");
    for (const colour::Regions& regions : colour::propose_regions(*fine)) {
      must(colour::lies_in(regions.swatch, *fine), "a proposed region lies on the photo");
      const auto reading = colour::read_swatch(*fine, regions);
      must(!reading || std::isfinite(reading->d50.l), "a colour is a number");
    }
    const colour::Size size = colour::upright_size(*fine);
    (void)colour::count_specks(*fine, {0, 0, size.width, size.height}, std::nullopt);
  }
  const auto photo = studio::photo_from(bytes, session::PhotoOf::pan);
  must(photo && photo->sha256 == studio::sha256(bytes), "a picture makes a photo");
  return 0;
}
