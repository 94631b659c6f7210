#include "studio/sentences.hpp"

#include "words/say.hpp"

namespace studio {

namespace {

words::Say say_of(const std::string& operation) {
  using words::Say;
  if (operation == "force") return Say::disk_force_failed;
  if (operation == "open") return Say::disk_open_failed;
  if (operation == "make folder") return Say::disk_folder_failed;
  if (operation == "read") return Say::disk_read_failed;
  if (operation == "list") return Say::disk_list_failed;
  return Say::disk_write_failed;
}

}

std::string sentence(const disk::Failure& failure) {
  return words::say(say_of(failure.operation), {failure.path, failure.reason});
}

}
