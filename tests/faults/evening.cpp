#include "faults/evening.hpp"

#include "session/batch.hpp"
#include "studio/studio.hpp"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <map>
#include <sstream>

namespace faults {

bool is_long() { return std::getenv("SLABSIDE_LONG") != nullptr; }

std::uint32_t seed() {
  const char* given = std::getenv("SLABSIDE_SEED");
  return given ? static_cast<std::uint32_t>(std::strtoul(given, nullptr, 10)) : 1;
}

std::string small_evening(int day) {
  const std::string text = std::to_string(day);
  return "at 2026-11-" + text + "T19:30:00+01:00\nseed " + text + R"(
tap pigment pb29
write name Evening blue
tap weigh
type 12
tap begin
tap another
tap amount weigh
tap add gum_12
type 5.5
tap pass
wait 8
tap felt wont_move
tap add gum_12 x4 every 1
tap felt too_sticky
tap undo
tap pass
tap add water x3 every 1
tap felt right
tap pass
wait 6
tap dot
tap specks none
tap gather
tap close
)";
}

std::string evening() {
  if (!is_long()) return small_evening();
  std::ifstream in(SLABSIDE_ROOT "/demo/scripts/1_weir_blue.taps");
  return {std::istreambuf_iterator<char>(in), {}};
}

namespace {

std::function<std::unique_ptr<disk::Files>()> maker(Computer& computer, Computer::Who who,
                                                    const std::optional<disk::Fault>& fault) {
  return [&computer, who, fault] {
    auto files = computer.files(who);
    return fault ? disk::faulty_files(std::move(files), *fault) : std::move(files);
  };
}

std::int64_t last_saved(const std::string& out) {
  const std::size_t at = out.rfind("saved ");
  return at == std::string::npos ? -1 : std::stoll(out.substr(at + 6));
}

}

Played play(Computer& computer, const std::string& script, bool fallback, const Spoilt& spoilt) {
  const auto lines = commands::read_script(script);
  REQUIRE(lines);
  Played played;
  commands::Playing how;
  how.studio = studio_folder;
  if (fallback) how.fallback = fallback_folder;
  how.home_files = maker(computer, Computer::home, spoilt.home);
  how.fallback_files = maker(computer, Computer::fallback, spoilt.fallback);
  how.report = true;
  how.onlooker = [&](const bench::Bench& bench, const bench::Now&) {
    const auto& tapped = bench.logs.front().lines;
    played.lines.insert(played.lines.end(),
                        tapped.begin() + static_cast<std::ptrdiff_t>(played.lines.size()),
                        tapped.end());
    return computer.has_power();
  };
  std::ostringstream out, err;
  played.status = commands::play(*lines, how, out, err);
  played.err = err.str();
  played.confirmed = last_saved(out.str());
  played.said = out.str().find("failed ") != std::string::npos;
  return played;
}

std::vector<session::File> files_of(Computer& computer) {
  std::vector<session::File> files;
  for (const auto& [name, bytes] : computer.folder(studio_folder / "sessions"))
    files.push_back(session::read_file(name, bytes));
  for (const auto& [name, bytes] : computer.folder(fallback_folder / "sessions"))
    files.push_back(session::read_file(studio::fallback_prefix + name, bytes));
  return files;
}

namespace {

// A part that begins at line 0 bears that line in its own words.
bool is_same(const session::Line& found, const session::Line& tapped) {
  const auto* began = std::get_if<session::Began>(&found.event);
  if (!began || !std::holds_alternative<session::Began>(tapped.event)) return found == tapped;
  session::Line as_tapped = found;
  auto& whole = std::get<session::Began>(as_tapped.event);
  whole.part = 0;
  whole.from = 0;
  return as_tapped == tapped;
}

void check_session(const session::Log& log, const Played& evening) {
  std::int64_t before = -1;
  for (const session::Line& line : log.lines) {
    const auto n = static_cast<std::int64_t>(line.n);
    CHECK(n > before);
    REQUIRE(line.n < evening.lines.size());
    CHECK(is_same(line, evening.lines[line.n]));
    if (n <= evening.confirmed) CHECK(n == before + 1); // up to there, none is left out
    before = n;
  }
  CHECK(before >= evening.confirmed);
}

std::string session_of(const Played& evening) {
  if (evening.lines.empty()) return "";
  return std::get<session::Began>(evening.lines.front().event).session;
}

}

void check_left(const std::vector<session::File>& files, const std::vector<Played>& evenings) {
  const auto logs = session::join_parts(files);
  std::map<std::string, const session::Log*> by_session;
  for (const session::Log& log : logs) by_session[log.session] = &log;
  for (const Played& evening : evenings) {
    const auto found = by_session.find(session_of(evening));
    if (found == by_session.end())
      CHECK(evening.confirmed == -1);
    else
      check_session(*found->second, evening);
    if (found != by_session.end()) by_session.erase(found);
  }
  // A file whose every line was harmed still bears its session in its name, or in a garbled one.
  for (const auto& [session, log] : by_session) CHECK(log->lines.empty());
  const session::Logs all = session::all_of(logs);
  for (const std::string& id : session::batch_ids(all)) session::fold(all, id);
}

void check_only_torn(const std::vector<session::File>& files) {
  for (const session::File& file : files)
    for (const session::Damage& damage : file.damage)
      CHECK_MESSAGE(damage.ordinary, damage.file, " line ", damage.line);
  for (const session::Log& log : session::join_parts(files)) CHECK_FALSE(log.damaged);
}

}
