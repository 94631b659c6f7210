// Asks a window to close, as a window manager does. Usage: close WINDOW
#include "speed/race.hpp"

#include <xcb/xcb.h>

#include <cstdlib>
#include <cstring>
#include <memory>

namespace {

using Display = std::unique_ptr<xcb_connection_t, void (*)(xcb_connection_t*)>;

xcb_atom_t atom(const Display& x, const char* name) {
  const auto asked =
      xcb_intern_atom(x.get(), 0, static_cast<std::uint16_t>(std::strlen(name)), name);
  const std::unique_ptr<xcb_intern_atom_reply_t, void (*)(void*)> reply(
      xcb_intern_atom_reply(x.get(), asked, nullptr), std::free);
  speed::need(reply != nullptr, "the display does not answer");
  return reply->atom;
}

}

int main(int count, char** words) {
  speed::need(count == 2, "usage: close WINDOW");
  const Display x(xcb_connect(nullptr, nullptr), xcb_disconnect);
  xcb_client_message_event_t event{};
  event.response_type = XCB_CLIENT_MESSAGE;
  event.format = 32;
  event.window = static_cast<xcb_window_t>(std::strtoul(words[1], nullptr, 10));
  event.type = atom(x, "WM_PROTOCOLS");
  event.data.data32[0] = atom(x, "WM_DELETE_WINDOW");
  xcb_send_event(x.get(), 0, event.window, XCB_EVENT_MASK_NO_EVENT,
                 reinterpret_cast<const char*>(&event));
  atom(x, "WM_PROTOCOLS"); // answered after what was sent: a display may drop what a client leaves
                           // behind
}
