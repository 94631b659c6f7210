#include "session/check_value.hpp"

#include <array>
#include <cstring>

#if defined(__x86_64__)
#include <nmmintrin.h>
#elif defined(__ARM_FEATURE_CRC32)
#include <arm_acle.h>
#endif

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

std::uint32_t by_tables(std::string_view bytes, std::uint32_t crc) {
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
  return crc;
}

#if defined(__x86_64__)
// SSE 4.2 has an instruction for it.
__attribute__((target("sse4.2"))) std::uint32_t by_processor(std::string_view bytes,
                                                             std::uint32_t crc) {
  std::uint64_t sum = crc, word = 0;
  for (; bytes.size() >= sizeof word; bytes.remove_prefix(sizeof word)) {
    std::memcpy(&word, bytes.data(), sizeof word);
    sum = _mm_crc32_u64(sum, word);
  }
  crc = static_cast<std::uint32_t>(sum);
  for (const char c : bytes) crc = _mm_crc32_u8(crc, static_cast<unsigned char>(c));
  return crc;
}

bool processor_can() {
  static const bool can = __builtin_cpu_supports("sse4.2");
  return can;
}
#elif defined(__ARM_FEATURE_CRC32)
std::uint32_t by_processor(std::string_view bytes, std::uint32_t crc) {
  std::uint64_t word = 0;
  for (; bytes.size() >= sizeof word; bytes.remove_prefix(sizeof word)) {
    std::memcpy(&word, bytes.data(), sizeof word);
    crc = __crc32cd(crc, word);
  }
  for (const char c : bytes) crc = __crc32cb(crc, static_cast<unsigned char>(c));
  return crc;
}

bool processor_can() { return true; }
#else
std::uint32_t by_processor(std::string_view, std::uint32_t crc) { return crc; }

bool processor_can() { return false; }
#endif

}

std::uint32_t crc32c(std::string_view bytes, std::uint32_t before) {
  return processor_can() ? ~by_processor(bytes, ~before) : crc32c_by_tables(bytes, before);
}

std::uint32_t crc32c_by_tables(std::string_view bytes, std::uint32_t before) {
  return ~by_tables(bytes, ~before);
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
