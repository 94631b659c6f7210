// The system calls under posix.hpp, one by one, so that a test can make any of them fail.
// Each waits until it is done. Each answers with errno, 0 for success. Not thread-safe: one thread
// calls them all.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace disk {

struct Done {
  int code = 0; // errno
};

struct Opened {
  int code = 0;
  int handle = -1;
};

struct Listed {
  int code = 0;
  std::vector<std::string> names; // in no order
  std::vector<std::string> odd;   // the others
};

struct Sized {
  int code = 0;
  std::uint64_t bytes = 0;
};

struct Bytes {
  int code = 0;
  std::string bytes;
};

class Files {
public:
  using Path = std::filesystem::path;

  virtual ~Files() = default;

  // One folder; its parent must be there. EEXIST if anything has that name already.
  virtual Done make_folder(const Path& folder) = 0;

  // A new file that only grows at its end. EEXIST if anything, even a dangling link, has that name.
  virtual Opened open_new(const Path& file) = 0;

  // All the bytes, or an error after some of them.
  virtual Done write(int handle, std::string_view bytes) = 0;

  // Returns when the device says that the file's bytes lie on it, not merely in its cache.
  virtual Done force(int handle) = 0;

  // The same for the names in a folder: a new file is not safe before its name is.
  virtual Done force_folder(const Path& folder) = 0;

  // How large the open file is. ESTALE where `file` is no more the name of this very file: somebody
  // may have removed it, put another in its place, or taken its disk away, and write() and force()
  // go on as if nothing had happened.
  virtual Sized size_under(int handle, const Path& file) = 0;

  // Tells nothing: whatever was promised was promised by force().
  virtual void close(int handle) = 0;

  // The file has another name from then on, in the same file system; a file of that name is no
  // more.
  virtual Done rename(const Path& from, const Path& to) = 0;

  virtual Done remove(const Path& file) = 0;

  // Plain files of a folder; sub-folders, links, pipes and devices stand apart. ENOENT without a
  // folder.
  virtual Listed list(const Path& folder) = 0;

  // Of a plain file. ENOENT where there is none.
  virtual Sized size(const Path& file) = 0;

  // A whole plain file, of any size that fits in memory (else ENOMEM). ELOOP for a link.
  virtual Bytes read(const Path& file) = 0;

  // So many bytes of a plain file from `at` on, fewer only where it ends. Errors as read().
  virtual Bytes read_piece(const Path& file, std::uint64_t at, std::size_t most) = 0;
};

// The real ones.
std::unique_ptr<Files> posix_files();

// What fsync says of a folder where a file system has no such call, as FAT has none on some
// systems, and some behind a network (PostgreSQL's fsync_fname_ext lets EBADF and EINVAL pass for
// the same reason). A folder's names are then as safe as that file system makes them.
bool has_no_force_for_folders(int code);

}
