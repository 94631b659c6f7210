#include "disk/whole_file.hpp"

namespace disk {

using Path = Files::Path;

Failure failure(Operation operation, const Path& path, int code) {
  return {operation, path.string(), code, {}};
}

std::optional<Failure> write_new(Files& files, const Path& file, std::string_view bytes) {
  const Opened opened = files.open_new(file);
  if (opened.code != 0) return failure(Operation::open, file, opened.code);
  std::optional<Failure> failed;
  if (const int wrote = files.write(opened.handle, bytes).code)
    failed = failure(Operation::write, file, wrote);
  else if (const int forced = files.force(opened.handle).code)
    failed = failure(Operation::force, file, forced);
  files.close(opened.handle);
  if (failed) files.remove(file); // if that fails too, it is said already that nothing is kept
  return failed;
}

std::optional<Failure> put_in_place(Files& files, const Path& file, const Path& beside,
                                    std::string_view bytes) {
  if (auto failed = write_new(files, beside, bytes)) return failed;
  if (const int code = files.rename(beside, file).code) {
    files.remove(beside);
    return failure(Operation::rename, beside, code);
  }
  const Path folder = file.parent_path();
  if (const int code = files.force_folder(folder).code)
    return failure(Operation::force, folder, code);
  return {};
}

}
