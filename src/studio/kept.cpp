#include "studio/kept.hpp"

#include "disk/whole_file.hpp"
#include "studio/sentences.hpp"
#include "words/say.hpp"
#include "words/studio_says.hpp"

#include <cerrno>

namespace studio {

namespace {

words::Result<void> failure(const disk::Files::Path& file, int code) {
  return words::failure(words::StudioSay::file_not_kept,
                        {file.string(), words::Inner(error_of_system(code))});
}

}

words::Result<void> keep(disk::Files& files, const disk::Files::Path& file,
                         std::string_view bytes) {
  if (const auto made = files.make_folder(file.parent_path());
      made.code != 0 && made.code != EEXIST)
    return failure(file, made.code);
  const disk::Files::Path beside = file.string() + ".new";
  files.remove(beside); // of a run that was killed in here
  if (const auto failed = disk::put_in_place(files, file, beside, bytes))
    return failure(file, failed->code);
  return {};
}

std::optional<std::string> kept(disk::Files& files, const disk::Files::Path& file) {
  disk::Bytes found = files.read(file);
  return found.code == 0 ? std::optional(std::move(found.bytes)) : std::nullopt;
}

}
