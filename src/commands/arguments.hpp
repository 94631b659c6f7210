// What stands behind the program's name.
#pragma once

#include "words/error.hpp"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace commands {

struct Accepted {
  std::set<std::string> with_value; // "--studio"
  std::set<std::string> flags;      // "--json"
  std::size_t least_words = 0;      // words that are no options
  std::size_t most_words = 0;
  std::set<std::string> repeated = {}; // with a value each time
  // Options that must be there, and what is said where they are not.
  std::map<std::string, words::Error> needed = {};
  std::string instead = {}; // a flag that stands for the words: the one or the others are given
};

struct Arguments {
  std::vector<std::string> words;
  std::map<std::string, std::string> values;
  std::set<std::string> flags;
  std::map<std::string, std::vector<std::string>> lists; // of repeated ones

  bool has(const std::string& flag) const { return flags.count(flag) > 0; }
  std::optional<std::string> value(const std::string& option) const {
    const auto at = values.find(option);
    return at == values.end() ? std::nullopt : std::optional(at->second);
  }
  std::vector<std::string> all(const std::string& option) const {
    const auto at = lists.find(option);
    return at == lists.end() ? std::vector<std::string>{} : at->second;
  }
};

// "--studio DIR" and "--studio=DIR", the only way for a value that reads as an option; behind "--"
// everything is a word. `command` is what the help calls it, and of those that it tells. Errors:
// unknown_option, option_twice, option_without_value, option_with_value, word_missing,
// word_too_many; what `needed` says.
words::Result<Arguments> parse(const std::vector<std::string>& given, const Accepted& accepted,
                               const std::string& command);

}
