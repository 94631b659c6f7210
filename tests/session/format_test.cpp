// The page that describes the format is itself checked: its example reads without damage, is
// written back byte for byte, and folds to the numbers it prints.
#include "make.hpp"
#include "session/bytes.hpp"
#include "session/check_value.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <fstream>
#include <sstream>

namespace format_test {

using namespace session;

namespace {

std::string page() {
  std::ifstream file(SLABSIDE_ROOT "/src/session/FORMAT.md");
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

std::string example() {
  const std::string text = page();
  const std::size_t from = text.find("```\n{") + 4;
  return text.substr(from, text.find("```", from) - from);
}

bool page_says(std::uint32_t seed) {
  return page().find("crc(\"5e1f20c70b94.0\", 0) = " + to_hex(seed)) != std::string::npos;
}

}

TEST_CASE("the format page's example is true") {
  const File file = read_file("example.jsonl", example());
  REQUIRE(file.lines.size() == 14);
  CHECK(page_says(file.seed));
  CHECK(file.damage.empty());
  std::string again;
  std::uint32_t before = 0;
  for (const Line& line : file.lines) {
    const auto bytes = encode(line, before, file.seed);
    REQUIRE(bytes);
    again += bytes->bytes;
    before = bytes->check;
  }
  CHECK(again == example());
  const auto b = make::folded(join_parts({file}), "9a04d3e1c26f");
  CHECK(std::abs(b.standing.binder_ratio->value - 2.824) < 0.0005);
  CHECK(std::abs(b.standing.flow_put_in->value - 1.2483) < 0.00005);
}

TEST_CASE("the format page names every kind of event") {
  const std::string text = page();
  for (const char* kind :
       {"began",      "laid_out",     "opened",      "room",     "added",
        "felt",       "stage",        "dot",         "trouble",  "bottle_weighed",
        "count_lost", "moved",        "lost",        "weighed",  "as_before",
        "withdrawn",  "corrected",    "photo",       "gone",     "gathered",
        "closed",     "clock_jumped", "left",        "put_away", "cautions_seen",
        "found",      "poured",       "pan_weighed", "verdict",  "noted",
        "set_aside",  "planned",      "confirmed",   "told"})
    CHECK_MESSAGE(text.find("`" + std::string(kind) + "`") != std::string::npos, kind);
}

}
