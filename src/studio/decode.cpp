#include "studio/picture.hpp"
#include "words/studio_says.hpp"

#include <png.h>
#include <turbojpeg.h>

#include <csetjmp>
#include <cstring>
#include <memory>

namespace studio {

namespace {

const std::uint8_t* start_of(std::string_view bytes) {
  return reinterpret_cast<const std::uint8_t*>(bytes.data());
}

int eighth(int side) { return (side + 7) / 8; }

// A warning is no picture either: of a file cut short the decoder makes grey and warns.
bool decode_jpg(std::string_view bytes, const PictureHeader& header, Pixels& pixels) {
  const std::unique_ptr<void, int (*)(void*)> decoder(tjInitDecompress(), tjDestroy);
  if (!decoder) return false;
  int width = 0, height = 0, sampling = 0, colours = 0;
  const bool headed = tjDecompressHeader3(decoder.get(), start_of(bytes), bytes.size(), &width,
                                          &height, &sampling, &colours) == 0;
  if (!headed || width != header.width || height != header.height) return false;
  // Without the limit a small file can have the same pixels painted over for hours.
  return tjDecompress2(decoder.get(), start_of(bytes), bytes.size(), pixels.rgb.data(),
                       eighth(width), 0, eighth(height), TJPF_RGB, TJFLAG_LIMITSCANS) == 0;
}

struct Png {
  std::string_view rest;
  png_structp read = png_create_read_struct(PNG_LIBPNG_VER_STRING, nullptr, on_error, on_warning);
  png_infop info = read ? png_create_info_struct(read) : nullptr;
  std::vector<std::uint8_t> row = {};

  explicit Png(std::string_view bytes) : rest(bytes) {}
  ~Png() { png_destroy_read_struct(&read, &info, nullptr); }
  Png(const Png&) = delete;
  Png& operator=(const Png&) = delete;

  static void on_error(png_structp png, const char*) { png_longjmp(png, 1); }
  static void on_warning(png_structp, const char*) {}
  static void take(png_structp png, png_bytep to, std::size_t count) {
    std::string_view& rest = static_cast<Png*>(png_get_io_ptr(png))->rest;
    if (count > rest.size()) png_error(png, "cut");
    std::memcpy(to, rest.data(), count);
    rest.remove_prefix(count);
  }
};

// What libpng calls jumps out of these two, past nothing that has to be cleared away.
void begin_png(Png& png) {
  png_set_read_fn(png.read, &png, Png::take);
  png_set_keep_unknown_chunks(png.read, PNG_HANDLE_CHUNK_NEVER, nullptr, -1); // texts, profiles
  png_read_info(png.read, png.info);
  png_set_expand(png.read);
  png_set_scale_16(png.read);
  png_set_strip_alpha(png.read);
  png_set_gray_to_rgb(png.read);
  png_read_update_info(png.read, png.info);
}

// Interlaced rows as they come, pass by pass: the first pass is every eighth pixel of every eighth
// row.
void read_png_rows(Png& png, Pixels& pixels) {
  const png_uint_32 width = png_get_image_width(png.read, png.info);
  const png_uint_32 height = png_get_image_height(png.read, png.info);
  const bool passes = png_get_interlace_type(png.read, png.info) == PNG_INTERLACE_ADAM7;
  const png_uint_32 step = passes ? 1 : 8;
  std::uint8_t* to = pixels.rgb.data();
  for (int pass = 0; pass < (passes ? PNG_INTERLACE_ADAM7_PASSES : 1); ++pass) {
    const bool any = !passes || PNG_PASS_COLS(width, pass) > 0;
    const png_uint_32 rows = !any ? 0 : passes ? PNG_PASS_ROWS(height, pass) : height;
    for (png_uint_32 y = 0; y < rows; ++y) {
      png_read_row(png.read, png.row.data(), nullptr);
      if (pass > 0 || y % step != 0) continue;
      for (int x = 0; x < pixels.width; ++x, to += 3)
        std::memcpy(to, &png.row[3 * step * static_cast<std::size_t>(x)], 3);
    }
  }
}

template <class Does>
bool without_jump(Png& png, const Does& does) {
  if (setjmp(png_jmpbuf(png.read))) return false;
  does();
  return true;
}

bool decode_png(std::string_view bytes, const PictureHeader& header, Pixels& pixels) {
  Png png(bytes);
  if (!png.info || !without_jump(png, [&] { begin_png(png); })) return false;
  const bool as_announced =
      png_get_image_width(png.read, png.info) == static_cast<png_uint_32>(header.width) &&
      png_get_image_height(png.read, png.info) == static_cast<png_uint_32>(header.height);
  if (!as_announced || png_get_channels(png.read, png.info) != 3) return false;
  png.row.resize(png_get_rowbytes(png.read, png.info));
  return without_jump(png, [&] { read_png_rows(png, pixels); });
}

}

words::Result<Pixels> decode_picture(std::string_view bytes) {
  const auto header = picture_header(bytes);
  if (!header) return tl::make_unexpected(header.error());
  Pixels pixels{
      eighth(static_cast<int>(header->width)), eighth(static_cast<int>(header->height)), {}};
  pixels.rgb.resize(3 * static_cast<std::size_t>(pixels.width) *
                    static_cast<std::size_t>(pixels.height));
  const bool decoded = header->kind == PictureKind::jpg ? decode_jpg(bytes, *header, pixels)
                                                        : decode_png(bytes, *header, pixels);
  if (!decoded) return words::failure(words::StudioSay::photo_not_decoded);
  return pixels;
}

}
