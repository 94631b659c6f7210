// A pair of hands without a window: taps pads at their places, lets time pass, keeps what was to
// be saved.
#pragma once

#include "bench/record.hpp"
#include "bench/view.hpp"

#include <doctest/doctest.h>

namespace hands {

using namespace bench;

struct Hands {
  std::int64_t wall = 1795617120000; // 2026-11-25 14:32 UTC
  std::int64_t run = 5000000;
  std::uint64_t poll = 0;
  std::uint32_t ids = 0x10000000;
  Bench b;
  std::vector<session::Line> lines;
  std::optional<std::int64_t> wake;
  std::vector<SoundCue> cues;

  explicit Hands(Display display = {}) : b(start("c41e08d5", "a83f", display, now())) {
    give(Loaded{});
  }

  Now now() {
    return {wall, run, 60, [this] { return ++ids; }};
  }
  void give(Input input) {
    const Effects effects = step(b, std::move(input), now());
    lines.insert(lines.end(), effects.append.begin(), effects.append.end());
    wake = effects.wake_at;
    cues.insert(cues.end(), effects.cues.begin(), effects.cues.end());
  }
  void pass_ms(std::int64_t ms) {
    wall += ms;
    run += ms;
  }
  void wait(double seconds) {
    pass_ms(static_cast<std::int64_t>(seconds * 1000));
    give(Tick{});
  }
  // The same studio, in a window that opens later.
  void open_after(const Hands& before, double after_s, Screen on) {
    wall = before.wall + static_cast<std::int64_t>(after_s * 1000);
    session::Log log = before.b.logs.front();
    log.session = "0ther";
    b.screen = on;
    give(Loaded{{log}, {}, {}});
  }
  Rect box(const std::string& name) {
    const auto id = pad_named(name);
    REQUIRE_MESSAGE(id, name);
    const Layout l = layout(b);
    const Pad* pad = pad_of(l, *id);
    REQUIRE_MESSAGE(pad, name);
    return pad->box;
  }
  bool shows(const std::string& name) {
    const Layout l = layout(b);
    return pad_of(l, *pad_named(name)) != nullptr;
  }
  void point(Pointer::Phase phase, Point at, int finger = 0) {
    give(Pointer{phase, at, run, ++poll, finger});
  }
  void down(const std::string& name) { point(Pointer::down, box(name).centre()); }
  void tap(const std::string& name) {
    const Point at = box(name).centre();
    point(Pointer::down, at);
    pass_ms(90);
    point(Pointer::up, at);
    pass_ms(210);
  }
  void type(const std::string& digits) {
    for (const char c : digits) tap(c == '.' ? "point" : std::string("digit ") + c);
    tap("enter");
  }
  // A pigment more in the plan, or one less.
  void choose(const std::string& pigment) {
    if (!shows("pigment " + pigment) && shows("another_pigment")) tap("another_pigment");
    b.plan.search = pigment;
    tap("pigment " + pigment);
    if (shows("leave")) tap("leave");
    b.plan.search.clear();
  }
  // 12 g of cobalt blue on the slab.
  void begin() {
    choose("pb28");
    tap("weigh");
    type("12");
    tap("begin");
  }
  // Bound, mulled and off the slab.
  void gather() {
    begin();
    for (const char* pad : {"another", "amount weigh", "add gum_12"}) tap(pad);
    type("9");
    for (const char* pad : {"pass", "pass", "pass", "gather"}) tap(pad);
  }
  SlabView slab() { return std::get<SlabView>(view(b, now()).screen); }
  template <class E>
  int count() const {
    int n = 0;
    for (const session::Line& line : lines) n += std::holds_alternative<E>(line.event);
    return n;
  }
};

inline const std::vector<Size>& displays() {
  static const std::vector<Size> sizes{{218, 136}, {237, 148}, {280, 175}, {136, 218}, {148, 237}};
  return sizes;
}

}
