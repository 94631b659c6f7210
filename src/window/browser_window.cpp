#include "window/browser.hpp"
#include "window/browser_page.hpp"
#include "window/canvas.hpp"

#include <emscripten/emscripten.h>
#include <emscripten/html5.h>
#include <imgui.h>
#include <imgui_impl_opengl3.h>

#include <algorithm>
#include <cstdlib>
#include <utility>

extern "C" { // browser_page.js
void slabside_page_open();
void slabside_page_remember_state();
void slabside_page_listen();
int slabside_page_width();
int slabside_page_height();
double slabside_page_ratio();
double slabside_page_px_per_inch();
char* slabside_page_display();
void slabside_ask_to_show();
void slabside_hear_in(double ms); // below 0: not at all
void slabside_hear_soon();
void slabside_show_canvas(int busy);
int slabside_page_prefers(const char* what);
char* slabside_page_language();
void slabside_tell(const char* shown);
void slabside_give_up(const char* sentence);
void slabside_show_keeping();
void slabside_call_keyboard(int wanted);
}

namespace window {

namespace {

constexpr const char* canvas = "#canvas";

std::string taken(char* text) {
  std::string out = text;
  std::free(text);
  return out;
}

}

struct Window::State {
  EMSCRIPTEN_WEBGL_CONTEXT_HANDLE context = 0;
  bool drawing = false;
  Canvas canvas;
  std::optional<Kept> kept; // while drawing
  std::uint64_t polls = 0;
  double drawn_at_ms = 0;

  ~State() {
    page() = {};
    kept.reset();
    if (drawing) stop_drawing();
    if (context > 0) emscripten_webgl_destroy_context(context);
  }
};

Window::Window(std::unique_ptr<State> opened) : state(std::move(opened)) {}
Window::Window(Window&&) noexcept = default;
Window& Window::operator=(Window&&) noexcept = default;
Window::~Window() = default;

tl::expected<Window, std::string> Window::open(Options) {
  auto state = std::make_unique<State>();
  slabside_page_open();
  EmscriptenWebGLContextAttributes wanted;
  emscripten_webgl_init_context_attributes(&wanted);
  wanted.majorVersion = 2;
  wanted.alpha = wanted.depth = wanted.stencil = wanted.antialias = false;
  state->context = emscripten_webgl_create_context(canvas, &wanted);
  if (state->context <= 0 ||
      emscripten_webgl_make_context_current(state->context) != EMSCRIPTEN_RESULT_SUCCESS)
    return tl::make_unexpected(std::string("WebGL 2"));
  slabside_page_remember_state();
  if (!start_drawing(nullptr)) return tl::make_unexpected(std::string("WebGL 2"));
  state->drawing = true;
  state->kept.emplace();
  ImGuiIO& io = ImGui::GetIO();
  io.ConfigInputTextCursorBlink = false; // nothing on screen moves by itself
  io.ConfigFlags |= ImGuiConfigFlags_NoMouseCursorChange;
  return Window(std::move(state));
}

Poll Window::wait(std::optional<double>) {
  Poll come{++state->polls, std::exchange(page().events, {})};
  for (const Event& event : come.events)
    if (std::holds_alternative<Restored>(event)) state->kept.emplace();
  return come;
}

void Window::wake() { slabside_hear_soon(); }

Extent Window::size() const { return {slabside_page_width(), slabside_page_height()}; }

// A page fills the display where it was put on the home screen.
bool Window::fills_display() const { return false; }
void Window::fill_display(bool) {}

std::optional<double> Window::px_per_mm() const {
  constexpr double mm_per_inch = 25.4;
  return slabside_page_ratio() * slabside_page_px_per_inch() / mm_per_inch;
}

std::string Window::monitor() const { return taken(slabside_page_display()); }

void Window::begin_frame() {
  ImGuiIO& io = ImGui::GetIO();
  const Extent now = size();
  const double ms = emscripten_get_now();
  io.DisplaySize = {static_cast<float>(now.w), static_cast<float>(now.h)};
  // A clock that stands still has ImGui count nothing as held; one that leaps has it forget.
  io.DeltaTime = static_cast<float>(std::clamp((ms - state->drawn_at_ms) / 1000, 0.001, 1.0));
  state->drawn_at_ms = ms;
  ImGui_ImplOpenGL3_NewFrame();
  ImGui::NewFrame();
}

void Window::forget() { state->canvas.forget(); }

void Window::end_frame(Colour clear) {
  if (!state->kept->bind(size())) state->canvas.forget();
  if (!state->canvas.draw(size(), clear).empty()) state->kept->show();
  slabside_call_keyboard(text_is_typed());
}

void take_turns(Turns turns) {
  page().turns = std::move(turns);
  slabside_page_listen();
}
void ask_to_show() { slabside_ask_to_show(); }
void hear_in(std::optional<double> seconds) {
  slabside_hear_in(seconds ? std::max(0.0, *seconds * 1000) : -1);
}
std::string page_language() { return taken(slabside_page_language()); }

bool prefers_dark() { return slabside_page_prefers("(prefers-color-scheme: dark)"); }
bool prefers_less_motion() { return slabside_page_prefers("(prefers-reduced-motion: reduce)"); }
void tell(const std::string& shown) { slabside_tell(shown.c_str()); }
void show_canvas(bool busy) { slabside_show_canvas(busy); }
void show_keeping() { slabside_show_keeping(); }
void give_up(const std::string& sentence) {
  page().turns = {};
  slabside_hear_in(-1);
  slabside_give_up(sentence.c_str());
}

}
