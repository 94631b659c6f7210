#include "window/offscreen.hpp"

#include <EGL/egl.h>
#include <EGL/eglext.h>
#include <glad/gl.h>
#include <imgui.h>
#include <imgui_impl_opengl3.h>

#include <cstdio>
#include <string_view>

namespace window {

struct Offscreen::State {
  EGLDisplay display = EGL_NO_DISPLAY;
  EGLContext context = EGL_NO_CONTEXT;
  bool drawing = false;
  Extent size;
  GLuint pixels = 0, frame = 0;

  ~State() {
    if (drawing) {
      glDeleteFramebuffers(1, &frame);
      glDeleteRenderbuffers(1, &pixels);
      stop_drawing();
    }
    if (display == EGL_NO_DISPLAY) return;
    eglMakeCurrent(display, EGL_NO_SURFACE, EGL_NO_SURFACE, EGL_NO_CONTEXT);
    if (context != EGL_NO_CONTEXT) eglDestroyContext(display, context);
    eglTerminate(display);
  }
};

namespace {

// The call that failed and its code, in no language.
tl::unexpected<std::string> egl_failure(const char* call) {
  char code[16];
  std::snprintf(code, sizeof code, "0x%04x", static_cast<unsigned>(eglGetError()));
  return tl::make_unexpected(std::string(call) + " " + code);
}

tl::expected<EGLDisplay, std::string> open_display() {
  const char* known = eglQueryString(EGL_NO_DISPLAY, EGL_EXTENSIONS);
  if (!known || std::string_view(known).find("EGL_MESA_platform_surfaceless") == std::string::npos)
    return tl::make_unexpected(std::string("EGL_MESA_platform_surfaceless"));
  EGLDisplay display =
      eglGetPlatformDisplay(EGL_PLATFORM_SURFACELESS_MESA, EGL_DEFAULT_DISPLAY, nullptr);
  if (display == EGL_NO_DISPLAY) return egl_failure("eglGetPlatformDisplay");
  if (!eglInitialize(display, nullptr, nullptr)) return egl_failure("eglInitialize");
  return display;
}

tl::expected<EGLContext, std::string> make_context(EGLDisplay display) {
  if (!eglBindAPI(EGL_OPENGL_API)) return egl_failure("eglBindAPI");
  // A config for no surface at all; the default would ask for one that windows can have.
  const EGLint wanted[] = {EGL_SURFACE_TYPE, 0, EGL_RENDERABLE_TYPE, EGL_OPENGL_BIT, EGL_NONE};
  EGLConfig config{};
  EGLint found = 0;
  if (!eglChooseConfig(display, wanted, &config, 1, &found) || found == 0)
    return egl_failure("eglChooseConfig");
  const EGLint core[] = {EGL_CONTEXT_MAJOR_VERSION,
                         3,
                         EGL_CONTEXT_MINOR_VERSION,
                         3,
                         EGL_CONTEXT_OPENGL_PROFILE_MASK,
                         EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT,
                         EGL_NONE};
  EGLContext context = eglCreateContext(display, config, EGL_NO_CONTEXT, core);
  if (context == EGL_NO_CONTEXT) return egl_failure("eglCreateContext, OpenGL 3.3");
  return context;
}

}

Offscreen::Offscreen(std::unique_ptr<State> opened) : state(std::move(opened)) {}
Offscreen::Offscreen(Offscreen&&) noexcept = default;
Offscreen& Offscreen::operator=(Offscreen&&) noexcept = default;
Offscreen::~Offscreen() = default;

tl::expected<Offscreen, std::string> Offscreen::open(Extent size) {
  if (size.w < 1 || size.h < 1 || size.w > 16384 || size.h > 16384)
    return tl::make_unexpected(std::string("1 × 1 … 16384 × 16384"));
  auto state = std::make_unique<State>();
  state->size = size;
  const auto display = open_display();
  if (!display) return tl::make_unexpected(display.error());
  state->display = *display;
  const auto context = make_context(state->display);
  if (!context) return tl::make_unexpected(context.error());
  state->context = *context;
  if (!eglMakeCurrent(state->display, EGL_NO_SURFACE, EGL_NO_SURFACE, state->context))
    return egl_failure("eglMakeCurrent");
  if (!start_drawing(eglGetProcAddress)) return tl::make_unexpected(std::string("OpenGL 3.3"));
  state->drawing = true;

  glGenRenderbuffers(1, &state->pixels);
  glBindRenderbuffer(GL_RENDERBUFFER, state->pixels);
  glRenderbufferStorage(GL_RENDERBUFFER, GL_RGBA8, size.w, size.h);
  glGenFramebuffers(1, &state->frame);
  glBindFramebuffer(GL_FRAMEBUFFER, state->frame);
  glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, state->pixels);
  if (glCheckFramebufferStatus(GL_FRAMEBUFFER) != GL_FRAMEBUFFER_COMPLETE)
    return tl::make_unexpected(std::string("glCheckFramebufferStatus"));
  return Offscreen(std::move(state));
}

void Offscreen::begin_frame() {
  ImGuiIO& io = ImGui::GetIO();
  io.DisplaySize = {static_cast<float>(state->size.w), static_cast<float>(state->size.h)};
  io.DeltaTime = 1.0f / 60;
  ImGui_ImplOpenGL3_NewFrame();
  ImGui::NewFrame();
}

Picture Offscreen::end_frame(Colour clear) {
  draw_frame(state->size, clear);
  return read_pixels(state->size);
}

}
