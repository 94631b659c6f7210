#include "disk/whole_file.hpp"

#include <system_error>

namespace disk {

using Path = Files::Path;

Failure failure(std::string operation, const Path& path, int code) {
  return {std::move(operation), path.string(), code, std::system_category().message(code)};
}

std::optional<Failure> write_new(Files& files, const Path& file, std::string_view bytes) {
  const Opened opened = files.open_new(file);
  if (opened.code != 0) return failure("open", file, opened.code);
  std::optional<Failure> failed;
  if (const int wrote = files.write(opened.handle, bytes).code)
    failed = failure("write", file, wrote);
  else if (const int forced = files.force(opened.handle).code)
    failed = failure("force", file, forced);
  files.close(opened.handle);
  if (failed) files.remove(file); // if that fails too, it is said already that nothing is kept
  return failed;
}

std::optional<Failure> put_in_place(Files& files, const Path& file, const Path& beside,
                                    std::string_view bytes) {
  if (auto failed = write_new(files, beside, bytes)) return failed;
  if (const int code = files.rename(beside, file).code) {
    files.remove(beside);
    return failure("rename", beside, code);
  }
  const Path folder = file.parent_path();
  if (const int code = files.force_folder(folder).code) return failure("force", folder, code);
  return {};
}

}
