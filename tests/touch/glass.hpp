// A display of its own (Xvfb) with a finger and a keyboard (XTEST), and pixels read back. It speaks
// XCB, not Xlib: when the display goes away, Xlib would end the test.
#pragma once

#include "touch/process.hpp"

#include <cstdint>
#include <memory>

struct xcb_connection_t;
struct xcb_screen_t;

namespace touch {

struct Pixel {
  int x = 0, y = 0;
};

struct Area { // pixels of the display
  int x = 0, y = 0, w = 0, h = 0;
};

struct Pixels {
  int w = 0, h = 0;
  std::vector<unsigned char> rgb;
  bool operator==(const Pixels&) const = default;
};

using Handle = std::uint32_t; // of a window

class Glass {
public:
  Glass(int w, int h);
  ~Glass();

  std::string name() const { return ":" + number_; } // for DISPLAY
  void shatter();                                    // kills the server
  bool is_whole() const;

  // None of these waits; on a display that is gone they do nothing.
  void press(Pixel at);
  void slide(Pixel to);
  void release();
  void key(std::uint32_t keysym, bool down);

  Handle window_of(pid_t pid); // waits until it is there
  void focus(Handle window);
  void focus_nothing();
  void place(Handle window, Pixel corner);
  void ask_to_close(Handle window); // as a window manager does

  // Asks the window's program whether it has come this far in its queue, and whether it has
  // answered: extended window manager hints, _NET_WM_PING.
  std::uint32_t ping(Handle window);
  bool has_ponged(std::uint32_t ping);

  Pixels picture(const Area& area);

private:
  void fake(std::uint8_t type, std::uint8_t detail, Pixel at = {});
  void send(Handle window, std::uint32_t protocol, std::uint32_t value);
  std::uint32_t atom(const std::string& name);
  std::uint8_t keycode(std::uint32_t keysym);

  Process server_;
  std::string number_;
  std::unique_ptr<xcb_connection_t, void (*)(xcb_connection_t*)> x_;
  xcb_screen_t* screen_ = nullptr;
  std::uint32_t pings_ = 0, ponged_ = 0;
  std::uint32_t protocols_ = 0, ping_ = 0, delete_ = 0, pid_ = 0;
};

inline constexpr std::uint32_t control_key = 0xffe3, shift_key = 0xffe1; // X11/keysymdef.h

}
