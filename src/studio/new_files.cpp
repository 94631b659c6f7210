#include "studio/new_files.hpp"

#include "disk/disk.hpp"
#include "studio/sentences.hpp"
#include "words/studio_says.hpp"

#include <algorithm>
#include <cerrno>
#include <random>

namespace studio {

namespace {

using Path = std::filesystem::path;

// "new/" and "new" are one place, which has a name and a parent.
Path whole(const Path& place) {
  std::error_code failed;
  const Path absolute = std::filesystem::absolute(place, failed);
  const Path normal = (failed ? place : absolute).lexically_normal();
  return normal.has_filename() ? normal : normal.parent_path();
}

Path beside(const Path& place) {
  return place.string() + "." + std::to_string(std::random_device()()) + disk::unfinished_ending;
}

words::Error there(const Path& place) { return {words::StudioSay::folder_there, {place.string()}}; }

}

Problem NewFile::open(const Path& file) {
  close();
  path_ = file;
  const disk::Opened opened = files_.open_new(file);
  if (opened.code != 0) return error(disk::Operation::open, file, opened.code);
  handle_ = opened.handle;
  return {};
}

Problem NewFile::write(std::string_view bytes) {
  if (const int code = files_.write(handle_, bytes).code)
    return error(disk::Operation::write, path_, code);
  return {};
}

Problem NewFile::force() {
  if (const int code = files_.force(handle_).code)
    return error(disk::Operation::force, path_, code);
  close();
  return {};
}

void NewFile::close() {
  if (handle_ != -1) files_.close(handle_);
  handle_ = -1;
}

NewFolder::NewFolder(disk::Files& files, const Path& place)
    : files_(files), place_(whole(place)), beside_(beside(place_)) {}

NewFolder::~NewFolder() {
  if (finished_ || folders_.empty()) return;
  std::error_code ignored; // what cannot be removed is called unfinished, and read by nobody
  std::filesystem::remove_all(beside_, ignored);
}

Problem NewFolder::begin() {
  using std::filesystem::file_type;
  std::error_code failed;
  const file_type lies_there = std::filesystem::symlink_status(place_, failed).type();
  if (lies_there == file_type::none)
    return error(disk::Operation::make_folder, place_, failed.value());
  if (lies_there != file_type::not_found) return there(place_);
  if (const int code = files_.make_folder(beside_).code)
    return error(disk::Operation::make_folder, beside_, code);
  folders_.push_back(beside_);
  return {};
}

words::Result<Path> NewFolder::place_for(const std::string& name) {
  const Path path = beside_ / name;
  const Path folder = path.parent_path();
  if (std::find(folders_.begin(), folders_.end(), folder) != folders_.end()) return path;
  if (const int code = files_.make_folder(folder).code)
    return tl::make_unexpected(error(disk::Operation::make_folder, folder, code));
  folders_.push_back(folder);
  return path;
}

Problem NewFolder::put(const std::string& name, std::string_view bytes) {
  const auto path = place_for(name);
  if (!path) return path.error();
  NewFile file(files_);
  if (auto failed = file.open(*path)) return failed;
  if (auto failed = file.write(bytes)) return failed;
  return file.force();
}

Problem NewFolder::finish() {
  for (auto folder = folders_.rbegin(); folder != folders_.rend(); ++folder)
    if (const int code = files_.force_folder(*folder).code)
      return error(disk::Operation::force, *folder, code);
  // Renaming would pass over an empty folder that somebody made meanwhile. So it is one of ours
  // that is replaced; one that is filled meanwhile stays, and the renaming fails.
  const int code = files_.make_folder(place_).code;
  if (code == EEXIST) return there(place_);
  if (code != 0) return error(disk::Operation::make_folder, place_, code);
  int failed = files_.rename(beside_, place_).code;
  std::error_code ignored;
  if (failed != 0) std::filesystem::remove(place_, ignored); // nothing that anybody has filled
  // Some file systems replace no folder, not even an empty one.
  if (failed == EPERM || failed == EEXIST) failed = files_.rename(beside_, place_).code;
  if (failed != 0) return error(disk::Operation::rename, beside_, failed);
  finished_ = true;
  const Path parent = place_.parent_path();
  if (const int forced = files_.force_folder(parent).code)
    return error(disk::Operation::force, parent, forced);
  return {};
}

}
