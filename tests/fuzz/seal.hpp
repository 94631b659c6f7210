// A line's seal, read and written from the format page alone: nothing here calls the reader's code.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace fuzz {

// CRC-32C bit by bit (RFC 3720: 0x1EDC6F41, reflected), going on from `before`.
inline std::uint32_t crc(std::string_view bytes, std::uint32_t before) {
  std::uint32_t c = ~before;
  for (const char byte : bytes) {
    c ^= static_cast<unsigned char>(byte);
    for (int bit = 0; bit < 8; ++bit) c = c & 1 ? 0x82f63b78 ^ (c >> 1) : c >> 1;
  }
  return ~c;
}

inline std::string hex8(std::uint32_t value) {
  char text[9];
  std::snprintf(text, sizeof text, "%08x", value);
  return text;
}

inline std::optional<std::uint32_t> value_of(std::string_view hex8) {
  if (hex8.size() != 8) return {};
  if (hex8.find_first_not_of("0123456789abcdef") != std::string_view::npos) return {};
  return static_cast<std::uint32_t>(std::stoul(std::string(hex8), nullptr, 16));
}

struct Seal {
  std::uint32_t p = 0, c = 0;
};

constexpr std::size_t seal_length = 15 + 16; // ,"p":"xxxxxxxx" and ,"c":"xxxxxxxx"}

// The line without its LF. Absent if its end is not a seal; then whether it fits is `fits`.
inline std::optional<Seal> seal_of(std::string_view line) {
  if (line.size() < seal_length) return {};
  const std::string_view end = line.substr(line.size() - seal_length);
  const auto p = value_of(end.substr(6, 8)), c = value_of(end.substr(21, 8));
  const bool formed = end.substr(0, 6) == ",\"p\":\"" && end.substr(14, 7) == "\",\"c\":\"" &&
                      end.substr(29) == "\"}";
  if (!formed || !p || !c) return {};
  return Seal{*p, *c};
}

// `seed` says whose the line is: of version 1 it is 0.
inline bool fits(std::string_view line, const Seal& seal, std::uint32_t seed = 0) {
  return crc(line.substr(0, line.size() - 16), seal.p ^ seed) == seal.c;
}

// `open` is a line without its seal: `{"n":0, … ,"e":"left"`.
inline std::string sealed(const std::string& open, std::uint32_t p, std::uint32_t& c,
                          std::uint32_t seed = 0) {
  const std::string body = open + ",\"p\":\"" + hex8(p) + "\"";
  c = crc(body, p ^ seed);
  return body + ",\"c\":\"" + hex8(c) + "\"}";
}

}
