// Mending: every line that can be believed is there afterwards, nothing invented, and what is gone
// is said.
#include "disk/faulty.hpp"
#include "disk/rig.hpp"
#include "session/bytes.hpp"
#include "session/check_value.hpp"
#include "session/reader.hpp"
#include "studio/mend.hpp"
#include "words/studio_says.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace mend_test {

namespace {

using session::Line;
using studio::SessionFile;
using Say = words::StudioSay;

constexpr const char* part_0 = "2026-11-25T143200Z-a83f-c41e08d5.jsonl";
constexpr const char* part_1 = "2026-11-25T143200Z-a83f-c41e08d5.1.jsonl";

Line began(int part = 0, std::uint64_t from = 0) {
  session::Began b;
  b.session = "c41e08d5";
  b.device = "a83f";
  b.part = part;
  b.from = from;
  b.local = "2026-11-25T15:32:00+01:00";
  const auto t = static_cast<std::int64_t>(from);
  return {from, t, 1795617120000 + t, "", b};
}

Line felt(std::uint64_t n) {
  const auto t = static_cast<std::int64_t>(n);
  return {n, t, 1795617120000 + t, "7f3a91c2", session::Felt{}};
}

Line left(std::uint64_t n) {
  Line line = felt(n);
  line.batch = "";
  line.event = session::Left{};
  return line;
}

std::string bytes_of(const std::vector<Line>& lines) {
  std::string bytes;
  std::uint32_t before = 0;
  for (const Line& line : lines) {
    const auto encoded = session::encode(line, before);
    REQUIRE(encoded);
    bytes += encoded->bytes;
    before = encoded->check;
  }
  return bytes;
}

const std::vector<Line> evening{began(), felt(1), felt(2), felt(3), felt(4), left(5)};

// One bit of the n-th line (from 0) turned.
std::string spoilt(std::string bytes, int line) {
  std::size_t at = 0;
  while (line-- > 0) at = bytes.find('\n', at) + 1;
  bytes[at + 20] = static_cast<char>(bytes[at + 20] ^ 4);
  return bytes;
}

std::vector<session::Log> logs_of(const std::vector<SessionFile>& sessions) {
  std::vector<session::File> files;
  for (const SessionFile& s : sessions) files.push_back(session::read_file(s.name, s.bytes));
  return session::join_parts(std::move(files));
}

// What every mending must keep: all lines that were read before, no line but those and what tells
// of gone ones, and no damage.
studio::MendReport mended(std::vector<SessionFile>& sessions) {
  const auto before = logs_of(sessions);
  const studio::MendReport report = studio::mend_sessions(sessions);
  for (const SessionFile& s : sessions)
    for (const session::Damage& d : session::read_file(s.name, s.bytes).damage) {
      CAPTURE(words::message(d.reason));
      CHECK(d.ordinary);
    }
  const auto after = logs_of(sessions);
  REQUIRE(before.size() == after.size());
  for (std::size_t i = 0; i < before.size(); ++i) {
    CHECK(after[i].missing.empty());
    CHECK(after[i].contradicted.empty());
    CHECK(after[i].device == before[i].device);
    std::vector<Line> kept;
    for (const Line& line : after[i].lines)
      if (!std::holds_alternative<session::Gone>(line.event)) kept.push_back(line);
    const bool made = before[i].device.empty(); // a beginning that was not there
    if (made) kept.erase(kept.begin());
    CHECK(kept == before[i].lines);
  }
  return report;
}

std::vector<session::Span> gone_in(const std::string& bytes) {
  std::vector<session::Span> spans;
  for (const Line& line : session::read_file(part_0, bytes).lines)
    if (const auto* gone = std::get_if<session::Gone>(&line.event))
      spans.push_back({line.n, gone->to});
  return spans;
}

using Spans = std::vector<session::Span>;

}

TEST_CASE("a whole file, a torn one and one without a goodbye stay as they are") {
  const std::string whole = bytes_of(evening);
  for (const std::string& bytes :
       {whole, whole.substr(0, whole.size() - 7), bytes_of({began(), felt(1)}), std::string()}) {
    std::vector<SessionFile> sessions{{part_0, bytes}};
    const auto report = mended(sessions);
    CHECK(sessions[0].bytes == bytes);
    CHECK(report.lost.empty());
    CHECK(report.files == std::vector<words::Error>{{Say::mend_whole, {part_0}}});
  }
}

TEST_CASE("lines that no file holds are told by one line for each run") {
  std::vector<SessionFile> sessions{{part_0, spoilt(spoilt(spoilt(bytes_of(evening), 1), 2), 4)}};
  const auto report = mended(sessions);
  CHECK(gone_in(sessions[0].bytes) == Spans{{1, 2}, {4, 4}});
  CHECK(report.files == std::vector<words::Error>{{Say::mend_anew, {part_0, "5"}}});
  CHECK(report.lost == std::vector<words::Error>{{Say::session_misses, {"c41e08d5", "1", "2"}},
                                                 {Say::session_misses_one, {"c41e08d5", "4"}}});
}

TEST_CASE("damage at a file's end is told, behind its last line") {
  std::vector<SessionFile> sessions{{part_0, spoilt(spoilt(bytes_of(evening), 4), 5)}};
  const auto report = mended(sessions);
  CHECK(gone_in(sessions[0].bytes) == Spans{{4, 5}});
  CHECK(report.lost == std::vector<words::Error>{{Say::mend_lost_end, {part_0, "2"}}});
}

TEST_CASE("a line lost here is had back from a copy elsewhere") {
  const std::string whole = bytes_of(evening);
  std::vector<SessionFile> sessions{{part_0, spoilt(whole, 3)},
                                    {"copy-a83f-c41e08d5.jsonl", whole}};
  const auto report = mended(sessions);
  CHECK(report.lost.empty());
  CHECK(sessions[1].bytes == whole);
  CHECK(gone_in(sessions[0].bytes).empty());
}

TEST_CASE("a lost beginning is made from the file's name") {
  std::vector<SessionFile> sessions{{part_0, spoilt(bytes_of(evening), 0)}};
  const auto before = logs_of(sessions)[0].lines;
  const auto report = studio::mend_sessions(sessions);
  CHECK(report.lost == std::vector<words::Error>{{Say::mend_lost_beginning, {part_0}}});
  const auto file = session::read_file(part_0, sessions[0].bytes);
  CHECK(file.damage.empty());
  CHECK(file.session == "c41e08d5");
  CHECK(file.device == "a83f");
  CHECK(file.lines.front().at == began().at);
  CHECK(std::vector<Line>(file.lines.begin() + 1, file.lines.end()) == before);
}

TEST_CASE("a later part keeps what it took over, whichever part is damaged") {
  const std::string first = bytes_of({began(), felt(1), felt(2), felt(3)});
  const std::string second = bytes_of({began(1, 3), felt(3), felt(4), left(5)});
  for (int line = 0; line < 4; ++line) {
    std::vector<SessionFile> sessions{{part_0, spoilt(first, line)}, {part_1, second}};
    if (line > 0) mended(sessions);
    if (line == 0) studio::mend_sessions(sessions);
    CHECK(sessions[1].bytes == second);
    sessions = {{part_0, first}, {part_1, spoilt(second, line)}};
    mended(sessions);
    CHECK(sessions[0].bytes == first);
  }
}

TEST_CASE("damage at the end of a part is no loss where a later part begins there") {
  const std::string first = bytes_of({began(), felt(1), felt(2), felt(3)});
  std::vector<SessionFile> sessions{{part_0, spoilt(first, 3)}, {part_1, bytes_of({began(1, 3)})}};
  const auto report = mended(sessions);
  CHECK(report.lost.empty());
  CHECK(gone_in(sessions[0].bytes).empty());
}

TEST_CASE("a part of which only the beginning is left: what is lost of it is told") {
  const std::string first = bytes_of({began(), felt(1), felt(2), felt(3)});
  const std::string second = bytes_of({began(1, 4), felt(4), felt(5)});
  std::vector<SessionFile> sessions{{part_0, first}, {part_1, spoilt(spoilt(second, 1), 2)}};
  const auto report = mended(sessions);
  CHECK(report.lost == std::vector<words::Error>{{Say::mend_lost_end, {part_1, "2"}}});
  CHECK(sessions[0].bytes == first);
  const auto log = logs_of(sessions).at(0);
  REQUIRE(log.lines.size() == 5);
  CHECK(log.lines.back().event == session::Event(session::Gone{5, session::gone_damaged}));
  CHECK(log.damaged);
}

TEST_CASE("a whole part is missing: the one that is there tells it") {
  std::vector<SessionFile> sessions{{part_1, bytes_of({began(1, 3), felt(3), felt(4), left(5)})}};
  const auto report = mended(sessions);
  CHECK(gone_in(sessions[0].bytes) == Spans{{0, 2}});
  CHECK(report.lost == std::vector<words::Error>{{Say::session_misses, {"c41e08d5", "0", "2"}}});
}

TEST_CASE("of two that tell a line differently the one that counts is kept") {
  std::vector<Line> other = evening;
  other[2].event = session::Gathered{};
  std::vector<SessionFile> sessions{{part_0, bytes_of(evening)},
                                    {"copy-a83f-c41e08d5.jsonl", bytes_of(other)}};
  const auto report = mended(sessions);
  CHECK(report.lost ==
        std::vector<words::Error>{{Say::mend_lost_telling, {"copy-a83f-c41e08d5.jsonl", "2"}}});
}

TEST_CASE("what this version does not understand of a line is kept") {
  const std::string first = bytes_of({began()});
  const std::uint32_t before = session::unseal(first.substr(0, first.size() - 1))->check;
  const std::string later =
      R"({"n":1,"t":1,"at":1795617120001,"e":"felt","batch":"7f3a91c2","as":"right",)"
      R"("by":"knife","later":[1.50,2])";
  const std::string body = later + R"(,"p":")" + session::to_hex(before) + "\"";
  const std::uint32_t check = session::crc32c(body, before);
  std::string bytes = first + body + R"(,"c":")" + session::to_hex(check) + "\"}\n";
  bytes += session::encode(felt(2), check)->bytes;
  bytes += "damage\n";
  std::vector<SessionFile> sessions{{part_0, bytes}};
  mended(sessions);
  CHECK(sessions[0].bytes.find("\n" + later + ",\"p\"") != std::string::npos);
}

TEST_CASE("no session, or one of a newer format, stays as it is and is said") {
  auto newer = began();
  std::get<session::Began>(newer.event).version = session::format_version + 1;
  const std::string future = spoilt(bytes_of({newer, felt(1), felt(2), left(3)}), 2);
  std::vector<SessionFile> sessions{{"a.jsonl", "PK\x03\x04\n"}, {part_0, future}};
  const auto report = studio::mend_sessions(sessions);
  CHECK(sessions[0].bytes == "PK\x03\x04\n");
  CHECK(sessions[1].bytes == future);
  CHECK(report.files == std::vector<words::Error>{{Say::mend_as_it_is, {"a.jsonl"}},
                                                  {Say::mend_as_it_is, {part_0}}});
}

}
