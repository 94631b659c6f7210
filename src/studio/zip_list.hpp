// The list of entries at a zip's end, as it stands there. libarchive means well: it cuts a name at
// its first zero byte, turns backslashes round, puts letters and their accents together and makes
// plain files of rare kinds. What may be unpacked, and under which name, is decided on what was
// written (PKWARE APPNOTE 6.3, 4.3.7, 4.3.12 to 4.3.16, 4.5.3).
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace studio {

struct ZipEntry {
  std::string name;       // its bytes, whatever they are
  std::uint32_t mode = 0; // st_mode of a unix, 0 where no unix packed it
  std::uint64_t size = 0; // unpacked, as the list has it
  std::uint64_t at = 0;   // where it begins, before the list
};

// So many bytes from there on, fewer where the zip ends.
using ReadAt = std::function<std::string(std::uint64_t at, std::size_t count)>;

// In the order in which they lie in the zip. Nothing where the zip, of `size` bytes, is not whole:
// bytes or a comment behind its list, a list that does not fill its place, or one of more than
// 256 MiB.
std::optional<std::vector<ZipEntry>> zip_list(std::uint64_t size, const ReadAt& read);

// Whether an entry of the same name begins there.
bool lies_as_listed(const ZipEntry& entry, const ReadAt& read);

}
