// The segments of a JPEG one after the other, up to where they end (ITU-T T.81, B.1.1).
#pragma once

#include <cstdint>
#include <string_view>

namespace studio {

// 0 beyond the end.
inline std::uint32_t byte_at(std::string_view bytes, std::size_t at) {
  return at < bytes.size() ? static_cast<unsigned char>(bytes[at]) : 0;
}

// SOF0 to SOF15 but for DHT, JPG and DAC (table B.1).
inline bool is_jpg_frame(std::uint32_t marker) {
  return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
}

inline constexpr std::uint32_t jpg_scan = 0xda, jpg_end = 0xd9;

// Gives `take` each marker that has a length, and all from that length on, as long as it says that
// it wants more.
template <class Take>
void jpg_segments(std::string_view bytes, Take take) {
  for (std::size_t at = 2; at + 4 <= bytes.size() && byte_at(bytes, at) == 0xff;) {
    const std::uint32_t marker = byte_at(bytes, at + 1);
    const bool fill = marker == 0xff; // any number of them may stand before a marker
    const bool bare = marker == 0x01 || (marker >= 0xd0 && marker <= 0xd7); // without a length
    const std::size_t length = byte_at(bytes, at + 2) << 8 | byte_at(bytes, at + 3);
    if (!fill && !bare && (length < 2 || !take(marker, bytes.substr(at + 2)))) return;
    at += fill ? 1 : bare ? 2 : 2 + length;
  }
}

}
