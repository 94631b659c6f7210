#include "app/window_loop.hpp"

#include "app/frame.hpp"
#include "app/loop.hpp"
#include "bench/pads_top_bar.hpp"
#include "commands/folders.hpp"
#include "screens/paint.hpp"
#include "words/app_says.hpp"
#include "words/commands_says.hpp"

#include <algorithm>
#include <cstdio>
#include <filesystem>

namespace app {

namespace {

using Say = words::AppSay;

void complain(words::Sentence what, const words::Args& args) {
  std::fprintf(stderr, "slabside: %s\n", words::say(what, args).c_str());
}

// Says on stdout what happens, for tests.
class Reporter {
public:
  Reporter(const commands::EffectRunner& runner, const Loop& loop) : runner_(runner), loop_(loop) {}

  void report() {
    if (!drawn_when_ready_ && runner_.bench().loaded && !loop_.is_stale()) {
      std::puts("ready");
      drawn_when_ready_ = loop_.drawn();
    }
    if (runner_.saved() != said_saved_) {
      said_saved_ = runner_.saved();
      std::printf("saved %llu\n", static_cast<unsigned long long>(*said_saved_));
    }
    std::fflush(stdout);
  }

  std::uint64_t drawn_since_ready() const {
    return drawn_when_ready_ ? loop_.drawn() - *drawn_when_ready_ : 0;
  }

private:
  const commands::EffectRunner& runner_;
  const Loop& loop_;
  std::optional<std::uint64_t> drawn_when_ready_;
  std::optional<std::uint64_t> said_saved_;
};

// In seconds: until something is due, if nothing comes before.
std::optional<double> patience(const Loop& loop, const bench::Now& now) {
  if (loop.wants_render()) return 0;
  const auto until = loop.process_at();
  if (!until) return std::nullopt;
  return static_cast<double>(std::max<std::int64_t>(*until - now.run_ms, 0)) / 1000;
}

// Until the window is closed and all is saved, or cannot be, or 5 s have passed. How many frames
// were drawn since it was ready. Every turn takes all that is in the queue and draws at most once,
// so a press shows in the first frame after it came. Without events and without a due Tick the loop
// sleeps.
std::uint64_t run(window::Window& window, commands::EffectRunner& runner, Loop& loop,
                  bool reports) {
  Reporter reporter(runner, loop);
  bench::Now now = commands::real_now();
  loop.begin(now);
  while (!loop.may_end(now)) {
    const window::Poll poll = window.wait(patience(loop, now));
    now = commands::real_now();
    loop.process_input(poll, now);
    loop.render(now);
    if (reports) reporter.report();
  }
  return reporter.drawn_since_ready();
}

std::string behind(const std::optional<words::Error>& failure) {
  return failure ? " " + words::message(*failure) : "";
}

int farewell(const commands::EffectRunner& runner, const commands::Setup& setup, bool report,
             std::uint64_t drawn) {
  for (const words::Error& said : runner.came_home()) complain(said.what, said.args);
  if (const auto& not_kept = runner.bench().notice.error) complain(not_kept->what, not_kept->args);
  const std::size_t unsaved = runner.unsaved();
  if (unsaved > 0)
    complain(Say::left_unsaved,
             {std::to_string(unsaved), setup.studio.string(), behind(runner.last_failure())});
  else if (runner.on_fallback())
    complain(words::CommandsSay::play_fallback, {setup.fallback.string()});
  if (runner.is_handing_on()) complain(Say::left_photo, {});
  if (report && unsaved > 0) std::printf("unsaved %zu\n", unsaved);
  if (report) std::printf("closed\ndrawn %llu\n", static_cast<unsigned long long>(drawn));
  std::fflush(stdout);
  return unsaved > 0 ? 1 : 0;
}

// No window any more, but a disk and lines on their way to it. Nothing of the bench is asked for
// again: a session that ends so has no `left`, and its reader says that it was stopped.
void finish_without_display(commands::EffectRunner* runner) {
  complain(Say::display_lost, {});
  if (!runner) return;
  runner->settle(commands::real_now(), std::chrono::milliseconds(leaving_ms));
  if (runner->unsaved() > 0)
    complain(Say::display_lost_unsaved,
             {std::to_string(runner->unsaved()), behind(runner->last_failure())});
}

double start_px_per_mm(const window::Window& window, const WindowOptions& options) {
  if (!options.mm) return window.px_per_mm().value_or(usual_px_per_mm);
  const window::Extent size = window.size();
  return std::min(size.w / options.mm->w, size.h / options.mm->h);
}

// A packed studio is named: it is not the one that is opened every day.
std::string title_of(const WindowOptions& options) {
  const auto name = options.pack ? std::filesystem::path(*options.pack).stem().string() : "";
  return name.empty() ? "Slabside" : "Slabside: " + name;
}

}

int run_window(const WindowOptions& options) {
  window::Sound sound;                      // before any thread but this
  commands::EffectRunner* saving = nullptr; // once there is one
  auto window = window::Window::open({title_of(options), options.size, options.full_screen,
                                      [&saving] { finish_without_display(saving); },
                                      words::say(Say::window_wrong_library)});
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
  commands::Setup setup = commands::usual_setup(options.studio, now, options.as_studio);
  setup.fault = options.fault;
  setup.display = display_of(window->size(), px_per_mm, bench::Hand::left);
  setup.opens_on = bench::Screen::today;
  setup.language = options.language;
  setup.viewer = "xdg-open";
  setup.full_screen = options.full_screen;
  setup.wake = window::Window::wake;
  commands::EffectRunner runner(setup, now); // ends before the window does: its threads call wake
  saving = &runner;
  if (options.night) runner.feed(bench::Tap{{bench::TopBarPad::night, ""}}, now);

  const Manner manner{options.mm ? std::optional(px_per_mm) : std::nullopt, options.hand};
  Loop loop(*window, sound, runner, manner, px_per_mm);
  const std::uint64_t drawn = run(*window, runner, loop, options.report);
  saving = nullptr;
  return farewell(runner, setup, options.report, drawn);
}

}
