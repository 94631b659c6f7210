#include "studio/picture.hpp"
#include "words/studio_says.hpp"

#include <png.h>
#include <turbojpeg.h>

#include <memory>

namespace studio {

namespace {

const std::uint8_t* start_of(std::string_view bytes) {
  return reinterpret_cast<const std::uint8_t*>(bytes.data());
}

// A warning is no picture either: of a file cut short the decoder makes grey and warns.
bool decode_jpg(std::string_view bytes, Pixels& pixels) {
  const std::unique_ptr<void, int (*)(void*)> decoder(tjInitDecompress(), tjDestroy);
  if (!decoder) return false;
  int width = 0, height = 0, sampling = 0, colours = 0;
  const bool headed = tjDecompressHeader3(decoder.get(), start_of(bytes), bytes.size(), &width,
                                          &height, &sampling, &colours) == 0;
  if (!headed || width != pixels.width || height != pixels.height) return false;
  // Without the limit a small file can have the same pixels painted over for hours.
  return tjDecompress2(decoder.get(), start_of(bytes), bytes.size(), pixels.rgb.data(), width, 0,
                       height, TJPF_RGB, TJFLAG_LIMITSCANS) == 0;
}

// What shows through is white, as paper is.
bool decode_png(std::string_view bytes, Pixels& pixels) {
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  const std::unique_ptr<png_image, void (*)(png_image*)> freed(&image, png_image_free);
  if (!png_image_begin_read_from_memory(&image, bytes.data(), bytes.size())) return false;
  image.format = PNG_FORMAT_RGB;
  image.flags |= PNG_IMAGE_FLAG_16BIT_sRGB; // else sixteen bits are taken for linear light
  const bool as_announced = image.width == static_cast<png_uint_32>(pixels.width) &&
                            image.height == static_cast<png_uint_32>(pixels.height);
  constexpr png_color white{255, 255, 255};
  return as_announced && png_image_finish_read(&image, &white, pixels.rgb.data(), 0, nullptr);
}

}

words::Result<Pixels> decode_picture(std::string_view bytes) {
  const auto header = picture_header(bytes);
  if (!header) return tl::make_unexpected(header.error());
  Pixels pixels{static_cast<int>(header->width), static_cast<int>(header->height), {}};
  pixels.rgb.resize(static_cast<std::size_t>(3 * header->width * header->height));
  const bool decoded =
      header->kind == PictureKind::jpg ? decode_jpg(bytes, pixels) : decode_png(bytes, pixels);
  if (!decoded) return words::failure(words::StudioSay::photo_not_decoded);
  return pixels;
}

}
