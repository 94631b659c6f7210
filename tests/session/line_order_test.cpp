// What no writer does: empty lines, lines behind the goodbye, a clock that goes back.
#include "evening.hpp"
#include "session/bytes.hpp"
#include "session/reader.hpp"
#include "words/session_says.hpp"

#include <doctest/doctest.h>

namespace line_order_test {

using namespace session;
using make::evening, make::start_of_line, make::written;

TEST_CASE("an empty line is named as that, and costs nothing") {
  for (const char* blank : {"\n", "  \n", "\r\n"}) {
    std::string bytes = written(evening());
    bytes.insert(start_of_line(bytes, 3), blank);
    const File file = read_file("a.jsonl", bytes);
    CHECK(file.lines == evening());
    REQUIRE(file.damage.size() == 1);
    CHECK(file.damage[0].reason.what == words::SessionSay::line_blank);
    CHECK(file.damage[0].line == 3);
  }
}

TEST_CASE("a line behind the goodbye is named; it counts, and so do those behind it") {
  auto lines = evening();
  for (const std::uint64_t n : {7, 8}) {
    lines.push_back(lines[2]);
    lines.back().n = n;
    lines.back().t = lines[6].t;
  }
  const File file = read_file("a.jsonl", written(lines));
  CHECK(file.lines == lines);
  CHECK(file.damaged);
  REQUIRE(file.damage.size() == 2);
  CHECK(file.damage[0].reason.what == words::SessionSay::line_behind_left);
  CHECK(file.damage[0].line == 8);
  CHECK(file.damage[1].reason.what == words::SessionSay::file_not_ended);
}

TEST_CASE("a session's clock that goes back is named by how much; the line counts") {
  auto lines = evening();
  lines[3].t -= 12'500;
  const File file = read_file("a.jsonl", written(lines));
  CHECK(file.lines == lines);
  REQUIRE(file.damage.size() == 1);
  CHECK(file.damage[0].reason ==
        words::Error{words::SessionSay::line_back_in_time, {words::Number(2.5, 1)}});
  CHECK(file.damage[0].line == 4);
}

TEST_CASE("of a newer format nobody knows what it means by that") {
  auto lines = evening();
  std::get<Began>(lines[0].event).version = format_version + 1;
  lines[3].t = 0;
  const File file = read_file("a.jsonl", written(lines));
  CHECK(file.lines.size() == lines.size());
  CHECK(file.damage.size() == 1);
}

TEST_CASE("a batch without a name of its own is not believed") {
  CHECK(decode(R"({"n":1,"t":0,"at":0,"e":"closed","batch":"","p":"00000000","c":"00000000"})")
            .error() == words::Error{words::SessionSay::field_empty, {"batch", ""}});
  CHECK(decode(R"({"n":1,"t":0,"at":0,"e":"closed","p":"00000000","c":"00000000"})"));
}

}
