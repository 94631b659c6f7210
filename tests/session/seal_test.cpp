// Whose a line is, by its seal: no line of another session is believed, and nothing else is lost
// for it. What stands at a file's end is a torn line, or it is damage.
#include "make.hpp"
#include "session/bytes.hpp"
#include "session/reader.hpp"
#include "session/torn.hpp"
#include "words/session_says.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

namespace seal_test {

using namespace session;

namespace {

struct Written {
  std::vector<Line> lines;
  std::vector<std::string> pieces; // one for each line, with its LF
  std::string name;

  std::string bytes() const { return together(pieces); }
  static std::string together(const std::vector<std::string>& pieces) {
    std::string all;
    for (const std::string& piece : pieces) all += piece;
    return all;
  }
  File read(const std::string& bytes) const { return read_file(name, bytes); }
};

// began, nine notes, left; another hour is another clock.
Written evening(int version, const std::string& session = "c41e08d55a10", int hour = 0) {
  make::Writer w(session);
  w.at0 += hour * 3'600'000;
  w.log.lines[0].at = w.at0;
  std::get<Began>(w.log.lines[0].event).version = version;
  for (int i = 0; i < 9; ++i) {
    w.wait(10);
    w.put("7f3a91c2", Felt{i % 2 == 0 ? Feel::right : Feel::too_sticky, By::knife});
  }
  w.put("", Left{});
  Written out{w.log.lines, {}, "2026-11-25T143200Z-a83f-" + session + ".jsonl"};
  const std::uint32_t seed = seed_of(std::get<Began>(out.lines[0].event));
  std::uint32_t before = 0;
  for (const Line& line : out.lines) {
    const auto encoded = encode(line, before, seed);
    REQUIRE(encoded);
    out.pieces.push_back(encoded->bytes);
    before = encoded->check;
  }
  return out;
}

bool named(const File& file, words::Sentence what) {
  return std::any_of(file.damage.begin(), file.damage.end(),
                     [&](const Damage& d) { return d.reason.what == what && !d.ordinary; });
}

bool only_ordinary(const File& file) {
  return std::all_of(file.damage.begin(), file.damage.end(),
                     [](const Damage& d) { return d.ordinary; });
}

bool are_among(const std::vector<Line>& lines, const std::vector<Line>& all) {
  return std::all_of(lines.begin(), lines.end(), [&](const Line& line) {
    return std::find(all.begin(), all.end(), line) != all.end();
  });
}

}

TEST_CASE("lines of another session in the place of some are not believed, and those are missed") {
  for (const int version : {1, 2}) {
    const Written ours = evening(version), theirs = evening(version, "77aa77aa77aa", 5);
    for (std::size_t from = 1; from < 8; ++from)
      for (std::size_t to = from + 1; to < 11; ++to) {
        CAPTURE(version);
        CAPTURE(from);
        CAPTURE(to);
        auto pieces = ours.pieces;
        std::copy(theirs.pieces.begin() + static_cast<long>(from),
                  theirs.pieces.begin() + static_cast<long>(to),
                  pieces.begin() + static_cast<long>(from));
        const File file = ours.read(Written::together(pieces));
        CHECK(file.damaged);
        CHECK(file.lines.size() == ours.lines.size() - (to - from));
        CHECK(are_among(file.lines, ours.lines));
        const auto logs = join_parts({file});
        REQUIRE(logs.size() == 1);
        CHECK(logs[0].damaged);
        CHECK((to == 11 || logs[0].missing == std::vector<Span>{{from, to - 1}}));
      }
  }
}

TEST_CASE("another's beginning, alone or with its lines, costs none of the file's own") {
  for (const int version : {1, 2})
    for (const std::size_t with : {1u, 4u, 11u})
      for (std::size_t at = 0; at <= 11; ++at) {
        CAPTURE(version);
        CAPTURE(at);
        const Written ours = evening(version), theirs = evening(version, "77aa77aa77aa", 5);
        auto pieces = ours.pieces;
        pieces.insert(pieces.begin() + static_cast<long>(at), theirs.pieces.begin(),
                      theirs.pieces.begin() + static_cast<long>(with));
        const File file = ours.read(Written::together(pieces));
        CHECK(named(file, words::SessionSay::file_of_two_sessions));
        CHECK(file.session == "c41e08d55a10");
        CHECK(file.lines == ours.lines);
      }
}

TEST_CASE("a file that is all another's, under a writer's name, says nothing of either") {
  for (const int version : {1, 2}) {
    const Written ours = evening(version), theirs = evening(version, "77aa77aa77aa", 5);
    const File file = ours.read(theirs.bytes());
    CHECK(file.damaged);
    CHECK(file.session == "c41e08d55a10");
    CHECK(file.lines.empty());
    CHECK(read_file("notes.jsonl", theirs.bytes()).lines == theirs.lines); // a name by hand
  }
}

TEST_CASE("the same lines sealed for another part are not this one's") {
  const Written whole = evening(2);
  Written part = whole;
  part.name = "2026-11-25T143200Z-a83f-c41e08d55a10.1.jsonl";
  std::string bytes = whole.bytes();
  bytes[10] ^= 1; // its beginning is damaged: the name says which part it is
  CHECK(whole.read(bytes).lines.size() == whole.lines.size() - 1);
  CHECK(part.read(bytes).lines.empty());
}

TEST_CASE("of version 1, lines behind a gap are believed for their clock") {
  const Written ours = evening(1);
  auto pieces = ours.pieces;
  pieces.erase(pieces.begin() + 4);
  const File file = ours.read(Written::together(pieces));
  CHECK(file.lines.size() == ours.lines.size() - 1);
  CHECK_FALSE(named(file, words::SessionSay::line_of_another));
}

TEST_CASE("pages doubled, put together and in any order tell every line, and are said") {
  const Written ours = evening(2);
  auto pieces = ours.pieces;
  std::reverse(pieces.begin(), pieces.end());
  auto doubled = ours.pieces;
  doubled.insert(doubled.begin() + 6, ours.pieces.begin() + 2, ours.pieces.begin() + 8);
  for (const std::string& bytes :
       {Written::together(pieces), Written::together(doubled), ours.bytes() + ours.bytes()}) {
    const File file = ours.read(bytes);
    CHECK(file.damaged);
    CHECK(file.lines == ours.lines);
  }
}

TEST_CASE("zeros, noise and bytes of elsewhere at the end are damage") {
  const Written ours = evening(2);
  const std::string open = ours.bytes().substr(0, ours.bytes().rfind("{\"n\":10"));
  std::mt19937 random(1);
  for (const std::string& begun : {open, ours.bytes()}) {
    const std::size_t lines =
        static_cast<std::size_t>(std::count(begun.begin(), begun.end(), '\n'));
    std::string noise(4096, ' ');
    for (char& c : noise) c = static_cast<char>(random() % 256);
    std::replace(noise.begin(), noise.end(), '\n', ' ');
    for (const std::string& end :
         {std::string(1, '\0'), std::string(4096, '\0'), noise, std::string("\"g\":2"),
          ours.pieces[3].substr(0, 40), R"({"n":12,"t":5})" + std::string("x")}) {
      const File file = ours.read(begun + end);
      CHECK(named(file, words::SessionSay::line_no_beginning));
      CHECK(file.damage.back().line == lines + 1);
      CHECK(file.lines.size() == lines);
    }
  }
}

TEST_CASE("the last page of a closed evening zeroed is damage, wherever it begins") {
  const Written ours = evening(2);
  const std::string whole = ours.bytes();
  for (std::size_t from = 0; from < whole.size(); ++from) {
    std::string bytes = whole;
    std::fill(bytes.begin() + static_cast<long>(from), bytes.end(), '\0');
    const File file = ours.read(bytes);
    CHECK_MESSAGE(!only_ordinary(file), from);
    CHECK(are_among(file.lines, ours.lines));
  }
}

TEST_CASE("what is torn is the beginning of one line, and nothing stands behind `left`") {
  const Written ours = evening(2);
  std::string open = Written::together({ours.pieces.begin(), ours.pieces.end() - 1});
  const std::string next = ours.pieces.back();
  for (std::size_t cut = 1; cut < next.size(); ++cut) {
    CHECK_MESSAGE(only_ordinary(ours.read(open + next.substr(0, cut))), cut);
    CHECK_FALSE(only_ordinary(ours.read(ours.bytes() + next.substr(0, cut))));
  }
}

TEST_CASE("the first line of a later part, torn, is ordinary too") {
  const Written whole = evening(2);
  Line first = whole.lines[0];
  auto& began = std::get<Began>(first.event);
  began.part = 1;
  began.from = 4;
  first.n = 4;
  const auto head = encode(first, 0, seed_of(began));
  REQUIRE(head);
  const auto next = encode(whole.lines[4], head->check, seed_of(began));
  REQUIRE(next);
  for (std::size_t cut = 1; cut < next->bytes.size(); ++cut)
    CHECK_MESSAGE(only_ordinary(whole.read(head->bytes + next->bytes.substr(0, cut))), cut);
}

TEST_CASE("the beginning of a line is of the grammar, in UTF-8, and numbered on") {
  const auto after = [](std::uint64_t n) { return std::optional<std::uint64_t>(n); };
  const std::string line =
      R"({"n":12,"t":5,"at":-7,"e":"opened","name":"caf\u00e9 \"é🎨","x":[1.5e-3,true,null],"p":"0")";
  for (std::size_t cut = 0; cut <= line.size(); ++cut)
    CHECK_MESSAGE(is_torn_line(line.substr(0, cut), after(11)), cut);
  CHECK_FALSE(is_torn_line(line, after(12)));
  CHECK(is_torn_line(R"({"n":1)", after(11))); // 12 perhaps
  CHECK(is_torn_line(line, std::nullopt));
  for (const char* other :
       {"x", "{\"m\"", "{\"n\":x", "{\"n\":,", "{\"n\":99999999999999999", "{\"n\":12;",
        "{\"n\":12,\"t\":5,\"a\tt", "{\"n\":12,\"t\":5}}", "{\"n\":12,\"t\":5} ",
        "{\"n\":12,\"t\":<", "{\"n\":12,\"t\":5,\"a\":\"\xff", "{\"n\":12,\"t\":5,\"a\":\"\xc3(",
        "{\"n\":12,\"t\":5,\"a\":\"\xed\xa0", "{\"n\":12,\"t\":[[[[[[[[[["})
    CHECK_FALSE_MESSAGE(is_torn_line(other, after(11)), other);
  CHECK_FALSE(is_torn_line(R"({"n":12,"t":5,"a":")" + std::string(longest_line, 'a'), after(11)));
}

}
