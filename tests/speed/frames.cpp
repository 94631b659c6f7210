// Whole frames, until GL says that they are finished, against a plain ImGui window; and from a
// press, and from its release, to the frame that shows it. Usage: frames offscreen|window ROUNDS
#include "app/frame.hpp"
#include "screens/paint.hpp"
#include "speed/plain.hpp"
#include "speed/race.hpp"
#include "speed/sitting.hpp"
#include "window/canvas.hpp"
#include "window/offscreen.hpp"
#include "window/renderer.hpp"
#include "window/window.hpp"

#include <glad/gl.h>
#define GLFW_INCLUDE_NONE
#include <GLFW/glfw3.h>

#include <algorithm>
#include <cstdio>
#include <cstring>

namespace {

using speed::need;
using speed::Sitting;
using speed::timed;

constexpr window::Extent size{1280, 800};
const double px_per_mm = std::min(size.w / speed::tablet_mm.w, size.h / speed::tablet_mm.h);

// Where frames go: memory or a window.
struct Surface {
  std::function<void()> begin;
  std::function<void(window::Colour)> end;       // drawn, shown and finished
  std::function<void(window::Colour)> plain_end; // the same without the program's own drawing
  std::function<void()> forget;                  // the next frame is drawn whole
  std::function<window::Picture()> look; // absent in a window: what is shown cannot be read back
};

void draw(const Surface& surface, const bench::Bench& bench, const bench::Now& now) {
  const bench::View view = bench::view(bench, now);
  surface.begin();
  app::draw(view, px_per_mm);
  surface.end(app::ground(view));
}

void draw_plain(const Surface& surface) {
  surface.begin();
  speed::plain_widgets();
  surface.plain_end({});
}

// The part of a picture that a pad covers.
std::vector<unsigned char> cut(const window::Picture& picture, const bench::Rect& mm) {
  std::vector<unsigned char> out;
  const auto at = [&](double v) { return static_cast<std::size_t>(v * px_per_mm); };
  for (std::size_t y = at(mm.y); y < at(mm.bottom()); ++y) {
    const auto row =
        picture.rgb.begin() + static_cast<std::ptrdiff_t>(3 * y * static_cast<std::size_t>(size.w));
    out.insert(out.end(), row + static_cast<std::ptrdiff_t>(3 * at(mm.x)),
               row + static_cast<std::ptrdiff_t>(3 * at(mm.right())));
  }
  return out;
}

// A finger on a pad of the slab, again and again from the same state.
struct Finger {
  const Surface& surface;
  Sitting sitting = speed::long_batch();
  bench::Rect box = sitting.box("add gum_12");
  std::vector<unsigned char> unpressed = {};

  explicit Finger(const Surface& on) : surface(on) {
    draw(surface, sitting.bench, sitting.now());
    if (surface.look) unpressed = cut(surface.look(), box);
  }

  bench::Pointer event(bench::Pointer::Phase phase, std::int64_t after_ms) const {
    return {phase, box.centre(), sitting.run + after_ms, static_cast<std::uint64_t>(phase) + 1, 0};
  }

  // What the window shows before a finger comes.
  void show_unpressed() {
    surface.forget();
    draw(surface, sitting.bench, sitting.now());
  }

  double frame() {
    surface.forget();
    return timed([&] { draw(surface, sitting.bench, sitting.now()); });
  }

  double press() {
    show_unpressed();
    bench::Bench bench = sitting.bench;
    const bench::Now now = sitting.now();
    const double ms = timed([&] {
      bench::step(bench, event(bench::Pointer::down, 0), now);
      draw(surface, bench, now);
    });
    need(!surface.look || cut(surface.look(), box) != unpressed,
         "the pad does not flash in the first frame");
    return ms;
  }

  double release() {
    bench::Bench bench = sitting.bench;
    bench::Now now = sitting.now();
    bench::step(bench, event(bench::Pointer::down, 0), now);
    show_unpressed();
    draw(surface, bench, now);
    now.run_ms += 90;
    now.wall_ms += 90;
    bench::Effects effects;
    const double ms = timed([&] {
      effects = bench::step(bench, event(bench::Pointer::up, 90), now);
      draw(surface, bench, now);
    });
    need(effects.append.size() == 1, "a tap is one line");
    return ms;
  }
};

void measure(const std::string& where, const Surface& surface, int rounds) {
  need(screens::load_faces(px_per_mm).has_value(), "the faces are not there");
  std::printf("about\tGL\t%s\n", window::renderer().c_str());
  draw_plain(surface);
  Finger finger(surface);
  speed::race(where,
              {{"plain", [&] { return timed([&] { draw_plain(surface); }); }},
               {"frame", [&] { return finger.frame(); }},
               {"press", [&] { return finger.press(); }},
               {"release", [&] { return finger.release(); }}},
              {rounds, 1, 5});
}

void in_memory(int rounds) {
  auto offscreen = window::Offscreen::open(size);
  need(offscreen.has_value(), offscreen ? "" : offscreen.error());
  window::Canvas canvas;
  measure("offscreen",
          {[&] { offscreen->begin_frame(); },
           [&](window::Colour clear) {
             canvas.draw(size, clear);
             glFinish();
           },
           [&](window::Colour clear) {
             window::draw_frame(size, clear);
             glFinish();
           },
           [&] { canvas.forget(); }, [] { return window::read_pixels(size); }},
          rounds);
}

void in_a_window(int rounds) {
  auto window = window::Window::open({"speed", size, false, {}, ""});
  need(window.has_value(), window ? "" : window.error());
  glfwSwapInterval(0); // a frame shall not wait for the display's next refresh
  measure("window",
          {[&] {
             window->wait(0);
             window->begin_frame();
           },
           [&](window::Colour clear) {
             window->end_frame(clear);
             glFinish();
           },
           [](window::Colour clear) {
             window::draw_frame(size, clear);
             glfwSwapBuffers(glfwGetCurrentContext());
             glFinish();
           },
           [&] { window->forget(); },
           {}},
          rounds);
}

}

int main(int count, char** words) {
  need(count == 3, "usage: frames offscreen|window ROUNDS");
  const int rounds = speed::count_of(words[2]);
  if (std::strcmp(words[1], "window") == 0)
    in_a_window(rounds);
  else
    in_memory(rounds);
}
