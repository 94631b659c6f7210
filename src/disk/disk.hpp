// Where bytes lie. One small asynchronous interface: submit, and later be told confirmed or failed.
// Bodies: POSIX (posix.hpp), faulty ones for tests (faulty.hpp), and a browser's store.
#pragma once

#include <cstdint>
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
// the first failure: whoever goes on does so under another name.
struct Append {
  std::string file; // relative, like "sessions/2026-11-25T143200Z-a83f-c41e08d5.jsonl"
  std::string bytes;
};

// Reads every plain file of one folder whose name ends so; links and sub-folders are passed over. A
// folder that is not there is an empty one. What was appended before is read.
struct ReadFolder {
  std::string folder; // relative to the root
  std::string ending; // ".jsonl"
};

using Request = std::variant<Append, ReadFolder>;

struct Failure {
  std::string operation; // "write", "force", "open", "make folder", "read", "list", "name"
  std::string path;      // in full; of a bad name, the name
  int code = 0;          // errno
  std::string reason;    // the system's own words
};

struct FileBytes {
  std::string name; // without the folder
  std::string bytes;
};

// One answer for each request, in the order of submission. An append is confirmed only after the
// disk was made to say that the bytes lie on it; bytes of a failed append may lie there too, whole,
// cut or not at all.
struct Answer {
  Ticket ticket = 0;
  std::vector<Failure>
      failures; // empty: confirmed. A ReadFolder may fail for some files and read the rest
  std::vector<FileBytes> files; // of a ReadFolder, sorted by name
};

class Disk {
public:
  virtual ~Disk() = default;
  virtual Ticket submit(Request request) = 0; // never blocks
  virtual std::vector<Answer> answers() = 0;  // those that came since the last call
};

}
