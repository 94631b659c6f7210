#include "words/letter_case.hpp"

#include <doctest/doctest.h>

using namespace words;

TEST_CASE("small letters of Latin, Greek and Cyrillic") {
  CHECK(in_small_letters("PB36, Cerulean Blue") == "pb36, cerulean blue");
  CHECK(in_small_letters("ÀÖØÞ × ÷ ÄÉß") == "àöøþ × ÷ äéß");
  CHECK(in_small_letters("ĀČĐĞİĲŁŃŐŒŠŸŽ ĸŉ") == "āčđğiĳłńőœšÿž ĸŉ");
  CHECK(in_small_letters("ΑΒΓΣΩ ΆΈΉΊΌΎΏΪΫ ςΰΐ") == "αβγσω άέήίόύώϊϋ ςΰΐ");
  CHECK(in_small_letters("АБЯ ЀЁЏ Ґ Ӂ ӀӐ") == "абя ѐёџ ґ ӂ ӏӑ");
  CHECK(in_small_letters("ẞ Ḁ Ế") == "ß ḁ ế");
  CHECK(in_small_letters("青 №5 [`{@") == "青 №5 [`{@");
}

TEST_CASE("no small letter is made smaller, and what is no text stays") {
  const std::string small = "azßàÿāćĳŉœſžάώςабяёџḁế";
  CHECK(in_small_letters(small) == small);
  CHECK(in_small_letters("A\xFF\xC3") == "a\xFF\xC3");
  CHECK(searchable("A\xFF\xC3") == "a\xFF\xC3");
  CHECK(in_small_letters("") == "");
}

TEST_CASE("a name is found however it is typed") {
  for (const char* typed : {"Grün", "GRÜN", "grün", "gru\u0308n", "GRU\u0308N", "grun"})
    CHECK_MESSAGE(searchable(typed) == searchable("Grün"), typed);
  for (const char* typed : {"Weißdorn", "WEISSDORN", "WEIẞDORN", "weissdorn"})
    CHECK_MESSAGE(searchable(typed) == searchable("Weißdorn"), typed);
  for (const char* typed : {"Ocre rosé", "OCRE ROSÉ", "ocre rose\u0301", "ocre rose"})
    CHECK_MESSAGE(searchable(typed) == searchable("Ocre rosé"), typed);
  for (const char* typed : {"Ώχρας", "ΏΧΡΑΣ", "ώχρασ", "ωχρας", "ω\u0301χρας"})
    CHECK_MESSAGE(searchable(typed) == searchable("ώχρας"), typed);
  CHECK(searchable("Ærø, Łódź, Œuvre, Þór, Đ") == "aero, lodz, oeuvre, thor, d");
  CHECK(searchable("Ёлка, Йод") == searchable("елка, иод"));
}

TEST_CASE("what differs by more than case and marks is not found") {
  CHECK(searchable("Grün") != searchable("Grau"));
  CHECK(searchable("2 × 3") == "2 × 3");
  CHECK(searchable("½ ÷") == "½ ÷");
}
