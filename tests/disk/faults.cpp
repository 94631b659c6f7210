// Disks that fail. After every failure: what was confirmed is there, in order, once.
#include "disk/faulty.hpp"
#include "disk/rig.hpp"

#include <doctest/doctest.h>
#include <sys/resource.h>

#include <cerrno>
#include <csignal>

using namespace rig;

namespace {

disk::Fault fault(const std::string& text) {
  const auto parsed = disk::parse_fault(text);
  REQUIRE(parsed);
  return *parsed;
}

// Three files in two folders, in turn: all calls that make and grow a file happen several times.
std::vector<Append> script() {
  const char* names[] = {"s/one", "s/two", "p/q/three"};
  std::vector<Append> appends;
  for (int i = 0; i < 12; ++i)
    appends.push_back({names[i % 3], "line " + std::to_string(i) + "\n"});
  return appends;
}

struct Outcome {
  int failed = 0;
  std::map<std::string, std::string> submitted, confirmed, left;
  std::map<std::string, std::vector<disk::Failure>> failures;
};

// Plays the script, one append after another or all at once, and cuts the power afterwards.
Outcome play(const disk::Fault& fault, bool at_once) {
  Memory memory;
  Outcome outcome;
  {
    Opened disk("/root", disk::faulty_files(memory.files(), fault));
    const std::vector<Append> appends = script();
    std::vector<Answer> answers;
    for (const Append& append : appends) {
      outcome.submitted[append.file] += append.bytes;
      if (at_once)
        disk.submit(append);
      else
        answers.push_back(disk.ask(append));
    }
    if (at_once) answers = disk.await(appends.size());
    REQUIRE(answers.size() == appends.size());
    for (std::size_t i = 0; i < appends.size(); ++i) {
      if (confirmed(answers[i]))
        outcome.confirmed[appends[i].file] += appends[i].bytes;
      else
        outcome.failures[appends[i].file].push_back(answers[i].failures.at(0));
    }
    for (const auto& [file, failures] : outcome.failures)
      outcome.failed += static_cast<int>(failures.size());
  }
  CHECK(memory.still_open() == 0);
  outcome.left = memory.after_power_cut();
  return outcome;
}

bool starts_with(const std::string& text, const std::string& beginning) {
  return text.compare(0, beginning.size(), beginning) == 0;
}

// What is left begins with what was confirmed and is itself a beginning of what was submitted: so
// no confirmed line is lost, doubled or moved. And a file repeats its first failure.
void check_nothing_lost(Outcome outcome, int code) {
  for (const auto& entry : outcome.submitted) {
    const auto& file = entry.first; // no structured binding: clang 14 cannot CAPTURE one
    const auto& submitted = entry.second;
    CAPTURE(file);
    CHECK(starts_with(outcome.left[file], outcome.confirmed[file]));
    CHECK(starts_with(submitted, outcome.left[file]));
    for (const disk::Failure& failure : outcome.failures[file]) {
      CHECK(failure.code == code);
      CHECK(failure.operation == outcome.failures[file][0].operation);
      CHECK(failure.path == outcome.failures[file][0].path);
    }
  }
}

}

TEST_CASE("every call fails once, or from then on, for every kind of call") {
  for (const bool at_once : {false, true})
    for (const char* kind : {"fail", "fail-from", "fail-write", "fail-force", "fail-open",
                             "fail-folder", "fail-write-from", "fail-folder-from"}) {
      int n = 1;
      for (;; ++n) {
        const std::string text = std::string(kind) + ":" + std::to_string(n) + ":EIO";
        CAPTURE(text);
        CAPTURE(at_once);
        REQUIRE(n < 1000);
        const Outcome outcome = play(fault(text), at_once);
        check_nothing_lost(outcome, EIO);
        if (outcome.failed == 0) {
          CHECK(outcome.left == outcome.submitted);
          break; // past the last call: none of them went unnoticed
        }
      }
      CHECK(n > 3); // every kind was met at least once for each file
    }
}

TEST_CASE("the script one by one makes 38 calls, and the failure of each is noticed") {
  // 3 files opened and their folder forced (6), 4 folders made and their parents forced (8), 12
  // lines written and forced (24): "s" is tried for both its files.
  int n = 1;
  while (play(fault("fail:" + std::to_string(n)), false).failed > 0) ++n;
  CHECK(n - 1 == 6 + 8 + 24);
}

TEST_CASE("a failed force closes the file for ever, and only that one") {
  Memory memory;
  Opened disk("/root", disk::faulty_files(memory.files(), fault("fail-force:3:EIO")));
  CHECK(confirmed(disk.ask(Append{"s/x", "1"})));
  CHECK(confirmed(disk.ask(Append{"s/y", "2"})));
  const Answer first = disk.ask(Append{"s/x", "3"});
  REQUIRE(first.failures.size() == 1);
  CHECK(first.failures[0].operation == disk::Operation::force);
  CHECK(first.failures[0].path == "/root/s/x");
  CHECK(first.failures[0].code == EIO);
  CHECK(memory.still_open() == 1); // y

  const int writes = memory.writes(), forces = memory.forces();
  for (int i = 0; i < 3; ++i) {
    const Answer later = disk.ask(Append{"s/x", "4"});
    REQUIRE(later.failures.size() == 1);
    CHECK(later.failures[0].operation == disk::Operation::force);
    CHECK(later.failures[0].code == EIO);
  }
  CHECK(memory.writes() == writes);
  CHECK(memory.forces() == forces);
  CHECK(confirmed(disk.ask(Append{"s/y", "5"})));
  CHECK(confirmed(disk.ask(Append{"s/x.1", "3"})));
  CHECK(memory.after_power_cut()["s/y"] == "25");
  CHECK(memory.after_power_cut()["s/x.1"] == "3");
}

TEST_CASE("lines that shared a failed force fail together") {
  Memory memory;
  Opened disk("/root", disk::faulty_files(memory.files(), fault("fail-force:2")));
  memory.hold_forces();
  disk.submit(Append{"x", "1"});
  memory.wait_for_held_force();
  for (int i = 0; i < 10; ++i) disk.submit(Append{"x", "2"});
  memory.let_forces_go();
  const std::vector<Answer> answers = disk.await(11);
  REQUIRE(answers.size() == 11);
  CHECK(confirmed(answers[0]));
  for (std::size_t i = 1; i < 11; ++i) {
    REQUIRE(answers[i].failures.size() == 1);
    CHECK(answers[i].failures[0].code == ENOSPC);
  }
}

TEST_CASE("a folder whose force failed is forced again for the next file in it") {
  Memory memory;
  Opened disk("/root", disk::faulty_files(memory.files(), fault("fail-folder:2")));
  CHECK_FALSE(confirmed(disk.ask(Append{"s/x", "1"})));
  CHECK(confirmed(disk.ask(Append{"s/x.1", "1"})));
  CHECK(memory.after_power_cut()["s/x.1"] == "1");
}

TEST_CASE("a real limit cuts a write short: SIGXFSZ kills nobody, EFBIG is said") {
  Folder folder;
  Opened disk(folder.path);
  REQUIRE(confirmed(disk.ask(Append{"x", std::string(900, 'a')})));
  rlimit before = {};
  REQUIRE(::getrlimit(RLIMIT_FSIZE, &before) == 0);
  rlimit small = before;
  small.rlim_cur = 1000;
  REQUIRE(::setrlimit(RLIMIT_FSIZE, &small) == 0);
  disk.submit(Append{"x", std::string(500, 'b')});
  disk.submit(Append{"x", "c"});
  const std::vector<Answer> answers = disk.await(2);
  REQUIRE(::setrlimit(RLIMIT_FSIZE, &before) == 0);
  REQUIRE(answers.size() == 2);
  for (const Answer& answer : answers) {
    REQUIRE(answer.failures.size() == 1);
    CHECK(answer.failures[0].operation == disk::Operation::write);
    CHECK(answer.failures[0].code == EFBIG);
  }
  CHECK(bytes_of(folder.path / "x") == std::string(900, 'a') + std::string(100, 'b'));
  CHECK_FALSE(confirmed(disk.ask(Append{"x", "d"}))); // though there is room again
}

TEST_CASE("silent: appends vanish unanswered, reads go through under their own tickets") {
  Folder folder;
  std::filesystem::create_directory(folder.path / "s");
  put(folder.path / "s/old", "kept");
  Bell bell;
  const auto silent =
      disk::silent_disk(disk::open_disk(folder.path, disk::posix_files(), bell.wake()));
  std::set<disk::Ticket> tickets;
  for (int i = 0; i < 10; ++i) tickets.insert(silent->submit(Append{"s/new", "1"}));
  const disk::Ticket first = silent->submit(ReadFolder{"s", ""});
  tickets.insert(silent->submit(Append{"s/new", "2"}));
  const disk::Ticket second = silent->submit(ReadFolder{"t", ""});
  tickets.insert({first, second});
  CHECK(tickets.size() == 13);

  const std::vector<Answer> answers = await(*silent, bell, 2);
  REQUIRE(answers.size() == 2);
  CHECK(answers[0].ticket == first);
  REQUIRE(answers[0].files.size() == 1);
  CHECK(answers[0].files[0].bytes == "kept");
  CHECK(answers[1].ticket == second);
  CHECK_FALSE(std::filesystem::exists(folder.path / "s/new"));
}

TEST_CASE("silent: a folder that comes in pieces comes under one ticket") {
  Folder folder;
  std::filesystem::create_directory(folder.path / "s");
  for (const char* name : {"a", "b", "c"}) put(folder.path / "s" / name, std::string(1 << 20, 'x'));
  Bell bell;
  const auto silent =
      disk::silent_disk(disk::open_disk(folder.path, disk::posix_files(), bell.wake()));
  silent->submit(Append{"x", "1"});
  const disk::Ticket ticket = silent->submit(ReadFolder{"s", ""});
  const std::vector<Answer> answers = await(*silent, bell, 4);
  REQUIRE(answers.size() == 4); // the last piece says that it was
  for (std::size_t i = 0; i < 4; ++i) {
    CHECK(answers[i].ticket == ticket);
    CHECK(answers[i].to_come == 3 - i);
  }
}

TEST_CASE("slow changes nothing but the time") {
  const Outcome outcome = play(fault("slow:1"), false);
  CHECK(outcome.failed == 0);
  CHECK(outcome.left == outcome.submitted);
}

TEST_CASE("a write that fails leaves half of its bytes") {
  Folder folder;
  const auto files = disk::faulty_files(disk::posix_files(), fault("fail-write:2"));
  const disk::Opened opened = files->open_new(folder.path / "x");
  REQUIRE(opened.code == 0);
  CHECK(files->write(opened.handle, "1234").code == 0);
  CHECK(files->write(opened.handle, "5678").code == ENOSPC);
  CHECK(files->write(opened.handle, "9").code == 0);
  files->close(opened.handle);
  CHECK(bytes_of(folder.path / "x") == "1234569");
}

TEST_CASE("the words for faults") {
  using disk::Fault;
  using std::chrono::milliseconds;
  CHECK(fault("slow:150") == Fault{.kind = Fault::Kind::slow, .delay = milliseconds(150)});
  CHECK(fault("silent") == Fault{.kind = Fault::Kind::silent});
  CHECK(fault("fail:7") == Fault{.nth = 7, .code = ENOSPC});
  CHECK(fault("fail:7:EIO") == Fault{.nth = 7, .code = EIO});
  CHECK(fault("fail-from:7:EROFS") == Fault{.nth = 7, .from = true, .code = EROFS});
  CHECK(fault("fail-write:3") == Fault{.call = Fault::Call::write, .nth = 3, .code = ENOSPC});
  CHECK(fault("fail-force:3").call == Fault::Call::force);
  CHECK(fault("fail-open:1:EMFILE") == Fault{.call = Fault::Call::open, .nth = 1, .code = EMFILE});
  CHECK(fault("fail-folder:1").call == Fault::Call::folder);
  CHECK(fault("fail-read:1").call == Fault::Call::read);
  CHECK(fault("fail-force-from:2") ==
        Fault{.call = Fault::Call::force, .nth = 2, .from = true, .code = ENOSPC});
  for (const char* bad : {"",
                          ":",
                          "fail",
                          "fail:",
                          "fail:0",
                          "fail:-1",
                          "fail:+1",
                          "fail: 1",
                          "fail:1x",
                          "fail:x",
                          "fail:1:",
                          "fail:1:EWHAT",
                          "fail:1:EIO:",
                          "fail:1:EIO:EIO",
                          "fail:99999999999",
                          "fail:1000001",
                          "fail-:1",
                          "fail-wrong:1",
                          "-from:1",
                          "fail-from-from:1",
                          "slow",
                          "slow:",
                          "slow:1.5",
                          "slow:nan",
                          "slow:1:EIO",
                          "slow-from:1",
                          "silent:1",
                          "Fail:1",
                          " fail:1"}) {
    CAPTURE(bad);
    CHECK_FALSE(disk::parse_fault(bad));
  }
}
