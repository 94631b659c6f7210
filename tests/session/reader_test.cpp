#include "evening.hpp"
#include "session/bytes.hpp"
#include "session/reader.hpp"
#include "words/session_says.hpp"

#include <doctest/doctest.h>

namespace reader_test {

using namespace session;
using make::evening, make::start_of_line, make::written;

TEST_CASE("a whole file reads without a word") {
  const File file = read_file("a.jsonl", written(evening()));
  CHECK(file.damage.empty());
  CHECK(file.ended);
  CHECK(file.session == "c41e08d5");
  CHECK(file.lines == evening());
}

TEST_CASE("a torn last line and a missing end are ordinary") {
  std::string bytes = written(evening());
  bytes.resize(bytes.size() - 5);
  const File file = read_file("a.jsonl", bytes);
  CHECK(file.lines.size() == evening().size() - 1);
  REQUIRE(file.damage.size() == 2);
  CHECK(file.damage[0].reason.what == words::SessionSay::line_torn);
  CHECK(file.damage[1].reason.what == words::SessionSay::file_not_ended);
  for (const Damage& d : file.damage) CHECK(d.ordinary);
}

TEST_CASE("one changed letter costs its line alone and is named") {
  std::string bytes = written(evening());
  const std::size_t third = start_of_line(bytes, 3);
  bytes[bytes.find("wont_move", third)] = 'W';
  const File file = read_file("a.jsonl", bytes);
  REQUIRE(file.damage.size() == 1);
  CHECK(file.damage[0].line == 3);
  CHECK(file.damage[0].byte == third);
  CHECK(file.damage[0].reason.what == words::SessionSay::line_check_wrong);
  CHECK(file.lines.size() == evening().size() - 1);
}

TEST_CASE("a changed check value costs its line alone") {
  std::string bytes = written(evening());
  const std::size_t fourth = start_of_line(bytes, 4);
  char& digit = bytes[fourth - 4]; // within line 3's check value
  digit = digit == '0' ? '1' : '0';
  const File file = read_file("a.jsonl", bytes);
  REQUIRE(file.damage.size() == 1);
  CHECK(file.damage[0].line == 3);
}

TEST_CASE("a check value that cannot be read costs its line alone") {
  std::string bytes = written(evening());
  const std::size_t fourth = start_of_line(bytes, 4);
  // a digit and the name of c, a digit and the name of p, the comma before it
  for (const std::size_t back : {4, 11, 19, 27, 30}) {
    std::string hit = bytes;
    hit[fourth - back] = '~';
    const File file = read_file("a.jsonl", hit);
    REQUIRE(file.damage.size() == 1);
    CHECK(file.damage[0].line == 3);
    CHECK(file.lines.size() == evening().size() - 1);
  }
}

namespace {

// The file's lines, each with its newline.
std::vector<std::string> pieces(const std::string& bytes) {
  std::vector<std::string> out;
  for (std::size_t at = 0; at < bytes.size();) {
    const std::size_t end = bytes.find('\n', at) + 1;
    out.push_back(bytes.substr(at, end - at));
    at = end;
  }
  return out;
}

std::string together(const std::vector<std::string>& lines) {
  std::string bytes;
  for (const std::string& line : lines) bytes += line;
  return bytes;
}

bool named(const File& file, words::Sentence what) {
  return std::any_of(file.damage.begin(), file.damage.end(),
                     [&](const Damage& d) { return d.reason.what == what && !d.ordinary; });
}

}

TEST_CASE("a line that was dropped costs no other line, and is missed") {
  const auto whole = pieces(written(evening()));
  for (std::size_t k = 1; k + 1 < whole.size(); ++k) {
    auto lines = whole;
    lines.erase(lines.begin() + static_cast<long>(k));
    const File file = read_file("a.jsonl", together(lines));
    CHECK(named(file, words::SessionSay::line_not_joined));
    CHECK(file.lines.size() == whole.size() - 1);
    const auto logs = join_parts({file});
    CHECK(logs[0].damaged);
    CHECK(logs[0].missing == std::vector<Span>{{k, k}});
  }
}

TEST_CASE("lines doubled or swapped cost nothing, and are said") {
  const auto whole = pieces(written(evening()));
  for (std::size_t k = 0; k + 1 < whole.size(); ++k) {
    auto doubled = whole, swapped = whole;
    doubled.insert(doubled.begin() + static_cast<long>(k), whole[k]);
    std::swap(swapped[k], swapped[k + 1]);
    for (const auto& lines : {doubled, swapped}) {
      const File file = read_file("2026-11-25T143200Z-a83f-c41e08d5.jsonl", together(lines));
      CHECK(named(file, lines == doubled ? words::SessionSay::line_doubled
                                         : words::SessionSay::line_moved));
      if (lines == doubled) {
        REQUIRE(file.damage.size() == 1);
        CHECK(file.damage[0].line == k + 2);
        CHECK(file.damage[0].reason.args == words::Args{std::to_string(k + 1)});
      }
      const auto logs = join_parts({file});
      REQUIRE(logs.size() == 1);
      CHECK(logs[0].lines == evening());
      CHECK(logs[0].missing.empty());
    }
  }
}

TEST_CASE("a line that was moved names the one that it follows from") {
  auto lines = pieces(written(evening()));
  std::swap(lines[2], lines[3]);
  const File file = read_file("a.jsonl", together(lines));
  REQUIRE(file.damage.size() == 3); // the two, and the one behind them
  const char* follows[] = {"4", "2", "3"};
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(file.damage[i].line == i + 3);
    CHECK(file.damage[i].reason.what == words::SessionSay::line_moved);
    CHECK(file.damage[i].reason.args == words::Args{follows[i]});
  }
}

TEST_CASE("a byte order mark costs no line, and is said") {
  for (const char* end : {"\n", "\r\n"}) {
    std::string bytes = "\xEF\xBB\xBF";
    for (const std::string& line : pieces(written(evening())))
      bytes += line.substr(0, line.size() - 1) + end;
    const File file = read_file("a.jsonl", bytes);
    CHECK(file.lines == evening());
    REQUIRE_FALSE(file.damage.empty());
    CHECK(file.damage[0].line == 1);
    CHECK(file.damage[0].byte == 0);
    CHECK(file.damage[0].reason.what == words::SessionSay::file_has_bom);
    CHECK(file.damaged);
  }
}

TEST_CASE("a file with not even its first line is ordinary, and is said to be empty") {
  const File file = read_file("2026-11-25T143200Z-a83f-c41e08d5.jsonl", "");
  REQUIRE(file.damage.size() == 2);
  CHECK(file.damage[1].reason.what == words::SessionSay::file_empty);
  for (const Damage& d : file.damage) CHECK(d.ordinary);
  CHECK_FALSE(file.damaged);
}

TEST_CASE("a line that tells another story under a number that is taken is not believed") {
  auto lines = evening();
  lines.insert(lines.begin() + 3, lines[2]);
  lines[3].event = Felt{Feel::too_runny, By::muller};
  const File file = read_file("a.jsonl", written(lines));
  CHECK(named(file, words::SessionSay::line_number_twice));
  CHECK(file.lines == evening());
}

TEST_CASE("another session inside the file is not taken for the first") {
  make::Writer other("77aa77aa");
  other.put("7f3a91c2", Felt{Feel::right, By::knife});
  const std::string bytes = written(evening()) + written(other.log.lines);
  const File file = read_file("a.jsonl", bytes);
  CHECK(named(file, words::SessionSay::file_of_two_sessions));
  CHECK(file.session == "c41e08d5");
  CHECK(file.lines == evening());
}

TEST_CASE("the same beginning under another number is no copy of it") {
  std::vector<Line> lines = evening();
  Line again = lines.front();
  again.n = lines.back().n + 1;
  lines.push_back(again);
  const File file = read_file("a.jsonl", written(lines));
  CHECK(named(file, words::SessionSay::file_of_two_sessions));
  CHECK(file.lines == evening());
}

TEST_CASE("a session whose first file is nowhere misses its lines") {
  const auto lines = evening();
  Began again = std::get<Began>(lines[0].event);
  again.part = 1;
  again.from = 3;
  std::vector<Line> second{{3, lines[3].t, lines[3].at, "", again}};
  second.insert(second.end(), lines.begin() + 3, lines.end());
  const auto logs = join_parts({read_file("x.1.jsonl", written(second))});
  REQUIRE(logs.size() == 1);
  CHECK(logs[0].damaged);
  CHECK(logs[0].missing == std::vector<Span>{{0, 2}});
}

TEST_CASE(
    "a line inside a gap that a mended file knows does not make the rest of the gap missing") {
  auto lines = evening();
  std::vector<Line> mended{
      lines[0], {1, lines[1].t, lines[1].at, "", Gone{4, "torn"}}, lines[2], lines[5], lines[6]};
  const auto logs = join_parts({read_file("m.jsonl", written(mended))});
  CHECK(logs[0].missing.empty());
}

TEST_CASE("a part that takes over the whole session begins it") {
  auto lines = evening();
  std::get<Began>(lines[0].event).part = 1;
  const auto logs = join_parts({read_file("x.1.jsonl", written(lines))});
  REQUIRE(logs.size() == 1);
  CHECK(logs[0].lines == lines);
  CHECK_FALSE(logs[0].damaged);
}

TEST_CASE("two files that tell one line differently are said to") {
  auto lines = evening();
  const File a = read_file("a.jsonl", written(lines));
  lines[3].event = Felt{Feel::too_runny, By::muller};
  const File b = read_file("b.jsonl", written(lines));
  const auto logs = join_parts({a, b});
  REQUIRE(logs.size() == 1);
  CHECK(logs[0].contradicted == std::vector<std::uint64_t>{3});
  CHECK(logs[0].damaged);
  CHECK(logs[0].lines.size() == lines.size());
}

TEST_CASE("in a mended file what is gone is known, and gives way to the line itself") {
  const auto lines = evening();
  auto mended = lines;
  mended.erase(mended.begin() + 4);
  mended[3] = {3, lines[3].t, lines[3].at, "", Gone{4, "check value"}};
  const File m = read_file("m.jsonl", written(mended));
  CHECK(m.damage.empty());
  const auto alone = join_parts({m});
  CHECK(alone[0].missing.empty());
  CHECK(alone[0].damaged); // a batch of it is still not whole
  const File whole = read_file("w.jsonl", written(lines));
  for (const auto& files : {std::vector{m, whole}, std::vector{whole, m}}) {
    const auto both = join_parts(files);
    CHECK(both[0].lines == lines);
    CHECK_FALSE(both[0].damaged);
  }
}

TEST_CASE("a bit flipped at any byte never adds a line and never goes unsaid") {
  const std::string bytes = written(evening());
  for (std::size_t i = 0; i < bytes.size(); ++i)
    for (const int bit : {0, 3, 6}) {
      std::string hit = bytes;
      hit[i] = static_cast<char>(hit[i] ^ (1 << bit));
      const File file = read_file("a.jsonl", hit);
      CHECK_MESSAGE(!file.damage.empty(), i);
      CHECK(file.lines.size() + 2 >= evening().size()); // a lost newline joins two lines
      for (const Line& line : file.lines) {
        const auto whole = evening();
        CHECK(std::find(whole.begin(), whole.end(), line) != whole.end());
      }
    }
}

TEST_CASE("a file cut at any byte keeps every line before the cut") {
  const std::string bytes = written(evening());
  for (std::size_t cut = 0; cut < bytes.size(); ++cut) {
    const File file = read_file("a.jsonl", std::string_view(bytes).substr(0, cut));
    const auto whole = std::count(bytes.begin(), bytes.begin() + static_cast<long>(cut), '\n');
    CHECK(file.lines.size() == static_cast<std::size_t>(whole));
    CHECK_FALSE(file.damage.empty());
  }
}

TEST_CASE("a newer format is said and kept out of sums") {
  auto lines = evening();
  std::get<Began>(lines[0].event).version = format_version + 1;
  const File file = read_file("a.jsonl", written(lines));
  CHECK(file.future);
  CHECK(file.lines.size() == lines.size());
  CHECK(file.damage[0].reason.what == words::SessionSay::file_of_future_version);
  const auto logs = join_parts({file});
  REQUIRE(logs.size() == 1);
  CHECK(logs[0].future);
}

TEST_CASE("a later part takes the place of the earlier one from its first line on") {
  const auto lines = evening();
  const std::vector<Line> first(lines.begin(), lines.begin() + 5); // n 0 to 4
  Began again = std::get<Began>(lines[0].event);
  again.part = 1;
  again.from = 3;
  std::vector<Line> second{{3, lines[3].t, lines[3].at, "", again}};
  second.insert(second.end(), lines.begin() + 3, lines.end());
  const File a = read_file("x.jsonl", written(first));
  const File b = read_file("x.1.jsonl", written(second));
  CHECK(b.damage.empty());
  for (const auto& files : {std::vector{a, b}, std::vector{b, a}}) {
    const auto logs = join_parts(files);
    REQUIRE(logs.size() == 1);
    CHECK(logs[0].lines == lines);
  }
}

TEST_CASE("bytes that are no session file are said to be none") {
  for (const std::string bytes : {"", "\n", "hello\n", "{}\n", "\xFF\xFE\n"}) {
    const File file = read_file("a.jsonl", bytes);
    CHECK(file.lines.empty());
    CHECK_FALSE(file.damage.empty());
  }
}

TEST_CASE("a copy of a file, whole or cut short, counts nothing twice") {
  const auto lines = evening();
  const std::string bytes = written(lines);
  const File whole = read_file("2026-11-25T143200Z-a83f-c41e08d5.jsonl", bytes);
  const File cut = read_file("2026-11-25T143200Z-a83f-c41e08d5 (copy).jsonl",
                             std::string_view(bytes).substr(0, bytes.size() / 2));
  for (const auto& files : {std::vector{whole, cut}, std::vector{cut, whole}}) {
    const auto logs = join_parts(files);
    REQUIRE(logs.size() == 1);
    CHECK(logs[0].lines == lines);
  }
}

TEST_CASE("a damaged first line costs that line alone: the name says whose file it is") {
  std::string bytes = written(evening());
  bytes[10] ^= 1;
  for (const char* name :
       {"2026-11-25T143200Z-a83f-c41e08d5.jsonl", "2026-11-25T143200Z-a83f-c41e08d5.2.jsonl"}) {
    const auto logs = join_parts({read_file(name, bytes)});
    REQUIRE(logs.size() == 1);
    CHECK(logs[0].session == "c41e08d5");
    CHECK(logs[0].lines.size() == evening().size() - 1);
  }
}

TEST_CASE("a batch with a damaged file is marked, one whose file was only cut is not") {
  make::Writer w;
  w.put("7f3a91c2", Opened{"Blue"});
  w.put("7f3a91c2", Felt{Feel::right, By::knife});
  w.put("7f3a91c2", Felt{Feel::right, By::knife});
  const std::string bytes = written(w.log.lines);
  std::string hit = bytes;
  hit[start_of_line(bytes, 3) + 8] ^= 1;
  CHECK(make::folded(join_parts({read_file("a.jsonl", hit)}), "7f3a91c2").damaged);
  const std::string cut = bytes.substr(0, bytes.size() - 9);
  CHECK_FALSE(make::folded(join_parts({read_file("a.jsonl", cut)}), "7f3a91c2").damaged);
}

TEST_CASE("a file that was only being created is ordinary") {
  for (const char* bytes : {"", "{\"n\":0,"}) {
    const File file = read_file("a.jsonl", bytes);
    CHECK_FALSE(file.damage.empty());
    for (const Damage& d : file.damage) CHECK(d.ordinary);
  }
}

}
