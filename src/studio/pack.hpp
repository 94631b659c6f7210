// A studio as one file, to be carried elsewhere: a zip with its sessions and photos. Nothing in it
// is compressed: photos are so already, and the same studio gives the same bytes everywhere.
// A pack from elsewhere is hostile until read; unpack() takes it whole or leaves nothing.
#pragma once

#include "disk/files.hpp"
#include "words/error.hpp"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace studio {

// A workshop of 10,000 batches has some 20,000 sessions of 100 kB and 100,000 photos of 3 MB. What
// is larger is no studio, and is packed and unpacked by nobody.
inline constexpr std::uint64_t most_pack_entries = 500'000;
inline constexpr std::uint64_t most_entry_bytes = 256ULL << 20; // unpacked, of one entry
inline constexpr std::uint64_t most_pack_bytes = 1ULL << 40;    // unpacked, of all
// So many times its own size a pack may unpack to, one MiB more or less. Session lines that some
// other program compressed unpack to some ten times their size.
inline constexpr std::uint64_t most_times_larger = 100;

struct Packed {
  std::uint64_t files = 0;
  std::uint64_t bytes = 0;           // of the files
  std::vector<std::string> left_out; // files of the two folders that belong to no studio
  std::vector<words::Error> missed;  // what is named like a session or a photo and is no file, and
                                     // photos, packed, that are not what their names say
};

// Makes `file`, forced to the disk; never over one that is there, and not at all after an error.
// Errors: pack_refused (0: file, 1: why), those of the disk.
words::Result<Packed> pack(disk::Files& files, const std::filesystem::path& studio,
                           const std::filesystem::path& file);

// Makes `folder`, which must not be there: whole and forced to the disk, or not at all. Errors:
// unpack_refused (0: file, 1: why, which names the entry), folder_there, those of the disk, of
// which disk_read_failed and disk_not_a_file say that it is the pack that cannot be read.
words::Result<Packed> unpack(disk::Files& files, const std::filesystem::path& file,
                             const std::filesystem::path& folder);

// Reads a pack's bytes to their end as unpack() would, and writes nothing. The same errors.
words::Result<Packed> inspect(std::string_view bytes);

// As the program gives it: a SHA-256 in lower-case hexadecimal digits, then .jpg or .png.
bool is_photo_name(std::string_view file);

// The names in one pack, one after the other. They are UTF-8 and stay as they are, byte by byte: an
// umlaut in one sign and one in two are two names.
class PackNames {
public:
  // Errors: entry_not_utf8, entry_odd_name, entry_leaves, entry_elsewhere, entry_twice (0: name),
  // pack_too_many.
  std::optional<words::Error> take(std::string_view name);

private:
  // With A to Z in small letters: some file systems know no others. Where one knows two other names
  // for the same, the second is there already, and nothing is written over.
  std::set<std::string> taken_;
};

}
