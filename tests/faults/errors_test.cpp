// Every call an evening makes to the disk fails, once and from then on, with every errno a full, a
// worn, a locked and a crowded disk gives; at home alone, and where there is nowhere else to go.
#include "bench/record.hpp"
#include "commands/clock.hpp"
#include "faults/evening.hpp"

#include <algorithm>
#include <cerrno>

using namespace faults;

namespace {

const char* const kinds[] = {"write", "force", "open", "folder"};

// All of them in a long run, one after the other in a short one.
std::vector<std::string> codes(int n) {
  const std::vector<std::string> all{"ENOSPC", "EIO", "EROFS", "EMFILE"};
  if (is_long()) return all;
  return {all[(static_cast<std::size_t>(n) + seed()) % all.size()]};
}

disk::Fault fault(const std::string& kind, int n, const std::string& code) {
  return disk::parse_fault("fail-" + kind + ":" + std::to_string(n) + ":" + code).value();
}

struct Outcome {
  Played evening;
  std::vector<session::File> files;
  std::size_t parts() const { return files.size(); }
};

// What is there now, and what is there when the power goes as well.
Outcome play_and_check(const Spoilt& spoilt, bool fallback, int n) {
  Computer computer;
  Outcome outcome{play(computer, small_evening(), fallback, spoilt), {}};
  outcome.files = files_of(computer);
  check_left(outcome.files, {outcome.evening});
  check_only_torn(outcome.files);
  const auto drawn = seed() * 1'000'000u + static_cast<std::uint32_t>(n);
  check_left(files_of(*computer.after_power_cut(drawn, Harm::any)), {outcome.evening});
  return outcome;
}

bool all_saved(const Played& evening) {
  return evening.status == 0 &&
         evening.confirmed == static_cast<std::int64_t>(evening.lines.size()) - 1;
}

// Calls `check(n, code)` until it says that the n-th call never came; how many did.
template <class Check>
int for_every(const std::string& kind, Check check) {
  for (int n = 1; n < 1000; ++n)
    for (const std::string& code : codes(n)) {
      CAPTURE(kind);
      CAPTURE(n);
      CAPTURE(code);
      if (!check(n, code)) return n - 1;
    }
  return 1000;
}

int runs = 0;

}

TEST_CASE("errors: every call fails once, and a new part of the session takes over") {
  for (const std::string kind : kinds)
    for (const bool fallback : {false, true}) {
      const int calls = for_every(kind, [&](int n, const std::string& code) {
        ++runs;
        const Outcome o = play_and_check({fault(kind, n, code), {}}, fallback, n);
        CHECK(all_saved(o.evening));
        if (!o.evening.said) return false;
        CHECK(o.evening.err.find("adrift") == std::string::npos);
        bool new_part = false;
        for (const session::File& file : o.files) new_part |= file.part == 1;
        CHECK(new_part);
        return true;
      });
      CHECK(calls > 0);
    }
  MESSAGE(runs, " evenings so far");
}

TEST_CASE("errors: every call fails from then on, and the stand-in takes over") {
  for (const std::string kind : kinds) {
    const int calls = for_every(kind, [&](int n, const std::string& code) {
      ++runs;
      const Outcome o = play_and_check({fault(kind + "-from", n, code), {}}, true, n);
      CHECK(all_saved(o.evening));
      if (!o.evening.said) return false;
      // Said at the end, unless the evening came home again before: a force may fail where the
      // part that follows needs none.
      CHECK(o.evening.err.find(fallback_folder.string()) != std::string::npos);
      return true;
    });
    CHECK(calls > 0);
  }
  MESSAGE(runs, " evenings so far");
}

TEST_CASE("errors: every call fails from then on, and there is nowhere else: said, with how much") {
  for (const std::string kind : kinds)
    for (const bool has_fallback : {false, true}) {
      const int calls = for_every(kind, [&](int n, const std::string& code) {
        ++runs;
        const disk::Fault at_home = fault(kind + "-from", n, code);
        // Where there is a fallback, it has never worked.
        const disk::Fault fallback = fault(kind + "-from", 1, code);
        const Outcome o = play_and_check({at_home, fallback}, has_fallback, n);
        if (!o.evening.said) {
          CHECK(all_saved(o.evening));
          return false;
        }
        CHECK(o.evening.status == 1);
        const auto unsaved =
            static_cast<std::int64_t>(o.evening.lines.size()) - 1 - o.evening.confirmed;
        CHECK(unsaved > 0);
        const std::string said = unsaved == 1 ? "1 entry is not saved"
                                              : std::to_string(unsaved) + " entries are not saved";
        CHECK(o.evening.err.find(said) == 0);
        return true;
      });
      CHECK(calls > 0);
    }
  MESSAGE(runs, " evenings so far");
}

TEST_CASE("errors: a disk that fails for a while, and works again: nothing is missing") {
  for (const int changes : {1, 2, 3, 7, 20}) {
    int n = 1;
    for (;; ++n) {
      CAPTURE(changes);
      CAPTURE(n);
      REQUIRE(n < 1000);
      Computer computer;
      computer.outage(Computer::home, n, changes, ENOSPC);
      computer.outage(Computer::fallback, 1, changes, EROFS);
      const Played evening = play(computer, small_evening());
      ++runs;
      const auto files = files_of(computer);
      check_left(files, {evening});
      check_only_torn(files);
      if (computer.changes(Computer::home) < n) break; // past the last one
      // An outage up to the end of the evening leaves something unsaved; one before it does not.
      if (computer.changes(Computer::home) >= n + changes &&
          computer.changes(Computer::fallback) >= changes)
        CHECK(all_saved(evening));
    }
    CHECK(n > 20);
  }
  MESSAGE(runs, " evenings so far");
}

namespace {

void tap_a_batch(commands::EffectRunner& runner, commands::ScriptedClock& clock) {
  std::vector<std::string> pads{"pigment pb29", "weigh", "digit 1", "digit 0", "enter", "begin"};
  for (int i = 0; i < 100; ++i) pads.push_back(i % 3 == 0 ? "add water" : "add gum_12");
  pads.push_back("undo");
  pads.push_back("felt right");
  for (const std::string& pad : pads) {
    clock.pass(1000);
    runner.feed(bench::Tap{bench::pad_named(pad).value()}, clock.now());
    runner.poll(clock.now());
  }
}

commands::Setup setup_on(Computer& computer) {
  commands::Setup setup;
  setup.studio = studio_folder;
  setup.fallback = fallback_folder;
  setup.home_files = [&] { return computer.files(Computer::home); };
  setup.fallback_files = [&] { return computer.files(Computer::fallback); };
  setup.session = "c41e08d5a1b2";
  setup.device = "a83f";
  setup.looks_again = false;
  return setup;
}

constexpr std::chrono::seconds long_enough{60};

}

// While the disk is inside a call that does not return, feed() and poll() do: else this would hang.
TEST_CASE("errors: storage that does not answer: every tap counts, is shown unsaved, and waits") {
  Computer computer;
  commands::ScriptedClock clock(seed());
  clock.set_wall(1795617120000, 60);
  commands::EffectRunner runner(setup_on(computer), clock.now());
  REQUIRE(runner.settle(clock.now(), long_enough));
  computer.hold();
  tap_a_batch(runner, clock);
  const auto& bench = runner.bench();
  const std::vector<session::Line> lines = bench.logs.front().lines;
  CHECK(lines.size() > 100);
  CHECK(runner.unsaved() == lines.size());
  CHECK_FALSE(runner.saved());
  CHECK_FALSE(bench.saving.confirmed);
  CHECK(computer.folder(studio_folder / "sessions").empty());

  computer.let_go();
  CHECK(runner.settle(clock.now(), long_enough));
  CHECK(runner.saved() == lines.back().n);
  CHECK(bench.saving.confirmed == lines.back().n);
  const auto logs = session::join_parts(files_of(computer));
  REQUIRE(logs.size() == 1);
  CHECK(logs[0].lines == lines);

  Computer quick; // the taps counted as on a disk that answers
  commands::ScriptedClock same(seed());
  same.set_wall(1795617120000, 60);
  commands::EffectRunner other(setup_on(quick), same.now());
  REQUIRE(other.settle(same.now(), long_enough));
  tap_a_batch(other, same);
  CHECK(other.bench().logs.front().lines == lines);
}

TEST_CASE("errors: a file that is gone from its name, once, at every line: all is written again") {
  int n = 1;
  for (;; ++n) {
    CAPTURE(n);
    REQUIRE(n < 1000);
    const Outcome o = play_and_check({fault("name", n, "ESTALE"), {}}, true, n);
    CHECK(all_saved(o.evening));
    if (!o.evening.said) break; // past the last one
    CHECK(std::any_of(o.files.begin(), o.files.end(),
                      [](const session::File& f) { return f.part == 1 && f.from == 0; }));
  }
  CHECK(n > 10);
}

TEST_CASE("errors: both disks stuck is known at once, and not while there is hope") {
  Computer computer;
  computer.outage(Computer::home, 1, 1000, ENOSPC);
  computer.outage(Computer::fallback, 1, 1000, EROFS);
  commands::ScriptedClock clock(seed());
  commands::EffectRunner runner(setup_on(computer), clock.now());
  REQUIRE(runner.settle(clock.now(), long_enough));
  CHECK_FALSE(runner.stuck());
  tap_a_batch(runner, clock);
  CHECK_FALSE(runner.settle(clock.now(), long_enough));
  CHECK(runner.stuck());
  CHECK(runner.bench().saving.failure);
  runner.feed(bench::Leaving{}, clock.now());
  CHECK_FALSE(runner.stuck()); // tried once more
  CHECK_FALSE(runner.settle(clock.now(), long_enough));
  CHECK(runner.stuck());
}
