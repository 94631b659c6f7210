#include "studio/picture.hpp"

#include "studio/jpg_segments.hpp"
#include "words/studio_says.hpp"

#include <algorithm>
#include <optional>

namespace studio {

namespace {

using Say = words::StudioSay;

constexpr std::string_view png_start("\x89PNG\r\n\x1a\n", 8);
constexpr std::string_view jpg_start("\xff\xd8\xff", 3);

bool starts_with(std::string_view bytes, std::string_view start) {
  return bytes.substr(0, start.size()) == start;
}

// Most significant byte first; the caller has seen that they are there.
std::int64_t number(std::string_view bytes, std::size_t at, std::size_t count) {
  std::int64_t value = 0;
  for (const char c : bytes.substr(at, count)) value = value * 256 + static_cast<unsigned char>(c);
  return value;
}

tl::unexpected<words::Error> without_size() { return words::failure(Say::photo_without_size); }

// The first chunk must be IHDR: length, name, width, height (ISO/IEC 15948, 5.6 and 11.2.2).
words::Result<PictureHeader> png_header(std::string_view bytes) {
  if (bytes.size() < 24 || bytes.substr(12, 4) != "IHDR") return without_size();
  return PictureHeader{PictureKind::png, number(bytes, 16, 4), number(bytes, 20, 4), 0};
}

// Of all samples of a frame, each component in whole units and with its own share of them: two
// bytes each. 0: the frame header is none (T.81, B.2.2).
std::int64_t coefficient_bytes(std::string_view frame, const PictureHeader& header) {
  const auto count = static_cast<std::size_t>(frame.size() > 7 ? number(frame, 7, 1) : 0);
  if (frame.size() < 8 + 3 * count) return 0;
  std::int64_t most_h = 0, most_v = 0, share = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const std::int64_t h = number(frame, 9 + 3 * i, 1) >> 4, v = number(frame, 9 + 3 * i, 1) & 15;
    most_h = std::max(most_h, h);
    most_v = std::max(most_v, v);
    share += h * v;
  }
  if (share == 0) return 0;
  const auto whole = [](std::int64_t size, std::int64_t unit) { return (size + unit - 1) / unit; };
  return 2 * 64 * share * whole(header.width, 8 * most_h) * whole(header.height, 8 * most_v);
}

// Segment by segment to the frame header (marker, length, precision, height, width; T.81, B.2.2),
// and on to the first scan. One that does not hold all components has others behind it; so may one
// that is not found.
words::Result<PictureHeader> jpg_header(std::string_view bytes) {
  std::optional<PictureHeader> header;
  std::string_view frame;
  bool at_once = false; // all components in the first scan
  jpg_segments(bytes, [&](std::uint32_t marker, std::string_view from) {
    if (from.size() < 7) return false;
    if (is_jpg_frame(marker) && !header) {
      frame = from;
      header = {PictureKind::jpg, number(from, 5, 2), number(from, 3, 2), 0};
      const bool progressive = (marker & 3) == 2;
      return !progressive;
    }
    at_once = marker == jpg_scan && header && byte_at(from, 2) == byte_at(frame, 7);
    return marker != jpg_scan;
  });
  if (!header) return without_size();
  if (at_once) return *header;
  header->held_bytes = coefficient_bytes(frame, *header);
  return *header;
}

words::Result<PictureHeader> bounded(PictureHeader header) {
  if (header.width < 1 || header.height < 1) return without_size();
  const bool large = header.width > longest_side || header.height > longest_side ||
                     header.width * header.height > most_pixels;
  if (large)
    return words::failure(Say::photo_too_large,
                          {std::to_string(header.width), std::to_string(header.height),
                           std::to_string(most_pixels / 1'000'000)});
  if (header.held_bytes > most_held_bytes)
    return words::failure(Say::photo_too_large_in_scans,
                          {std::to_string(header.width), std::to_string(header.height),
                           std::to_string(header.width * header.height / 1'000'000 *
                                          most_held_bytes / header.held_bytes)});
  return header;
}

}

words::Result<PictureHeader> picture_header(std::string_view bytes) {
  if (bytes.empty()) return words::failure(Say::photo_empty);
  if (bytes.size() > most_picture_bytes)
    return words::failure(Say::photo_too_long, {std::to_string(most_picture_bytes)});
  const bool png = starts_with(bytes, png_start);
  if (!png && !starts_with(bytes, jpg_start)) return words::failure(Say::photo_not_known);
  const auto header = png ? png_header(bytes) : jpg_header(bytes);
  return header ? bounded(*header) : header;
}

int shrunk_for(const PictureHeader& header, double most) {
  const auto pixels = static_cast<double>(header.width) * static_cast<double>(header.height);
  int by = 1;
  while (by < 8 && pixels / (by * by) > most) by *= 2;
  return by;
}

}
