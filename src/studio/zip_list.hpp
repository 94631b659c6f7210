// The list of entries at a zip's end, as it stands there. libarchive means well: it cuts a name at
// its first zero byte, turns backslashes round and makes plain files of rare kinds. What may be
// unpacked is decided on what was written (PKWARE APPNOTE 6.3, 4.3.12 to 4.3.16).
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
};

// So many bytes from there on, fewer where the zip ends.
using ReadAt = std::function<std::string(std::uint64_t at, std::size_t count)>;

// Nothing where the zip, of `size` bytes, is not whole: bytes or a comment behind its list, a list
// that does not fill its place, or one of more than 256 MiB.
std::optional<std::vector<ZipEntry>> zip_list(std::uint64_t size, const ReadAt& read);

}
