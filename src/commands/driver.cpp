#include "commands/driver.hpp"

#include "bench/record.hpp"
#include "session/check_value.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace commands {

namespace {
constexpr std::int64_t retry_every_ms = 30'000;
}

Setup usual_setup(const std::optional<std::string>& studio, const bench::Now& now) {
  Setup setup;
  const studio::Path state = studio::state_folder();
  setup.studio = studio ? studio::Path(*studio) : studio::default_studio();
  setup.adrift = studio::adrift_folder(state, setup.studio);
  setup.session = bench::fresh_id(now);
  setup.device = studio::device_id(state, now.fresh);
  return setup;
}

Driver::Driver(const Setup& setup, const bench::Now& now)
    : bench_(bench::start(setup.session, setup.device, setup.display, now)) {
  const auto wake = [bell = bell_, also = setup.wake] {
    bell.ring();
    if (also) also();
  };
  home_ = studio::open(setup.studio, setup.fault, wake);
  stand_in_folder_ = setup.adrift.string();
  if (!setup.adrift.empty()) stand_in_ = studio::open(setup.adrift, std::nullopt, wake);
  journal_ = std::make_unique<studio::Journal>(*home_, stand_in_.get());
  for (disk::Disk* disk : {home_.get(), stand_in_.get()}) {
    if (!disk) continue;
    disk->submit(disk::ReadFolder{studio::sessions_folder, studio::sessions_ending});
    ++readings_;
  }
}

void Driver::feed(const bench::Input& input, const bench::Now& now) {
  bench::Effects effects = bench::step(bench_, input, now);
  for (session::Line& line : effects.append) journal_->append(std::move(line));
  wake_at_ = effects.wake_at;
  redraw_ = redraw_ || effects.redraw;
}

bool Driver::poll(const bench::Now& now) {
  if (retry_at_ && now.run_ms >= *retry_at_) {
    retry_at_.reset();
    journal_->retry();
  }
  std::vector<studio::News> all = journal_->poll();
  const bool any = !all.empty();
  for (studio::News& news : all) take(std::move(news), now);
  if (journal_->stuck() && !retry_at_) retry_at_ = now.run_ms + retry_every_ms;
  if (!journal_->stuck()) retry_at_.reset();
  return any;
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
  const auto& read = std::get<studio::Read>(news);
  const bool adrift = read.place == studio::Place::adrift;
  studio::Reading more = studio::reading_of(read.answer, adrift ? studio::adrift_prefix : "");
  std::move(more.files.begin(), more.files.end(), std::back_inserter(reading_.files));
  std::move(more.faults.begin(), more.faults.end(), std::back_inserter(reading_.faults));
  if (--readings_ > 0) return;
  auto [files, faults] = std::exchange(reading_, {});
  feed(bench::Loaded{std::move(files), std::move(faults)}, now);
}

bool Driver::settle(const bench::Now& now, std::chrono::milliseconds at_most) {
  const auto until = std::chrono::steady_clock::now() + at_most;
  for (;;) {
    const long rings = bell_.rings();
    poll(now);
    if (readings_ == 0 && unsaved() == 0) return true;
    if (readings_ == 0 && journal_->stuck()) return false;
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

}
