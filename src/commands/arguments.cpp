#include "commands/arguments.hpp"

#include "words/commands_says.hpp"

#include <algorithm>
#include <array>

namespace commands {

namespace {

using Say = words::CommandsSay;

constexpr std::array<std::string_view, 2> may_be_empty{"--fallback", "--line"}; // none

bool is_refused(const std::string& name, const std::string& value) {
  return value.empty() &&
         std::find(may_be_empty.begin(), may_be_empty.end(), name) == may_be_empty.end();
}

bool is_option(const std::string& word, const Accepted& accepted) {
  const std::string name = word.substr(0, word.find('='));
  return accepted.with_value.count(name) > 0 || accepted.flags.count(name) > 0 ||
         accepted.repeated.count(name) > 0;
}

struct Parser {
  const std::vector<std::string>& given;
  const Accepted& accepted;
  Arguments found = {};
  std::size_t next = 0;

  // Empty once all went well.
  std::optional<words::Error> take_option(const std::string& whole) {
    const std::size_t equals = whole.find('=');
    const std::string name = whole.substr(0, equals);
    const bool repeated = accepted.repeated.count(name) > 0;
    const bool with_value = repeated || accepted.with_value.count(name) > 0;
    if (!with_value && !accepted.flags.count(name))
      return words::Error{Say::unknown_option, {name}};
    if (found.flags.count(name) || found.values.count(name))
      return words::Error{Say::option_twice, {name}};
    if (!with_value) {
      if (equals != std::string::npos) return words::Error{Say::option_with_value, {name}};
      found.flags.insert(name);
    } else if (equals == std::string::npos &&
               (next == given.size() || is_option(given[next], accepted))) {
      return words::Error{Say::option_without_value, {name}};
    } else {
      const std::string value =
          equals != std::string::npos ? whole.substr(equals + 1) : given[next++];
      if (is_refused(name, value)) return words::Error{Say::option_without_value, {name}};
      if (repeated)
        found.lists[name].push_back(value);
      else
        found.values[name] = value;
    }
    return std::nullopt;
  }
};

// The command's first line of the help, up to what it says about it; there uses are aligned.
std::string usage_of(const std::string& command) {
  const std::string help = words::say(Say::help);
  const std::size_t at = help.find("\nslabside " + command + ' ') + 1;
  std::string line = help.substr(at, help.find('\n', at) - at);
  line = line.substr(0, line.find("   "));
  line.erase(
      std::unique(line.begin(), line.end(), [](char a, char b) { return a == ' ' && b == ' '; }),
      line.end());
  return line;
}

std::optional<words::Error> fault_of_words(const Arguments& found, const Accepted& accepted,
                                           const std::string& command) {
  const bool instead = found.has(accepted.instead);
  const std::size_t words = found.words.size(), most = instead ? 0 : accepted.most_words;
  if (words < accepted.least_words && !instead)
    return words::Error{Say::word_missing, {usage_of(command)}};
  if (words > most) return words::Error{Say::word_too_many, {found.words[most]}};
  return std::nullopt;
}

}

words::Result<Arguments> parse(const std::vector<std::string>& given, const Accepted& accepted,
                               const std::string& command) {
  Parser p{given, accepted};
  bool only_words = false;
  while (p.next < given.size()) {
    const std::string& word = given[p.next++];
    if (!only_words && word == "--")
      only_words = true;
    else if (only_words || word.size() < 2 || word[0] != '-')
      p.found.words.push_back(word);
    else if (const auto error = p.take_option(word))
      return tl::make_unexpected(*error);
  }
  if (auto error = fault_of_words(p.found, accepted, command))
    return tl::make_unexpected(*std::move(error));
  for (const auto& [option, missing] : accepted.needed)
    if (!p.found.value(option)) return tl::make_unexpected(missing);
  return p.found;
}

}
