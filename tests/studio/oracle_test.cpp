// Repair judged from outside: whatever became of a studio's files, what is mended says the same as
// before, or less with a mark that everybody sees, and never anything else.
#include "session/batch.hpp"
#include "session/bytes.hpp"
#include "studio/mend.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

namespace oracle_test {

namespace {

using session::Line;
using studio::SessionFile;
using Random = std::mt19937;

struct Sound {
  SessionFile file;
  std::string session;
  std::vector<Line> lines; // without its beginning
};

// So many lines of one batch, in an hour of its own.
Sound sound(int version, const std::string& session, int hour) {
  session::Began began;
  began.version = version;
  began.session = session;
  began.device = "a83f";
  began.local = "2026-11-25T15:32:00+01:00";
  const std::int64_t at = 1795617120000 + hour * 3'600'000;
  std::vector<Line> lines{{0, 0, at, "", began}};
  for (std::uint64_t n = 1; n < 9; ++n) {
    const auto t = static_cast<std::int64_t>(n) * 10;
    lines.push_back({n, t, at + t, "7f3a91c2",
                     session::Added{"gum_12", session::Unit::drops, double(n), "dropper"}});
  }
  lines.push_back({9, 100, at + 100, "", session::Left{}});
  Sound out{{"2026-11-25T143200Z-a83f-" + session + ".jsonl", ""}, session, {}};
  std::uint32_t before = 0;
  for (const Line& line : lines) {
    const auto encoded = session::encode(line, before, session::seed_of(began));
    REQUIRE(encoded);
    out.file.bytes += encoded->bytes;
    before = encoded->check;
  }
  out.lines.assign(lines.begin() + 1, lines.end());
  return out;
}

std::size_t below(Random& random, std::size_t limit) { return random() % limit; }

std::vector<std::string> pieces(const std::string& bytes) {
  std::vector<std::string> out;
  for (std::size_t at = 0; at < bytes.size();) {
    const std::size_t end = std::min(bytes.find('\n', at), bytes.size() - 1) + 1;
    out.push_back(bytes.substr(at, end - at));
    at = end;
  }
  return out;
}

std::string together(const std::vector<std::string>& pieces) {
  std::string bytes;
  for (const std::string& piece : pieces) bytes += piece;
  return bytes;
}

// What disks, synchronisers and people do to a file; `other` is what lies beside it.
void harm(std::string& bytes, const std::string& other, Random& random) {
  if (bytes.empty()) return;
  constexpr std::size_t pages[] = {64, 128, 512};
  const std::size_t page = pages[below(random, 3)];
  const std::size_t at = below(random, bytes.size()) / page * page;
  const std::size_t length = std::min(page, bytes.size() - at);
  auto lines = pieces(bytes);
  const auto theirs = pieces(other);
  const std::size_t k = below(random, lines.size()), m = below(random, theirs.size() + 1);
  const auto line = lines.begin() + static_cast<std::ptrdiff_t>(k);
  const auto from = theirs.begin() + static_cast<std::ptrdiff_t>(m);
  const auto some = from + static_cast<std::ptrdiff_t>(below(random, theirs.size() + 1 - m));
  switch (below(random, 14)) {
  case 0: bytes[below(random, bytes.size())] ^= static_cast<char>(1 << below(random, 8)); return;
  case 1: std::fill_n(bytes.begin() + static_cast<long>(at), length, '\0'); return;
  case 2: bytes.replace(at, length, other.substr(std::min(at, other.size()), length)); return;
  case 3: bytes.insert(at, bytes.substr(at, length)); return;
  case 4: bytes.resize(below(random, bytes.size())); return;
  case 5: bytes += other; return;
  case 6: bytes = other + bytes; return;
  case 7: bytes.resize(bytes.size() + page, '\0'); return;
  case 8: lines.erase(line); break;
  case 9: lines.insert(line, std::string(*line)); break;
  case 10: std::reverse(lines.begin(), lines.end()); break;
  case 11: lines.insert(line, from, some); break;
  case 12: std::copy(from, std::min(some, from + (lines.end() - line)), line); break;
  default:
    for (std::size_t i = at; i < at + length; ++i) bytes[i] = static_cast<char>(random() % 256);
    return;
  }
  bytes = together(lines);
}

bool is_own(const Line& line) {
  return !std::holds_alternative<session::Gone>(line.event) &&
         !std::holds_alternative<session::Began>(line.event);
}

// What a reader is told of the studio as a whole.
bool is_marked(const std::vector<session::File>& files) {
  return std::any_of(files.begin(), files.end(), [](const auto& f) { return f.damaged; });
}

const session::Log* log_of(const std::vector<session::Log>& logs, const std::string& session) {
  for (const session::Log& log : logs)
    if (log.session == session) return &log;
  return nullptr;
}

void judge(const Sound& was, const std::vector<session::Log>& logs, bool marked, bool untouched) {
  const session::Log* log = log_of(logs, was.session);
  std::vector<Line> lines;
  if (log) std::copy_if(log->lines.begin(), log->lines.end(), std::back_inserter(lines), is_own);
  for (const Line& line : lines)
    CHECK(std::find(was.lines.begin(), was.lines.end(), line) != was.lines.end());
  if (untouched) {
    CHECK(lines == was.lines);
    CHECK_FALSE(log->damaged);
  }
  const bool ended = !lines.empty() && std::holds_alternative<session::Left>(lines.back().event);
  const bool cut = !ended && std::equal(lines.begin(), lines.end(), was.lines.begin());
  CHECK((lines == was.lines || cut || marked || log->damaged));
}

void harm_and_mend(std::uint32_t seed) {
  CAPTURE(seed);
  Random random(seed);
  const int version = seed % 4 == 0 ? 1 : 2;
  const std::vector<Sound> before{sound(version, "c41e08d55a10", 0),
                                  sound(version, "77aa77aa77aa", 5), sound(2, "10ad10ad10ad", 9)};
  std::vector<SessionFile> sessions;
  for (const Sound& s : before) sessions.push_back(s.file);
  const std::size_t last = 1 + below(random, 2); // the third file stays as it is
  for (std::size_t i = 0; i <= below(random, 4); ++i) {
    const std::size_t one = below(random, last);
    harm(sessions[one].bytes, sessions[(one + 1) % 3].bytes, random);
  }
  const std::string third = sessions[2].bytes;
  std::vector<SessionFile> mended = sessions;
  studio::mend_sessions(mended);
  CHECK(mended[2].bytes == third);
  std::vector<session::File> files;
  for (const SessionFile& s : mended) files.push_back(session::read_file(s.name, s.bytes));
  const bool marked = is_marked(files);
  const auto logs = session::join_parts(std::move(files));
  for (std::size_t i = 0; i < before.size(); ++i)
    judge(before[i], logs, marked, sessions[i].bytes == before[i].file.bytes);
  for (const session::Log& log : logs) {
    const bool known = std::any_of(before.begin(), before.end(),
                                   [&](const Sound& s) { return s.session == log.session; });
    CHECK((known || log.lines.empty()));
  }
}

}

TEST_CASE("a mended studio is never clean and different, and what was sound stays equal") {
  for (std::uint32_t seed = 1; seed <= 10'000; ++seed) harm_and_mend(seed);
}

}
