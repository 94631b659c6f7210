// A display of its own with a finger and a keyboard, and pixels read back: Xvfb with XTEST, or
// XWayland under a Wayland compositor (Weston's headless back end), whose touches come in through
// finger.c. It speaks XCB, not Xlib: when the display goes away, Xlib would end the test.
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

enum class Server { xvfb, xwayland };

class Glass {
public:
  Glass(int w, int h, Server server = Server::xvfb);
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
  void resize(Handle window, int w, int h);
  Area area_of(Handle window);
  void ask_to_close(Handle window); // as a window manager does

  // Asks the window's program whether it has come this far in its queue, and whether it has
  // answered: extended window manager hints, _NET_WM_PING.
  std::uint32_t ping(Handle window);
  bool has_ponged(std::uint32_t ping);

  Pixels picture(const Area& area);

private:
  void connect();
  void start_weston(int w, int h);
  void tell_finger(const std::string& line);
  Handle window_among(Handle parent, pid_t pid);
  void fake(std::uint8_t type, std::uint8_t detail, Pixel at = {});
  void send(Handle window, std::uint32_t protocol, std::uint32_t value);
  std::uint32_t atom(const std::string& name);
  std::uint8_t keycode(std::uint32_t keysym);

  Folder folder_; // of Weston's socket and of the finger's pipe
  std::unique_ptr<Process> server_;
  std::string number_;
  int finger_ = -1;       // Weston's; else XTEST moves the pointer
  Handle top_window_ = 0; // of XWayland, whose root window has no picture
  std::unique_ptr<xcb_connection_t, void (*)(xcb_connection_t*)> x_;
  xcb_screen_t* screen_ = nullptr;
  std::uint32_t pings_ = 0, ponged_ = 0;
  std::uint32_t protocols_ = 0, ping_ = 0, delete_ = 0, pid_ = 0;
};

inline constexpr std::uint32_t control_key = 0xffe3, shift_key = 0xffe1; // X11/keysymdef.h

}
