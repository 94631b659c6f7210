// In a language with a decimal comma: the same taps, files and keys; other words.
#include "commands/show.hpp"
#include "commands/tool.hpp"
#include "session/reader.hpp"
#include "session/training.hpp"
#include "words/speaking.hpp"

#include <nlohmann/json.hpp>

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
