#include "studio/picture.hpp"

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

// A frame header is SOF0 to SOF15 but for DHT, JPG and DAC (T.81, table B.1).
bool is_frame(std::int64_t marker) {
  return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
}

bool is_progressive(std::int64_t marker) { return is_frame(marker) && (marker & 3) == 2; }

// Of all samples of a frame, each component in whole units and with its own share of them: two
// bytes each. 0: the frame header is none (T.81, B.2.2).
std::int64_t coefficient_bytes(std::string_view frame, const PictureHeader& header) {
  const auto count = static_cast<std::size_t>(frame.size() > 9 ? number(frame, 9, 1) : 0);
  if (frame.size() < 10 + 3 * count) return 0;
  std::int64_t most_h = 0, most_v = 0, share = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const std::int64_t h = number(frame, 11 + 3 * i, 1) >> 4, v = number(frame, 11 + 3 * i, 1) & 15;
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
  for (std::size_t at = 2; at + 9 <= bytes.size() && bytes[at] == '\xff';) {
    const std::int64_t marker = number(bytes, at + 1, 1);
    const bool fill = marker == 0xff; // any number of them may stand before a marker
    const bool bare = marker == 0x01 || (marker >= 0xd0 && marker <= 0xd7); // without a length
    if (is_frame(marker) && !header) {
      frame = bytes.substr(at);
      header = {PictureKind::jpg, number(bytes, at + 7, 2), number(bytes, at + 5, 2), 0};
      if (is_progressive(marker)) break;
    }
    if (marker == 0xda && header && bytes[at + 4] == frame[9]) return *header;
    if (marker == 0xda) break;
    at += fill ? 1 : bare ? 2 : 2 + static_cast<std::size_t>(number(bytes, at + 2, 2));
  }
  if (!header) return without_size();
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

}
