#include "window/window.hpp"

#include "window/canvas.hpp"
#include "window/display_lost.hpp"

#include <glad/gl.h>
#define GLFW_INCLUDE_NONE
#include <GLFW/glfw3.h>
#include <imgui.h>
#include <imgui_impl_glfw.h>
#include <imgui_impl_opengl3.h>

#include <algorithm>
#include <string_view>
#include <utility>

namespace window {

namespace {

// Shows parts of the back buffer, which stays as it is (GLX_MESA_copy_sub_buffer). GLFW can only
// swap all of it, and then it holds nothing certain.
struct Parts {
  void* display = nullptr;
  unsigned long drawable = 0;
  void (*copy)(void* display, unsigned long drawable, int x, int y, int w, int h) = nullptr;
  void (*query)(void* display, unsigned long drawable, int what, unsigned* value) = nullptr;

  void show(const Area& area, Extent size) const { // GL counts from the bottom
    copy(display, drawable, area.left, size.h - area.bottom, area.right - area.left,
         area.bottom - area.top);
  }

  Extent size() const { // as the server has it now: GLX_WIDTH and GLX_HEIGHT
    unsigned w = 0, h = 0;
    query(display, drawable, 0x801D, &w);
    query(display, drawable, 0x801E, &h);
    return {static_cast<int>(w), static_cast<int>(h)};
  }
};

template <class Function>
Function glx(const char* name) {
  return reinterpret_cast<Function>(glfwGetProcAddress(name));
}

std::optional<Parts> parts_of_this_window() {
  if (!glfwExtensionSupported("GLX_MESA_copy_sub_buffer")) return std::nullopt;
  const auto display = glx<void* (*)()>("glXGetCurrentDisplay");
  const auto drawable = glx<unsigned long (*)()>("glXGetCurrentDrawable");
  const auto copy = glx<decltype(Parts::copy)>("glXCopySubBufferMESA");
  const auto query = glx<decltype(Parts::query)>("glXQueryDrawable");
  if (!display || !drawable || !copy || !query) return std::nullopt;
  return Parts{display(), drawable(), copy, query};
}

struct Corner {
  int x = 0, y = 0;
};

struct Named {
  int key;
  const char* name;
};
constexpr Named named_keys[] = {{GLFW_KEY_SPACE, "Space"},
                                {GLFW_KEY_ENTER, "Enter"},
                                {GLFW_KEY_KP_ENTER, "Enter"},
                                {GLFW_KEY_ESCAPE, "Escape"},
                                {GLFW_KEY_BACKSPACE, "Backspace"},
                                {GLFW_KEY_TAB, "Tab"},
                                {GLFW_KEY_LEFT, "Left"},
                                {GLFW_KEY_RIGHT, "Right"},
                                {GLFW_KEY_UP, "Up"},
                                {GLFW_KEY_DOWN, "Down"},
                                {GLFW_KEY_PAGE_UP, "Page Up"},
                                {GLFW_KEY_PAGE_DOWN, "Page Down"},
                                {GLFW_KEY_HOME, "Home"},
                                {GLFW_KEY_END, "End"},
                                {GLFW_KEY_INSERT, "Insert"},
                                {GLFW_KEY_DELETE, "Delete"},
                                {GLFW_KEY_LEFT_SHIFT, "Shift"},
                                {GLFW_KEY_RIGHT_SHIFT, "Right Shift"},
                                {GLFW_KEY_LEFT_CONTROL, "Ctrl"},
                                {GLFW_KEY_RIGHT_CONTROL, "Right Ctrl"},
                                {GLFW_KEY_LEFT_ALT, "Alt"},
                                {GLFW_KEY_RIGHT_ALT, "Right Alt"}};

std::string key_name(int key, int code) {
  for (const Named& named : named_keys)
    if (named.key == key) return named.name;
  if (key >= GLFW_KEY_F1 && key <= GLFW_KEY_F25) return "F" + std::to_string(key - GLFW_KEY_F1 + 1);
  if (const char* types = glfwGetKeyName(key, code)) return types;
  return "key " + std::to_string(code);
}

}

struct Window::State {
  GLFWwindow* handle = nullptr;
  bool drawing = false;
  Canvas canvas;
  std::optional<Parts> parts; // where there is such a thing the back buffer keeps the picture,
  std::optional<Kept> kept;   // and else this does
  Extent back;                // size of that back buffer, as far as is known
  std::uint64_t polls = 0;
  std::vector<Event> events; // since the last poll returned
  Pointer pointer{Pointer::up, 0, 0};
  Extent windowed_size;              // when it does not fill the display
  std::optional<Corner> windowed_at; // absent: it has not been a window

  ~State() {
    when_display_is_lost(nullptr);
    if (drawing) {
      kept.reset();
      ImGui_ImplGlfw_Shutdown();
      stop_drawing();
    }
    if (handle) glfwDestroyWindow(handle);
    glfwTerminate();
  }

  // Mesa's software drawing looks how large the window is at the first drawing after all was
  // swapped and a viewport set, and not where parts are shown.
  void renew_back(Extent size) {
    glfwSwapBuffers(handle);
    glViewport(0, 0, size.w, size.h);
    canvas.forget();
  }

  bool is_down() const { return pointer.phase == Pointer::down || pointer.phase == Pointer::move; }

  void take(Pointer::Phase phase) {
    pointer.phase = phase;
    events.push_back(pointer);
  }

  static State& of(GLFWwindow* handle) {
    return *static_cast<State*>(glfwGetWindowUserPointer(handle));
  }
  static void install_callbacks(GLFWwindow* handle);
  static void moved(GLFWwindow* handle, double x, double y);
  static void pressed(GLFWwindow* handle, int button, int action, int mods);
  static void focused(GLFWwindow* handle, int has_focus);
};

// The place of a press is that of the last motion before it, in the order of the queue. To ask for
// the pointer in the button's callback would give the place where it is by now: after a stall, that
// of a later tap.
void Window::State::moved(GLFWwindow* handle, double x, double y) {
  State& state = of(handle);
  state.pointer.x = x;
  state.pointer.y = y;
  if (state.is_down()) state.take(Pointer::move);
}

void Window::State::pressed(GLFWwindow* handle, int button, int action, int) {
  if (button != GLFW_MOUSE_BUTTON_LEFT) return;
  State& state = of(handle);
  if (action == GLFW_PRESS)
    state.take(Pointer::down);
  else if (state.is_down())
    state.take(Pointer::up);
}

// GLFW invents a release when the focus goes. It is told here first, so that the release, which
// would count as a tap, finds no press.
void Window::State::focused(GLFWwindow* handle, int has_focus) {
  State& state = of(handle);
  if (!has_focus && state.is_down()) state.take(Pointer::lost);
}

// Before ImGui's back end installs its own, which call these first.
void Window::State::install_callbacks(GLFWwindow* handle) {
  glfwSetCursorPosCallback(handle, moved);
  glfwSetMouseButtonCallback(handle, pressed);
  glfwSetWindowFocusCallback(handle, focused);
  glfwSetKeyCallback(handle, [](GLFWwindow* of_window, int key, int code, int action, int) {
    if (action != GLFW_REPEAT)
      of(of_window).events.push_back(Key{key_name(key, code), action == GLFW_PRESS});
  });
  glfwSetCharCallback(handle, [](GLFWwindow* of_window, unsigned code) {
    of(of_window).events.push_back(Character{code});
  });
  glfwSetFramebufferSizeCallback(handle, [](GLFWwindow* of_window, int w, int h) {
    of(of_window).events.push_back(Resized{{w, h}});
  });
  glfwSetWindowRefreshCallback(handle, [](GLFWwindow* of_window) {
    of(of_window).canvas.forget();
    of(of_window).events.push_back(Exposed{});
  });
  glfwSetDropCallback(handle, [](GLFWwindow* of_window, int count, const char** files) {
    of(of_window).events.push_back(Dropped{{files, files + count}});
  });
  glfwSetWindowCloseCallback(handle, [](GLFWwindow* of_window) {
    glfwSetWindowShouldClose(of_window, GLFW_FALSE); // whoever waits decides
    of(of_window).events.push_back(CloseAsked{});
  });
}

namespace {

tl::unexpected<std::string> glfw_failure() {
  const char* description = nullptr;
  glfwGetError(&description);
  return tl::make_unexpected(std::string(description ? description : "GLFW"));
}

GLFWwindow* make_window(const Options& options) {
  glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
  glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 3);
  glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
  glfwWindowHint(GLFW_AUTO_ICONIFY, GLFW_FALSE);
  glfwWindowHintString(GLFW_X11_CLASS_NAME, "slabside");
  glfwWindowHintString(GLFW_X11_INSTANCE_NAME, "slabside");
  GLFWmonitor* monitor = options.full_screen ? glfwGetPrimaryMonitor() : nullptr;
  Extent size = options.size;
  if (const GLFWvidmode* mode = monitor ? glfwGetVideoMode(monitor) : nullptr)
    size = {mode->width, mode->height}; // the mode it has, so that none is switched
  return glfwCreateWindow(size.w, size.h, options.title.c_str(), monitor, nullptr);
}

// Nothing on screen moves by itself: no caret blinks, no pointer changes its shape.
void start_imgui(GLFWwindow* handle) {
  ImGuiIO& io = ImGui::GetIO();
  io.ConfigInputTextCursorBlink = false;
  io.ConfigFlags |= ImGuiConfigFlags_NoMouseCursorChange;
  ImGui_ImplGlfw_InitForOpenGL(handle, true);
}

GLFWmonitor* monitor_under(GLFWwindow* handle) {
  int x = 0, y = 0, w = 0, h = 0;
  glfwGetWindowPos(handle, &x, &y);
  glfwGetWindowSize(handle, &w, &h);
  int count = 0;
  GLFWmonitor** monitors = glfwGetMonitors(&count);
  for (int i = 0; i < count; ++i) {
    int left = 0, top = 0;
    glfwGetMonitorPos(monitors[i], &left, &top);
    const GLFWvidmode* mode = glfwGetVideoMode(monitors[i]);
    const int in_x = x + w / 2 - left, in_y = y + h / 2 - top;
    if (mode && in_x >= 0 && in_y >= 0 && in_x < mode->width && in_y < mode->height)
      return monitors[i];
  }
  return glfwGetPrimaryMonitor();
}

}

std::optional<double> px_per_mm_of(Extent px, Extent mm) {
  const int longest_px = std::max(px.w, px.h), longest_mm = std::max(mm.w, mm.h);
  if (std::min(px.w, px.h) <= 0 || std::min(mm.w, mm.h) <= 0) return std::nullopt;
  const double ratio = static_cast<double>(longest_px) / longest_mm;
  // From a large television to the densest telephone; outside, the report is a fault.
  return ratio >= 1 && ratio <= 35 ? std::optional(ratio) : std::nullopt;
}

Window::Window(std::unique_ptr<State> opened) : state(std::move(opened)) {}
Window::Window(Window&&) noexcept = default;
Window& Window::operator=(Window&&) noexcept = default;
Window::~Window() = default;

tl::expected<Window, std::string> Window::open(Options options) {
#ifdef GLFW_PLATFORM_X11 // from GLFW 3.4 on one library has both back ends
  glfwInitHint(GLFW_PLATFORM, GLFW_PLATFORM_X11);
#endif
  // The two libraries have one name, and of that for Wayland no touch comes.
  if (std::string_view(glfwGetVersionString()).find("X11") == std::string_view::npos)
    return tl::make_unexpected(options.wrong_library + " (" + glfwGetVersionString() + ")");
  if (!glfwInit()) return glfw_failure();
  auto state = std::make_unique<State>();
  state->windowed_size = options.size;
  state->handle = make_window(options);
  if (!state->handle) return glfw_failure();
  when_display_is_lost(std::move(options.display_lost));
  glfwSetWindowUserPointer(state->handle, state.get());
  glfwMakeContextCurrent(state->handle);
  glfwSwapInterval(1);
  if (!start_drawing(glfwGetProcAddress)) return tl::make_unexpected(std::string("OpenGL 3.3"));
  state->drawing = true;
  state->parts = parts_of_this_window();
  if (!state->parts) state->kept.emplace();
  State::install_callbacks(state->handle);
  start_imgui(state->handle);
  return Window(std::move(state));
}

Poll Window::wait(std::optional<double> seconds) {
  if (!seconds)
    glfwWaitEvents();
  else if (*seconds > 0)
    glfwWaitEventsTimeout(*seconds);
  else
    glfwPollEvents();
  return {++state->polls, std::exchange(state->events, {})};
}

void Window::wake() { glfwPostEmptyEvent(); }

// On X11 GLFW's screen coordinates are pixels, so the pointer needs no scale.
Extent Window::size() const {
  Extent size;
  glfwGetFramebufferSize(state->handle, &size.w, &size.h);
  return glfwGetWindowAttrib(state->handle, GLFW_ICONIFIED) ? Extent{} : size;
}

bool Window::fills_display() const { return glfwGetWindowMonitor(state->handle) != nullptr; }

void Window::fill_display(bool fills) {
  GLFWmonitor* monitor = monitor_under(state->handle);
  const GLFWvidmode* mode = monitor ? glfwGetVideoMode(monitor) : nullptr;
  if (!mode || fills == fills_display()) return;
  if (fills) {
    Corner at;
    glfwGetWindowPos(state->handle, &at.x, &at.y);
    glfwGetWindowSize(state->handle, &state->windowed_size.w, &state->windowed_size.h);
    state->windowed_at = at;
    glfwSetWindowMonitor(state->handle, monitor, 0, 0, mode->width, mode->height, GLFW_DONT_CARE);
    return;
  }
  Corner at;
  glfwGetMonitorPos(monitor, &at.x, &at.y);
  at = state->windowed_at.value_or(at);
  glfwSetWindowMonitor(state->handle, nullptr, at.x, at.y, state->windowed_size.w,
                       state->windowed_size.h, GLFW_DONT_CARE);
}

std::optional<double> Window::px_per_mm() const {
  GLFWmonitor* monitor = monitor_under(state->handle);
  const GLFWvidmode* mode = monitor ? glfwGetVideoMode(monitor) : nullptr;
  if (!mode) return std::nullopt;
  Extent mm;
  glfwGetMonitorPhysicalSize(monitor, &mm.w, &mm.h);
  return px_per_mm_of({mode->width, mode->height}, mm);
}

std::string Window::monitor() const {
  GLFWmonitor* monitor = monitor_under(state->handle);
  const char* name = monitor ? glfwGetMonitorName(monitor) : nullptr;
  return name ? name : "";
}

void Window::begin_frame() {
  ImGui_ImplOpenGL3_NewFrame();
  ImGui_ImplGlfw_NewFrame();
  ImGui::NewFrame();
}

void Window::forget() { state->canvas.forget(); }

void Window::end_frame(Colour clear) {
  State& s = *state;
  const Extent all = size();
  if (s.kept && !s.kept->bind(all)) s.canvas.forget();
  if (s.parts && s.back != all) s.renew_back(all);
  const std::vector<Area> drawn = s.canvas.draw(all, clear);
  if (s.parts && s.back != all) {
    // It is of another size already: to show more than it has would be an error that ends the
    // program. That it has another is told next.
    if (s.parts->size() != all) return s.canvas.forget();
    s.back = all;
  }
  if (s.parts)
    for (const Area& area : drawn) s.parts->show(area, all);
  if (!s.kept || drawn.empty()) return;
  s.kept->show();
  glfwSwapBuffers(s.handle);
}

}
