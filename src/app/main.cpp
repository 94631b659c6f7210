#include "app/picture.hpp"
#include "app/watch.hpp"
#include "app/window_loop.hpp"
#include "commands/language.hpp"
#include "commands/open_pack.hpp"
#include "commands/run.hpp"
#include "screens/own_faces.hpp"
#include "studio/studio.hpp"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <iostream>

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

int open_window(const std::vector<std::string>& given, std::optional<words::Language> language) {
  auto options = app::window_options(given);
  if (!options) return complain(options.error(), 2);
  options->language = language;
  if (options->pack) {
    const auto home = studio::default_studio().parent_path();
    const auto opened = commands::open_pack(*options->pack, home, std::cout);
    if (!opened) return complain(opened.error(), 1);
    options->studio = opened->string();
  }
  return app::run_window(*options);
}

// Fonts that were put beside the program come before the system's, so a copied folder runs.
void look_beside_the_program() {
  std::error_code failed;
  const auto program = std::filesystem::read_symlink("/proc/self/exe", failed);
  if (!failed)
    screens::look_for_faces_in((program.parent_path() / SLABSIDE_FONTS_FROM_PROGRAM).string());
}

// The words but for one.
std::vector<std::string> without(const std::string& word, std::vector<std::string> words) {
  std::erase(words, word);
  return words;
}

}

int main(int count, char** arguments) {
  std::vector<std::string> given(arguments + std::min(count, 1), arguments + count);
  look_beside_the_program();
  words::say_in(commands::language_of_system());
  const auto language = commands::take_language(given);
  if (!language) return complain(language.error(), 2);
  if (*language) words::say_in(**language);
  if (const auto watched = without("--watch", given); watched.size() < given.size())
    return app::watch(watched);
  const bool lost = std::find(given.begin(), given.end(), "--help") != given.end();
  if (const auto status = commands::run(lost ? std::vector<std::string>{"help"} : given))
    return *status;
  if (!given.empty() && given[0] == "picture") return picture({given.begin() + 1, given.end()});
  return open_window(given, *language);
}
