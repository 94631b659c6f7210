#include "app/picture.hpp"
#include "app/watch.hpp"
#include "app/window_loop.hpp"
#include "commands/run.hpp"

#include <algorithm>
#include <cstdio>

namespace {

int complain(const words::Error& error, int status) {
  std::fprintf(stderr, "slabside: %s\n", words::message(error).c_str());
  return status;
}

int picture(const std::vector<std::string>& given) {
  const auto options = app::picture_options(given);
  if (!options) return complain(options.error(), 2);
  const auto made = app::make_picture(*options);
  return made ? 0 : complain(made.error(), 1);
}

// The words but for one.
std::vector<std::string> without(const std::string& word, std::vector<std::string> words) {
  std::erase(words, word);
  return words;
}

}

int main(int count, char** words) {
  const std::vector<std::string> given(words + std::min(count, 1), words + count);
  if (const auto watched = without("--watch", given); watched.size() < given.size())
    return app::watch(watched);
  const bool lost = std::find(given.begin(), given.end(), "--help") != given.end();
  if (const auto status = commands::run(lost ? std::vector<std::string>{"help"} : given))
    return *status;
  if (!given.empty() && given[0] == "picture") return picture({given.begin() + 1, given.end()});
  const auto options = app::window_options(given);
  return options ? app::run_window(*options) : complain(options.error(), 2);
}
