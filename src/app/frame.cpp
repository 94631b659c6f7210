#include "app/frame.hpp"

#include "screens/draw.hpp"
#include "screens/paint.hpp"

#include <algorithm>
#include <utility>

namespace app {

std::vector<bench::Text> draw(const bench::View& view, double px_per_mm) {
  screens::paint(screens::draw(view), px_per_mm);
  return screens::fields(view, px_per_mm);
}

std::vector<bench::Text> show(window::Window& window, const bench::View& view, double px_per_mm) {
  window.begin_frame();
  std::vector<bench::Text> typed = draw(view, px_per_mm);
  if (screens::wants_letters()) {
    window::drop_frame();
    more_letters();
    window.begin_frame();
    for (bench::Text& text : draw(view, px_per_mm)) typed.push_back(std::move(text));
  }
  window.end_frame(ground(view));
  return typed;
}

bool more_letters() {
  if (!screens::load_more_letters()) return false;
  window::rebuild_font_texture();
  return true;
}

window::Colour ground(const bench::View& view) {
  const screens::Colour c = screens::backdrop(view);
  return {static_cast<float>(c.r) / 255, static_cast<float>(c.g) / 255,
          static_cast<float>(c.b) / 255};
}

double fitting_px_per_mm(window::Extent size, double px_per_mm) {
  const double longest = std::max(size.w, size.h), shortest = std::min(size.w, size.h);
  return std::min({px_per_mm, longest / bench::least_display.w, shortest / bench::least_display.h});
}

bench::Display display_of(window::Extent size, double px_per_mm, bench::Hand hand) {
  return {{size.w / px_per_mm, size.h / px_per_mm}, hand};
}

}
