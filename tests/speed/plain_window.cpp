// A program that shows nothing but the plain widgets: what a window, GL and ImGui cost by
// themselves. Usage: plain_window SECONDS     draws again so often; 0: never
#include "speed/plain.hpp"
#include "speed/race.hpp"
#include "window/window.hpp"

#define GLFW_INCLUDE_NONE
#include <GLFW/glfw3.h>

#include <cstdio>
#include <cstdlib>

int main(int count, char** words) {
  speed::need(count == 2, "usage: plain_window SECONDS");
  const double every = std::strtod(words[1], nullptr);
  auto window = window::Window::open({"plain", {1280, 800}, false, {}, ""});
  speed::need(window.has_value(), window ? "" : window.error());
  for (bool first = true;; first = false) {
    window->begin_frame();
    speed::plain_widgets();
    window::draw_frame(window->size(), {}); // all of it, as ImGui's examples do
    glfwSwapBuffers(glfwGetCurrentContext());
    if (first) std::puts("ready");
    std::fflush(stdout);
    window->wait(every > 0 ? std::optional(every) : std::nullopt);
  }
}
