// The languages there are. English is the source, in english_*.cpp; each other one is a .po beside
// them, of which the build makes a table (sentences.py).
#pragma once

#include "words/sentence.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace words {

// pseudo: English as another language might look, which shows what would not fit; nobody is offered
// it.
enum class Language { english, german, pseudo };

inline constexpr std::array offered_languages{Language::english, Language::german};

// "en", "de", "pseudo".
std::string_view tag_of(Language language);

// By its tag.
std::optional<Language> language_tagged(std::string_view tag);

// As a system names what somebody reads: de, de_AT.UTF-8, de-CH; absent where that is none of those
// offered.
std::optional<Language> language_for(std::string_view locale);

std::string offered_tags(); // "en, de"

// German, from de.po; empty where it has not been translated as the English stands.
std::string_view de_of(Sentence sentence);

}
