#include "window/canvas.hpp"

#include "window/gl.hpp"

#include <imgui.h>
#include <imgui_impl_opengl3.h>

#include <algorithm>
#include <utility>

namespace window {

namespace {

bool same(Colour a, Colour b) { return a.r == b.r && a.g == b.g && a.b == b.b; }

void clear_areas(const std::vector<Area>& areas, Extent size, Colour clear) {
  glClearColor(clear.r, clear.g, clear.b, 1);
  glEnable(GL_SCISSOR_TEST);
  for (const Area& area : areas) { // GL counts from the bottom
    glScissor(area.left, size.h - area.bottom, area.right - area.left, area.bottom - area.top);
    glClear(GL_COLOR_BUFFER_BIT);
  }
  glDisable(GL_SCISSOR_TEST);
}

}

std::vector<Area> Canvas::draw(Extent size, Colour clear) {
  ImGui::Render();
  ImDrawData& data = *ImGui::GetDrawData();
  std::vector<Piece> pieces = pieces_of(data);
  whole_ |= !(size_ == size) || !same(clear_, clear) || fonts_ != font_textures();
  std::vector<Area> areas{{0, 0, size.w, size.h}};
  if (!whole_) {
    areas = damage(pieces_, pieces);
    keep_within(data, pieces, areas);
  }
  pieces_ = std::move(pieces);
  size_ = size;
  clear_ = clear;
  fonts_ = font_textures();
  whole_ = false;
  if (areas.empty()) return areas;
  clear_areas(areas, size, clear);
  ImGui_ImplOpenGL3_RenderDrawData(&data);
  return areas;
}

Kept::Kept() {
  glGenRenderbuffers(1, &pixels_);
  glGenFramebuffers(1, &frame_);
}

Kept::~Kept() {
  glDeleteFramebuffers(1, &frame_);
  glDeleteRenderbuffers(1, &pixels_);
}

bool Kept::bind(Extent size) {
  glBindFramebuffer(GL_FRAMEBUFFER, frame_);
  if (std::exchange(size_, size) == size) return true;
  glBindRenderbuffer(GL_RENDERBUFFER, pixels_);
  glRenderbufferStorage(GL_RENDERBUFFER, GL_RGBA8, size.w, size.h);
  glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, pixels_);
  return false;
}

void Kept::show() const {
  glBindFramebuffer(GL_DRAW_FRAMEBUFFER, 0);
  glBlitFramebuffer(0, 0, size_.w, size_.h, 0, 0, size_.w, size_.h, GL_COLOR_BUFFER_BIT,
                    GL_NEAREST);
  glBindFramebuffer(GL_FRAMEBUFFER, 0);
}

}
