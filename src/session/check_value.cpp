#include "session/check_value.hpp"

#include <array>

namespace session {

namespace {

constexpr std::array<std::uint32_t, 256> make_table() {
  constexpr std::uint32_t reversed_castagnoli = 0x82F63B78;
  std::array<std::uint32_t, 256> table{};
  for (std::uint32_t byte = 0; byte < 256; ++byte) {
    std::uint32_t rest = byte;
    for (int bit = 0; bit < 8; ++bit) rest = (rest >> 1) ^ ((rest & 1) ? reversed_castagnoli : 0);
    table[byte] = rest;
  }
  return table;
}

constexpr auto table = make_table();

}

std::uint32_t crc32c(std::string_view bytes, std::uint32_t before) {
  std::uint32_t crc = ~before;
  for (const char c : bytes) crc = table[(crc ^ static_cast<unsigned char>(c)) & 0xFF] ^ (crc >> 8);
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
