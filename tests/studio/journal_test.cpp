// Nothing confirmed is lost, nothing is there twice, nothing is invented: on disks that fail at
// every call in turn, with the power cut at the end.
#include "studio/sitting.hpp"

#include <cerrno>
#include <set>

namespace journal_test {

using namespace sitting;

namespace {

constexpr std::uint64_t lines_each = 9;

void check_what_is_left(Sitting& s) {
  const auto left = s.left();
  REQUIRE(static_cast<std::int64_t>(left.size()) > s.confirmed());
  REQUIRE(left.size() <= lines_each);
  for (std::uint64_t n = 0; n < left.size(); ++n) CHECK(left[n] == line(n));
  for (std::size_t i = 1; i < s.saved.size(); ++i) CHECK(s.saved[i - 1] < s.saved[i]);
}

// Plays all lines; true if the fault struck.
bool play(const std::vector<disk::Fault>& faults, bool fallback, bool at_once, bool must_save_all) {
  Sitting s(faults, fallback);
  for (std::uint64_t n = 0; n < lines_each; ++n) {
    s.append(n);
    if (!at_once) s.settle();
  }
  s.settle();
  if (must_save_all) CHECK(s.confirmed() == static_cast<std::int64_t>(lines_each) - 1);
  if (s.journal->unsaved() > 0) CHECK_FALSE(s.failed.empty());
  CHECK(static_cast<std::int64_t>(lines_each - s.journal->unsaved()) == s.confirmed() + 1);
  check_what_is_left(s);
  return !s.failed.empty();
}

// For every n until the n-th call never comes.
int play_every(const std::string& kind, bool fallback, bool at_once, bool must_save_all) {
  for (int n = 1; n < 1000; ++n) {
    CAPTURE(kind);
    CAPTURE(n);
    const auto fault = faults({kind + ":" + std::to_string(n) + ":EIO"});
    if (!play(fault, fallback, at_once, must_save_all)) return n - 1;
  }
  return 1000;
}

}

TEST_CASE("every call fails once: a new part takes over and all is saved") {
  for (const char* kind : {"fail", "fail-write", "fail-force", "fail-open", "fail-folder"})
    for (const bool at_once : {false, true}) CHECK(play_every(kind, false, at_once, true) > 0);
}

TEST_CASE("every call fails from then on: what was confirmed stays") {
  for (const char* kind : {"fail-from", "fail-write-from", "fail-force-from", "fail-open-from"})
    for (const bool at_once : {false, true}) CHECK(play_every(kind, false, at_once, false) > 0);
}

TEST_CASE("every call fails from then on: the other place takes over and all is saved") {
  for (const char* kind : {"fail-from", "fail-write-from", "fail-force-from", "fail-open-from"})
    for (const bool at_once : {false, true}) CHECK(play_every(kind, true, at_once, true) > 0);
}

TEST_CASE("without a fault: one file, named by the moment it began, and one confirmation a line") {
  Sitting s({});
  for (std::uint64_t n = 0; n < 4; ++n) {
    s.append(n);
    s.settle();
  }
  CHECK(s.saved == std::vector<std::uint64_t>{0, 1, 2, 3});
  CHECK(s.failed.empty());
  // 1795617120 s is 2026-11-25 14:32:00 UTC by date(1).
  CHECK(s.files_left() ==
        std::vector<std::string>{"sessions/2026-11-25T143200Z-a83f-c41e08d5.jsonl"});
}

TEST_CASE("a part says what it takes over") {
  Sitting s(faults({"fail-force:4"}));
  for (std::uint64_t n = 0; n < 6; ++n) {
    s.append(n);
    s.settle();
  }
  const auto left = s.home.memory.after_power_cut();
  const auto part = left.find("sessions/2026-11-25T143200Z-a83f-c41e08d5.1.jsonl");
  REQUIRE(part != left.end());
  const session::File file = session::read_file("", part->second);
  CHECK(file.part == 1);
  CHECK(file.from == 3);
  REQUIRE(file.lines.size() == 4);
  CHECK(file.lines[0].n == 3);
  CHECK(file.lines[0].at == line(3).at);
  CHECK(file.lines[1] == line(3));
  for (const session::Damage& d : file.damage) CHECK(d.ordinary);
  REQUIRE(s.failed.size() == 1);
  CHECK(s.failed[0].find("c41e08d5.jsonl") != std::string::npos);
}

TEST_CASE("where both places fail, lines wait until asked for, or for the goodbye") {
  for (const bool ask : {false, true}) {
    CAPTURE(ask);
    // Parts 0 and 1 at home and part 2 in the fallback cannot be opened; home works again for
    // part 3.
    Sitting s(faults({"fail-open:1", "fail-open:1"}), true, faults({"fail-open:1"}));
    s.append(0);
    s.settle();
    CHECK(s.journal->stuck());
    CHECK(s.journal->unsaved() == 1);
    CHECK(s.failed.size() == 3);
    CHECK(s.saved.empty());
    s.append(1);
    CHECK(s.journal->stuck());
    CHECK(s.journal->unsaved() == 2);
    if (ask)
      s.journal->retry();
    else
      s.journal->append(line(2, session::Left{}));
    s.settle();
    CHECK_FALSE(s.journal->stuck());
    CHECK(s.journal->unsaved() == 0);
    CHECK(s.journal->place() == Location::home);
    const auto left = s.home.memory.after_power_cut();
    REQUIRE(left.size() == 1);
    CHECK(left.begin()->first == "sessions/2026-11-25T143200Z-a83f-c41e08d5.3.jsonl");
    const session::File file = session::read_file("", left.begin()->second);
    CHECK(file.part == 3);
    CHECK(file.from == 0);
    CHECK(file.lines.size() == (ask ? 2 : 3)); // one Began, which is line 0
    CHECK(s.saved == std::vector<std::uint64_t>{ask ? 1u : 2u});
  }
}

TEST_CASE("a disk that fails now and then is tried again at once each time") {
  // Both count the writes: the first fails at the third, the second at the fifth it sees.
  Sitting s(faults({"fail-write:3", "fail-write:5"}));
  for (std::uint64_t n = 0; n < lines_each; ++n) {
    s.append(n);
    s.settle();
    CHECK_FALSE(s.journal->stuck());
  }
  CHECK(s.failed.size() == 2);
  CHECK(s.confirmed() == static_cast<std::int64_t>(lines_each) - 1);
  check_what_is_left(s);
}

namespace {

struct OnDemand : disk::Disk { // answers when the test says so
  disk::Ticket submit(disk::Request request) override {
    asked.push_back(std::get<disk::Append>(request));
    return ++last;
  }
  std::vector<disk::Answer> answers() override { return std::exchange(ready, {}); }
  void fail(Journal& journal, disk::Operation operation = disk::Operation::write) {
    ready = {{last, {{operation, "/root/x", EIO, {}}}, {}}};
    journal.poll();
  }
  disk::Ticket last = 0;
  std::vector<disk::Append> asked;
  std::vector<disk::Answer> ready;
};

}

TEST_CASE("however many lines come while a disk fails, few files and bytes are put on it") {
  OnDemand disk;
  Journal journal(disk);
  for (std::uint64_t n = 0; n < 4'000; ++n) {
    journal.append(line(n));
    if (!disk.asked.empty() && !journal.stuck()) disk.fail(journal);
  }
  CHECK(journal.stuck());
  CHECK(journal.unsaved() == 4'000);
  std::size_t before = 0;
  for (int again = 0; again < 10; ++again) {
    before = disk.asked.size();
    journal.retry();
    CHECK(disk.asked.size() == before + 1);
    disk.fail(journal);
  }
  CHECK(disk.asked.size() < 20);
  std::size_t bytes = 0;
  for (const disk::Append& append : disk.asked) bytes += append.bytes.size();
  CHECK(bytes < 20 * 70'000);

  journal.retry(); // a little first, and once that is safe the rest
  before = disk.asked.size();
  disk.ready = {{disk.last, {}, {}}};
  journal.poll();
  CHECK(disk.asked.size() == before + 1);
  CHECK(disk.asked.back().file == disk.asked[before - 1].file);
  CHECK(journal.unsaved() > 0);
  disk.ready = {{disk.last, {}, {}}};
  journal.poll();
  CHECK(journal.unsaved() == 0);
  const session::File file =
      session::read_file("", disk.asked[before - 1].bytes + disk.asked[before].bytes);
  CHECK(file.lines.size() == 4'000);
  CHECK_FALSE(file.damaged);
}

TEST_CASE("a disk that fails every few lines gets few files all the same") {
  OnDemand disk;
  Journal journal(disk);
  std::set<std::string> files;
  for (std::uint64_t n = 0; n < 4'000; ++n) {
    journal.append(line(n));
    if (journal.stuck()) continue;
    if (n % 5 == 4)
      disk.fail(journal);
    else
      disk.ready = {{disk.last, {}, {}}};
    journal.poll();
  }
  for (const disk::Append& append : disk.asked) files.insert(append.file);
  CHECK(files.size() < 20);
}

TEST_CASE("where the file is gone from its name every line is written once more") {
  OnDemand disk;
  Journal journal(disk);
  const auto saved = [&] {
    disk.ready = {{disk.last, {}, {}}};
    std::vector<std::uint64_t> all;
    for (const News& news : journal.poll())
      if (const auto* s = std::get_if<Saved>(&news)) all.push_back(s->n);
    return all;
  };
  for (std::uint64_t n = 0; n < 5; ++n) {
    journal.append(line(n));
    CHECK(saved() == std::vector{n});
  }
  journal.append(line(5));
  disk.ready = {{disk.last, {{disk::Operation::gone, "/root/x", ESTALE, {}}}, {}}};
  const auto news = journal.poll();
  REQUIRE(news.size() == 1);
  CHECK(std::get<Failed>(news[0]).nothing_is_safe);
  CHECK(journal.unsaved() == 6);
  CHECK_FALSE(journal.stuck());
  CHECK(saved() == std::vector<std::uint64_t>{5});
  const session::File file = session::read_file("", disk.asked.back().bytes);
  CHECK(file.part == 1);
  CHECK(file.from == 0);
  CHECK(file.lines.size() == 6);
}

TEST_CASE("only what was answered is claimed") {
  OnDemand disk;
  Journal journal(disk);
  for (std::uint64_t n = 0; n < 3; ++n) journal.append(line(n));
  disk.ready = {{1, {}, {}}, {2, {}, {}}};
  const auto news = journal.poll();
  REQUIRE(news.size() == 2);
  CHECK(std::get<Saved>(news[0]).n == 0);
  CHECK(std::get<Saved>(news[1]).n == 1);
  CHECK(journal.unsaved() == 1);
}

TEST_CASE("a studio that cannot be written: everything is kept in the other place") {
  Sitting s(faults({"fail-from:1:EROFS"}), true);
  for (std::uint64_t n = 0; n < 3; ++n) s.append(n);
  s.settle();
  CHECK(s.confirmed() == 2);
  CHECK(s.journal->place() == Location::fallback);
  CHECK(s.home.memory.after_power_cut().empty());
  CHECK(s.left().size() == 3);
}

TEST_CASE("a disk that never answers: nothing is claimed, nothing is forgotten") {
  rig::Memory memory;
  rig::Opened inner(memory);
  const auto silent = disk::silent_disk(std::move(inner.disk));
  Journal journal(*silent);
  for (std::uint64_t n = 0; n < 5; ++n) journal.append(line(n));
  CHECK(journal.poll().empty());
  CHECK(journal.unsaved() == 5);
}

TEST_CASE("a line that cannot be written is said, and never claimed; the others are written") {
  Sitting s({});
  s.append(0);
  s.append(1);
  s.journal->append(line(2, session::Opened{"\xff"}));
  s.append(3);
  s.settle();
  s.poll();
  CHECK(s.failed.size() == 1);
  CHECK(s.confirmed() == 1);
  const auto left = s.left();
  REQUIRE(left.size() == 3);
  CHECK(left[2] == line(3));
}

TEST_CASE("a session that does not begin with Began is not written") {
  Sitting s({});
  s.append(1);
  s.poll();
  CHECK(s.failed.size() == 1);
  CHECK(s.left().empty());
}

TEST_CASE("answers to other people's readings are passed on") {
  Sitting s({});
  s.append(0);
  s.settle();
  const disk::Ticket ticket = s.home.disk->submit(disk::ReadFolder{sessions_folder, ".jsonl"});
  for (;;) {
    const long rings = s.bell.rings();
    const auto news = s.journal->poll();
    if (news.empty()) {
      s.bell.wait_past(rings);
      continue;
    }
    REQUIRE(news.size() == 1);
    const auto* read = std::get_if<Read>(&news[0]);
    REQUIRE(read);
    CHECK(read->place == Location::home);
    CHECK(read->answer.ticket == ticket);
    CHECK(read->answer.files.size() == 1);
    return;
  }
}

}
