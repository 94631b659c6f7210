#include "commands/language.hpp"

#include "words/commands_says.hpp"

#include <cstdlib>

namespace commands {

namespace {

using Say = words::CommandsSay;

const std::string option = "--language";

}

words::Result<std::optional<words::Language>> take_language(std::vector<std::string>& given) {
  std::optional<words::Language> asked;
  for (std::size_t at = 0; at < given.size() && given[at] != "--";) {
    const bool joined = given[at].rfind(option + "=", 0) == 0;
    if (!joined && given[at] != option) {
      ++at;
      continue;
    }
    const std::size_t taken = joined ? 1 : 2;
    if (at + taken > given.size()) return words::failure(Say::option_without_value, {option});
    const std::string tag = joined ? given[at].substr(option.size() + 1) : given[at + 1];
    if (asked) return words::failure(Say::option_twice, {option});
    asked = words::language_tagged(tag);
    if (!asked) return words::failure(Say::no_such_language, {tag, words::offered_tags()});
    const auto here = given.begin() + static_cast<std::ptrdiff_t>(at);
    given.erase(here, here + static_cast<std::ptrdiff_t>(taken));
  }
  return asked;
}

words::Language language_of_system() {
  for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"})
    if (const char* locale = std::getenv(name); locale && *locale)
      return words::language_for(locale).value_or(words::Language::english);
  return words::Language::english;
}

}
