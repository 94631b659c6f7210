#include "studio/sentences.hpp"

#include "studio/founding.hpp"
#include "words/say.hpp"
#include "words/studio_says.hpp"

#include <cerrno>

namespace studio {

using Say = words::StudioSay;

namespace {

words::Sentence say_of(disk::Operation operation) {
  switch (operation) {
  case disk::Operation::write:
  case disk::Operation::name: break;
  case disk::Operation::force: return Say::disk_force_failed;
  case disk::Operation::open: return Say::disk_open_failed;
  case disk::Operation::make_folder: return Say::disk_folder_failed;
  case disk::Operation::read: return Say::disk_read_failed;
  case disk::Operation::list: return Say::disk_list_failed;
  case disk::Operation::rename: return Say::disk_rename_failed;
  case disk::Operation::keep: return Say::disk_keep_failed;
  case disk::Operation::gone: return Say::disk_file_gone;
  case disk::Operation::not_a_file: return Say::disk_not_a_file;
  case disk::Operation::too_large: return Say::disk_too_large;
  }
  return Say::disk_write_failed;
}

words::Arg why(const disk::Failure& failure) {
  if (failure.reason.empty()) return words::Inner(error_of_system(failure.code));
  return failure.reason;
}

}

words::Error error_of_system(int code) {
  switch (code) {
  case ENOSPC: return {Say::system_no_space, {}};
  case EDQUOT: return {Say::system_share_used, {}};
  case EACCES:
  case EPERM: return {Say::system_not_allowed, {}};
  case EROFS: return {Say::system_read_only, {}};
  case ENOENT: return {Say::system_not_there, {}};
  case EEXIST: return {Say::system_there_already, {}};
  case ENOTDIR: return {Say::system_no_folder, {}};
  case EISDIR: return {Say::system_a_folder, {}};
  case EIO: return {Say::system_disk_error, {}};
  case ENODEV:
  case ENXIO: return {Say::system_disk_gone, {}};
  case EBUSY: return {Say::system_in_use, {}};
  case ELOOP: return {Say::system_link_loop, {}};
  case ENAMETOOLONG: return {Say::system_long_name, {}};
  case EMFILE:
  case ENFILE: return {Say::system_many_open, {}};
  case ENOTSUP: return {Say::system_cannot, {}};
  default: return {Say::system_error, {std::to_string(code)}};
  }
}

words::Error error(const disk::Failure& failure) {
  if (failure.code == other_studio)
    return {words::StudioSay::disk_other_studio,
            {std::filesystem::path(failure.path).parent_path().string()}};
  return {say_of(failure.operation), {failure.path, why(failure)}};
}

words::Error error(disk::Operation operation, const std::filesystem::path& path, int code) {
  return error(disk::Failure{operation, path.string(), code, {}});
}

words::Error missing(const std::string& session, const session::Span& span) {
  const std::string from = std::to_string(span.from);
  if (span.from == span.to) return {words::StudioSay::session_misses_one, {session, from}};
  return {words::StudioSay::session_misses, {session, from, std::to_string(span.to)}};
}

}
