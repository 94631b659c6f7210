// In a language with a decimal comma: the same taps, files and keys; other words.
#include "commands/language.hpp"
#include "commands/show.hpp"
#include "commands/tool.hpp"
#include "session/reader.hpp"
#include "session/training.hpp"
#include "words/commands_says.hpp"
#include "words/speaking.hpp"

#include <nlohmann/json.hpp>

namespace language_test {

using namespace tool;
using Json = nlohmann::json;
using words::Language;
using words::Speaking;

namespace {

const std::string evening = std::string(small_batch) + "tap another\ntap amount weigh\n"
                                                       "tap add gum_12\ntype 1.25\n";

// The lines of a studio but for the names of cards, which are words, and what checks a line.
std::vector<Json> lines_of(const Studio& studio) {
  std::vector<Json> lines;
  for (const auto& [name, bytes] : studio.files()) {
    std::istringstream in(bytes);
    for (std::string line; std::getline(in, line);) {
      Json one = Json::parse(line);
      if (one["e"] == "laid_out") one.erase("name");
      one.erase("c");
      one.erase("p");
      lines.push_back(one);
    }
  }
  return lines;
}

std::string key_of_dropper(const Studio& studio) {
  std::vector<session::File> files;
  for (const auto& [name, bytes] : studio.files()) files.push_back(session::read_file(name, bytes));
  const auto batch = commands::find_batch(session::join_parts(files), "last");
  REQUIRE(batch);
  return session::tool_key(*batch, "dropper");
}

using Say = words::CommandsSay;

struct Taken {
  words::Result<std::optional<Language>> language;
  std::vector<std::string> left;
};

Taken take(std::vector<std::string> given) {
  auto language = commands::take_language(given);
  return {std::move(language), std::move(given)};
}

// What the system says of languages, for as long as this lives; empty: nothing.
struct System {
  System(const std::string& all, const std::string& messages, const std::string& lang) {
    set("LC_ALL", all);
    set("LC_MESSAGES", messages);
    set("LANG", lang);
  }
  ~System() {
    for (const auto& [name, value] : before) set_or_not(name, value);
  }
  void set(const char* name, const std::string& value) {
    const char* was = std::getenv(name);
    before.emplace_back(name, was ? std::optional<std::string>(was) : std::nullopt);
    set_or_not(name, value);
  }
  static void set_or_not(const char* name, const std::optional<std::string>& value) {
    if (value)
      setenv(name, value->c_str(), 1);
    else
      unsetenv(name);
  }
  std::vector<std::pair<const char*, std::optional<std::string>>> before;
};

}

TEST_CASE("--language stands anywhere before --, once, and names a language there is") {
  for (const auto& given : std::vector<std::vector<std::string>>{{"--language", "de", "list"},
                                                                 {"list", "--language=de"}}) {
    const Taken taken = take(given);
    CHECK(taken.language.value() == Language::german);
    CHECK(taken.left == std::vector<std::string>{"list"});
  }
  CHECK(take({"list"}).language.value() == std::nullopt);
  const Taken name = take({"show", "--", "--language", "de"});
  CHECK(name.language.value() == std::nullopt);
  CHECK(name.left.size() == 4);
  CHECK(take({"list", "--language", "latin"}).language.error() ==
        words::Error{Say::no_such_language, {"latin", "en, de"}});
  CHECK(take({"list", "--language"}).language.error() ==
        words::Error{Say::option_without_value, {"--language"}});
  CHECK(take({"--language", "de", "--language=en"}).language.error() ==
        words::Error{Say::option_twice, {"--language"}});
}

TEST_CASE("the system says which language: the first of three that says anything") {
  const auto spoken = [](const char* all, const char* messages, const char* lang) {
    const System system(all, messages, lang);
    return commands::language_of_system();
  };
  CHECK(spoken("", "", "de_AT.UTF-8") == Language::german);
  CHECK(spoken("", "en_GB.UTF-8", "de_DE.UTF-8") == Language::english);
  CHECK(spoken("de_DE", "en_GB", "en_GB") == Language::german);
  CHECK(spoken("C.UTF-8", "", "de_DE.UTF-8") == Language::english);
  CHECK(spoken("", "", "") == Language::english);
}

TEST_CASE("commands speak German, with its numbers; tables do not") {
  const Studio studio;
  REQUIRE(studio.play(evening).status == 0);
  const std::string table = studio.read({"table"}).out;
  const Speaking german(Language::german);
  CHECK(studio.read({"table"}).out == table);
  CHECK(has(studio.read({"show", "last"}).out, "21,0 °C"));
  CHECK(has(studio.read({"sheet", "--batch", "last"}).out, " lang=\"de\""));
  CHECK(has(run({"help"}).out, "alle Ansätze, älteste zuerst"));
  const auto wrong = run({"list", "--no-such"});
  CHECK(wrong.status == 2);
  CHECK(has(wrong.err, "Option"));
}

TEST_CASE("the same script makes the same lines and keys, whatever is spoken") {
  const Studio english, other;
  REQUIRE(english.play(evening).status == 0);
  const std::string key = key_of_dropper(english);
  CHECK(has(key, "0.0500 mL"));
  const Speaking pseudo(Language::pseudo);
  REQUIRE(other.play(evening).status == 0);
  CHECK(lines_of(other) == lines_of(english));
  CHECK(has(Json(lines_of(other)).dump(), "1.25"));
  CHECK(key_of_dropper(other) == key);
  const Speaking german(Language::german);
  const Studio third;
  REQUIRE(third.play(evening).status == 0);
  CHECK(third.files() == english.files());
  CHECK(key_of_dropper(third) == key);
}

TEST_CASE("what ships has its name in the language, in a studio of another one too") {
  const Studio studio;
  REQUIRE(studio.play(evening).status == 0);
  const auto bytes = studio.files();
  CHECK(has(studio.read({"sheet", "--batch", "last"}).out, "Ultramarine blue"));
  const std::string json = studio.read({"show", "last", "--json"}).out;
  const Speaking german(Language::german);
  const std::string sheet = studio.read({"sheet", "--batch", "last"}).out;
  CHECK(has(sheet, "Ultramarinblau"));
  CHECK_FALSE(has(sheet, "Ultramarine blue"));
  CHECK(studio.read({"show", "last", "--json"}).out == json);
  CHECK(studio.read({"range", "ultramarine blue"}).out ==
        studio.read({"range", "Ultramarinblau"}).out);
  CHECK(studio.files() == bytes);
}

TEST_CASE("a comma is typed as a point is") {
  const Studio point, comma;
  REQUIRE(point.play(evening).status == 0);
  std::string with_comma = evening;
  with_comma.replace(with_comma.find("1.25"), 4, "1,25");
  REQUIRE(comma.play(with_comma).status == 0);
  CHECK(comma.files() == point.files());
}

TEST_CASE("a batch as JSON is the same, as text it has the language's sign") {
  const Studio studio;
  REQUIRE(studio.play(evening).status == 0);
  const std::string json = studio.read({"show", "last", "--json"}).out;
  const std::string range = studio.read({"range", "--json"}).out;
  const std::string text = studio.read({"show", "last"}).out;
  CHECK(has(text, "21.0 °C"));
  const Speaking other(Language::pseudo);
  CHECK(studio.read({"show", "last", "--json"}).out == json);
  CHECK(studio.read({"range", "--json"}).out == range);
  const std::string said = studio.read({"show", "last"}).out;
  CHECK(has(said, "21,0 °C"));
  CHECK_FALSE(has(said, "21.0 °C"));
}

}
