// Files and folders that are made anew, and never in the place of anything that is there.
#pragma once

#include "disk/files.hpp"
#include "studio/pieces.hpp"
#include "words/error.hpp"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace studio {

// One file, written piece by piece. Errors: those of the disk, in words.
class NewFile {
public:
  explicit NewFile(disk::Files& files) : files_(files) {}
  NewFile(const NewFile&) = delete;
  NewFile& operator=(const NewFile&) = delete;
  ~NewFile() { close(); }

  Problem open(const std::filesystem::path& file);
  Problem write(std::string_view bytes);
  Problem force(); // and close; the folder's names are still to be forced

private:
  void close();

  disk::Files& files_;
  std::filesystem::path path_;
  int handle_ = -1;
};

// A folder that stands in its place whole or not at all: it is filled under another name beside it,
// forced, and then given its own. Whatever was made is removed again unless finish() went well.
class NewFolder {
public:
  NewFolder(disk::Files& files, const std::filesystem::path& place);
  NewFolder(const NewFolder&) = delete;
  NewFolder& operator=(const NewFolder&) = delete;
  ~NewFolder();

  // Errors: folder_there (0: place), and from here on those of the disk.
  Problem begin();
  // Where a file goes that is called "sessions/a.jsonl"; makes its folder the first time.
  words::Result<std::filesystem::path> place_for(const std::string& name);
  Problem put(const std::string& name, std::string_view bytes);
  // All of it lies on the disk under its own name, or nothing does. Errors as begin().
  Problem finish();

private:
  disk::Files& files_;
  std::filesystem::path place_, beside_;
  std::vector<std::filesystem::path> folders_; // made so far, the outermost first
  bool finished_ = false;
};

}
