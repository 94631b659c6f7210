#include "window/display_lost.hpp"

#include <dlfcn.h>
#include <unistd.h>

#include <utility>

namespace window {

namespace {

using IoErrorHandler = int (*)(void* display);

// Never destroyed: the handler may run while the program is ending.
std::function<void()>& last_words() {
  static auto* words = new std::function<void()>;
  return *words;
}

// Xlib ends the program with exit() should this return, and exit() destroys statics under the
// writer's feet. A second break of the connection while the words are said changes nothing.
int on_io_error(void*) {
  const auto words = std::exchange(last_words(), nullptr);
  if (words) words();
  _exit(3);
}

}

void when_display_is_lost(std::function<void()> words) {
  last_words() = std::move(words);
  // GLFW has loaded Xlib; asking for its copy spares a link and Xlib's headers.
  void* xlib = dlopen("libX11.so.6", RTLD_LAZY | RTLD_NOLOAD);
  if (!xlib) return;
  using SetHandler = IoErrorHandler (*)(IoErrorHandler);
  const auto set = reinterpret_cast<SetHandler>(dlsym(xlib, "XSetIOErrorHandler"));
  if (set) set(on_io_error);
  dlclose(xlib);
}

}
