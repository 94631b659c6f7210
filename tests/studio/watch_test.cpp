// What is found in a studio's folders, at first and later, by a reader that never waits.
#include "session/bytes.hpp"
#include "studio/sitting.hpp"
#include "studio/studio.hpp"
#include "studio/watch.hpp"

#include <chrono>

namespace watch_test {

namespace {

using namespace studio;

// The first lines of a session, with another id than sitting's where one is given.
std::string bytes_of(std::uint64_t lines, const std::string& session, int part = 0,
                     std::uint64_t from = 0) {
  std::string bytes;
  std::uint32_t check = 0;
  const auto add = [&](const session::Line& line) {
    const auto encoded = session::encode(line, check);
    REQUIRE(encoded);
    bytes += encoded->bytes;
    check = encoded->check;
  };
  session::Line first = sitting::line(0);
  auto& began = std::get<session::Began>(first.event);
  began.session = session;
  began.part = part;
  began.from = from;
  if (part > 0) first.n = from;
  add(first);
  for (std::uint64_t n = part > 0 ? from : 1; n < lines; ++n) add(sitting::line(n));
  return bytes;
}

std::string name_of(const std::string& session, int part = 0) {
  return "2026-11-25T143200Z-a83f-" + session + (part > 0 ? "." + std::to_string(part) : "") +
         ".jsonl";
}

struct Watching {
  rig::Folder folder;
  rig::Bell bell;
  std::unique_ptr<disk::Disk> home, fallback;
  std::unique_ptr<Watch> watch;

  Watching() {
    for (const char* place : {"home", "adrift"})
      std::filesystem::create_directories(folder.path / place / "sessions");
  }
  void start() { start(bell.wake()); }
  void start(std::function<void()> home_wake) {
    home = studio::open(folder.path / "home", std::nullopt, std::move(home_wake));
    fallback = studio::open(folder.path / "adrift", std::nullopt, bell.wake());
    watch = std::make_unique<Watch>(*home, fallback.get(), "0123456789ab", bell.wake());
  }
  void put(const std::string& name, const std::string& bytes, const char* place = "home") {
    rig::put(folder.path / place / "sessions" / name, bytes);
  }

  // Looks, and waits until everything asked for was answered and understood.
  std::optional<Found> look() {
    watch->look();
    for (;;) {
      const long rings = bell.rings();
      for (disk::Answer& a : home->answers()) watch->take(Location::home, std::move(a));
      for (disk::Answer& a : fallback->answers()) watch->take(Location::fallback, std::move(a));
      auto found = watch->poll();
      if (found || !watch->is_looking()) return found;
      bell.wait_past(rings);
    }
  }
};

std::vector<std::size_t> lines_of(const Found& found) {
  std::vector<std::size_t> out;
  for (const session::Log& log : found.logs) out.push_back(log.lines.size());
  return out;
}

}

TEST_CASE("an empty studio is found to be empty, once") {
  Watching w;
  w.start();
  const auto first = w.look();
  REQUIRE(first);
  CHECK(first->first);
  CHECK(first->logs.empty());
  CHECK(w.watch->has_looked());
  CHECK_FALSE(w.look());
}

TEST_CASE("a file that grows is read again, one that does not is not") {
  Watching w;
  w.put(name_of("aaaa"), bytes_of(3, "aaaa"));
  w.put(name_of("bbbb"), bytes_of(4, "bbbb"));
  w.start();
  CHECK(lines_of(*w.look()) == std::vector<std::size_t>{3, 4});
  CHECK_FALSE(w.look());
  w.put(name_of("bbbb"), bytes_of(6, "bbbb"));
  const auto later = w.look();
  REQUIRE(later);
  CHECK_FALSE(later->first);
  CHECK(lines_of(*later) == std::vector<std::size_t>{6});
  CHECK(later->files == std::vector<std::string>{name_of("bbbb")});
  CHECK(w.watch->files_read() == 3);
}

TEST_CASE("of a session in parts all of them are read when one comes") {
  Watching w;
  w.put(name_of("aaaa"), bytes_of(3, "aaaa"));
  w.start();
  w.look();
  w.put(name_of("aaaa", 1), bytes_of(5, "aaaa", 1, 2), "adrift");
  const auto later = w.look();
  REQUIRE(later);
  REQUIRE(later->logs.size() == 1);
  CHECK(later->logs[0].lines.size() == 5);
  CHECK(later->logs[0].missing.empty());
  CHECK(later->files.size() == 2);
}

TEST_CASE("a file cut anywhere on its way is whole in the end") {
  const std::string bytes = bytes_of(6, "aaaa");
  Watching w;
  w.start();
  w.look();
  for (std::size_t cut = 40; cut < bytes.size(); cut += 97) {
    w.put(name_of("aaaa"), bytes.substr(0, cut));
    const auto found = w.look();
    REQUIRE(found);
    for (const session::Damage& d : found->damage) CHECK(d.ordinary);
  }
  w.put(name_of("aaaa"), bytes);
  CHECK(lines_of(*w.look()) == std::vector<std::size_t>{6});
}

TEST_CASE("the own session's files are nobody else's news") {
  Watching w;
  w.start();
  w.look();
  w.put(name_of("0123456789ab"), bytes_of(3, "0123456789ab"));
  CHECK_FALSE(w.look());
}

TEST_CASE("damage and what cannot be read are said") {
  Watching w;
  w.put(name_of("aaaa"), "{}\n" + bytes_of(3, "aaaa"));
  std::filesystem::create_directory(w.folder.path / "home" / "sessions" / "x.jsonl");
  w.start();
  const auto found = w.look();
  REQUIRE(found);
  CHECK_FALSE(found->damage.empty());
  std::filesystem::remove_all(w.folder.path / "home");
  const auto gone = w.look();
  REQUIRE(gone);
  CHECK(gone->faults.size() == 1);
  CHECK_FALSE(w.look()); // the same fault is not said twice
}

TEST_CASE("a large studio is answered in pieces, and nothing saved waits for all of them") {
  Watching w;
  const std::string bytes = bytes_of(3, "aaaa");
  std::string large = bytes;
  for (int i = 0; large.size() < 700'000; ++i) large += bytes_of(2, "bbbb");
  for (int i = 0; i < 8; ++i) w.put("f" + std::to_string(i) + "-aaaa.jsonl", large);
  // The disk calls wake after its first piece: that is when something is to be saved.
  disk::Disk* home = nullptr;
  bool asked = false;
  w.start([&, wake = w.bell.wake()] {
    if (home && !std::exchange(asked, true)) home->submit(disk::Append{"sessions/z.jsonl", "x\n"});
    wake();
  });
  home = w.home.get();
  w.watch->look();
  std::size_t pieces = 0, before_append = 0;
  for (bool appended = false; !appended || w.watch->is_looking();) {
    const long rings = w.bell.rings();
    for (disk::Answer& a : w.fallback->answers()) w.watch->take(Location::fallback, std::move(a));
    for (disk::Answer& a : w.home->answers()) {
      const bool reading = a.to_come > 0 || !a.files.empty();
      if (!reading && !appended) {
        appended = true;
        before_append = pieces;
        continue;
      }
      ++pieces;
      w.watch->take(Location::home, std::move(a));
    }
    w.watch->poll();
    if (!appended || w.watch->is_looking()) w.bell.wait_past(rings);
  }
  CHECK(pieces >= 4);
  CHECK(before_append == 1);
}

}
