// The window: GLFW on X11, GL 3.3 core, ImGui's back ends; or the canvas of a browser's page, where
// wait() never waits (browser.hpp says who calls whom there). It knows pixels and pointer events
// and nothing of paint.
//
// On X11 done: left button and touch as one pointer, keys, text, size, close, wake from another
// thread. Missing, because GLFW has none: touch of its own. X11 turns the first finger into the
// pointer; GLFW's Wayland back end would drop touch altogether, so the X11 build of the library is
// wanted (Debian: libglfw3, not libglfw3-wayland), and under Wayland it runs through XWayland.
#pragma once

#include "window/surface.hpp"

#include <tl/expected.hpp>

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace window {

struct Pointer {
  enum Phase {
    down,
    move,
    up,
    lost, // it was taken away while it was down: no up will come
  } phase = down;
  double x = 0, y = 0; // pixels from the top left corner
  int finger = 0;      // which one; a browser tells them apart
  double ago_ms = 0;   // how long before the poll it happened, where the system says so
};
struct Key {        // ImGui has it already; a held key comes once
  std::string name; // what it types here ("b", "5"), or "Space", "Page Down", "F5"
  bool down = false;
};
struct Character {        // ImGui has it already
  std::uint32_t code = 0; // Unicode
};
struct Resized {
  Extent size;
};
struct Exposed {};  // something lay over the window and is gone: draw again
struct Restored {}; // the graphics' memory was taken away and given back empty: textures are gone
struct CloseAsked {};
struct Dropped { // from another window, onto this one
  std::vector<std::string> files;
};

using Event =
    std::variant<Pointer, Key, Character, Resized, Exposed, Restored, CloseAsked, Dropped>;

// What one look at the queue brought, in order. After a stall this is many events at once; GLFW's
// events bear no time, so all of a poll share the moment at which it returned.
struct Poll {
  std::uint64_t number = 0; // 1, 2, 3 ...
  std::vector<Event> events;
};

struct Options {
  std::string title;
  Extent size{1280, 800}; // pixels; ignored where full_screen
  bool full_screen = false;
  // Called if the display goes away (its server ended), on the drawing thread, with the Window no
  // longer usable: time to finish what is being saved. When it returns the process ends with
  // status 3, without unwinding and without destroying statics.
  std::function<void()> display_lost;
  std::string wrong_library; // the error where GLFW is not for X11; its version follows
};

// Of a monitor that says it has so many pixels and so many mm, either way round: one that is turned
// while the program runs goes on saying how it was before, of one of them. Absent where that can be
// no display.
std::optional<double> px_per_mm_of(Extent px, Extent mm);

// One at a time, on one thread. What calls wake() from another must have ended before it goes.
class Window {
public:
  // The error is GLFW's own description: no display, no OpenGL 3.3; or that it is not for X11.
  static tl::expected<Window, std::string> open(Options options);

  Window(Window&&) noexcept;
  Window& operator=(Window&&) noexcept;
  ~Window();

  // Waits for an event, a wake, or so many seconds (finite; nothing: without end; 0 or less: not at
  // all), and takes what is in the queue.
  Poll wait(std::optional<double> seconds);
  static void wake(); // from any thread: the wait that runs or the next one returns

  Extent size() const; // 0 x 0 while minimised

  bool fills_display() const;
  // A Resized follows. From a display it goes back to the size and place it had, or was asked for.
  void fill_display(bool fills);

  // Of the monitor under the middle of the window, as the system reports it, which is often wrong;
  // absent where it reports nothing that can be.
  std::optional<double> px_per_mm() const;
  std::string monitor() const; // the name of that one; empty where there is none

  void begin_frame(); // from here on ImGui may be drawn with
  void end_frame(Colour clear);
  void forget(); // somebody else has drawn: the next frame draws all of it

private:
  struct State;
  explicit Window(std::unique_ptr<State> state);
  std::unique_ptr<State> state;
};

}
