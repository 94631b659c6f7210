#include "words/all_sentences.hpp"
#include "words/bench_says.hpp"
#include "words/card_names.hpp"
#include "words/error.hpp"
#include "words/paint_says.hpp"
#include "words/speaking.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <locale>

using namespace words;
using Say = PaintSay;

namespace {

// Code points of UTF-8: every byte that does not go on with one.
std::size_t letters(std::string_view text) {
  std::size_t count = 0;
  for (const char c : text) count += (c & 0xC0) != 0x80;
  return count;
}

}

TEST_CASE("arguments go where the pattern names them") {
  CHECK(say(Say::humidity_out_of_range, {"140"}) ==
        "Humidity lies between 0 and 100 %: 140 does not.");
  CHECK(say(Say::amount_too_large, {"9000 g", "5000 g"}).find("5000 g") != std::string::npos);
  CHECK(say(Say::humidity_out_of_range) == "Humidity lies between 0 and 100 %:  does not.");
  CHECK(say(Say::humidity_out_of_range, {"{0}"}).find("{0}") != std::string::npos);
}

TEST_CASE("an error says the same as its sentence") {
  CHECK(message({Say::not_a_number, {"1.2.3"}}) == say(Say::not_a_number, {"1.2.3"}));
  CHECK(message({Sentence{}, {}}).empty());
}

TEST_CASE("numbers have the digits asked for, and no minus before nothing") {
  for (const auto written : {number, invariant}) {
    CHECK(written(2.825, 2) == "2.83");
    CHECK(written(12, 1) == "12.0");
    CHECK(written(-0.04, 1) == "0.0");
    CHECK(written(-0.06, 1) == "-0.1");
    CHECK(written(1e300, 0).size() == 301);
    CHECK(written(std::nan(""), 1) == "nan");
  }
}

TEST_CASE("numbers do not follow the system's locale") {
  struct German : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
  };
  const std::locale before = std::locale::global(std::locale(std::locale(), new German));
  const std::string people = number(12345.5, 1), machines = invariant(12345.5, 1);
  std::locale::global(before);
  CHECK(people == "12345.5");
  CHECK(machines == "12345.5");
}

TEST_CASE("people read the decimal sign of their language, machines a point") {
  const Error error{Say::negative_amount, {Number(-2.5, 1)}};
  CHECK(message(error) == "An amount cannot be below zero: -2.5.");
  say_in(Language::pseudo);
  const std::string people = number(-2.5, 1), machines = invariant(-2.5, 1), sign = decimal_sign();
  const std::string said = message(error);
  say_in(Language::english);
  CHECK(people == "-2,5");
  CHECK(machines == "-2.5");
  CHECK(sign == ",");
  CHECK(said.find("-2,5") != std::string::npos);
  CHECK(decimal_sign() == ".");
}

TEST_CASE("a pseudo-language is a third longer, and keeps slots, numbers and units") {
  CHECK(pseudo("{0} g binder to 10 g pigment") == "{0} g bíiñďdêeř to 10 g ppíğgmmêñnţt");
  CHECK(pseudo("right") == "říğgĥţt");
  CHECK(pseudo("") == "");
  std::size_t english = 0, other = 0;
  for (const Sentence sentence : all_sentences()) {
    say_in(Language::english);
    english += letters(say(sentence));
    say_in(Language::pseudo);
    other += letters(say(sentence));
  }
  say_in(Language::english);
  CHECK(other >= 1.3 * english);
  CHECK(other < 1.35 * english);
}

TEST_CASE("what is spoken is chosen once, and arguments stay as they are") {
  const std::string english = say(BenchSay::stage_mulling, {"gum"});
  say_in(Language::pseudo);
  const std::string other = say(BenchSay::stage_mulling, {"gum"});
  say_in(Language::english);
  CHECK(other != english);
  CHECK(other.find(" gum") != std::string::npos);
  CHECK(say(BenchSay::stage_mulling, {"gum"}) == english);
}

TEST_CASE("a card that ships is English in files, in whatever language its name was read") {
  CHECK(card_name_of_file("water", "Water", Language::german) == "Wasser");
  for (const Language language : {Language::english, Language::german}) {
    const Speaking speaking(language);
    CHECK(card_name_for_file("water", "Wasser") == "Water");
    CHECK(card_name_for_file("water", "Water") == "Water");
    CHECK(card_name_for_file("water", "Rain") == "Rain"); // her own
  }
}
