#include "studio/sentences.hpp"

#include "studio/founding.hpp"
#include "words/studio_says.hpp"

#include <system_error>

namespace studio {

namespace {

words::Sentence say_of(const std::string& operation) {
  using Say = words::StudioSay;
  if (operation == "force") return Say::disk_force_failed;
  if (operation == "open") return Say::disk_open_failed;
  if (operation == "make folder") return Say::disk_folder_failed;
  if (operation == "read") return Say::disk_read_failed;
  if (operation == "list") return Say::disk_list_failed;
  if (operation == "rename") return Say::disk_rename_failed;
  if (operation == "keep") return Say::disk_keep_failed;
  if (operation == "gone") return Say::disk_file_gone;
  if (operation == "not a file") return Say::disk_not_a_file;
  if (operation == "too large") return Say::disk_too_large;
  return Say::disk_write_failed;
}

}

words::Error error(const disk::Failure& failure) {
  if (failure.code == other_studio)
    return {words::StudioSay::disk_other_studio,
            {std::filesystem::path(failure.path).parent_path().string()}};
  return {say_of(failure.operation), {failure.path, failure.reason}};
}

words::Error error(const std::string& operation, const std::filesystem::path& path, int code) {
  return error({operation, path.string(), code, std::system_category().message(code)});
}

words::Error missing(const std::string& session, const session::Span& span) {
  const std::string from = std::to_string(span.from);
  if (span.from == span.to) return {words::StudioSay::session_misses_one, {session, from}};
  return {words::StudioSay::session_misses, {session, from, std::to_string(span.to)}};
}

}
