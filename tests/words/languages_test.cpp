// Every language says every sentence, with what goes into it, and its own numbers and dates.
#include "words/all_sentences.hpp"
#include "words/language_says.hpp"
#include "words/languages.hpp"
#include "words/moments.hpp"
#include "words/speaking.hpp"
#include "words/tablet_says.hpp"

#include <doctest/doctest.h>

#include <set>

using namespace words;

namespace {

std::set<char> places_of(std::string_view form) {
  std::set<char> out;
  for (std::size_t at = 0; at + 2 < form.size(); ++at)
    if (form[at] == '{' && form[at + 2] == '}') out.insert(form[at + 1]);
  return out;
}

std::size_t names_in(Sentence list) {
  const std::string names = say(list);
  return 1 + static_cast<std::size_t>(std::count(names.begin(), names.end(), ' '));
}

}

TEST_CASE("every sentence is said in every language, with the same places") {
  for (const Sentence sentence : all_sentences()) {
    const std::string english(pattern(sentence));
    CAPTURE(english);
    CHECK_FALSE(de_of(sentence).empty());
    for (const Language language : offered_languages)
      CHECK(places_of(pattern(sentence, language)) == places_of(english));
  }
}

TEST_CASE("a language is found by its tag, and by what a system calls it") {
  CHECK(offered_tags() == "en, de");
  for (const Language language : {Language::english, Language::german, Language::pseudo})
    CHECK(language_tagged(tag_of(language)) == language);
  for (const char* tag : {"", "german", "DE", "de_DE", "fr"})
    CHECK_FALSE_MESSAGE(language_tagged(tag), tag);
  for (const char* locale : {"de", "de_AT.UTF-8", "de-CH", "de@euro", "de_DE"})
    CHECK_MESSAGE(language_for(locale) == Language::german, locale);
  CHECK(language_for("en_GB.UTF-8") == Language::english);
  for (const char* locale : {"", "C", "C.UTF-8", "POSIX", "dell_DE", "fr_FR.UTF-8", "pseudo"})
    CHECK_FALSE_MESSAGE(language_for(locale), locale);
}

TEST_CASE("a language has its own tag, name, months and days") {
  for (const Language language : offered_languages) {
    const Speaking speaking(language);
    CHECK(spoken() == language);
    CHECK(say(LanguageSay::tag) == tag_of(language));
    CHECK(names_in(LanguageSay::month_names) == 12);
    CHECK(names_in(LanguageSay::day_names) == 7);
  }
  CHECK(pattern(LanguageSay::own_name, Language::german) == "Deutsch");
}

TEST_CASE("numbers, dates and counted things in German") {
  const Speaking speaking(Language::german);
  CHECK(number(12345.678, 2) == "12345,68");
  CHECK(invariant(12345.678, 2) == "12345.68");
  CHECK(date(1795617120000, 60) == "25. Nov. 2026");
  CHECK(weekday_and_date(1795617120000, 60) == "Mittwoch, 25. Nov.");
  CHECK(date_and_time(1795617120000, 60) == "25. Nov., 15:32");
  CHECK(counted(1, TabletSay::told_batch, TabletSay::told_batches) == "1 Ansatz");
  CHECK(counted(2, TabletSay::told_batch, TabletSay::told_batches) == "2 Ansätzen");
}
