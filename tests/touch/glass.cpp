#include "touch/glass.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#include <xcb/xcb.h>
#include <xcb/xtest.h>

#include <csignal>
#include <cstdlib>

namespace touch {

namespace {

template <class T>
using Reply = std::unique_ptr<T, void (*)(void*)>;

template <class T>
Reply<T> own(T* reply) {
  return {reply, std::free};
}

std::vector<std::string> xvfb_words(int w, int h) {
  // The server says on stdout which display number it has found free.
  return {"Xvfb",      "-displayfd", "1",
          "-screen",   "0",          std::to_string(w) + "x" + std::to_string(h) + "x24",
          "-nolisten", "tcp",        "-noreset"};
}

std::vector<std::string> weston_words(int w, int h) {
  return {"weston",
          "--backend=headless-backend.so",
          "--xwayland",
          "--no-config",
          "--idle-time=0",
          "--socket=glass",
          "--modules=" SLABSIDE_FINGER_MODULE,
          "--width=" + std::to_string(w),
          "--height=" + std::to_string(h)};
}

// What stands between `before` and the end of its line; empty until the line is whole.
std::string told_after(const std::string& before, const std::string& out) {
  const std::size_t at = out.find(before);
  const std::size_t from = at + before.size();
  const std::size_t to = at == std::string::npos ? at : out.find('\n', from);
  return to == std::string::npos ? "" : out.substr(from, to - from);
}

}

Glass::Glass(int w, int h, Server server) : x_(nullptr, xcb_disconnect) {
  if (server == Server::xwayland) {
    start_weston(w, h);
  } else {
    server_ = std::make_unique<Process>(xvfb_words(w, h));
    wait_until("the number of the display", [&] {
      REQUIRE_MESSAGE(server_->running(), "Xvfb: ", server_->err());
      return !told_after("", server_->out()).empty();
    });
    number_ = told_after("", server_->out());
  }
  connect();
}

void Glass::start_weston(int w, int h) {
  const Path pipe = folder_.path / "finger";
  REQUIRE(mkfifo(pipe.c_str(), 0600) == 0);
  finger_ = open(pipe.c_str(), O_RDWR | O_CLOEXEC);
  REQUIRE(finger_ >= 0);
  server_ = std::make_unique<Process>(
      weston_words(w, h),
      Environment{{"XDG_RUNTIME_DIR", folder_.path.string()}, {"SLABSIDE_FINGER", pipe.string()}});
  wait_until("XWayland's display", [&] {
    REQUIRE_MESSAGE(server_->running(), "weston: ", server_->out(), server_->err());
    number_ = told_after("xserver listening on display :", server_->out() + server_->err());
    return !number_.empty();
  });
}

void Glass::connect() {
  x_.reset(xcb_connect(name().c_str(), nullptr));
  REQUIRE(is_whole());
  screen_ = xcb_setup_roots_iterator(xcb_get_setup(x_.get())).data;
  protocols_ = atom("WM_PROTOCOLS");
  ping_ = atom("_NET_WM_PING");
  delete_ = atom("WM_DELETE_WINDOW");
  pid_ = atom("_NET_WM_PID");
  const std::uint32_t mask = XCB_EVENT_MASK_SUBSTRUCTURE_NOTIFY; // the answers to a ping
  xcb_change_window_attributes(x_.get(), screen_->root, XCB_CW_EVENT_MASK, &mask);
  xcb_flush(x_.get());
}

Glass::~Glass() {
  if (finger_ < 0) return;
  x_.reset();
  server_->kill(SIGTERM); // so that Weston ends XWayland too, and takes its sockets away
  server_->wait();
  close(finger_);
}

void Glass::shatter() {
  server_->kill(9);
  server_->wait();
}

bool Glass::is_whole() const { return xcb_connection_has_error(x_.get()) == 0; }

std::uint32_t Glass::atom(const std::string& name) {
  const auto asked =
      xcb_intern_atom(x_.get(), 0, static_cast<std::uint16_t>(name.size()), name.c_str());
  const auto reply = own(xcb_intern_atom_reply(x_.get(), asked, nullptr));
  return reply ? reply->atom : xcb_atom_t{XCB_ATOM_NONE};
}

void Glass::fake(std::uint8_t type, std::uint8_t detail, Pixel at) {
  xcb_test_fake_input(x_.get(), type, detail, XCB_CURRENT_TIME, screen_->root,
                      static_cast<std::int16_t>(at.x), static_cast<std::int16_t>(at.y), 0);
  xcb_flush(x_.get());
}

void Glass::tell_finger(const std::string& line) {
  const std::string whole = line + "\n";
  REQUIRE(write(finger_, whole.data(), whole.size()) == static_cast<ssize_t>(whole.size()));
}

void Glass::press(Pixel at) {
  if (finger_ >= 0) return tell_finger("down " + std::to_string(at.x) + " " + std::to_string(at.y));
  fake(XCB_MOTION_NOTIFY, 0, at);
  fake(XCB_BUTTON_PRESS, 1);
}

void Glass::slide(Pixel to) {
  if (finger_ >= 0) return tell_finger("move " + std::to_string(to.x) + " " + std::to_string(to.y));
  fake(XCB_MOTION_NOTIFY, 0, to);
}

void Glass::release() {
  if (finger_ >= 0) return tell_finger("up");
  fake(XCB_BUTTON_RELEASE, 1);
}

std::uint8_t Glass::keycode(std::uint32_t keysym) {
  const xcb_setup_t* setup = xcb_get_setup(x_.get());
  const int first = setup->min_keycode, count = setup->max_keycode - first + 1;
  const auto asked =
      xcb_get_keyboard_mapping(x_.get(), setup->min_keycode, static_cast<std::uint8_t>(count));
  const auto reply = own(xcb_get_keyboard_mapping_reply(x_.get(), asked, nullptr));
  REQUIRE(reply);
  const xcb_keysym_t* symbols = xcb_get_keyboard_mapping_keysyms(reply.get());
  for (int i = 0; i < count; ++i)
    if (symbols[i * reply->keysyms_per_keycode] == keysym)
      return static_cast<std::uint8_t>(first + i);
  FAIL("no key bears the symbol ", keysym);
  return 0;
}

void Glass::key(std::uint32_t keysym, bool down) {
  constexpr int x_from_linux = 8; // X11's codes of keys are Linux's and 8
  if (finger_ >= 0)
    return tell_finger("key " + std::to_string(keycode(keysym) - x_from_linux) +
                       (down ? " 1" : " 0"));
  fake(down ? XCB_KEY_PRESS : XCB_KEY_RELEASE, keycode(keysym));
}

// A window manager lays a frame around a window, whose child it then is.
Handle Glass::window_among(Handle parent, pid_t pid) {
  const auto tree = own(xcb_query_tree_reply(x_.get(), xcb_query_tree(x_.get(), parent), nullptr));
  if (!tree) return XCB_WINDOW_NONE;
  for (int i = 0; i < xcb_query_tree_children_length(tree.get()); ++i) {
    const Handle window = xcb_query_tree_children(tree.get())[i];
    const auto state = own(xcb_get_window_attributes_reply(
        x_.get(), xcb_get_window_attributes(x_.get(), window), nullptr));
    const auto owner = own(xcb_get_property_reply(
        x_.get(), xcb_get_property(x_.get(), 0, window, pid_, XCB_ATOM_CARDINAL, 0, 1), nullptr));
    const bool known = owner && xcb_get_property_value_length(owner.get()) == 4;
    if (state && state->map_state == XCB_MAP_STATE_VIEWABLE && known &&
        *static_cast<pid_t*>(xcb_get_property_value(owner.get())) == pid)
      return window;
    if (const Handle inside = window_among(window, pid)) return inside;
  }
  return XCB_WINDOW_NONE;
}

Handle Glass::window_of(pid_t pid) {
  Handle found = XCB_WINDOW_NONE;
  wait_until("a window", [&] {
    found = window_among(screen_->root, pid);
    return found != XCB_WINDOW_NONE;
  });
  if (finger_ >= 0) top_window_ = found;
  return found;
}

// The compositor focuses and places windows itself.
void Glass::focus(Handle window) {
  if (finger_ >= 0) return;
  xcb_set_input_focus(x_.get(), XCB_INPUT_FOCUS_PARENT, window, XCB_CURRENT_TIME);
  xcb_flush(x_.get());
}

void Glass::focus_nothing() { focus(XCB_INPUT_FOCUS_NONE); }

void Glass::place(Handle window, Pixel corner) {
  const std::uint32_t values[] = {static_cast<std::uint32_t>(corner.x),
                                  static_cast<std::uint32_t>(corner.y)};
  if (finger_ >= 0) return;
  xcb_configure_window(x_.get(), window, XCB_CONFIG_WINDOW_X | XCB_CONFIG_WINDOW_Y, values);
  xcb_flush(x_.get());
}

void Glass::resize(Handle window, int w, int h) {
  const std::uint32_t values[] = {static_cast<std::uint32_t>(w), static_cast<std::uint32_t>(h)};
  xcb_configure_window(x_.get(), window, XCB_CONFIG_WINDOW_WIDTH | XCB_CONFIG_WINDOW_HEIGHT,
                       values);
  xcb_flush(x_.get());
}

Area Glass::area_of(Handle window) {
  const auto reply =
      own(xcb_get_geometry_reply(x_.get(), xcb_get_geometry(x_.get(), window), nullptr));
  return reply ? Area{reply->x, reply->y, reply->width, reply->height} : Area{};
}

void Glass::send(Handle window, std::uint32_t protocol, std::uint32_t value) {
  xcb_client_message_event_t message{};
  message.response_type = XCB_CLIENT_MESSAGE;
  message.format = 32;
  message.window = window;
  message.type = protocols_;
  message.data.data32[0] = protocol;
  message.data.data32[1] = value;
  message.data.data32[2] = window;
  xcb_send_event(x_.get(), 0, window, XCB_EVENT_MASK_NO_EVENT,
                 reinterpret_cast<const char*>(&message));
  xcb_flush(x_.get());
}

void Glass::ask_to_close(Handle window) { send(window, delete_, XCB_CURRENT_TIME); }

std::uint32_t Glass::ping(Handle window) {
  send(window, ping_, ++pings_);
  return pings_;
}

bool Glass::has_ponged(std::uint32_t ping) {
  while (const auto event = own(xcb_poll_for_event(x_.get()))) {
    if ((event->response_type & 0x7f) != XCB_CLIENT_MESSAGE) continue;
    const auto& message = *reinterpret_cast<const xcb_client_message_event_t*>(event.get());
    if (message.type == protocols_ && message.data.data32[0] == ping_)
      ponged_ = std::max(ponged_, message.data.data32[1]);
  }
  return ponged_ >= ping;
}

Pixels Glass::picture(const Area& area) {
  const auto reply = own(xcb_get_image_reply(
      x_.get(),
      xcb_get_image(x_.get(), XCB_IMAGE_FORMAT_Z_PIXMAP, top_window_ ? top_window_ : screen_->root,
                    static_cast<std::int16_t>(area.x), static_cast<std::int16_t>(area.y),
                    static_cast<std::uint16_t>(area.w), static_cast<std::uint16_t>(area.h), ~0u),
      nullptr));
  REQUIRE(reply);
  const int pixels = area.w * area.h;
  REQUIRE(xcb_get_image_data_length(reply.get()) == pixels * 4);
  const std::uint8_t* bgrx = xcb_get_image_data(reply.get());
  Pixels out{area.w, area.h, {}};
  for (int i = 0; i < pixels; ++i)
    for (const int channel : {2, 1, 0}) out.rgb.push_back(bgrx[4 * i + channel]);
  return out;
}

}
