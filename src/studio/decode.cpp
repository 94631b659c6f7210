#include "studio/decode.hpp"

#include "studio/jpg_tags.hpp"
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

int part(std::int64_t side, int by) { return (static_cast<int>(side) + by - 1) / by; }

Pixels room_for(const PictureHeader& header, int by) {
  Pixels pixels{part(header.width, by), part(header.height, by), {}, false};
  pixels.rgb.resize(3 * static_cast<std::size_t>(pixels.width) *
                    static_cast<std::size_t>(pixels.height));
  return pixels;
}

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
                       pixels.width, 0, pixels.height, TJPF_RGB, TJFLAG_LIMITSCANS) == 0;
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
void begin_png(Png& png, bool with_tags) {
  png_set_read_fn(png.read, &png, Png::take);
  png_set_keep_unknown_chunks(png.read, PNG_HANDLE_CHUNK_NEVER, nullptr, -1); // texts, profiles
  constexpr png_byte wanted[] = "iCCP\0eXIf";
  if (with_tags) png_set_keep_unknown_chunks(png.read, PNG_HANDLE_CHUNK_AS_DEFAULT, wanted, 2);
  png_read_info(png.read, png.info);
  png_set_expand(png.read);
  png_set_scale_16(png.read);
  png_set_gray_to_rgb(png.read);
  png_set_add_alpha(png.read, 0xff, PNG_FILLER_AFTER);
  png_read_update_info(png.read, png.info);
}

// Of one row of the file, or of one pass of it, what belongs to every by-th row and column.
struct Row {
  int y = 0, from = 0, step = 1; // of the picture: which row, its first column, to the next one
  int columns = 0;
};

// Over white, as paper is.
void lay_over_white(const png_byte* rgba, std::uint8_t* rgb, Pixels& pixels) {
  const int alpha = rgba[3];
  pixels.see_through = pixels.see_through || alpha < 255;
  for (int i = 0; i < 3; ++i)
    rgb[i] = static_cast<std::uint8_t>((rgba[i] * alpha + 255 * (255 - alpha) + 127) / 255);
}

void keep_row(const Png& png, const Row& row, int by, Pixels& pixels) {
  if (row.y % by != 0) return;
  std::uint8_t* to =
      &pixels
           .rgb[3 * static_cast<std::size_t>(row.y / by) * static_cast<std::size_t>(pixels.width)];
  for (int i = 0, x = row.from; i < row.columns; ++i, x += row.step)
    if (x % by == 0)
      lay_over_white(&png.row[4 * static_cast<std::size_t>(i)], to + 3 * (x / by), pixels);
}

// Interlaced rows as they come, pass by pass, as far as any of them is wanted: the first pass is
// every eighth pixel of every eighth row, the last every second row.
void read_png_rows(Png& png, int by, Pixels& pixels) {
  const png_uint_32 width = png_get_image_width(png.read, png.info);
  const png_uint_32 height = png_get_image_height(png.read, png.info);
  const bool woven = png_get_interlace_type(png.read, png.info) == PNG_INTERLACE_ADAM7;
  const int needed = by >= 8 ? 1 : by >= 4 ? 3 : by >= 2 ? 5 : PNG_INTERLACE_ADAM7_PASSES;
  for (int pass = 0; pass < (woven ? PNG_INTERLACE_ADAM7_PASSES : 1); ++pass) {
    Row row;
    row.columns = static_cast<int>(woven ? PNG_PASS_COLS(width, pass) : width);
    row.from = woven ? static_cast<int>(PNG_COL_FROM_PASS_COL(0, pass)) : 0;
    row.step = woven ? static_cast<int>(1U << PNG_PASS_COL_SHIFT(pass)) : 1;
    const png_uint_32 rows = row.columns == 0 ? 0 : woven ? PNG_PASS_ROWS(height, pass) : height;
    for (png_uint_32 y = 0; y < rows; ++y) {
      png_read_row(png.read, png.row.data(), nullptr);
      row.y = static_cast<int>(woven ? PNG_ROW_FROM_PASS_ROW(y, pass) : y);
      if (pass < needed) keep_row(png, row, by, pixels);
    }
  }
}

template <class Does>
bool without_jump(Png& png, const Does& does) {
  if (setjmp(png_jmpbuf(png.read))) return false;
  does();
  return true;
}

// libpng is silent about a profile that it does not take. Chunks are a length, a name, the bytes
// and their sum (PNG, 5.3); profiles stand before the pixels.
bool names_profile(std::string_view bytes) {
  constexpr std::size_t signature = 8, around = 12;
  for (std::size_t at = signature; at + around <= bytes.size();) {
    const std::string_view name = bytes.substr(at + 4, 4);
    if (name == "iCCP" || name == "IDAT") return name == "iCCP";
    std::uint32_t length = 0;
    for (std::size_t i = 0; i < 4; ++i)
      length = length << 8 | static_cast<unsigned char>(bytes[at + i]);
    at += around + length;
  }
  return false;
}

void take_tags(const Png& png, PngTags& tags) {
  png_charp name = nullptr;
  png_bytep bytes = nullptr;
  png_uint_32 count = 0;
  int packed = 0;
  if (png_get_iCCP(png.read, png.info, &name, &packed, &bytes, &count) != 0)
    tags.profile.assign(reinterpret_cast<const char*>(bytes), count);
  if (png_get_eXIf_1(png.read, png.info, &count, &bytes) != 0)
    tags.exif.assign(reinterpret_cast<const char*>(bytes), count);
}

bool decode_png(std::string_view bytes, const PictureHeader& header, int by, Pixels& pixels,
                PngTags* tags) {
  Png png(bytes);
  if (!png.info || !without_jump(png, [&] { begin_png(png, tags != nullptr); })) return false;
  const bool as_announced =
      png_get_image_width(png.read, png.info) == static_cast<png_uint_32>(header.width) &&
      png_get_image_height(png.read, png.info) == static_cast<png_uint_32>(header.height);
  if (!as_announced || png_get_channels(png.read, png.info) != 4) return false;
  if (tags) {
    take_tags(png, *tags);
    tags->bad_profile = tags->profile.empty() && names_profile(bytes) &&
                        png_get_valid(png.read, png.info, PNG_INFO_sRGB) == 0;
  }
  png.row.resize(png_get_rowbytes(png.read, png.info));
  return without_jump(png, [&] { read_png_rows(png, by, pixels); });
}

bool is_for_printing(const PictureHeader& header, std::string_view bytes) {
  return header.kind == PictureKind::jpg && jpg_tags(bytes).components == 4;
}

}

words::Result<Pixels> decode_part(std::string_view bytes, int by, PngTags* tags) {
  const auto header = picture_header(bytes);
  if (!header) return tl::make_unexpected(header.error());
  return decode_part(bytes, *header, by, tags);
}

words::Result<Pixels> decode_part(std::string_view bytes, const PictureHeader& header, int by,
                                  PngTags* tags) {
  Pixels pixels = room_for(header, by);
  const bool decoded = header.kind == PictureKind::jpg
                           ? decode_jpg(bytes, header, pixels)
                           : decode_png(bytes, header, by, pixels, tags);
  if (!decoded)
    return words::failure(is_for_printing(header, bytes) ? words::StudioSay::photo_for_printing
                                                         : words::StudioSay::photo_not_decoded);
  return pixels;
}

words::Result<Pixels> decode_picture(std::string_view bytes) { return decode_part(bytes, 8); }

}
