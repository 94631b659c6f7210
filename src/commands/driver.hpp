// Joins the bench to what is kept: performs its effects, and feeds back what became of them. The
// same for the window's loop and for a script.
#pragma once

#include "bench/bench.hpp"
#include "studio/bell.hpp"
#include "studio/journal.hpp"
#include "studio/studio.hpp"

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace commands {

struct Setup {
  studio::Path studio;
  studio::Path adrift;              // empty: none
  std::optional<disk::Fault> fault; // of the studio's disk
  std::string session, device;
  bench::Display display;
  std::function<void()> wake; // called on a disk's thread when poll() has something; may be empty
};

// As a person means it who names a studio or nothing: the device's own id, a fresh session, the
// folder for when the studio fails.
Setup usual_setup(const std::optional<std::string>& studio, const bench::Now& now);

class Driver {
public:
  // Begins to read the studio. Throws std::system_error where the system gives no thread.
  Driver(const Setup& setup, const bench::Now& now);

  void feed(const bench::Input& input, const bench::Now& now);

  // Feeds what the disks have answered. True if there was anything. Tries a failed save again,
  // every 30 s.
  bool poll(const bench::Now& now);

  // Polls until everything was read and saved; false if it was not by then, or cannot be now.
  bool settle(const bench::Now& now, std::chrono::milliseconds at_most);

  // Polls, and sleeps until then however often the disks answer.
  void sleep_until(std::chrono::steady_clock::time_point then, const bench::Now& now);

  const bench::Bench& bench() const { return bench_; }
  std::optional<std::int64_t> wake_at() const; // run_ms of the next Tick
  bool take_redraw() { return std::exchange(redraw_, false); }
  std::optional<std::uint64_t> saved() const { return saved_; }
  std::size_t unsaved() const { return journal_->unsaved(); }
  bool adrift() const { return journal_->place() == studio::Place::adrift; }
  const std::string& last_failure() const { return last_failure_; } // empty: none so far

private:
  void take(studio::News news, const bench::Now& now);

  studio::Bell bell_;
  std::unique_ptr<disk::Disk> home_, stand_in_;
  std::string stand_in_folder_;
  std::unique_ptr<studio::Journal> journal_;
  bench::Bench bench_;
  studio::Reading reading_;
  int readings_ = 0; // not answered yet
  std::optional<std::int64_t> wake_at_;
  std::optional<std::int64_t> retry_at_;
  std::optional<std::uint64_t> saved_;
  std::string last_failure_;
  bool redraw_ = true;
};

}
