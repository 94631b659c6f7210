#include "session/check_value.hpp"

#include <array>

namespace session {

namespace {

using Table = std::array<std::uint32_t, 256>;
constexpr std::size_t at_once = 8; // bytes

// For each byte what it does to the check value, and what it does with so many zero bytes behind
// it: eight bytes are looked up at once (Kounavis and Berry, "slicing by 8", 2005).
constexpr std::array<Table, at_once> make_tables() {
  constexpr std::uint32_t reversed_castagnoli = 0x82F63B78;
  std::array<Table, at_once> tables{};
  for (std::uint32_t byte = 0; byte < 256; ++byte) {
    std::uint32_t rest = byte;
    for (int bit = 0; bit < 8; ++bit) rest = (rest >> 1) ^ ((rest & 1) ? reversed_castagnoli : 0);
    tables[0][byte] = rest;
  }
  for (std::size_t zeros = 1; zeros < at_once; ++zeros)
    for (std::size_t byte = 0; byte < 256; ++byte) {
      const std::uint32_t before = tables[zeros - 1][byte];
      tables[zeros][byte] = tables[0][before & 0xFF] ^ (before >> 8);
    }
  return tables;
}

constexpr auto tables = make_tables();

std::uint32_t byte_at(std::string_view bytes, std::size_t i) {
  return static_cast<unsigned char>(bytes[i]);
}

}

std::uint32_t crc32c(std::string_view bytes, std::uint32_t before) {
  std::uint32_t crc = ~before;
  for (; bytes.size() >= at_once; bytes.remove_prefix(at_once)) {
    std::uint32_t next = 0;
    for (std::size_t i = 0; i < at_once; ++i) {
      const std::uint32_t own = i < 4 ? crc >> (8 * i) : 0;
      next ^= tables[at_once - 1 - i][(own ^ byte_at(bytes, i)) & 0xFF];
    }
    crc = next;
  }
  for (std::size_t i = 0; i < bytes.size(); ++i)
    crc = tables[0][(crc ^ byte_at(bytes, i)) & 0xFF] ^ (crc >> 8);
  return ~crc;
}

std::string to_hex(std::uint32_t value) {
  constexpr std::string_view digits = "0123456789abcdef";
  std::string out(8, '0');
  for (std::size_t i = 8; i-- > 0; value >>= 4) out[i] = digits[value & 0xF];
  return out;
}

std::optional<std::uint32_t> from_hex(std::string_view text) {
  if (text.size() != 8) return std::nullopt;
  std::uint32_t value = 0;
  for (const char c : text) {
    const bool digit = c >= '0' && c <= '9';
    const bool letter = c >= 'a' && c <= 'f';
    if (!digit && !letter) return std::nullopt;
    value = value * 16 + static_cast<std::uint32_t>(digit ? c - '0' : c - 'a' + 10);
  }
  return value;
}

}
