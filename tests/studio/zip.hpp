// A zip file made by hand, field by field after PKWARE's APPNOTE 6.3 (4.3.7, 4.3.12, 4.3.16), so
// that it can be as wrong as a hostile one. Shares nothing with the library that reads it.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace zip {

inline constexpr std::uint32_t plain_file = 0100644U << 16; // st_mode as the host unix gives it
inline constexpr std::uint32_t link = 0120777U << 16;
inline constexpr std::uint32_t device = 0020666U << 16;
inline constexpr std::uint32_t pipe = 0010644U << 16;
inline constexpr std::uint32_t folder = 0040755U << 16;

struct Entry {
  std::string name;
  std::string bytes;
  std::uint32_t attributes = plain_file;
  std::uint16_t flags = 0;  // 1: encrypted
  std::uint16_t method = 0; // 0: stored, 8: deflated; then `bytes` are that
  std::uint32_t crc_off_by = 0;
  std::int64_t size = -1;   // as it is said; -1: as it is
  std::int64_t listed = -1; // the same in the list alone
};

inline std::uint32_t crc32(const std::string& bytes) {
  std::uint32_t crc = 0xFFFFFFFF;
  for (const char c : bytes) {
    crc ^= static_cast<unsigned char>(c);
    for (int i = 0; i < 8; ++i) crc = crc >> 1 ^ (crc & 1 ? 0xEDB88320 : 0);
  }
  return ~crc;
}

inline std::string little(std::uint64_t value, int bytes) {
  std::string out;
  for (int i = 0; i < bytes; ++i) out += static_cast<char>(value >> 8 * i);
  return out;
}

// What a local header and the list at the end say alike, from the flags on.
inline std::string about(const Entry& e, std::int64_t said) {
  const std::uint64_t size = said < 0 ? e.bytes.size() : static_cast<std::uint64_t>(said);
  return little(e.flags, 2) + little(e.method, 2) + little(0, 2) + little(0x21, 2) +
         little(crc32(e.bytes) + e.crc_off_by, 4) + little(e.bytes.size(), 4) + little(size, 4) +
         little(e.name.size(), 2) + little(0, 2);
}

inline std::string of(const std::vector<Entry>& entries) {
  std::string bytes, list;
  for (const Entry& e : entries) {
    list += "PK\1\2" + little(0x0314, 2) + little(20, 2) +
            about(e, e.listed < 0 ? e.size : e.listed) + little(0, 6) + little(e.attributes, 4) +
            little(bytes.size(), 4) + e.name;
    bytes += "PK\3\4" + little(20, 2) + about(e, e.size) + e.name + e.bytes;
  }
  const std::string end = "PK\5\6" + little(0, 4) + little(entries.size(), 2) +
                          little(entries.size(), 2) + little(list.size(), 4) +
                          little(bytes.size(), 4) + little(0, 2);
  return bytes + list + end;
}

}
