#include "app/watch.hpp"

#include "app/frame.hpp"
#include "commands/run.hpp"
#include "screens/paint.hpp"
#include "window/window.hpp"
#include "words/app_says.hpp"

#include <algorithm>
#include <cstdio>

namespace app {

namespace {

int complain(const words::Error& error) {
  std::fprintf(stderr, "slabside: %s\n", words::message(error).c_str());
  return 1;
}

bool close_asked(const window::Poll& poll) {
  return std::any_of(poll.events.begin(), poll.events.end(), [](const window::Event& e) {
    return std::holds_alternative<window::CloseAsked>(e);
  });
}

}

// The script says how large its display is in mm; the window shows as much of it as it has pixels.
int watch(const std::vector<std::string>& given) {
  const window::Extent size{1280, 800};
  auto window = window::Window::open(
      {"Slabside", size, false, {}, words::say(words::AppSay::window_wrong_library)});
  if (!window) return complain({words::AppSay::window_not_opened, {window.error()}});
  const double px_per_mm = size.w / bench::Display{}.mm.w;
  if (const auto faces = screens::load_faces(px_per_mm); !faces) return complain(faces.error());
  const auto show = [&](const bench::Bench& bench, const bench::Now& now) {
    const bool closed = close_asked(window->wait(0));
    app::show(*window, bench::view(bench, now), px_per_mm);
    return !closed;
  };
  return commands::run(given, show).value_or(2);
}

}
