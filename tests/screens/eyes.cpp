#include "screens/eyes.hpp"

#include "screens/draw.hpp"
#include "screens/paint.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

namespace eyes {

using screens::Shape;

namespace {

window::Offscreen opened(bench::Size mm, double px_per_mm) {
  auto offscreen = window::Offscreen::open({static_cast<int>(std::lround(mm.w * px_per_mm)),
                                            static_cast<int>(std::lround(mm.h * px_per_mm))});
  REQUIRE_MESSAGE(offscreen.has_value(), offscreen.error());
  return std::move(*offscreen);
}

window::Colour as_gl(Colour c) {
  return {static_cast<float>(c.r) / 255, static_cast<float>(c.g) / 255,
          static_cast<float>(c.b) / 255};
}

}

Colour Frame::pixel(int x, int y) const {
  x = std::clamp(x, 0, picture.size.w - 1);
  y = std::clamp(y, 0, picture.size.h - 1);
  const auto at = static_cast<std::size_t>((y * picture.size.w + x) * 3);
  return {picture.rgb[at], picture.rgb[at + 1], picture.rgb[at + 2], 255};
}

std::vector<Shape> unveiled(const std::vector<Shape>& shapes) {
  const auto veil = std::find_if(shapes.begin(), shapes.end(), [](const Shape& shape) {
    const auto* box = std::get_if<screens::Box>(&shape);
    return box && box->fill.a > 0 && box->fill.a < 255;
  });
  return veil == shapes.end() ? shapes : std::vector<Shape>(veil, shapes.end());
}

std::vector<Shape> without_texts(const std::vector<Shape>& shapes) {
  std::vector<Shape> out;
  for (const Shape& shape : shapes)
    if (!std::holds_alternative<screens::Text>(shape)) out.push_back(shape);
  return out;
}

Eyes::Eyes(bench::Size mm, double px_per_mm)
    : offscreen_(opened(mm, px_per_mm)), px_per_mm_(px_per_mm) {
  REQUIRE(screens::load_faces(px_per_mm).has_value());
}

void Eyes::rescale(double px_per_mm) {
  px_per_mm_ = px_per_mm;
  REQUIRE(screens::load_faces(px_per_mm).has_value());
  window::rebuild_font_texture();
}

Frame Eyes::look(const std::vector<Shape>& shapes, Colour ground) {
  Frame frame{{}, px_per_mm_};
  do {
    offscreen_.begin_frame();
    screens::paint(shapes, px_per_mm_);
    frame.picture = offscreen_.end_frame(as_gl(ground));
    if (!screens::load_more_letters()) return frame;
    window::rebuild_font_texture();
  } while (true);
}

Frame Eyes::look(const bench::View& view) {
  const auto shapes = screens::draw(view);
  const Colour ground = screens::backdrop(view);
  if (!std::holds_alternative<bench::PlanView>(view.screen)) return look(shapes, ground);
  Frame frame{{}, px_per_mm_};
  int frames = 2; // ImGui shows a window of its own from the second frame on
  for (int i = 0; i < frames; ++i) {
    offscreen_.begin_frame();
    screens::paint(shapes, px_per_mm_);
    screens::fields(view, px_per_mm_);
    frame.picture = offscreen_.end_frame(as_gl(ground));
    if (!screens::load_more_letters()) continue;
    window::rebuild_font_texture();
    ++frames;
  }
  return frame;
}

}
