#include "studio/kept.hpp"

#include "words/studio_says.hpp"

#include <cerrno>
#include <system_error>

namespace studio {

namespace {

words::Result<void> failure(const disk::Files::Path& file, int code) {
  return words::failure(words::StudioSay::file_not_kept,
                        {file.string(), std::generic_category().message(code)});
}

}

words::Result<void> keep(disk::Files& files, const disk::Files::Path& file,
                         std::string_view bytes) {
  if (const auto made = files.make_folder(file.parent_path());
      made.code != 0 && made.code != EEXIST)
    return failure(file, made.code);
  const disk::Files::Path beside = file.string() + ".new";
  files.remove(beside); // of a run that was killed in here
  const disk::Opened opened = files.open_new(beside);
  if (opened.code != 0) return failure(file, opened.code);
  const disk::Done written = files.write(opened.handle, bytes);
  const disk::Done forced = written.code == 0 ? files.force(opened.handle) : written;
  files.close(opened.handle);
  const disk::Done placed = forced.code == 0 ? files.rename(beside, file) : forced;
  const disk::Done named = placed.code == 0 ? files.force_folder(file.parent_path()) : placed;
  if (named.code != 0) return failure(file, named.code);
  return {};
}

std::optional<std::string> kept(disk::Files& files, const disk::Files::Path& file) {
  disk::Bytes found = files.read(file);
  return found.code == 0 ? std::optional(std::move(found.bytes)) : std::nullopt;
}

}
