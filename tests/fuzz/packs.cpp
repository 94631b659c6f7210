// Packed studios: what is taken from one lies inside the new folder, once, and in bounds.
#include "fuzz/must.hpp"
#include "studio/pack.hpp"
#include "studio/zip.hpp"

#include <algorithm>

using fuzz::must;

namespace {

// Takes numbers and texts off the front; nothing and zeros once there is no more.
struct Input {
  std::string_view left;

  std::uint32_t byte() {
    if (left.empty()) return 0;
    const auto value = static_cast<unsigned char>(left.front());
    left.remove_prefix(1);
    return value;
  }
  std::string text(std::size_t most) {
    const std::size_t size = std::min(most, left.size());
    std::string out(left.substr(0, size));
    left.remove_prefix(size);
    return out;
  }
};

zip::Entry entry(Input& input) {
  constexpr std::uint32_t kinds[] = {
      zip::plain_file, zip::plain_file, zip::plain_file, 0,
      zip::link,       zip::device,     zip::pipe,       zip::folder};
  zip::Entry e;
  const std::uint32_t kind = input.byte();
  e.attributes = kinds[kind % 8];
  e.method = kind & 8 ? 8 : 0;
  e.flags = kind & 16 ? static_cast<std::uint16_t>(input.byte()) : std::uint16_t{0};
  e.crc_off_by = kind & 32 ? 1 : 0;
  if (kind & 64) e.size = input.byte() << 8 * (input.byte() % 4);
  const std::size_t name = input.byte();
  e.name = (kind & 128 ? "sessions/" : "") + input.text(name);
  e.name = e.name.c_str(); // to the reader a name ends at its first NUL
  e.bytes = input.text(input.byte());
  return e;
}

// Written out from what a pack may hold, a second time and more simply: two folders, plain names.
bool is_inside(std::string_view name) {
  const bool known = name.substr(0, 9) == "sessions/" || name.substr(0, 7) == "photos/";
  const std::string_view file = name.substr(name.find('/') + 1);
  return known && !file.empty() && file != "." && file != ".." &&
         file.find_first_of(std::string_view("/\\:\0", 4)) == std::string_view::npos;
}

void check_name(std::string_view name) {
  studio::PackNames names;
  if (names.take(name)) return;
  must(is_inside(name), "a name that is taken stays inside");
  must(names.take(name).has_value(), "a name is taken once");
}

void check_pack(std::string_view bytes) {
  const auto packed = studio::inspect(bytes);
  if (!packed) return must(!words::message(packed.error()).empty(), "a fault has words");
  must(packed->bytes <= (bytes.size() + (1 << 20)) * studio::most_times_larger,
       "a pack unpacks to so many times its size, no more");
}

void check_made(const std::vector<zip::Entry>& entries) {
  const std::string bytes = zip::of(entries);
  check_pack(bytes);
  const auto packed = studio::inspect(bytes);
  if (!packed) return;
  std::size_t files = 0;
  for (const zip::Entry& e : entries) {
    const std::uint32_t kind = e.attributes >> 16 & 0170000;
    const bool folder = kind == 0040000 || (!e.name.empty() && e.name.back() == '/');
    must(folder || kind == 0100000 || kind == 0, "links and devices are not taken");
    must(folder || e.crc_off_by == 0 || e.bytes.empty(), "bytes that changed are not taken");
    must(folder || is_inside(e.name), "every file that is taken stays inside");
    files += folder ? 0 : 1;
  }
  must(packed->files == files, "every file is taken");
}

}

// The first byte says whether the rest is a pack, a name, or what a pack is to be made of.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  Input input{{reinterpret_cast<const char*>(data), size}};
  switch (input.byte() % 3) {
  case 0: check_pack(input.left); break;
  case 1: check_name(input.left); break;
  default: {
    std::vector<zip::Entry> entries;
    while (!input.left.empty() && entries.size() < 20) entries.push_back(entry(input));
    check_made(entries);
  }
  }
  return 0;
}
