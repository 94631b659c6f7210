// Whose lines a file's are, where its beginning is damaged, late or another's; and lines that are
// as they were written and yet not what a line is.
#include "make.hpp"
#include "session/bytes.hpp"
#include "session/check_value.hpp"
#include "session/reader.hpp"
#include "words/session_says.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace whose_test {

using namespace session;

namespace {

// A file from lines and from bodies, sealed one after the other.
struct Written {
  std::string bytes;
  std::uint32_t before = 0;

  Written& line(const Line& line) {
    const auto encoded = encode(line, before);
    REQUIRE(encoded);
    bytes += encoded->bytes;
    before = encoded->check;
    return *this;
  }
  Written& body(const std::string& fields) {
    const std::string sealed = "{" + fields + R"(,"p":")" + to_hex(before) + "\"";
    before = crc32c(sealed, before);
    bytes += sealed + R"(,"c":")" + to_hex(before) + "\"}\n";
    return *this;
  }
  // The line before is spoilt: its check value no longer fits.
  Written& spoil() {
    const std::size_t start = bytes.rfind('\n', bytes.size() - 2) + 1;
    bytes[start + 3] ^= 1;
    return *this;
  }
};

Line began(const std::string& session = "c41e08d5") {
  make::Writer w(session);
  return w.log.lines[0];
}

Line felt(std::uint64_t n) { return {n, 5, 1795617120005, "7f3a91c2", Felt{}}; }

std::vector<words::Sentence> said(const File& file) {
  std::vector<words::Sentence> all;
  for (const Damage& d : file.damage) all.push_back(d.reason.what);
  return all;
}

bool says(const File& file, words::Sentence what) {
  const auto all = said(file);
  return std::find(all.begin(), all.end(), what) != all.end();
}

File read(const Written& w, const std::string& name = "x-c41e08d5.jsonl") {
  return read_file(name, w.bytes);
}

}

TEST_CASE("without a beginning the file's name says session and part, as far as it can") {
  const Written w = Written().line(began()).spoil().line(felt(7));
  struct Name {
    const char* file;
    const char* session;
    int part;
  };
  for (const Name& name : std::initializer_list<Name>{
           {"x-c41e08d5.jsonl", "c41e08d5", 0},
           {"x-c41e08d5.12.jsonl", "c41e08d5", 12},
           {"x-c41e08d5.999999.jsonl", "c41e08d5", 999999},
           {"x-c41e08d5.1000000.jsonl", "c41e08d5", 0}, // more digits than a part has
           {"x-c41e08d5.1a.jsonl", "c41e08d5", 0},
           {"x-c41e08d5..jsonl", "c41e08d5", 0},
           {"x-c41e08d5", "", 0},
           {"x.c41e08d5", "", 0},
           {"c41e08d5.jsonl", "", 0},
           {"", "", 0}}) {
    CAPTURE(name.file);
    const File read = read_file(name.file, w.bytes);
    CHECK(read.session == name.session);
    CHECK(read.part == name.part);
    CHECK(read.from == (name.part > 0 ? 7 : 0));
    CHECK(read.lines == std::vector<Line>{felt(7)});
    CHECK(join_parts({read}).size() == (read.session.empty() ? 0 : 1));
  }
}

TEST_CASE("a part of which no line can be believed takes nothing over") {
  const File file = read(Written().line(began()).spoil(), "x-c41e08d5.3.jsonl");
  CHECK(file.part == 3);
  CHECK(file.from == 0);
  const File first = read(Written().line(began()).line(felt(1)));
  CHECK(join_parts({first, file})[0].lines == first.lines);
}

TEST_CASE("a beginning after other lines is the file's own if the name bears it out") {
  const Written w = Written().line(felt(1)).line(began()).line(felt(2));
  const File own = read(w);
  CHECK(own.session == "c41e08d5");
  CHECK(own.lines == std::vector<Line>{began(), felt(1), felt(2)});
  CHECK_FALSE(says(own, words::SessionSay::file_of_two_sessions));
  const File other = read(w, "x-77aa77aa.jsonl");
  CHECK(says(other, words::SessionSay::file_of_two_sessions));
  CHECK(other.session == "77aa77aa");
  CHECK(other.lines == std::vector<Line>{felt(1)});
}

TEST_CASE("of two beginnings the file's own is the one that its name bears out, or the first") {
  const File again = read(Written().line(began()).line(began()).line(felt(1)));
  CHECK(again.lines == std::vector<Line>{began(), felt(1)});
  CHECK_FALSE(says(again, words::SessionSay::file_of_two_sessions));
  const Written two = Written().line(began("77aa77aa")).line(began()).line(felt(1));
  const File other = read(two);
  CHECK(says(other, words::SessionSay::file_of_two_sessions));
  CHECK(other.session == "c41e08d5");
  CHECK(other.lines == std::vector<Line>{began(), felt(1)});
  const File unnamed = read(two, "notes");
  CHECK(says(unnamed, words::SessionSay::file_of_two_sessions));
  CHECK(unnamed.session == "77aa77aa");
  CHECK(unnamed.lines == std::vector<Line>{began("77aa77aa")});
}

TEST_CASE(
    "two mended files that tell one gap differently contradict each other, alike they do not") {
  const auto mended = [](std::uint64_t to, const std::string& why) {
    return read(
        Written().line(began()).line({1, 5, 1795617120005, "", Gone{to, why}}).line(felt(9)));
  };
  CHECK(join_parts({mended(8, "torn"), mended(8, "torn")})[0].contradicted.empty());
  for (const File& other : {mended(7, "torn"), mended(8, "check value")}) {
    const auto logs = join_parts({mended(8, "torn"), other});
    CHECK(logs[0].contradicted == std::vector<std::uint64_t>{1});
    CHECK(std::get<Gone>(logs[0].lines[1].event).to == 8);
  }
}

TEST_CASE("a line that is as it was written and yet no line costs itself alone") {
  for (const auto& [body, what] : std::initializer_list<std::pair<const char*, words::Sentence>>{
           {R"("n":1,"t":-1,"at":2,"e":"closed")", words::SessionSay::field_out_of_range},
           {R"("n":1,"t":1,"at":2,"e":"felt","as":"right")", words::SessionSay::field_missing},
           {R"("n":1,"t":1,"at":2)", words::SessionSay::field_missing},
           {R"("n":1,"t":1,"at":2,"e":"closed","n":1)", words::SessionSay::field_twice},
           {R"("n":1,"t":null,"at":2,"e":"closed")", words::SessionSay::field_not_whole}}) {
    const File file = read(Written().line(began()).body(body).line(felt(2)));
    CHECK(says(file, what));
    CHECK_FALSE(says(file, words::SessionSay::line_not_joined));
    CHECK(file.lines == std::vector<Line>{began(), felt(2)});
  }
}

TEST_CASE("in a newer format what is not understood is unknown, what is no line is damage") {
  Line newer = began();
  std::get<Began>(newer.event).version = format_version + 1;
  const File file = read(Written()
                             .line(newer)
                             .body(R"("n":1,"t":1,"at":2,"e":"felt","as":7)")
                             .body(R"("n":2,"t":1,"at":2,"e":"felt","as":"right","by":"knife")")
                             .body(R"("n":3,"t":1,"at":2,"e":4)")
                             .body(R"("n":4,"t":1,"at":2,"e":"closed","n":4)"));
  REQUIRE(file.lines.size() == 3);
  CHECK(std::get<Unknown>(file.lines[1].event).e == "felt");
  CHECK(file.lines[2].event == Event(Felt{Feel::right, By::knife}));
  CHECK(says(file, words::SessionSay::field_not_text));
  CHECK(says(file, words::SessionSay::field_twice));
}

TEST_CASE("what a JSON text may be besides an object, and what may stand in one") {
  using Say = words::SessionSay;
  for (const char* text :
       {"5", "-5", "1.5", "\"a\"", "true", "null", "[]", "[{}]", "{} {}", "{},", "{\"a\":}",
        "{\"a\"", "\xEF\xBB\xBF{", "{\"a\":\"\xC3\"}", "{\"a\":1e999}"}) {
    CAPTURE(text);
    CHECK(decode(text).error().what == Say::line_not_an_object);
  }
  // Eight deep, the line itself among them.
  const auto nested = [](std::size_t deep) {
    return decode(R"({"n":1,"t":1,"at":2,"e":"new","x":)" + std::string(deep - 1, '[') + "null" +
                  std::string(deep - 1, ']') + "}");
  };
  REQUIRE(nested(8));
  CHECK(std::get<Unknown>(nested(8)->event).json == R"({"x":[[[[[[[null]]]]]]]})");
  CHECK(nested(9).error().what == Say::line_too_deep);
}

}
