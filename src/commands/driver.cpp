#include "commands/driver.hpp"

#include "bench/record.hpp"
#include "session/check_value.hpp"
#include "studio/kept.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace commands {

namespace {
constexpr std::int64_t retry_every_ms = 30'000;
constexpr std::int64_t look_when_open_ms = 5'000;
constexpr std::int64_t look_when_idle_ms = 60'000;
}

Setup usual_setup(const std::optional<std::string>& studio, const bench::Now& now) {
  Setup setup;
  const studio::Path state = studio::state_folder();
  setup.studio = studio ? studio::Path(*studio) : studio::default_studio();
  setup.adrift = studio::adrift_folder(state, setup.studio);
  setup.session = bench::fresh_id(now);
  setup.device = studio::device_id(state, now.fresh);
  if (!state.empty()) setup.tablet_file = state / "tablet.json";
  return setup;
}

Driver::Driver(const Setup& setup, const bench::Now& now)
    : bench_(bench::start(setup.session, setup.device, setup.display, now)),
      looks_again_(setup.looks_again) {
  const auto wake = [bell = bell_, also = setup.wake] {
    bell.ring();
    if (also) also();
  };
  home_ = studio::open(setup.studio, setup.fault, wake, setup.home_files);
  stand_in_folder_ = setup.adrift.string();
  if (!setup.adrift.empty())
    stand_in_ = studio::open(setup.adrift, std::nullopt, wake, setup.adrift_files);
  journal_ = std::make_unique<studio::Journal>(*home_, stand_in_.get());
  if (stand_in_) homecoming_.emplace(*home_);
  watch_ = std::make_unique<studio::Watch>(*home_, stand_in_.get(), setup.session, wake);
  tablet_file_ = setup.tablet_file;
  remember(now);
  look_around(now);
}

void Driver::remember(const bench::Now& now) {
  const auto files = disk::posix_files();
  const auto text = tablet_file_.empty() ? std::nullopt : studio::kept(*files, tablet_file_);
  if (!text) return;
  const auto tablet = bench::read_tablet(*text);
  if (!tablet) return feed(bench::NotKept{tablet.error()}, now);
  bench_.tablet = *tablet;
  bench_.display.hand = tablet->hand;
}

void Driver::keep_tablet(const bench::Now& now) {
  if (tablet_file_.empty()) return;
  const auto files = disk::posix_files();
  const auto done = studio::keep(*files, tablet_file_, bench::written(bench_.tablet));
  if (!done) feed(bench::NotKept{done.error()}, now);
}

void Driver::feed(bench::Input input, const bench::Now& now) {
  bench::Effects effects = bench::step(bench_, std::move(input), now);
  journal_->append(std::move(effects.append));
  wake_at_ = effects.wake_at;
  redraw_ = redraw_ || effects.redraw;
  heard_.insert(heard_.end(), effects.heard.begin(), effects.heard.end());
  if (effects.keep_tablet) keep_tablet(now);
}

bool Driver::poll(const bench::Now& now) {
  if (retry_at_ && now.run_ms >= *retry_at_) {
    retry_at_.reset();
    journal_->retry();
  }
  std::vector<studio::News> all = journal_->poll();
  for (studio::News& news : all) take(std::move(news), now);
  auto found = watch_->poll();
  if (found) take(*std::move(found), now);
  if (look_at_ && now.run_ms >= *look_at_) look_around(now);
  if (journal_->stuck() && !retry_at_) retry_at_ = now.run_ms + retry_every_ms;
  if (!journal_->stuck()) retry_at_.reset();
  return !all.empty() || found;
}

void Driver::take(studio::News news, const bench::Now& now) {
  if (const auto* saved = std::get_if<studio::Saved>(&news)) {
    saved_ = saved->n;
    return feed(bench::Saved{saved->n, adrift() ? stand_in_folder_ : ""}, now);
  }
  if (const auto* failed = std::get_if<studio::Failed>(&news)) {
    last_failure_ = failed->reason;
    return feed(bench::SaveFailed{failed->reason}, now);
  }
  auto& read = std::get<studio::Read>(news);
  if (homecoming_ && homecoming_->take(read.place, read.answer)) return note_homecoming();
  watch_->take(read.place, std::move(read.answer));
  if (!has_read()) feed(bench::Reading{watch_->files_read(), watch_->files_to_come()}, now);
}

void Driver::note_homecoming() {
  for (std::string& sentence : homecoming_->said()) came_home_.push_back(std::move(sentence));
}

void Driver::take(studio::Found found, const bench::Now& now) {
  found.faults.insert(found.faults.end(), came_home_.begin(), came_home_.end());
  if (found.first)
    return feed(
        bench::Loaded{std::move(found.logs), std::move(found.damage), std::move(found.faults)},
        now);
  feed(bench::Arrived{std::move(found.logs), std::move(found.damage), std::move(found.files),
                      std::move(found.faults)},
       now);
}

void Driver::look_around(const bench::Now& now) {
  watch_->look();
  if (!looks_again_) return;
  look_at_ = now.run_ms + (bench_.batch.empty() ? look_when_idle_ms : look_when_open_ms);
}

bool Driver::settle(const bench::Now& now, std::chrono::milliseconds at_most) {
  const auto until = std::chrono::steady_clock::now() + at_most;
  for (;;) {
    const long rings = bell_.rings();
    poll(now);
    if (is_idle() && unsaved() == 0) return true;
    if (is_idle() && journal_->stuck()) return false;
    if (!bell_.wait_past(rings, until)) return false;
  }
}

void Driver::sleep_until(std::chrono::steady_clock::time_point then, const bench::Now& now) {
  for (;;) {
    const long rings = bell_.rings();
    poll(now);
    if (!bell_.wait_past(rings, then)) return;
  }
}

std::optional<std::int64_t> Driver::wake_at() const {
  if (!wake_at_ || !retry_at_) return wake_at_ ? wake_at_ : retry_at_;
  return std::min(*wake_at_, *retry_at_);
}

std::optional<std::int64_t> Driver::poll_at() const {
  const auto wake = wake_at();
  if (!wake || !look_at_) return wake ? wake : look_at_;
  return std::min(*wake, *look_at_);
}

}
