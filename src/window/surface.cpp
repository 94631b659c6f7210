#include "window/gl.hpp"

#include <imgui.h>
#include <imgui_impl_opengl3.h>
#include <imgui_internal.h>

#include <algorithm>

namespace window {

bool start_drawing(GlLoader loader) {
  if (!load_gl(loader)) return false;
  IMGUI_CHECKVERSION();
  ImGui::CreateContext();
  ImGui::GetIO().IniFilename = nullptr;
  ImGui::GetIO().LogFilename = nullptr;
  if (ImGui_ImplOpenGL3_Init(glsl_version)) return true;
  ImGui::DestroyContext();
  return false;
}

void stop_drawing() {
  ImGui_ImplOpenGL3_Shutdown();
  ImGui::DestroyContext();
}

namespace {
std::uint64_t rebuilt = 0; // as ImGui's context is, one a program
}

void rebuild_font_texture() {
  ++rebuilt;
  ImGui_ImplOpenGL3_DestroyFontsTexture();
  ImGui_ImplOpenGL3_CreateFontsTexture();
}

std::uint64_t font_textures() { return rebuilt; }

void renew_drawing() {
  ++rebuilt;
  ImGui_ImplOpenGL3_DestroyDeviceObjects();
  ImGui_ImplOpenGL3_CreateDeviceObjects();
}

void drop_frame() { ImGui::EndFrame(); }

bool text_is_typed() { return ImGui::GetIO().WantTextInput; }

bool input_waits() { return ImGui::GetCurrentContext()->InputEventsQueue.Size > 0; }

void draw_frame(Extent size, Colour clear) {
  ImGui::Render();
  glViewport(0, 0, size.w, size.h);
  glClearColor(clear.r, clear.g, clear.b, 1);
  glClear(GL_COLOR_BUFFER_BIT);
  ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
}

Picture read_pixels(Extent size) {
  const auto row = static_cast<std::size_t>(size.w) * 3;
  Picture picture{size, std::vector<unsigned char>(row * static_cast<std::size_t>(size.h))};
  if (picture.rgb.empty()) return picture;
  glPixelStorei(GL_PACK_ALIGNMENT, 1);
  glReadPixels(0, 0, size.w, size.h, GL_RGB, GL_UNSIGNED_BYTE, picture.rgb.data());
  // GL counts rows from the bottom.
  auto top = picture.rgb.begin();
  auto bottom = picture.rgb.end() - static_cast<std::ptrdiff_t>(row);
  for (; top < bottom;
       top += static_cast<std::ptrdiff_t>(row), bottom -= static_cast<std::ptrdiff_t>(row))
    std::swap_ranges(top, top + static_cast<std::ptrdiff_t>(row), bottom);
  return picture;
}

}
