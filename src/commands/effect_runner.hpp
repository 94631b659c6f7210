// Joins the bench to what is kept: performs its effects, and feeds back what became of them. The
// same for the window's loop and for a script.
#pragma once

#include "bench/bench.hpp"
#include "commands/storage.hpp"
#include "studio/bell.hpp"
#include "studio/homecoming.hpp"
#include "studio/journal.hpp"
#include "studio/learner.hpp"
#include "studio/watch.hpp"

#include <chrono>
#include <deque>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace commands {

struct Sitting {
  std::string session, device;
  bench::Display display;
  std::optional<words::Language> language = {}; // else as this tablet has it, or is spoken already
  bench::Screen opens_on = bench::Screen::plan;
  bool looks_again = true; // for what other devices write, every 5 s while a batch is open, else
                           // once a minute
  std::optional<bool> full_screen = {};                        // see bench::Bench
  std::function<void(const words::Error&)> hears_failure = {}; // of every failed save; may be empty
  std::function<void()> wake; // called when poll() has something, perhaps on a disk's thread; may
                              // be empty
};

struct Setup; // a sitting in the folders of a computer: folders.hpp

class EffectRunner {
public:
  // Begins to read the studio. Throws std::system_error where the system gives no thread.
  EffectRunner(const Sitting& sitting, const OpenStorage& open, const bench::Now& now);
  EffectRunner(const Setup& setup, const bench::Now& now);

  void feed(bench::Input input, const bench::Now& now);

  // Feeds what the disks have answered, what was found and what was learnt, and lets the bench
  // study a little. True if there was anything. Tries a failed save again, after 30 s
  // and then ever more seldom.
  bool poll(const bench::Now& now);

  // Somebody has put files there: what they say is wanted now.
  void look_soon(const bench::Now& now) { look_at_ = now.run_ms; }

  // Polls until everything was read, learnt from and saved; false if it was not by then, or cannot
  // be now.
  bool settle(const bench::Now& now, std::chrono::milliseconds at_most);

  // Polls, and sleeps until then however often the disks answer.
  void sleep_until(std::chrono::steady_clock::time_point then, const bench::Now& now);

  const bench::Bench& bench() const { return bench_; }
  std::optional<std::int64_t> wake_at() const; // run_ms of the next Tick
  std::optional<std::int64_t>
  poll_at() const; // run_ms of the next poll(), at the latest; 0: at once
  std::vector<bench::SoundCue> take_cues() { return std::exchange(cues_, {}); }
  bool take_redraw() { return std::exchange(redraw_, false); }
  // What the last frame lacked, and what was made of it since.
  void want_images(std::vector<WantedImage> images);
  std::vector<DrawnImage> take_images();
  std::optional<std::uint64_t> saved() const { return saved_; }
  std::size_t unsaved() const { return journal_->unsaved(); }
  bool stuck() const { return journal_->stuck(); } // no save is under way that could succeed
  // A photo or a page is being kept, or is to be told of.
  bool is_handing_on() const {
    return (storage_.papers.is_busy && storage_.papers.is_busy()) ||
           (storage_.pictures.is_busy && storage_.pictures.is_busy());
  }
  bool on_fallback() const { return journal_->place() == studio::Location::fallback; }
  // What became of files that lay in the fallback folder at the start, in sentences.
  const std::vector<words::Error>& came_home() const { return came_home_; }
  const std::optional<words::Error>& last_failure() const { return last_failure_; }

private:
  void remember(const bench::Now& now);
  void keep_tablet(const bench::Now& now);
  void speak(words::Language language, const bench::Now& now);
  void take(studio::News news, const bench::Now& now);
  void take(studio::Read& read, const bench::Now& now);
  void take(studio::Found found, const bench::Now& now);
  void note_homecoming();
  void hand_on(const bench::PaperWanted& wanted, const bench::Now& now);
  void put_on_paper(const bench::PaperWanted& wanted, const bench::Now& now);
  void find_told(const bench::Now& now);
  bool take_found_told(const bench::Now& now);
  bool take_all(const std::function<std::optional<bench::Input>()>& poll, const bench::Now& now);
  void look_around(const bench::Now& now);
  bool has_read() const { return watch_->has_looked(); }
  bool has_learnt() const { return !study_ && !learner_->is_busy(); }
  bool is_idle() const {
    return has_read() && has_learnt() && !is_handing_on() && (!homecoming_ || homecoming_->over());
  }

  studio::Bell bell_;
  Storage storage_;
  std::unique_ptr<studio::Journal> journal_;
  std::optional<studio::Homecoming> homecoming_; // where there is a fallback
  std::vector<words::Error> came_home_;
  bench::Bench bench_;
  std::unique_ptr<studio::Watch> watch_;
  std::unique_ptr<studio::Learner> learner_;
  std::deque<bool> fits_to_tell_; // of each that the learner has, in order
  std::optional<bench::FriendsFound> found_told_;
  bool study_ = false; // the bench has more to look through
  const std::function<void(const words::Error&)> hears_failure_;
  const bool looks_again_;
  std::optional<std::int64_t> look_at_; // run_ms
  std::optional<std::int64_t> wake_at_;
  std::optional<std::int64_t> retry_at_;
  std::int64_t retry_after_ms_ = 30'000; // twice as long after each that fails, up to ten minutes
  std::optional<std::uint64_t> saved_;
  std::optional<words::Error> last_failure_;
  std::vector<bench::SoundCue> cues_;
  bool redraw_ = true;
};

}
