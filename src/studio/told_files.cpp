#include "studio/told_files.hpp"

#include "disk/whole_file.hpp"
#include "studio/sentences.hpp"
#include "studio/told_in_file.hpp"

#include <algorithm>
#include <cerrno>
#include <chrono>

namespace studio {

namespace {

using Path = std::filesystem::path;

constexpr const char* told_ending = ".json";

std::int64_t written_at(const Path& file) {
  std::error_code failed;
  const auto at = std::filesystem::last_write_time(file, failed);
  if (failed) return 0;
  const auto since = std::chrono::file_clock::to_sys(at).time_since_epoch();
  return std::chrono::duration_cast<std::chrono::milliseconds>(since).count();
}

// The latest first; of one moment, by name.
std::vector<ToldFile> by_time(const Path& folder, const std::vector<std::string>& names) {
  std::vector<ToldFile> all;
  for (const std::string& name : names)
    if (name.ends_with(told_ending)) all.push_back({name, written_at(folder / name), {}, {}});
  std::sort(all.begin(), all.end(), [](const ToldFile& a, const ToldFile& b) {
    return a.at != b.at ? a.at > b.at : a.name > b.name;
  });
  return all;
}

bool is_that(disk::Files& files, const Path& file, const std::string& bytes) {
  const disk::Bytes read = files.read_piece(file, 0, bytes.size() + 1);
  return read.code == 0 && read.bytes == bytes;
}

words::Result<paint::ToldRange> usable(disk::Files& files, const Path& file) {
  const disk::Bytes read = files.read_piece(file, 0, paint::most_told_bytes + 1);
  if (read.code != 0) return tl::make_unexpected(error(disk::Operation::read, file, read.code));
  return told_in_file(file.string(), read.bytes);
}

}

words::Result<Path> write_told(disk::Files& files, const Path& studio, const std::string& day,
                               const paint::ToldRange& told) {
  const Path folder = studio / told_folder;
  const int made = files.make_folder(folder).code;
  if (made != 0 && made != EEXIST)
    return tl::make_unexpected(error(disk::Operation::make_folder, folder, made));
  const std::string bytes = paint::bytes_of(told);
  for (int i = 1;; ++i) {
    const Path file = folder / (day + (i > 1 ? "-" + std::to_string(i) : "") + told_ending);
    const auto failed = disk::write_new(files, file, bytes);
    if (failed && failed->code == EEXIST && is_that(files, file, bytes)) return file;
    if (failed && failed->code == EEXIST && i < 1000) continue;
    if (failed) return tl::make_unexpected(error(*failed));
    for (const Path& names : {folder, studio})
      if (const int code = files.force_folder(names).code)
        return tl::make_unexpected(error(disk::Operation::force, names, code));
    return file;
  }
}

words::Result<std::optional<ToldFile>>
newest_told(disk::Files& files, const Path& studio,
            const std::function<bool(const paint::ToldRange&)>& is_own) {
  const Path folder = studio / told_folder;
  const disk::Listed listed = files.list(folder);
  if (listed.code != 0 && listed.code != ENOENT)
    return tl::make_unexpected(error(disk::Operation::list, folder, listed.code));
  std::optional<words::Error> passed_over;
  for (ToldFile& file : by_time(folder, listed.names)) {
    auto told = usable(files, folder / file.name);
    if (!told) {
      if (!passed_over) passed_over = std::move(told.error());
      continue;
    }
    if (is_own(*told)) continue;
    file.told = *std::move(told);
    file.passed_over = std::move(passed_over);
    return std::optional(std::move(file));
  }
  if (passed_over) return tl::make_unexpected(*std::move(passed_over));
  return std::optional<ToldFile>();
}

}
