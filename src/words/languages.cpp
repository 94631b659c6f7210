#include "words/languages.hpp"

namespace words {

std::string_view tag_of(Language language) {
  switch (language) {
  case Language::english: return "en";
  case Language::german: return "de";
  case Language::pseudo: return "pseudo";
  }
  return "";
}

std::optional<Language> language_tagged(std::string_view tag) {
  for (const Language language : {Language::english, Language::german, Language::pseudo})
    if (tag_of(language) == tag) return language;
  return std::nullopt;
}

std::optional<Language> language_for(std::string_view locale) {
  const std::string_view first = locale.substr(0, locale.find_first_of("_-.@"));
  for (const Language language : offered_languages)
    if (tag_of(language) == first) return language;
  return std::nullopt;
}

std::string offered_tags() {
  std::string out;
  for (const Language language : offered_languages)
    out += (out.empty() ? "" : ", ") + std::string(tag_of(language));
  return out;
}

}
