#include "app/window_loop.hpp"

#include "app/frame.hpp"
#include "app/tones.hpp"
#include "commands/driver.hpp"
#include "screens/paint.hpp"
#include "window/awake.hpp"
#include "window/sound.hpp"
#include "window/window.hpp"

#include <algorithm>
#include <cstdio>
#include <map>

namespace app {

namespace {

using words::Say;

// ImGui needs so many frames after the last event until a press on a text field has had its effect.
constexpr int frames_to_settle = 3;
constexpr int most_frames_of_typing = 32;
constexpr std::int64_t leaving_ms = 5000;
constexpr double usual_px_per_mm = 96 / 25.4; // where the system reports no size: CSS's pixel

void complain(Say what, const std::vector<std::string>& args) {
  std::fprintf(stderr, "slabside: %s\n", words::say(what, args).c_str());
}

class Loop {
public:
  Loop(window::Window& window, window::Sound& sound, commands::Driver& driver,
       const WindowOptions& options, double px_per_mm)
      : window_(window), sound_(sound), driver_(driver), options_(options),
        reported_px_per_mm_(px_per_mm), px_per_mm_(px_per_mm) {}

  // Until the window is closed and all is saved, or cannot be, or 5 s have passed. How many frames
  // were drawn since it was ready.
  std::uint64_t run();

private:
  void take(const window::Event& event, std::uint64_t poll, const bench::Now& now);
  void key(const window::Key& key, std::uint64_t poll, const bench::Now& now);
  void fit_display(const bench::Now& now);
  void leave(const bench::Now& now);
  bool may_end(const bench::Now& now) const;
  std::optional<double> patience(const bench::Now& now) const;
  void draw(const bench::Now& now);
  void hear_typing(const bench::Now& now);
  void report();

  window::Window& window_;
  window::Sound& sound_;
  commands::Driver& driver_;
  const WindowOptions& options_;
  window::Awake awake_{words::say(Say::display_kept_awake), [](const std::string& answer) {
                         complain(Say::display_may_sleep, {answer});
                       }};
  double reported_px_per_mm_; // or as --mm has it, before the card corrects it
  double px_per_mm_;
  int settling_ = 0;                     // frames due although the bench has not changed
  std::map<std::string, double> scales_; // the tablet's, as they were last applied
  bool typed_ = false;                   // letters came since the last press
  bool stale_ = true;                    // the window shows something else than the bench
  std::optional<std::int64_t> leaving_until_;
  bool said_ready_ = false;
  std::uint64_t drawn_ = 0;
  std::optional<std::uint64_t> said_saved_;
};

// Every turn takes all that is in the queue and draws at most once, so a press shows in the first
// frame after it came. Without events and without a due Tick the loop sleeps.
std::uint64_t Loop::run() {
  bench::Now now = commands::real_now();
  fit_display(now);
  while (!may_end(now)) {
    const window::Poll poll = window_.wait(patience(now));
    now = commands::real_now();
    for (const window::Event& event : poll.events) take(event, poll.number, now);
    driver_.poll(now);
    if (driver_.wake_at() && now.run_ms >= *driver_.wake_at()) driver_.feed(bench::Tick{}, now);
    if (driver_.bench().tablet.scales != scales_) fit_display(now);
    for (const bench::Heard heard : driver_.take_heard()) sound_.play(tone_of(heard));
    awake_.keep(driver_.bench().folded &&
                driver_.bench().folded->progress == session::Progress::open);
    stale_ = driver_.take_redraw() || stale_;
    if (stale_ || settling_ > 0) draw(now);
    report();
  }
  return drawn_;
}

void Loop::take(const window::Event& event, std::uint64_t poll, const bench::Now& now) {
  if (std::holds_alternative<window::Resized>(event)) return fit_display(now);
  if (std::holds_alternative<window::CloseAsked>(event)) return leave(now);
  if (std::holds_alternative<window::Exposed>(event)) {
    stale_ = true;
    return;
  }
  settling_ = frames_to_settle;
  if (std::holds_alternative<window::Character>(event)) typed_ = true;
  if (const auto* k = std::get_if<window::Key>(&event)) return key(*k, poll, now);
  const auto* p = std::get_if<window::Pointer>(&event);
  if (!p || leaving_until_) return; // after `left` a session has no further lines
  if (p->phase == window::Pointer::down) hear_typing(now);
  constexpr bench::Pointer::Phase phases[] = {bench::Pointer::down, bench::Pointer::move,
                                              bench::Pointer::up, bench::Pointer::lost};
  driver_.feed(
      bench::Pointer{phases[p->phase], {p->x / px_per_mm_, p->y / px_per_mm_}, now.run_ms, poll, 0},
      now);
}

// A text field answers some frames after its letters came, a pad at once: after a stall the letters
// before a press must not come behind it.
void Loop::hear_typing(const bench::Now& now) {
  if (!std::exchange(typed_, false)) return;
  for (int frame = 0; frame < most_frames_of_typing && window::input_waits(); ++frame) draw(now);
}

// Letters belong to the text field that has them.
void Loop::key(const window::Key& key, std::uint64_t poll, const bench::Now& now) {
  if (leaving_until_ || (key.down && window::text_is_typed())) return;
  driver_.feed(bench::Key{key.name, key.down, now.run_ms, poll}, now);
}

// The window may have another size or have come to another monitor, or a card was held to the
// glass.
void Loop::fit_display(const bench::Now& now) {
  const window::Extent size = window_.size();
  if (size.w <= 0 || size.h <= 0) return;
  const bench::Tablet& tablet = driver_.bench().tablet;
  const std::string monitor = window_.monitor();
  if (!options_.mm) reported_px_per_mm_ = window_.px_per_mm().value_or(reported_px_per_mm_);
  scales_ = tablet.scales;
  const double px_per_mm = reported_px_per_mm_ / scale_of(tablet, monitor);
  if (px_per_mm != px_per_mm_ && screens::load_faces(px_per_mm)) {
    px_per_mm_ = px_per_mm;
    window::rebuild_font_texture();
  }
  bench::Display display = display_of(size, px_per_mm_, options_.hand.value_or(tablet.hand));
  display.monitor = monitor;
  driver_.feed(bench::Resized{std::move(display)}, now);
}

void Loop::leave(const bench::Now& now) {
  if (leaving_until_) return;
  driver_.feed(bench::Leaving{}, now);
  leaving_until_ = now.run_ms + leaving_ms;
}

bool Loop::may_end(const bench::Now& now) const {
  const bool settled = driver_.unsaved() == 0 || driver_.stuck();
  return leaving_until_ && (settled || now.run_ms >= *leaving_until_);
}

std::optional<double> Loop::patience(const bench::Now& now) const {
  if (stale_ || settling_ > 0) return 0;
  auto until = driver_.poll_at();
  if (leaving_until_) until = std::min(until.value_or(*leaving_until_), *leaving_until_);
  if (!until) return std::nullopt;
  return static_cast<double>(std::max<std::int64_t>(*until - now.run_ms, 0)) / 1000;
}

void Loop::draw(const bench::Now& now) {
  stale_ = false;
  drawn_ += said_ready_;
  settling_ = std::max(settling_ - 1, 0);
  if (window_.size() == window::Extent{}) return; // minimised; an Exposed will come
  const bench::View view = bench::view(driver_.bench(), now);
  window_.begin_frame();
  const std::vector<bench::Text> typed = app::draw(view, px_per_mm_);
  window_.end_frame(ground(view));
  if (more_letters() || window::input_waits()) settling_ = frames_to_settle;
  if (leaving_until_) return;
  for (const bench::Text& text : typed) driver_.feed(text, now);
  stale_ = driver_.take_redraw();
}

void Loop::report() {
  if (!options_.report) return;
  if (!said_ready_ && driver_.bench().loaded && !stale_) {
    std::puts("ready");
    said_ready_ = true;
  }
  if (driver_.saved() != said_saved_) {
    said_saved_ = driver_.saved();
    std::printf("saved %llu\n", static_cast<unsigned long long>(*said_saved_));
  }
  std::fflush(stdout);
}

std::string behind(const std::string& sentence) { return sentence.empty() ? "" : " " + sentence; }

int farewell(const commands::Driver& driver, const commands::Setup& setup, bool report,
             std::uint64_t drawn) {
  for (const std::string& sentence : driver.came_home())
    std::fprintf(stderr, "slabside: %s\n", sentence.c_str());
  const std::size_t unsaved = driver.unsaved();
  if (unsaved > 0)
    complain(Say::left_unsaved,
             {std::to_string(unsaved), setup.studio.string(), behind(driver.last_failure())});
  else if (driver.adrift())
    complain(Say::play_adrift, {setup.adrift.string()});
  if (report && unsaved > 0) std::printf("unsaved %zu\n", unsaved);
  if (report) std::printf("closed\ndrawn %llu\n", static_cast<unsigned long long>(drawn));
  std::fflush(stdout);
  return unsaved > 0 ? 1 : 0;
}

// No window any more, but a disk and lines on their way to it. Nothing of the bench is asked for
// again: a session that ends so has no `left`, and its reader says that it was stopped.
void finish_without_display(commands::Driver* driver) {
  complain(Say::display_lost, {});
  if (!driver) return;
  driver->settle(commands::real_now(), std::chrono::milliseconds(leaving_ms));
  if (driver->unsaved() > 0)
    complain(Say::display_lost_unsaved,
             {std::to_string(driver->unsaved()), behind(driver->last_failure())});
}

double start_px_per_mm(const window::Window& window, const WindowOptions& options) {
  if (!options.mm) return window.px_per_mm().value_or(usual_px_per_mm);
  const window::Extent size = window.size();
  return std::min(size.w / options.mm->w, size.h / options.mm->h);
}

}

int run_window(const WindowOptions& options) {
  window::Sound sound;                // before any thread but this
  commands::Driver* saving = nullptr; // once there is one
  auto window = window::Window::open({"Slabside", options.size, options.full_screen,
                                      [&saving] { finish_without_display(saving); }});
  if (!window) {
    complain(Say::window_not_opened, {window.error()});
    return 1;
  }
  const double px_per_mm = start_px_per_mm(*window, options);
  if (const auto faces = screens::load_faces(px_per_mm); !faces) {
    complain(faces.error().what, faces.error().args);
    return 1;
  }

  const bench::Now now = commands::real_now();
  commands::Setup setup = commands::usual_setup(options.studio, now);
  setup.fault = options.fault;
  setup.display = display_of(window->size(), px_per_mm, bench::Hand::left);
  setup.wake = window::Window::wake;
  commands::Driver driver(setup, now); // ends before the window does: its threads call wake
  saving = &driver;
  if (options.night) driver.feed(bench::Tap{{bench::PadKind::night, ""}}, now);

  const std::uint64_t drawn = Loop(*window, sound, driver, options, px_per_mm).run();
  saving = nullptr;
  return farewell(driver, setup, options.report, drawn);
}

}
