#include "studio/zip_list.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace studio {

namespace {

constexpr std::uint64_t end_size = 22, locator_size = 20, end64_size = 56, entry_size = 46;
constexpr std::uint64_t head_size = 30; // of what stands before an entry's bytes
constexpr std::uint64_t most_list_bytes = 256ULL << 20;

// Least significant byte first; the caller has seen that they are there.
std::uint64_t number(std::string_view bytes, std::size_t at, std::size_t count) {
  std::uint64_t value = 0;
  while (count-- > 0) value = value << 8 | static_cast<unsigned char>(bytes[at + count]);
  return value;
}

bool signed_as(std::string_view bytes, std::size_t size, std::string_view signature) {
  return bytes.size() >= size && bytes.substr(0, signature.size()) == signature;
}

struct EndRecord {
  std::uint64_t at = 0, size = 0, entries = 0;
  std::uint64_t end = 0; // where what describes it starts
};

// A zip of more than 65,535 entries or 4 GiB says so in a larger record before the usual one.
std::optional<EndRecord> end_record(std::uint64_t size, const ReadAt& read) {
  if (size < end_size) return std::nullopt;
  const std::string end = read(size - end_size, end_size);
  if (!signed_as(end, end_size, "PK\5\6") || number(end, 20, 2) != 0) return std::nullopt;
  const EndRecord usual{number(end, 16, 4), number(end, 12, 4), number(end, 10, 2),
                        size - end_size};
  if (size < end_size + locator_size + end64_size) return usual;
  const std::string locator = read(size - end_size - locator_size, locator_size);
  if (!signed_as(locator, locator_size, "PK\6\7")) return usual;
  const std::uint64_t at = number(locator, 8, 8);
  if (at != size - end_size - locator_size - end64_size) return std::nullopt;
  const std::string end64 = read(at, end64_size);
  if (!signed_as(end64, end64_size, "PK\6\6")) return std::nullopt;
  return EndRecord{number(end64, 48, 8), number(end64, 40, 8), number(end64, 32, 8), at};
}

// What does not fit in 32 bits is said in full in an extra field, in the order of `fields`.
bool widen(const std::array<std::uint64_t*, 3>& fields, std::string_view extra) {
  constexpr std::uint64_t elsewhere = 0xFFFFFFFF;
  std::string_view wide;
  while (extra.size() >= 4) {
    const std::size_t size = number(extra, 2, 2);
    if (number(extra, 0, 2) == 1 && wide.empty()) wide = extra.substr(4, size);
    extra.remove_prefix(std::min(extra.size(), 4 + size));
  }
  for (std::uint64_t* field : fields) {
    if (*field != elsewhere) continue;
    if (wide.size() < 8) return false;
    *field = number(wide, 0, 8);
    wide.remove_prefix(8);
  }
  return true;
}

// As `made by` says who packed it: 3 is a unix, 19 one by Apple.
std::uint32_t mode_of(std::string_view entry) {
  const std::uint64_t system = number(entry, 5, 1);
  const bool unix_made = system == 3 || system == 19;
  return unix_made ? static_cast<std::uint32_t>(number(entry, 38, 4) >> 16) : 0;
}

}

std::optional<std::vector<ZipEntry>> zip_list(std::uint64_t size, const ReadAt& read) {
  const auto place = end_record(size, read);
  if (!place || place->size > most_list_bytes || place->at > place->end ||
      place->end - place->at != place->size)
    return std::nullopt;
  const std::string bytes = read(place->at, static_cast<std::size_t>(place->size));
  std::string_view rest = bytes;
  std::vector<ZipEntry> entries;
  while (signed_as(rest, entry_size, "PK\1\2")) {
    const std::size_t name = number(rest, 28, 2);
    const std::size_t whole = entry_size + name + number(rest, 30, 2) + number(rest, 32, 2);
    if (whole > rest.size()) return std::nullopt;
    ZipEntry entry{std::string(rest.substr(entry_size, name)), mode_of(rest), number(rest, 24, 4),
                   number(rest, 42, 4)};
    std::uint64_t packed = number(rest, 20, 4);
    const std::string_view extra = rest.substr(entry_size + name, number(rest, 30, 2));
    if (!widen({&entry.size, &packed, &entry.at}, extra) || entry.at >= place->at)
      return std::nullopt;
    entries.push_back(std::move(entry));
    rest.remove_prefix(whole);
  }
  if (!rest.empty() || entries.size() != place->entries) return std::nullopt;
  std::sort(entries.begin(), entries.end(), [](auto& a, auto& b) { return a.at < b.at; });
  return entries;
}

bool lies_as_listed(const ZipEntry& entry, const ReadAt& read) {
  const std::string head = read(entry.at, head_size + entry.name.size());
  return signed_as(head, head_size + entry.name.size(), "PK\3\4") &&
         number(head, 26, 2) == entry.name.size() && head.substr(head_size) == entry.name;
}

}
