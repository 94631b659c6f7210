#include "app/browser_program.hpp"

#include "app/frame.hpp"
#include "app/loop.hpp"
#include "app/told.hpp"
#include "bench/pads_top_bar.hpp"
#include "bench/record.hpp"
#include "commands/browser_paper_desk.hpp"
#include "commands/browser_picture_desk.hpp"
#include "commands/browser_told_desk.hpp"
#include "commands/clock.hpp"
#include "disk/browser.hpp"
#include "screens/browser_face_files.hpp"
#include "screens/paint.hpp"
#include "session/check_value.hpp"
#include "window/browser.hpp"
#include "words/app_says.hpp"
#include "words/studio_says.hpp"

#include <emscripten/emscripten.h>

#include <algorithm>

namespace app {

namespace {

using Say = words::AppSay;

const std::string device_name = "slabside.device", tablet_name = "slabside.tablet";

bool is_device_id(const std::string& text) {
  return text.size() == 4 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

// As a computer keeps its own: four digits from the first visit on. Where they cannot be kept,
// fresh ones for this visit.
std::string device_id(const bench::Now& now) {
  const auto kept = disk::small_text(device_name);
  if (kept && is_device_id(*kept)) return *kept;
  const std::string fresh = session::to_hex(now.fresh()).substr(4);
  disk::keep_small_text(device_name, fresh);
  return fresh;
}

words::Result<void> keep_tablet(const std::string& text) {
  if (const auto why = disk::keep_small_text(tablet_name, text))
    return words::failure(words::StudioSay::file_not_kept, {tablet_name, *why});
  return {};
}

// The first time as the tablet is set for everything.
std::optional<std::string> kept_tablet() {
  if (auto kept = disk::small_text(tablet_name)) return kept;
  bench::Tablet first;
  first.motion = !window::prefers_less_motion();
  return bench::written(first);
}

commands::Storage in_the_browser(std::function<void()> wake) {
  commands::Storage storage;
  storage.home = disk::open_browser_disk(wake);
  storage.hands_on = true;
  storage.show_where_handed_on = window::show_keeping;
  storage.papers = commands::browser_paper_desk(wake);
  storage.pictures = commands::browser_picture_desk(wake);
  storage.told = commands::browser_told_desk(std::move(wake));
  storage.tablet = kept_tablet;
  storage.keep_tablet = keep_tablet;
  return storage;
}

commands::Sitting sitting(const bench::Display& display, const bench::Now& now) {
  commands::Sitting out;
  out.session = bench::fresh_id(now);
  out.device = device_id(now);
  out.display = display;
  out.opens_on = bench::Screen::today;
  out.wake = window::Window::wake;
  return out;
}

// Everything that lives as long as the page.
struct Everything {
  window::Window window;
  window::Sound sound;
  commands::EffectRunner runner;
  Loop loop;
  std::string told_last = {};

  Everything(window::Window opened, double px_per_mm, const bench::Now& now)
      : window(std::move(opened)),
        runner(sitting(display_of(window.size(), px_per_mm, bench::Hand::left), now),
               in_the_browser, now),
        loop(window, sound, runner, {}, px_per_mm) {
    loop.begin(now);
    if (window::prefers_dark()) runner.feed(bench::Tap{{bench::TopBarPad::night, ""}}, now);
  }

  void process_input() {
    const bench::Now now = commands::real_now();
    loop.process_input(window.wait(0), now);
    call_again(now);
  }

  void render() {
    const bench::Now now = commands::real_now();
    const auto drawn = loop.drawn();
    loop.render(now);
    if (loop.drawn() > drawn) tell(now);
    if (screens::met_unknown_letter()) screens::fetch_faces();
    if (loop.drawn() > 0) window::show_canvas(!runner.bench().loaded);
    call_again(now);
  }

  void tell(const bench::Now& now) {
    const bench::Bench& bench = runner.bench();
    const bool open = bench.folded && bench.folded->progress == session::Progress::open;
    std::string shown = told(bench::view(bench, now), open, loop.px_per_mm());
    if (shown == told_last) return;
    window::tell(shown);
    told_last = std::move(shown);
  }

  void look() {
    const bench::Now now = commands::real_now();
    runner.look_soon(now);
    loop.process_input(window.wait(0), now);
    call_again(now);
  }

  void handed_on(std::int64_t at) {
    const bench::Now now = commands::real_now();
    runner.feed(bench::HandedOn{at}, now);
    loop.process_input(window.wait(0), now);
    call_again(now);
  }

  // Nobody knows what is saved until the store says so.
  void store_emptied() {
    process_input(); // what was answered before is no news
    const bench::Now now = commands::real_now();
    if (runner.saved()) runner.feed(bench::SaveFailed{{Say::store_emptied, {}}, true}, now);
    call_again(now);
  }

  void store_whole() {
    if (runner.saved() && !runner.stuck())
      runner.feed(bench::Saved{*runner.saved(), ""}, commands::real_now());
    process_input();
  }

  void call_again(const bench::Now& now) {
    if (loop.wants_render()) window::ask_to_show();
    const auto at = loop.process_at();
    window::hear_in(at ? std::optional(static_cast<double>(*at - now.run_ms) / 1000)
                       : std::nullopt);
  }
};

std::unique_ptr<Everything> all; // the page outlives main()

bool give_up(const words::Error& error) {
  window::give_up(words::message(error));
  return false;
}

}

bool begin_in_browser() {
  if (const auto language = words::language_for(window::page_language())) words::say_in(*language);
  auto window = window::Window::open({});
  if (!window) return give_up({Say::window_not_opened, {window.error()}});
  const double px_per_mm = window->px_per_mm().value_or(usual_px_per_mm);
  if (const auto faces = screens::load_faces(px_per_mm); !faces) return give_up(faces.error());
  all = std::make_unique<Everything>(*std::move(window), px_per_mm, commands::real_now());
  window::take_turns({[] { all->process_input(); }, [] { all->render(); }});
  all->process_input();
  return true;
}

}

extern "C" {

// The page has put files into the store.
EMSCRIPTEN_KEEPALIVE void slabside_look() {
  if (app::all) app::all->look();
}

// All that was tapped so far is in the store.
EMSCRIPTEN_KEEPALIVE int slabside_is_saved() { return app::all && app::all->runner.unsaved() == 0; }

// A pack was handed on, or a copy made, of all that was kept then: ms since 1970.
EMSCRIPTEN_KEEPALIVE void slabside_handed_on(double at) {
  if (app::all) app::all->handed_on(static_cast<std::int64_t>(at));
}

// Of browser_store.js: somebody has emptied the store, and all that was in it is there again.
EMSCRIPTEN_KEEPALIVE void slabside_store_emptied() {
  if (app::all) app::all->store_emptied();
}
EMSCRIPTEN_KEEPALIVE void slabside_store_whole() {
  if (app::all) app::all->store_whole();
}
}
