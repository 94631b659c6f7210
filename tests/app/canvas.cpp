// What the window shows is drawn in parts, each from the picture before; over a whole batch it is
// what would be drawn from nothing.
#include "window/canvas.hpp"

#include "app/frame.hpp"
#include "screens/paint.hpp"
#include "window/offscreen.hpp"

#include <doctest/doctest.h>

namespace {

constexpr window::Extent size{1280, 800};
constexpr double px_per_mm = 1280 / 218.0;

struct Table {
  std::uint32_t ids = 4096;
  std::int64_t wall = 1795617120000, run = 5000000;
  bench::Bench bench = bench::start("1000", "a83f", {{218, 136}}, now());
  window::Offscreen offscreen = opened();
  window::Canvas canvas;
  std::int64_t drawn = 0; // pixels, by the last look

  Table() { give(bench::Loaded{}); }

  static window::Offscreen opened() {
    auto out = window::Offscreen::open(size);
    REQUIRE_MESSAGE(out.has_value(), out.error());
    REQUIRE(screens::load_faces(px_per_mm).has_value());
    return *std::move(out);
  }

  bench::Now now() {
    return {wall, run, 60, [this] { return ++ids; }};
  }
  void give(bench::Input input) { bench::step(bench, std::move(input), now()); }
  void pass_ms(std::int64_t ms) {
    wall += ms;
    run += ms;
  }

  void begin(const bench::View& view) {
    offscreen.begin_frame();
    app::draw(view, px_per_mm);
    if (!screens::wants_letters()) return;
    window::drop_frame();
    app::more_letters();
    begin(view);
  }

  // A field of ImGui's shows from its second frame on, so each is drawn twice.
  void look() {
    const bench::View view = bench::view(bench, now());
    drawn = 0;
    for (int i = 0; i < 2; ++i) {
      begin(view);
      for (const window::Area& area : canvas.draw(size, app::ground(view))) drawn += area.pixels();
    }
    const window::Picture in_parts = window::read_pixels(size);
    begin(view);
    REQUIRE(offscreen.end_frame(app::ground(view)).rgb == in_parts.rgb);
  }

  // A finger comes, goes, and the marker glides; each is looked at.
  void tap(const std::string& name) {
    CAPTURE(name);
    const auto id = bench::pad_named(name);
    REQUIRE(id);
    const bench::Layout layout = bench::layout(bench);
    const bench::Pad* pad = bench::pad_of(layout, *id);
    REQUIRE(pad);
    const auto finger = [&](bench::Pointer::Phase phase) {
      give(bench::Pointer{phase, pad->box.centre(), run, static_cast<std::uint64_t>(run), 0});
      look();
    };
    pass_ms(700);
    finger(bench::Pointer::down);
    pressed = drawn;
    pass_ms(90);
    finger(bench::Pointer::up);
    for (const int ms : {16, 50, 60}) {
      pass_ms(ms);
      give(bench::Tick{});
      look();
    }
  }
  std::int64_t pressed = 0; // pixels drawn for the flash of the last tap
};

}

TEST_CASE("a batch drawn in parts is the batch drawn whole, pixel for pixel") {
  Table table;
  table.look();
  for (const char* pad : {"pigment pb28", "weigh", "digit 1", "digit 2", "enter", "begin"})
    table.tap(pad);
  table.tap("pass");
  for (int i = 0; i < 6; ++i) {
    table.tap("add gum_12");
    CHECK(table.pressed > 0);
    CHECK(table.pressed < size.w * size.h / 3); // a flash is no whole screen
  }
  for (const char* pad : {"add water", "felt too_sticky", "undo", "night", "more", "more", "pass",
                          "add gum_12", "night", "book", "shelf", "plan", "slab"})
    table.tap(pad);
  table.look();
  CHECK(table.drawn == 0); // nothing has changed
}
