#include "disk/files.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <new>
#include <stdexcept>

namespace disk {
namespace {

Done done(int returned) { return {returned == 0 ? 0 : errno}; }

#ifdef F_FULLFSYNC
// fsync on macOS stops at the drive's cache; only F_FULLFSYNC goes through it (fcntl(2) there).
// File systems without it, network ones mostly, say ENOTSUP. Any other failure stays a failure.
Done force_bytes(int handle) {
  if (::fcntl(handle, F_FULLFSYNC) == 0) return {};
  if (errno != ENOTSUP) return {errno};
  return done(::fsync(handle));
}
Done force_names(int handle) { return force_bytes(handle); }
#else
// The size is forced along with the bytes, only the file's times are not (fdatasync(2)).
Done force_bytes(int handle) { return done(::fdatasync(handle)); }
Done force_names(int handle) { return done(::fsync(handle)); }
#endif

// Makes room for `likely` bytes at first, and for all only where there are more.
Bytes read_from(int handle, std::uint64_t at, std::size_t most, std::size_t likely) {
  std::string bytes(std::min(most, likely), '\0');
  std::size_t filled = 0;
  while (filled < most) {
    if (filled == bytes.size()) bytes.resize(most);
    const ssize_t got = ::pread(handle, bytes.data() + filled, bytes.size() - filled,
                                static_cast<off_t>(at + filled));
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return {errno, {}};
    if (got == 0) break;
    filled += static_cast<std::size_t>(got);
  }
  bytes.resize(filled);
  return {0, std::move(bytes)};
}

// One byte more than the size said, so that the end is met at once; a file that grows is read on.
Bytes read_all(int handle, const struct stat& about) {
  constexpr std::size_t more = 65536;
  std::size_t most = static_cast<std::size_t>(about.st_size) + 1;
  Bytes all;
  for (;; most = more) {
    Bytes piece = read_from(handle, all.bytes.size(), most, most);
    if (piece.code != 0) return piece;
    const bool ends = piece.bytes.size() < most;
    all.bytes = all.bytes.empty() ? std::move(piece.bytes) : all.bytes + piece.bytes;
    if (ends) return all;
  }
}

// What `reads` makes of the open file, if it is a plain one.
template <class Reads>
Bytes read_plain(const Files::Path& file, Reads reads) {
  // Without O_NONBLOCK a pipe put in a file's place after it was listed would hold us for ever.
  const int handle = ::open(file.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
  if (handle < 0) return {errno, {}};
  Bytes bytes;
  struct stat about = {};
  if (::fstat(handle, &about) != 0)
    bytes.code = errno;
  else if (!S_ISREG(about.st_mode))
    bytes.code = EINVAL;
  else
    bytes = reads(handle, about);
  ::close(handle);
  return bytes;
}

class PosixFiles final : public Files {
public:
  Done make_folder(const Path& folder) override { return done(::mkdir(folder.c_str(), 0777)); }

  Opened open_new(const Path& file) override {
    const int flags = O_WRONLY | O_CREAT | O_EXCL | O_APPEND | O_CLOEXEC;
    const int handle = ::open(file.c_str(), flags, 0666);
    if (handle < 0) return {errno, -1};
    return {0, handle};
  }

  Done write(int handle, std::string_view bytes) override {
    while (!bytes.empty()) {
      const ssize_t wrote = ::write(handle, bytes.data(), bytes.size());
      if (wrote < 0 && errno == EINTR) continue;
      if (wrote < 0) return {errno};
      if (wrote == 0) return {EIO}; // would go round for ever
      bytes.remove_prefix(static_cast<std::size_t>(wrote));
    }
    return {};
  }

  // Not tried again after EINTR: a second force that succeeds may have lost the first one's error.
  Done force(int handle) override { return force_bytes(handle); }

  Done force_folder(const Path& folder) override {
    const int handle = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (handle < 0) return {errno};
    const Done forced = force_names(handle);
    ::close(handle);
    return has_no_force_for_folders(forced.code) ? Done{} : forced;
  }

  Sized size_under(int handle, const Path& file) override {
    struct stat open = {}, named = {};
    if (::fstat(handle, &open) != 0) return {errno, 0};
    // How many names it has is not asked: some file systems say 0.
    const bool same = ::lstat(file.c_str(), &named) == 0 && named.st_dev == open.st_dev &&
                      named.st_ino == open.st_ino;
    if (!same) return {ESTALE, 0};
    return {0, static_cast<std::uint64_t>(open.st_size)};
  }

  void close(int handle) override { ::close(handle); }

  Done rename(const Path& from, const Path& to) override {
    return done(::rename(from.c_str(), to.c_str()));
  }

  Done remove(const Path& file) override { return done(::unlink(file.c_str())); }

  Listed list(const Path& folder) override {
    Listed listed;
    std::error_code wrong;
    std::filesystem::directory_iterator entry(folder, wrong);
    while (!wrong && entry != std::filesystem::directory_iterator()) {
      std::error_code unknown;
      const auto kind = entry->symlink_status(unknown).type();
      // What cannot be told is listed: reading it will say what is wrong with it.
      const bool plain =
          kind == std::filesystem::file_type::regular || kind == std::filesystem::file_type::none;
      (plain ? listed.names : listed.odd).push_back(entry->path().filename().string());
      entry.increment(wrong);
    }
    listed.code = wrong.value();
    return listed;
  }

  Sized size(const Path& file) override {
    struct stat about = {};
    if (::lstat(file.c_str(), &about) != 0) return {errno, 0};
    return {0, static_cast<std::uint64_t>(about.st_size)};
  }

  Bytes read(const Path& file) override {
    return read_plain(file, [](int handle, const struct stat& about) -> Bytes {
      try {
        return read_all(handle, about);
      } catch (const std::bad_alloc&) { return {ENOMEM, {}}; } catch (const std::length_error&) {
        return {ENOMEM, {}};
      }
    });
  }

  Bytes read_piece(const Path& file, std::uint64_t at, std::size_t most) override {
    return read_plain(file, [&](int handle, const struct stat& about) {
      const auto size = static_cast<std::uint64_t>(about.st_size);
      const std::uint64_t left = size > at ? size - at : 0;
      return read_from(handle, at, most, static_cast<std::size_t>(left + 1));
    });
  }
};

}

bool has_no_force_for_folders(int code) {
  return code == EINVAL || code == EBADF || code == ENOSYS || code == EOPNOTSUPP;
}

std::unique_ptr<Files> posix_files() { return std::make_unique<PosixFiles>(); }

}
