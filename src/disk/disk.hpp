// Where bytes lie. One small asynchronous interface: submit, and later be told confirmed or failed.
// Bodies: POSIX (posix.hpp), faulty ones for tests (faulty.hpp), and a browser's store.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace disk {

using Ticket = std::uint64_t;

// Adds bytes to the end of a file below the root. The first append to a name creates the file
// exclusively, with its folder, and forces both; a name that already exists is a failure. After any
// failure of a file that file is closed for ever, and every later append to it fails at once with
// the first failure: whoever goes on does so under another name. "gone" says that the file is not
// under its name any more, so that what was confirmed of it before is not safe either.
struct Append {
  std::string file; // relative, like "sessions/2026-11-25T143200Z-a83f-c41e08d5.jsonl"
  std::string bytes;
};

// Reads every plain file of one folder whose name ends so. A link, a folder, a pipe or a device of
// such a name is the failure "not a file", and a file larger than most_file_bytes the failure "too
// large". Files of a known size are passed over, since files only grow. A folder that is not there
// is an empty one. What was appended before is read.
inline constexpr std::uint64_t most_file_bytes = std::uint64_t{256} << 20;
struct ReadFolder {
  std::string folder;                              // relative to the root
  std::string ending;                              // ".jsonl"
  std::map<std::string, std::uint64_t> known = {}; // name -> bytes, of files that need no reading
};

// Puts a whole file in its place, with its folder, and forces both: under its name lies all of it
// or nothing, whatever fails. A file that is there already with the same bytes is kept once more,
// since it may never have been forced; one with other bytes stays, and is the failure "keep".
struct Keep {
  std::string file; // relative, like "photos/9f86d081….jpg"
  std::string bytes;
};

// What a Keep's file is called, behind a name of its own, until all of it is safe. A program that
// was killed may leave one; nothing reads it, and it may be thrown away.
inline constexpr const char* unfinished_ending = ".unfinished";

using Request = std::variant<Append, ReadFolder, Keep>;

enum class Operation {
  write,
  force,
  open,
  make_folder,
  rename,
  keep,
  read,
  list,
  name, // of a file
  gone,
  not_a_file,
  too_large
};

struct Failure {
  Operation operation = Operation::write;
  std::string path;   // in full; of a bad name, the name
  int code = 0;       // errno
  std::string reason; // a browser's own words, where it gives no errno; else empty
};

struct FileBytes {
  std::string name; // without the folder
  std::string bytes;
};

// One answer for each request, in the order of submission. Bytes are confirmed only after the disk
// was made to say that they lie on it; those of a failed append may lie there too, whole, cut or
// not at all, those of a failed Keep whole or not at all. A large folder answers in pieces, in the
// order of its files' names; answers to what was submitted later may stand between them.
struct Answer {
  Ticket ticket = 0;
  std::vector<Failure>
      failures; // empty: confirmed. A ReadFolder may fail for some files and read the rest
  std::vector<FileBytes> files; // of a ReadFolder, sorted by name
  std::size_t to_come = 0;      // of a ReadFolder: files that further answers will bring
};

class Disk {
public:
  virtual ~Disk() = default;
  virtual Ticket submit(Request request) = 0; // never blocks
  virtual std::vector<Answer> answers() = 0;  // those that came since the last call
};

}
