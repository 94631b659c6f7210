#include "commands/effect_runner.hpp"

#include "session/told.hpp"
#include "words/calendar.hpp"
#include "words/lists.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace commands {

namespace {
constexpr std::int64_t soonest_retry_ms = 30'000, latest_retry_ms = 600'000;
constexpr std::int64_t look_when_open_ms = 5'000;
constexpr std::int64_t look_when_idle_ms = 60'000;
}

EffectRunner::EffectRunner(const Sitting& sitting, const OpenStorage& open, const bench::Now& now)
    : bench_(bench::start(sitting.session, sitting.device, sitting.display, now)),
      hears_failure_(sitting.hears_failure), looks_again_(sitting.looks_again) {
  const auto wake = [bell = bell_, also = sitting.wake] {
    bell.ring();
    if (also) also();
  };
  bench_.screen = sitting.opens_on;
  bench_.full_screen = sitting.full_screen;
  storage_ = open(wake);
  bench_.sharing.folder = storage_.told.folder;
  bench_.sharing.by_hand = storage_.told.tell && storage_.told.folder.empty();
  bench_.hands_on = storage_.hands_on;
  bench_.paper.folder = storage_.papers.folder;
  bench_.paper.in_browser = storage_.papers.in_browser;
  bench_.photos.there = storage_.pictures.ask != nullptr;
  bench_.photos.picks = storage_.pictures.picks;
  bench_.photos.folder = storage_.pictures.folder;
  disk::Disk &home = *storage_.home, *fallback = storage_.fallback.get();
  journal_ = std::make_unique<studio::Journal>(home, fallback);
  if (fallback) homecoming_.emplace(home);
  watch_ = std::make_unique<studio::Watch>(home, fallback, sitting.session, wake);
  learner_ = std::make_unique<studio::Learner>(wake);
  remember(now);
  const auto chosen = sitting.language ? sitting.language : bench_.tablet.language;
  if (bench_.spoken = words::spoken(); chosen && chosen != bench_.spoken) speak(*chosen, now);
  look_around(now);
}

void EffectRunner::remember(const bench::Now& now) {
  const auto text = storage_.tablet ? storage_.tablet() : std::nullopt;
  if (!text) return;
  const auto tablet = bench::read_tablet(*text);
  if (!tablet) return feed(bench::NotKept{tablet.error()}, now);
  bench_.tablet = *tablet;
  bench_.display.hand = tablet->hand;
  if (bench_.full_screen) bench_.full_screen = *bench_.full_screen || tablet->full_screen;
}

void EffectRunner::speak(words::Language language, const bench::Now& now) {
  words::say_in(language);
  feed(bench::Spoken{language}, now);
}

void EffectRunner::keep_tablet(const bench::Now& now) {
  if (!storage_.keep_tablet) return;
  const auto done = storage_.keep_tablet(bench::written(bench_.tablet));
  if (!done) feed(bench::NotKept{done.error()}, now);
}

void EffectRunner::feed(bench::Input input, const bench::Now& now) {
  const std::string before = bench_.batch;
  bench::Effects effects = bench::step(bench_, std::move(input), now);
  // What others have written of it is wanted now, and not only at the next look.
  const bool opened = !bench_.batch.empty() && bench_.batch != before;
  if (looks_again_ && opened) look_at_ = now.run_ms;
  journal_->append(std::move(effects.append));
  wake_at_ = effects.wake_at;
  redraw_ = redraw_ || effects.redraw;
  cues_.insert(cues_.end(), effects.cues.begin(), effects.cues.end());
  study_ = effects.study;
  if (effects.learn) {
    fits_to_tell_.push_back(effects.learn->to_tell);
    learner_->give(std::move(effects.learn->problem));
  }
  if (effects.speak) speak(*effects.speak, now);
  if (effects.keep_tablet) keep_tablet(now);
  if (effects.tell && storage_.told.tell) {
    const std::string day = words::date_of(words::day_of(now.wall_ms, now.utc_offset_min));
    feed(bench::ToldWritten{storage_.told.tell(*effects.tell, day)}, now);
  }
  if (storage_.pictures.ask)
    for (bench::PhotoWanted& wanted : effects.photos) storage_.pictures.ask(std::move(wanted));
  if (effects.paper) hand_on(*effects.paper, now);
  if (effects.find_told && storage_.told.find) find_told(now);
  if (effects.hand_on && storage_.show_where_handed_on) storage_.show_where_handed_on();
}

void EffectRunner::find_told(const bench::Now& now) {
  storage_.told.find([this](const paint::ToldRange& told) { return is_own(told, bench_.logs); },
                     [this](ToldFiles::Found found) { found_told_ = {std::move(found)}; });
  take_found_told(now);
}

bool EffectRunner::take_found_told(const bench::Now& now) {
  auto found = std::exchange(found_told_, std::nullopt);
  if (found) feed(*std::move(found), now);
  return found.has_value();
}

void EffectRunner::hand_on(const bench::PaperWanted& wanted, const bench::Now& now) {
  if (!storage_.papers.write) return;
  if (!storage_.papers.get_ready) return put_on_paper(wanted, now);
  storage_.papers.get_ready(wanted, [this, wanted, now] { put_on_paper(wanted, now); });
}

void EffectRunner::put_on_paper(const bench::PaperWanted& wanted, const bench::Now& now) {
  auto file = handed_file(bench_, wanted, now);
  if (file) return storage_.papers.write(*std::move(file));
  feed(bench::PaperWritten{tl::make_unexpected(std::move(file.error()))}, now);
}

// True if there was anything.
bool EffectRunner::take_all(const std::function<std::optional<bench::Input>()>& poll,
                            const bench::Now& now) {
  if (!poll) return false;
  bool any = false;
  while (auto news = poll()) {
    feed(*std::move(news), now);
    any = true;
  }
  return any;
}

void EffectRunner::want_images(std::vector<WantedImage> images) {
  if (storage_.pictures.want) storage_.pictures.want(std::move(images));
}

std::vector<DrawnImage> EffectRunner::take_images() {
  if (!storage_.pictures.take_images) return {};
  return storage_.pictures.take_images();
}

bool EffectRunner::poll(const bench::Now& now) {
  if (retry_at_ && now.run_ms >= *retry_at_) {
    retry_at_.reset();
    journal_->retry();
  }
  std::vector<studio::News> all = journal_->poll();
  for (studio::News& news : all) take(std::move(news), now);
  auto found = watch_->poll();
  if (found) take(*std::move(found), now);
  auto fit = learner_->poll();
  if (fit) {
    const bool to_tell = fits_to_tell_.front();
    fits_to_tell_.pop_front();
    feed(bench::Fitted{*std::move(fit), to_tell}, now);
  }
  const bool papers = take_all(storage_.papers.poll, now);
  const bool pictures = take_all(storage_.pictures.poll, now);
  const bool friends = take_found_told(now);
  const bool studies = study_;
  if (studies) feed(bench::Study{}, now);
  if (look_at_ && now.run_ms >= *look_at_) look_around(now);
  if (journal_->stuck() && !retry_at_) {
    retry_at_ = now.run_ms + retry_after_ms_;
    retry_after_ms_ = std::min(2 * retry_after_ms_, latest_retry_ms);
  }
  if (!journal_->stuck()) retry_at_.reset();
  return !all.empty() || found || fit || papers || pictures || friends || studies;
}

void EffectRunner::take(studio::News news, const bench::Now& now) {
  std::visit(words::Overloaded{
                 [&](const studio::Saved& saved) {
                   saved_ = saved.n;
                   retry_after_ms_ = soonest_retry_ms;
                   feed(bench::Saved{saved.n, on_fallback() ? storage_.fallback_folder : ""}, now);
                 },
                 [&](const studio::Failed& failed) {
                   last_failure_ = failed.reason;
                   if (hears_failure_) hears_failure_(failed.reason);
                   if (failed.nothing_is_safe) saved_.reset();
                   feed(bench::SaveFailed{failed.reason, failed.nothing_is_safe}, now);
                 },
                 [&](studio::Read& read) { take(read, now); },
             },
             news);
}

void EffectRunner::take(studio::Read& read, const bench::Now& now) {
  // An answer to a copy that comes home is not for the watch, which would take it for another's.
  if (homecoming_ && homecoming_->take(read.place, read.answer)) return note_homecoming();
  watch_->take(read.place, std::move(read.answer));
  if (!has_read()) feed(bench::Reading{watch_->files_read(), watch_->files_to_come()}, now);
}

void EffectRunner::note_homecoming() {
  for (words::Error& said : homecoming_->said()) came_home_.push_back(std::move(said));
}

void EffectRunner::take(studio::Found found, const bench::Now& now) {
  found.faults.insert(found.faults.end(), came_home_.begin(), came_home_.end());
  if (found.first)
    return feed(
        bench::Loaded{std::move(found.logs), std::move(found.damage), std::move(found.faults)},
        now);
  feed(bench::Arrived{std::move(found.logs), std::move(found.damage), std::move(found.files),
                      std::move(found.faults)},
       now);
}

void EffectRunner::look_around(const bench::Now& now) {
  watch_->look();
  if (!looks_again_) return;
  look_at_ = now.run_ms + (bench_.batch.empty() ? look_when_idle_ms : look_when_open_ms);
}

bool EffectRunner::settle(const bench::Now& now, std::chrono::milliseconds at_most) {
  const auto until = std::chrono::steady_clock::now() + at_most;
  for (;;) {
    const long rings = bell_.rings(); // before polling, so that no ring is slept through
    poll(now);
    if (is_idle() && unsaved() == 0) return true;
    if (is_idle() && journal_->stuck()) return false;
    if (study_) continue;
    if (!bell_.wait_past(rings, until)) return false;
  }
}

void EffectRunner::sleep_until(std::chrono::steady_clock::time_point then, const bench::Now& now) {
  for (;;) {
    const long rings = bell_.rings();
    poll(now);
    if (!study_ && !bell_.wait_past(rings, then)) return;
    if (std::chrono::steady_clock::now() >= then) return;
  }
}

std::optional<std::int64_t> EffectRunner::wake_at() const {
  if (!wake_at_ || !retry_at_) return wake_at_ ? wake_at_ : retry_at_;
  return std::min(*wake_at_, *retry_at_);
}

std::optional<std::int64_t> EffectRunner::poll_at() const {
  if (study_) return 0;
  const auto wake = wake_at();
  if (!wake || !look_at_) return wake ? wake : look_at_;
  return std::min(*wake, *look_at_);
}

}
